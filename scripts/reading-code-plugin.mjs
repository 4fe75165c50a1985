/** Tells the page which code reads its notes: what was read by other code is read again. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { filesBelow, ROOT } from './setup.mjs';

/**
 * A hash of everything that what a note is read as may depend on: the domain whole, the notebook that holds what was read, the
 * form it is kept in, and the versions of all packages.
 * @param {string} [root] absolute; this checkout when absent
 */
export function readingCode(root = ROOT) {
  const hash = createHash('sha256');
  const files = [
    ...filesBelow(join(root, 'web', 'domain')),
    join(root, 'web', 'notebook', 'kept-readings.ts'),
    join(root, 'web', 'notebook', 'notebook.ts'),
    join(root, 'package-lock.json'),
  ];
  for (const file of files) hash.update(relative(root, file).split(sep).join('/')).update('\0').update(readFileSync(file)).update('\0');
  return hash.digest('hex').slice(0, 16);
}

/**
 * Puts that hash in the place of `READING_CODE` in a built site; nothing where sources are served as they are edited.
 * @returns {import('vite').Plugin}
 */
export function tellReadingCode() {
  return {
    name: 'tenterground:reading-code',
    config: (_, { command }) => ({ define: { READING_CODE: JSON.stringify(command === 'build' ? readingCode() : '') } }),
  };
}
