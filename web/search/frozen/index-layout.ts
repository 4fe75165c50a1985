import { SEARCH_VERSION } from '../search-options.ts';
import { packNumbers, packRising, unpackNumbers, unpackRising } from './packed-numbers.ts';

/** “TGFX”, read as a number of this machine: one that counts bytes the other way round finds no index. */
const MAGIC = 0x5846_4754;
/** Grows when the bytes change; what the words mean is in `SEARCH_VERSION`. */
export const LAYOUT_VERSION = 4;

/** Parts of a frozen index in the order they lie, those of larger numbers first. */
const PART_NAMES = [
  'averages',
  'postings',
  'blockBytes',
  'blockBits',
  'endStarts',
  'nameStarts',
  'versions',
  'lengths',
  'kinds',
  'endGaps',
  'terms',
  'names',
] as const;
type PartName = (typeof PART_NAMES)[number];

/** What a frozen index is made of. */
export interface IndexParts {
  readonly noteCount: number;
  readonly termCount: number;
  readonly averages: Float64Array;
  readonly blockBytes: Uint32Array;
  readonly blockBits: Uint32Array;
  readonly endStarts: Uint32Array;
  readonly nameStarts: Uint32Array;
  readonly versions: Uint32Array;
  readonly postings: Uint32Array;
  readonly lengths: Uint16Array;
  readonly kinds: Uint8Array;
  readonly endGaps: Uint8Array;
  readonly terms: Uint8Array;
  readonly names: Uint8Array;
}

/** Words of the head: magic, versions, bytes in all, a sum over them, notes, terms, and of each part where it begins and how long it is. */
const HEAD = { magic: 0, layout: 1, words: 2, byteCount: 3, sum: 4, noteCount: 5, termCount: 6, parts: 7 } as const;
const HEAD_WORDS = HEAD.parts + 2 * PART_NAMES.length;

const roundUp = (bytes: number): number => 8 * Math.ceil(bytes / 8);

/** The parts as they are stored: lists of small numbers, and of numbers that rise by small steps, in fewer bytes. */
const stored = (parts: IndexParts): Readonly<Record<PartName, Float64Array | Uint32Array | Uint8Array>> => ({
  ...parts,
  blockBytes: packRising(parts.blockBytes),
  blockBits: packRising(parts.blockBits),
  endStarts: packRising(parts.endStarts),
  nameStarts: packRising(parts.nameStarts),
  versions: packNumbers(parts.versions),
  lengths: packNumbers(parts.lengths),
});

/** Lays the parts out in one run of bytes. */
export function packIndex(index: IndexParts): ArrayBuffer {
  const parts = stored(index);
  const byteCount = PART_NAMES.reduce((sum, name) => sum + roundUp(parts[name].byteLength), roundUp(4 * HEAD_WORDS));
  const buffer = new ArrayBuffer(byteCount);
  const head = new Uint32Array(buffer, 0, HEAD_WORDS);
  let at = roundUp(4 * HEAD_WORDS);
  for (const [nth, name] of PART_NAMES.entries()) {
    const part = parts[name];
    new Uint8Array(buffer, at, part.byteLength).set(new Uint8Array(part.buffer, part.byteOffset, part.byteLength));
    head[HEAD.parts + 2 * nth] = at;
    head[HEAD.parts + 2 * nth + 1] = part.length;
    at += roundUp(part.byteLength);
  }
  head[HEAD.magic] = MAGIC;
  head[HEAD.layout] = LAYOUT_VERSION;
  head[HEAD.words] = SEARCH_VERSION;
  head[HEAD.byteCount] = byteCount;
  head[HEAD.noteCount] = index.noteCount;
  head[HEAD.termCount] = index.termCount;
  head[HEAD.sum] = sumOf(buffer);
  return buffer;
}

/** The parts, the large ones where they lie; undefined where the bytes are no index of this version, or not whole. */
export function partsOf(buffer: ArrayBuffer): IndexParts | undefined {
  if (buffer.byteLength < 4 * HEAD_WORDS || buffer.byteLength % 8 !== 0) return undefined;
  const head = new Uint32Array(buffer, 0, HEAD_WORDS);
  const sound =
    head[HEAD.magic] === MAGIC &&
    head[HEAD.layout] === LAYOUT_VERSION &&
    head[HEAD.words] === SEARCH_VERSION &&
    head[HEAD.byteCount] === buffer.byteLength &&
    head[HEAD.sum] === sumOf(buffer);
  if (!sound) return undefined;
  const place = (name: PartName): [ArrayBuffer, number, number] => {
    const at = HEAD.parts + 2 * PART_NAMES.indexOf(name);
    return [buffer, head[at] ?? 0, head[at + 1] ?? 0];
  };
  return {
    noteCount: head[HEAD.noteCount] ?? 0,
    termCount: head[HEAD.termCount] ?? 0,
    averages: new Float64Array(...place('averages')),
    blockBytes: unpackRising(new Uint8Array(...place('blockBytes'))),
    blockBits: unpackRising(new Uint8Array(...place('blockBits'))),
    endStarts: unpackRising(new Uint8Array(...place('endStarts'))),
    nameStarts: unpackRising(new Uint8Array(...place('nameStarts'))),
    versions: unpackNumbers(new Uint8Array(...place('versions'))),
    postings: new Uint32Array(...place('postings')),
    lengths: Uint16Array.from(unpackNumbers(new Uint8Array(...place('lengths')))),
    kinds: new Uint8Array(...place('kinds')),
    endGaps: new Uint8Array(...place('endGaps')),
    terms: new Uint8Array(...place('terms')),
    names: new Uint8Array(...place('names')),
  };
}

/** A sum in which every word behind its own place counts, by where it stands. */
function sumOf(buffer: ArrayBuffer): number {
  const words = new Uint32Array(buffer);
  let sum = 0;
  for (let at = HEAD.sum + 1; at < words.length; at += 1) sum = (Math.imul(sum, 31) + (words[at] ?? 0)) | 0;
  return sum >>> 0;
}
