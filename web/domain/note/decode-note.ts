import type { Diagnostic, Reading } from '../diagnostic.ts';

/** A file's text, and whether it may be written back. */
export interface DecodedNote {
  /** Every character of the file, a leading byte order mark included. */
  readonly text: string;
  readonly encoding: 'utf-8' | 'latin-1';
  /** True where writing the text back as UTF-8 would change bytes nobody asked to change. */
  readonly readOnly: boolean;
}

/**
 * Turns a file's bytes into text: strict UTF-8, or else Latin-1 to look at only.
 *
 * @error `file-not-utf8` at the first character that is not UTF-8; `about` holds the byte's offset and its value in hex.
 * @source Unicode 15.0, table 3-7 (well-formed UTF-8 byte sequences).
 */
export function decodeNote(bytes: Uint8Array): Reading<DecodedNote> {
  const strict = decodeUtf8(bytes);
  if (strict.ok) return { value: { text: strict.text, encoding: 'utf-8', readOnly: false }, diagnostics: [] };
  const diagnostic: Diagnostic = {
    code: 'file-not-utf8',
    severity: 'error',
    range: [strict.at, strict.at + 1],
    about: [String(strict.at), (bytes[strict.at] ?? 0).toString(16).toUpperCase().padStart(2, '0')],
  };
  return { value: { text: decodeLatin1(bytes), encoding: 'latin-1', readOnly: true }, diagnostics: [diagnostic] };
}

/** Code units turned into a string at a time: below the number of arguments every engine takes. */
const CHUNK = 8192;

/** Handed over as it lies: spread out it would go through an iterator, unit by unit. */
const stringOf = (units: Uint8Array | Uint16Array): string => String.fromCharCode.apply(null, units as unknown as number[]);

function decodeLatin1(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += CHUNK) parts.push(stringOf(bytes.subarray(at, at + CHUNK)));
  return parts.join('');
}

function decodeUtf8(bytes: Uint8Array): { readonly ok: true; readonly text: string } | { readonly ok: false; readonly at: number } {
  const parts: string[] = [];
  const units = new Uint16Array(Math.min(CHUNK, bytes.length) + 1);
  let filled = 0;
  let at = 0;
  while (at < bytes.length) {
    const lead = bytes[at] ?? 0;
    if (lead < 0x80) {
      units[filled++] = lead;
      at += 1;
    } else {
      const size = sequenceSize(bytes, at, lead);
      if (size === 0) return { ok: false, at };
      let point = lead & (0xff >> (size + 1));
      for (let next = 1; next < size; next++) point = (point << 6) | ((bytes[at + next] ?? 0) & 0x3f);
      if (point > 0xffff) {
        units[filled++] = 0xd800 + ((point - 0x10000) >> 10);
        units[filled++] = 0xdc00 + ((point - 0x10000) & 0x3ff);
      } else units[filled++] = point;
      at += size;
    }
    if (filled >= CHUNK) {
      parts.push(stringOf(units.subarray(0, filled)));
      filled = 0;
    }
  }
  parts.push(stringOf(units.subarray(0, filled)));
  return { ok: true, text: parts.join('') };
}

/** Bytes of the character at `at`; 0 where it is not well formed. The second byte's bounds keep out overlong forms and surrogates. */
function sequenceSize(bytes: Uint8Array, at: number, lead: number): 0 | 2 | 3 | 4 {
  const tail = (offset: number, low = 0x80, high = 0xbf): boolean => {
    const byte = bytes[at + offset];
    return byte !== undefined && byte >= low && byte <= high;
  };
  if (lead >= 0xc2 && lead <= 0xdf) return tail(1) ? 2 : 0;
  if (lead >= 0xe0 && lead <= 0xef) return tail(1, lead === 0xe0 ? 0xa0 : 0x80, lead === 0xed ? 0x9f : 0xbf) && tail(2) ? 3 : 0;
  if (lead >= 0xf0 && lead <= 0xf4) return tail(1, lead === 0xf0 ? 0x90 : 0x80, lead === 0xf4 ? 0x8f : 0xbf) && tail(2) && tail(3) ? 4 : 0;
  return 0;
}
