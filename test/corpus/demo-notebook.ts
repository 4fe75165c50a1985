import { packNotebook } from '../../scripts/demo-plugin.mjs';
import { Notebook } from '../../web/notebook/notebook.ts';

let opened: Notebook | undefined;

/** The demonstration notebook, opened once for all tests of a file. */
export function demoNotebook(): Notebook {
  if (!opened) {
    const encoder = new TextEncoder();
    opened = new Notebook();
    opened.putAll(packNotebook().files.map(({ path, text }) => ({ path, bytes: encoder.encode(text) })));
  }
  return opened;
}
