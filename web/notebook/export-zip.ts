import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import type { Instant, StoreFailure } from '../domain/ports.ts';
import type { Result } from '../domain/result.ts';

/** A file to export. */
export interface ExportFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly modifiedAt: Instant;
}

/** Packed already by their own kind; packing them again only takes time. */
const PACKED = /\.(?:jpe?g|png|webp|avif|heic|gif|zip|pdf|mp4|woff2?)$/i;

/** The times that a zip can say. */
const [EARLIEST, LATEST] = [new Date(1980, 0, 1).getTime(), new Date(2099, 11, 31).getTime()];

/**
 * Writes files into a zip, piece by piece, so that a large notebook need not stand in memory twice.
 *
 * Everything lies in one folder, which falls away when the zip is read in again. The same files in the same order give the same
 * bytes, wherever two machines agree on the time of day.
 *
 * @param files in the order they should stand; a failed batch is the last.
 * @error passes a failed batch on; the pieces before it are then no zip.
 */
export async function* exportZip(
  folder: string,
  files: AsyncIterable<Result<readonly ExportFile[], StoreFailure>>,
): AsyncGenerator<Result<Uint8Array, StoreFailure>> {
  const pieces: Uint8Array[] = [];
  const zip = new Zip((error, piece) => {
    if (error) throw error;
    pieces.push(piece);
  });
  for await (const batch of files) {
    if (!batch.ok) {
      yield batch;
      return;
    }
    for (const { path, bytes, modifiedAt } of batch.value) {
      const name = `${folder}/${path}`;
      const entry = PACKED.test(path) ? new ZipPassThrough(name) : new ZipDeflate(name, { level: 6 });
      entry.mtime = Math.min(Math.max(modifiedAt, EARLIEST), LATEST);
      zip.add(entry);
      entry.push(bytes, true);
      yield* pieces.splice(0).map((value) => ({ ok: true, value }) as const);
    }
  }
  zip.end();
  yield* pieces.splice(0).map((value) => ({ ok: true, value }) as const);
}

/** The folder in a zip and the zip's own name: a title with only what every system can write. */
export function folderNameOf(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return plain === '' || plain.length > 100 ? 'notebook' : plain;
}
