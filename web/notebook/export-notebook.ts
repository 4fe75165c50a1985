import type { NotebookStore, StoredFile, StoreFailure } from '../domain/ports.ts';
import { ok, type Result } from '../domain/result.ts';
import { exportZip } from './export-zip.ts';

/** Read at a time. */
const BATCH_BYTES = 4 * 1024 * 1024;

/** The whole notebook as a zip, in order of path. */
export async function* exportNotebook(store: NotebookStore, folder: string): AsyncGenerator<Result<Uint8Array, StoreFailure>> {
  yield* exportZip(folder, inOrder(store));
}

async function* inOrder(store: NotebookStore): AsyncGenerator<Result<readonly StoredFile[], StoreFailure>> {
  const stamps = await store.stamps();
  if (!stamps.ok) {
    yield stamps;
    return;
  }
  let batch: string[] = [];
  let size = 0;
  for (const { path, byteCount } of stamps.value) {
    if (batch.length > 0 && size + byteCount > BATCH_BYTES) {
      yield await store.read(batch);
      batch = [];
      size = 0;
    }
    batch.push(path);
    size += byteCount;
  }
  if (batch.length > 0) yield await store.read(batch);
}

/** Files that are shown and not kept, as a zip; they have no date of their own. */
export function exportFiles(folder: string, files: ReadonlyMap<string, Uint8Array>): AsyncGenerator<Result<Uint8Array, StoreFailure>> {
  const inOrder = [...files].sort(([a], [b]) => (a < b ? -1 : 1)).map(([path, bytes]) => ({ path, bytes, modifiedAt: 0 }));
  return exportZip(folder, one(ok(inOrder)));
}

// oxlint-disable-next-line require-await -- one batch, in the shape of many
async function* one<T>(value: T): AsyncGenerator<T> {
  yield value;
}
