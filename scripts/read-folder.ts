import { lstat, readdir, readFile, realpath, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { NotebookFile } from '../web/notebook/notebook.ts';

/** A file or folder that was passed over, and why. */
export interface PassedOver {
  readonly path: string;
  readonly why: 'unreadable' | 'name' | 'loop' | 'link' | 'too-large' | 'outside';
  /** For a file that is too large: its bytes and the most there may be. */
  readonly about?: readonly string[];
}

/** Everything a folder holds, beside what was passed over. */
export interface FolderReading {
  readonly files: readonly NotebookFile[];
  readonly passedOver: readonly PassedOver[];
}

/** Larger files are no notes, photos or spectra of anyone's. Our choice: 64 MiB. */
const LARGEST_BYTES = 64 * 1024 * 1024;
const READ_AT_ONCE = 64;

/**
 * Reads a folder and all below it. Hidden files and folders are left alone; a link is followed when it stays inside
 * the folder and does not lead in a circle.
 *
 * @returns undefined when the folder is missing, is no folder or cannot be listed.
 */
export async function readFolder(folder: string): Promise<FolderReading | undefined> {
  const root = await realpath(folder).catch(() => undefined);
  if (root === undefined || (await stat(root).catch(() => undefined))?.isDirectory() !== true) return undefined;
  const passedOver: PassedOver[] = [];
  const paths: string[] = [];

  const walk = async (at: string, real: string, above: readonly string[]): Promise<boolean> => {
    const names = await readdir(real).catch(() => undefined);
    if (!names) return false;
    for (const name of names.sort()) {
      if (name.startsWith('.') || name === 'node_modules') continue;
      const path = at === '' ? name : `${at}/${name}`;
      // A name that is not UTF-8 comes with a mark in the place of what could not be read, and opens nothing.
      if (name.includes('\uFFFD')) {
        passedOver.push({ path, why: 'name' });
        continue;
      }
      const target = await realpath(join(real, name)).catch(() => undefined);
      const found = target === undefined ? undefined : await stat(target).catch(() => undefined);
      if (target === undefined || !found) passedOver.push({ path, why: await whyNot(join(real, name)) });
      else if (target !== root && !target.startsWith(`${root}/`)) passedOver.push({ path, why: 'outside' });
      else if (found.isDirectory()) {
        if (above.includes(target)) passedOver.push({ path, why: 'loop' });
        else if (!(await walk(path, target, [...above, target]))) passedOver.push({ path, why: 'unreadable' });
      } else if (found.size > LARGEST_BYTES)
        passedOver.push({ path, why: 'too-large', about: [String(found.size), String(LARGEST_BYTES), 'bytes'] });
      else if (found.isFile()) paths.push(path);
    }
    return true;
  };
  if (!(await walk('', root, [root]))) return undefined;

  const files: NotebookFile[] = [];
  for (let at = 0; at < paths.length; at += READ_AT_ONCE) {
    const batch = await Promise.all(
      paths.slice(at, at + READ_AT_ONCE).map(async (path) => ({ path, bytes: await readFile(join(root, path)).catch(() => undefined) })),
    );
    for (const { path, bytes } of batch) {
      if (bytes) files.push({ path, bytes });
      else passedOver.push({ path, why: 'unreadable' });
    }
  }
  return { files, passedOver };
}

/** Why a name leads nowhere: a link in a circle, a link to nothing, or something else. */
async function whyNot(path: string): Promise<PassedOver['why']> {
  const isLink = (await lstat(path).catch(() => undefined))?.isSymbolicLink() === true;
  if (!isLink) return 'unreadable';
  return stat(path).then(
    () => 'unreadable',
    (fault: NodeJS.ErrnoException) => (fault.code === 'ELOOP' ? 'loop' : fault.code === 'ENOENT' ? 'link' : 'unreadable'),
  );
}
