// Where the notebook is opened and its parts are joined; until then the page shows what index.html holds.
export {};
