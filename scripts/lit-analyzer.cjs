// @ts-nocheck: it reaches into Node's module loader, which has no types.
/** Starts lit-analyzer on the TypeScript that still has a JavaScript API; the compiler's own package has none. */
const Module = require('node:module');

const resolve = Module._resolveFilename;
Module._resolveFilename = function (request, ...rest) {
  const name =
    request === 'typescript' || request.startsWith('typescript/') ? `typescript-js${request.slice('typescript'.length)}` : request;
  return resolve.call(this, name, ...rest);
};

require('lit-analyzer/cli.js');
