import type { FileStamp } from '../domain/ports.ts';
import type { NotebookFile } from './notebook.ts';

/** Files with the versions they were just written under. */
export function stamped(files: readonly NotebookFile[], stamps: readonly FileStamp[]): readonly NotebookFile[] {
  const versions = new Map(stamps.map(({ path, version }) => [path, version]));
  return files.map((file) => {
    const version = versions.get(file.path);
    return version === undefined ? file : { ...file, version };
  });
}
