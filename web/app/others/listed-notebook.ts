import type { NotebookFile } from '../../notebook/notebook.ts';
import { withoutPrivate } from '../../notebook/without-private.ts';

/**
 * Reads a published notebook: the list that `tenterground list --whole` writes. A file whose text is not in the list lies beside it.
 * Private notes are not kept, should the list hold any.
 *
 * @throws an Error that says in words what is wrong.
 */
export async function readListedNotebook(address: string): Promise<readonly NotebookFile[]> {
  const reply = await fetch(address);
  if (!reply.ok) throw new Error(`${address} answered ${reply.status}`);
  const list: unknown = await reply.json();
  const files =
    typeof list === 'object' && list !== null && 'files' in list && Array.isArray(list.files)
      ? (list.files as readonly unknown[])
      : undefined;
  if (!files) throw new Error(`${address} is no list of a notebook’s files`);
  const encoder = new TextEncoder();
  const read = files.flatMap((file): readonly NotebookFile[] => {
    if (typeof file !== 'object' || file === null || !('path' in file) || typeof file.path !== 'string') return [];
    return 'text' in file && typeof file.text === 'string' ? [{ path: file.path, bytes: encoder.encode(file.text) }] : [];
  });
  return withoutPrivate(read);
}
