import { Inflate } from 'fflate';
import { failed, ok, type Result } from '../../domain/result.ts';
import { crc32 } from './crc-32.ts';
import type { FoundFile, FoundFiles, SkipReason } from './found-files.ts';
import { readDirectory, type ZipEntry } from './zip-directory.ts';

/** What a zip may ask of the reader's machine. */
export interface ZipLimits {
  readonly entries: number;
  /** Of one file, and of all together, unpacked. */
  readonly fileBytes: number;
  readonly allBytes: number;
  /** Unpacked to packed, for files of more than `ratioFrom` bytes. */
  readonly ratio: number;
  readonly ratioFrom: number;
}

/**
 * Our choice: entries, because a notebook of ten years has a few thousand files; sizes, because a photo has some 10 MB and a
 * browser's tab a few GB; the ratio, because Deflate reaches 1032 : 1 only on one letter repeated, while prose packs 3 : 1 and
 * tables of numbers 10 : 1.
 */
export const ZIP_LIMITS: ZipLimits = {
  entries: 10_000,
  fileBytes: 64 * 1024 * 1024,
  allBytes: 1024 * 1024 * 1024,
  ratio: 200,
  ratioFrom: 1024 * 1024,
};

export type OpenedZip =
  | { readonly ok: true; readonly value: FoundFiles }
  | { readonly ok: false; readonly error: 'not-a-zip' | 'damaged' }
  | { readonly ok: false; readonly error: 'too-many'; readonly count: number };

/**
 * Looks into a zip; its files are unpacked one by one, when they are read. A zip inside is a file like any other and stays packed.
 *
 * @error `too-many` entries: nothing of it is read, and the reader can open it again with a higher limit.
 */
export function openZip(from: string, zip: Uint8Array, limits: ZipLimits = ZIP_LIMITS): OpenedZip {
  const directory = readDirectory(zip, limits.entries);
  if (!directory.ok) return directory;
  let together = 0;
  const files = directory.entries
    .filter(({ isFolder }) => !isFolder)
    .map((entry): FoundFile => {
      let fault = entryFault(entry, limits);
      if (!fault && together + entry.byteCount > limits.allBytes) fault = 'too-large-together';
      if (!fault) together += entry.byteCount;
      return {
        path: entry.name,
        byteCount: entry.byteCount,
        ...(entry.modifiedAt !== undefined && { modifiedAt: entry.modifiedAt }),
        ...(fault && { fault }),
        read: () => Promise.resolve(fault ? failed(fault) : unpack(zip, entry)),
      };
    });
  return ok({ from, files, mayBeWrapped: true });
}

function entryFault(entry: ZipEntry, limits: ZipLimits): SkipReason | undefined {
  if (entry.isLink) return 'link';
  if (entry.isEncrypted) return 'encrypted';
  if (entry.packing !== 0 && entry.packing !== 8) return 'packing-unknown';
  if (entry.byteCount > limits.ratioFrom && entry.byteCount > entry.packedBytes * limits.ratio) return 'bomb';
  return entry.byteCount > limits.fileBytes ? 'too-large' : undefined;
}

/** Fed to the unpacker at a time; it can grow 1032-fold, so this bounds what a lying entry can make before it is caught. */
const FEED = 16 * 1024;

/** Unpacks one entry; it never makes more bytes than the entry declared, beyond one feed. */
function unpack(zip: Uint8Array, entry: ZipEntry): Result<Uint8Array, SkipReason> {
  const packed = packedBytesOf(zip, entry);
  if (!packed) return failed('damaged');
  const bytes = entry.packing === 0 ? new Uint8Array(packed) : inflate(packed, entry.byteCount);
  return bytes && bytes.length === entry.byteCount && crc32(bytes) === entry.crc ? ok(bytes) : failed('damaged');
}

function packedBytesOf(zip: Uint8Array, { at, packedBytes }: ZipEntry): Uint8Array | undefined {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  if (at + 30 > zip.length || view.getUint32(at, true) !== 0x04034b50) return undefined;
  const start = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  return start + packedBytes > zip.length ? undefined : zip.subarray(start, start + packedBytes);
}

function inflate(packed: Uint8Array, byteCount: number): Uint8Array | undefined {
  const bytes = new Uint8Array(byteCount);
  let filled = 0;
  let isTooMuch = false;
  const inflater = new Inflate((chunk) => {
    isTooMuch ||= filled + chunk.length > byteCount;
    if (!isTooMuch) bytes.set(chunk, filled);
    filled += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length || at === 0; at += FEED) {
      inflater.push(packed.subarray(at, at + FEED), at + FEED >= packed.length);
      if (isTooMuch) return undefined;
    }
  } catch {
    // What is packed wrongly cannot be told from what is damaged.
    return undefined;
  }
  return filled === byteCount ? bytes : undefined;
}
