/** Where a file's bytes lie. */
export interface Place {
  readonly block: number;
  readonly offset: number;
  readonly length: number;
}

/**
 * Files are packed up to this size, because the browser reads few large records many times faster than many small ones:
 * some 10 MB a second in records of a note's size, some 50 in records of 256 kB (Chromium, measured).
 */
export const BLOCK_BYTES = 256 * 1024;

/** Blocks ready to be written, and for each file the place it will have. */
export interface PackedFiles {
  readonly blocks: readonly (readonly [key: number, bytes: Uint8Array])[];
  readonly places: readonly Place[];
}

/** Packs files into blocks numbered from `firstBlock`; a file as large as a block has one of its own. */
export function packFiles(files: readonly Uint8Array[], firstBlock: number): PackedFiles {
  const blocks: (readonly [number, Uint8Array])[] = [];
  const places: Place[] = [];
  let held: Uint8Array[] = [];
  let length = 0;
  const close = () => {
    if (held.length > 0) blocks.push([firstBlock + blocks.length, joined(held, length)]);
    held = [];
    length = 0;
  };
  for (const bytes of files) {
    if (length > 0 && length + bytes.length > BLOCK_BYTES) close();
    places.push({ block: firstBlock + blocks.length, offset: length, length: bytes.length });
    held.push(bytes);
    length += bytes.length;
  }
  close();
  return { blocks, places };
}

/** A file's own bytes, cut out of its block. */
export const cutFile = (block: Uint8Array, { offset, length }: Place): Uint8Array => block.slice(offset, offset + length);

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
