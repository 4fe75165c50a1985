/** Builds the service worker and tells it what the site consists of. */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { filesBelow } from './setup.mjs';

const SOURCE = fileURLToPath(new URL('../web/app/offline/service-worker.ts', import.meta.url));
const BUILT = 'sw.js';

/**
 * The site's files as addresses, and a hash that changes whenever one of them does.
 * @param {string} folder absolute
 */
export function describeSite(folder) {
  const hash = createHash('sha256');
  const files = filesBelow(folder)
    .map((file) => ({ path: relative(folder, file).split(sep).join('/'), file }))
    .filter(({ path }) => path !== BUILT);
  for (const { path, file } of files) hash.update(path).update('\0').update(readFileSync(file)).update('\0');
  return {
    files: files.map(({ path }) => (path === 'index.html' ? '/' : `/${path}`)),
    hash: hash.digest('hex').slice(0, 16),
  };
}

/**
 * Adds `sw.js` to the built site.
 * @returns {import('vite').Plugin}
 */
export function worksOffline() {
  let folder = '';
  return {
    name: 'tenterground:works-offline',
    apply: 'build',
    configResolved({ root, build }) {
      folder = resolve(root, build.outDir);
    },
    buildStart() {
      this.emitFile({ type: 'chunk', id: SOURCE, fileName: BUILT });
    },
    // The list can only be made when everything has been written.
    closeBundle() {
      const file = join(folder, BUILT);
      const { files, hash } = describeSite(folder);
      const worker = readFileSync(file, 'utf8');
      if (!worker.includes('BUILT_FILES') || !worker.includes('BUILT_HASH')) throw new Error(`${BUILT} has no place for its list of files`);
      // The hash is part of the worker, so a browser sees a new worker whenever any file of the site is new.
      writeFileSync(file, worker.replaceAll('BUILT_FILES', JSON.stringify(files)).replaceAll('BUILT_HASH', JSON.stringify(hash)));
    },
  };
}
