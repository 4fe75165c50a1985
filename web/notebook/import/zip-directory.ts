import { decodeNote } from '../../domain/note/decode-note.ts';
import type { Instant } from '../../domain/ports.ts';

/** One entry of a zip's central directory, which alone is believed: local headers only say where the data begin. */
export interface ZipEntry {
  readonly name: string;
  readonly packing: number;
  readonly isEncrypted: boolean;
  readonly isLink: boolean;
  readonly isFolder: boolean;
  readonly modifiedAt?: Instant;
  readonly crc: number;
  readonly packedBytes: number;
  readonly byteCount: number;
  /** Where its local header begins. */
  readonly at: number;
}

/** `too-many` names at least as many entries as were allowed; the rest are not looked at. */
export type ZipDirectory =
  | { readonly ok: true; readonly entries: readonly ZipEntry[] }
  | { readonly ok: false; readonly error: 'not-a-zip' | 'damaged' }
  | { readonly ok: false; readonly error: 'too-many'; readonly count: number };

const END = 0x06054b50;
const END_64 = 0x06064b50;
const LOCATOR_64 = 0x07064b50;
const ENTRY = 0x02014b50;

/**
 * Lists a zip's entries without unpacking anything.
 *
 * @source PKWARE APPNOTE 6.3.10: 4.3.12 (entries), 4.3.14–16 (ends), 4.5.3 (sizes of 64 bits).
 */
export function readDirectory(zip: Uint8Array, mostEntries: number): ZipDirectory {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  const end = findEnd(view);
  if (end === undefined) return { ok: false, error: 'not-a-zip' };
  try {
    const { count, start } = readEnd(view, end);
    if (count > mostEntries) return { ok: false, error: 'too-many', count };
    const entries: ZipEntry[] = [];
    for (let at = start; at + 46 <= end && view.getUint32(at, true) === ENTRY;) {
      if (entries.length === mostEntries) return { ok: false, error: 'too-many', count: mostEntries + 1 };
      const { entry, next } = readEntry(zip, view, at);
      entries.push(entry);
      at = next;
    }
    return entries.length === count ? { ok: true, entries } : { ok: false, error: 'damaged' };
  } catch (error) {
    // A number that leads out of the file: DataView refuses to look there.
    if (error instanceof RangeError) return { ok: false, error: 'damaged' };
    throw error;
  }
}

/** The end record stands last, before a comment of at most 65,535 bytes. */
function findEnd(view: DataView): number | undefined {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 0xffff); at--) {
    if (view.getUint32(at, true) === END) return at;
  }
  return undefined;
}

function readEnd(view: DataView, end: number): { readonly count: number; readonly start: number } {
  const count = view.getUint16(end + 10, true);
  const start = view.getUint32(end + 16, true);
  const isLarge = count === 0xffff || start === 0xffffffff;
  if (!isLarge || end < 20 || view.getUint32(end - 20, true) !== LOCATOR_64) return { count, start };
  const end64 = long(view, end - 12);
  if (view.getUint32(end64, true) !== END_64) throw new RangeError('no end of 64 bits');
  return { count: long(view, end64 + 32), start: long(view, end64 + 48) };
}

function readEntry(zip: Uint8Array, view: DataView, at: number): { readonly entry: ZipEntry; readonly next: number } {
  const flags = view.getUint16(at + 8, true);
  const [nameLength, extraLength, remarkLength] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true)) as [
    number,
    number,
    number,
  ];
  const nameAt = at + 46;
  const extraAt = nameAt + nameLength;
  const next = extraAt + extraLength + remarkLength;
  if (next > view.byteLength) throw new RangeError('an entry leads out of the file');
  const name = nameOf(zip.subarray(nameAt, extraAt), (flags & 0x800) !== 0);
  // Only Unix keeps a file's mode in the upper half of its attributes; 0o120000 is a symbolic link.
  const isUnix = view.getUint8(at + 5) === 3 || view.getUint8(at + 5) === 19;
  const mode = isUnix ? view.getUint16(at + 40, true) : 0;
  const modifiedAt = instantOf(view.getUint16(at + 14, true), view.getUint16(at + 12, true));
  const [byteCount, packedBytes, local] = sizesOf(view, at, extraAt, extraAt + extraLength);
  const entry = {
    name,
    packing: view.getUint16(at + 10, true),
    isEncrypted: (flags & 0x41) !== 0,
    isLink: (mode & 0o170000) === 0o120000,
    isFolder: name.endsWith('/'),
    ...(modifiedAt !== undefined && { modifiedAt }),
    crc: view.getUint32(at + 16, true),
    packedBytes,
    byteCount,
    at: local,
  };
  return { entry, next };
}

/** Unpacked size, packed size and place; what does not fit 32 bits stands in an extra field, in this order. */
function sizesOf(view: DataView, at: number, extraAt: number, extraEnd: number): readonly [number, number, number] {
  const short = [24, 20, 42].map((offset) => view.getUint32(at + offset, true)) as [number, number, number];
  if (!short.includes(0xffffffff)) return short;
  for (let field = extraAt; field + 4 <= extraEnd; field += 4 + view.getUint16(field + 2, true)) {
    if (view.getUint16(field, true) !== 1) continue;
    let from = field + 4;
    return short.map((value) => {
      if (value !== 0xffffffff) return value;
      from += 8;
      return long(view, from - 8);
    }) as [number, number, number];
  }
  return short;
}

function long(view: DataView, at: number): number {
  const value = view.getBigUint64(at, true);
  if (value > BigInt(Number.MAX_SAFE_INTEGER)) throw new RangeError('a number beyond any file');
  return Number(value);
}

/** A zip's times are local, to two seconds; zero means none. */
function instantOf(date: number, time: number): Instant | undefined {
  if (date === 0) return undefined;
  return new Date(1980 + (date >> 9), ((date >> 5) & 15) - 1, date & 31, time >> 11, (time >> 5) & 63, (time & 31) * 2).getTime();
}

/** Names are UTF-8 where they say so or can be read so; else as the first PCs wrote them. */
function nameOf(bytes: Uint8Array, saysUtf8: boolean): string {
  const { value } = decodeNote(bytes);
  if (saysUtf8 || value.encoding === 'utf-8') return value.text;
  return Array.from(bytes, (byte) => (byte < 128 ? String.fromCharCode(byte) : (CODE_PAGE_437[byte - 128] ?? ''))).join('');
}

/** The upper half of code page 437. @source PKWARE APPNOTE 6.3.10, appendix D; the table as Unicode maps it (CP437.TXT). */
const CODE_PAGE_437 = [
  ...'ÇüéâäàåçêëèïîìÄÅÉæÆôöòûùÿÖÜ¢£¥₧ƒáíóúñÑªº¿⌐¬½¼¡«»░▒▓│┤╡╢╖╕╣║╗╝╜╛┐└┴┬├─┼╞╟╚╔╩╦╠═╬╧╨╤╥╙╘╒╓╫╪┘┌█▄▌▐▀αßΓπΣσµτΦΘΩδ∞φε∩≡±≥≤⌠⌡÷≈°∙·√ⁿ²■\u00a0',
];
