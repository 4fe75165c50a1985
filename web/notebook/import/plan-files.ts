import type { FoundFile, FoundFiles, Skipped } from './found-files.ts';
import { isHidden, pathFault } from './path-fault.ts';

/** A file that will be read, and where it will lie. */
export interface PlannedFile {
  readonly path: string;
  readonly found: FoundFile;
}

/** What an import will do, before anything is read. */
export interface FilePlan {
  readonly files: readonly PlannedFile[];
  readonly skipped: readonly Skipped[];
  /** Hidden files and what systems leave lying about. */
  readonly hiddenCount: number;
}

/** Sorts what was found into what will be read, what not and why, and what is passed over; a wrapper folder falls away. */
export function planFiles({ files, mayBeWrapped }: FoundFiles): FilePlan {
  const skipped: Skipped[] = [];
  const sound = files.filter(({ path }) => {
    const reason = pathFault(path);
    // Where a hidden file's path is at fault too, the fault is worth saying.
    if (reason) skipped.push({ path, reason });
    return !reason;
  });
  const wrapper = mayBeWrapped ? wrapperOf(sound.map(({ path }) => path)) : '';
  const planned = new Map<string, FoundFile>();
  let hiddenCount = 0;
  for (const found of sound) {
    const path = found.path.startsWith(wrapper) ? found.path.slice(wrapper.length) : found.path;
    if (isHidden(path)) hiddenCount += 1;
    else if (found.fault) skipped.push({ path, reason: found.fault });
    else if (planned.has(path)) skipped.push({ path, reason: 'twice' });
    else planned.set(path, found);
  }
  const inOrder = [...planned].sort(([a], [b]) => (a < b ? -1 : 1));
  return { files: inOrder.map(([path, found]) => ({ path, found })), skipped, hiddenCount };
}

/** The one folder, with its slash, that everything lies in; empty where there is none. */
function wrapperOf(paths: readonly string[]): string {
  const seen = paths.filter((path) => !isHidden(path));
  const [first = '', ...others] = seen.length > 0 ? seen : paths;
  const wrapper = first.slice(0, first.indexOf('/') + 1);
  return others.every((path) => path.startsWith(wrapper)) ? wrapper : '';
}
