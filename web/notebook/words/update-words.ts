/** What is said about a newer version of the page. */
export const updateWords = {
  ready: {
    text: 'A newer version of this page lies ready. It waits until you want it; your notes stay as they are. Then the page is loaded again: a note you are writing waits as a draft, other fields do not.',
    offer: 'Use it now',
  },
  takenOver: {
    text: 'Another tab now uses a newer version of this page. This one goes on as it is until it is loaded again.',
    offer: 'Load it again',
  },
} as const;
