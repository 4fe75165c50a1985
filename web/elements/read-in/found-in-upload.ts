import { failed, ok } from '../../domain/result.ts';
import type { FoundFile, FoundFiles } from '../../notebook/import/found-files.ts';

/** As the command line has it; see `ZIP_LIMITS`. */
const LARGEST_BYTES = 64 * 1024 * 1024;

/** A file of the browser's, read only when its turn comes. */
export function foundFile(path: string, file: File): FoundFile {
  return {
    path,
    byteCount: file.size,
    modifiedAt: file.lastModified,
    ...(file.size > LARGEST_BYTES && { fault: 'too-large' as const }),
    read: () =>
      file.arrayBuffer().then(
        (buffer) => ok(new Uint8Array(buffer)),
        () => failed('unreadable'),
      ),
  };
}

/** A folder as a form uploads it: every path begins with the folder's own name. */
export function foundInUpload(files: readonly File[]): FoundFiles {
  const found = files.map((file) => foundFile(file.webkitRelativePath || file.name, file));
  const [top = ''] = (found[0]?.path ?? '').split('/');
  return { from: top, files: found, mayBeWrapped: true };
}
