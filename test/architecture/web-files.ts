import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The checkout's folder. */
export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A file of the project: path from the checkout's folder with `/`, and its text. */
export interface ProjectFile {
  readonly path: string;
  readonly text: string;
}

/** Every file below a folder whose name ends as asked, in order of path; none where the folder is missing. */
export function filesBelow(folder: string, ending: RegExp): readonly ProjectFile[] {
  const top = join(ROOT, folder);
  if (!existsSync(top)) return [];
  return readdirSync(top, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((file) => ({ path: relative(ROOT, file).split(sep).join('/'), text: readFileSync(file, 'utf8') }));
}
