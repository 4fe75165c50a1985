import { failed } from '../../domain/result.ts';
import type { FoundFile, FoundFiles } from '../../notebook/import/found-files.ts';
import { isHidden } from '../../notebook/import/path-fault.ts';
import { foundFile } from './found-in-upload.ts';

/** A folder the reader chose, walked whole; hidden folders are not entered, only counted. */
export async function foundInFolder(folder: FileSystemDirectoryHandle): Promise<FoundFiles> {
  const files: FoundFile[] = [];
  await walk(folder, '', files);
  return { from: folder.name, files, mayBeWrapped: false };
}

async function walk(folder: FileSystemDirectoryHandle, above: string, files: FoundFile[]): Promise<void> {
  for await (const entry of entriesOf(folder)) {
    const path = above + entry.name;
    if (entry instanceof FileSystemFileHandle) {
      files.push(
        await entry.getFile().then(
          (file) => foundFile(path, file),
          () => unreadable(path),
        ),
      );
    } else if (entry instanceof FileSystemDirectoryHandle) {
      // One hidden folder may hold thousands of files, as a version history does.
      if (isHidden(path)) files.push(unreadable(path));
      else await walk(entry, `${path}/`, files);
    }
  }
}

/** The standard's iteration, which the types of this compiler do not know yet. */
const entriesOf = (folder: FileSystemDirectoryHandle): AsyncIterable<FileSystemHandle> =>
  (folder as unknown as { values(): AsyncIterable<FileSystemHandle> }).values();

const unreadable = (path: string): FoundFile => ({
  path,
  byteCount: 0,
  fault: 'unreadable',
  read: () => Promise.resolve(failed('unreadable')),
});
