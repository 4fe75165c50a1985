/** Packs the demonstration notebook into one file that the page can fetch: `demo.json`. */
import { readFileSync } from 'node:fs';
import { relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { filesBelow } from './setup.mjs';

const DEMO = fileURLToPath(new URL('../corpus-demo', import.meta.url));
const TEXT = /\.(md|json|bib|csv|tsv|txt|cgats|ti3)$/i;

/**
 * The notebook's text files: notes, bibliography, spectra. Photos are not packed.
 * @param {string} [folder] absolute; the demonstration notebook when absent
 * @returns {{ files: { path: string, text: string }[] }} paths inside the folder, `/` between parts, in order
 */
export function packNotebook(folder = DEMO) {
  const files = filesBelow(folder)
    .filter((file) => TEXT.test(file))
    .map((file) => ({ path: relative(folder, file).split(sep).join('/'), text: readFileSync(file, 'utf8') }));
  return { files };
}

/**
 * Serves `/demo.json` in the dev server and in browser tests, and writes it into the built site.
 * @returns {import('vite').Plugin}
 */
export function demoNotebook() {
  return {
    name: 'tenterground:demo-notebook',
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        if (request.url?.split('?')[0] !== '/demo.json') return next();
        response.setHeader('Content-Type', 'application/json; charset=utf-8');
        response.end(JSON.stringify(packNotebook()));
      });
    },
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: 'demo.json', source: JSON.stringify(packNotebook()) });
    },
  };
}
