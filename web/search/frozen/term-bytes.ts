import type { GrowingBytes } from './growing-bytes.ts';

/**
 * Terms as bytes, each UTF-16 unit by itself in one to three bytes: so bytes sort as strings do, and a beginning of a term is
 * a beginning of its bytes.
 */

/** The bytes of a term. */
export function termBytes(term: string): Uint8Array {
  const bytes = new Uint8Array(3 * term.length);
  let length = 0;
  for (let at = 0; at < term.length; at += 1) {
    const unit = term.charCodeAt(at);
    if (unit >= 0x800) bytes[length++] = 0xe0 | (unit >> 12);
    if (unit >= 0x80) bytes[length++] = unit < 0x800 ? 0xc0 | (unit >> 6) : 0x80 | ((unit >> 6) & 0x3f);
    bytes[length++] = unit < 0x80 ? unit : 0x80 | (unit & 0x3f);
  }
  return bytes.subarray(0, length);
}

/** The term of some bytes, up to an end and from a start. */
export function termOfBytes(bytes: Uint8Array, end: number, start = 0): string {
  let term = '';
  for (let at = start; at < end;) {
    const lead = bytes[at] ?? 0;
    const next = (bytes[at + 1] ?? 0) & 0x3f;
    if (lead < 0x80) {
      term += String.fromCharCode(lead);
      at += 1;
    } else if (lead < 0xe0) {
      term += String.fromCharCode(((lead & 0x1f) << 6) | next);
      at += 2;
    } else {
      term += String.fromCharCode(((lead & 0x0f) << 12) | (next << 6) | ((bytes[at + 2] ?? 0) & 0x3f));
      at += 3;
    }
  }
  return term;
}

/** What half a byte can say; this and more goes on in a number behind it. */
export const HALF_BYTE = 15;

/** Writes a term as how many bytes it shares with the one before it and how many follow, in half a byte each, and those. */
export function pushTerm(out: GrowingBytes, bytes: Uint8Array, before: Uint8Array): void {
  let shared = 0;
  while (shared < bytes.length && bytes[shared] === before[shared]) shared += 1;
  const added = bytes.length - shared;
  out.push((Math.min(shared, HALF_BYTE) << 4) | Math.min(added, HALF_BYTE));
  if (shared >= HALF_BYTE) out.pushNumber(shared - HALF_BYTE);
  if (added >= HALF_BYTE) out.pushNumber(added - HALF_BYTE);
  out.pushAll(bytes.subarray(shared));
}
