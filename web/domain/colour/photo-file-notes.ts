import type { RgbSpace } from './linear-rgb.ts';

/** What a photo's file says about its colours; what it does not say is absent. */
export interface PhotoFileNotes {
  /** The space of its profile, where one is named that a canvas can hold. */
  readonly space?: RgbSpace;
  /** What EXIF states: `srgb`, or that the space is not calibrated (another profile, or none). */
  readonly exifSpace?: 'srgb' | 'uncalibrated';
  /** How the camera set its white. */
  readonly whiteBalance?: 'auto' | 'manual';
}

const COLOUR_SPACE = 0xa001;
const WHITE_BALANCE = 0xa403;
const EXIF_IFD = 0x8769;

/**
 * Reads the colour notes in a JPEG's header: EXIF colour space and white balance, and the name of its ICC profile.
 *
 * @returns an empty note for other files and for a header that breaks off.
 * @source JPEG markers ISO/IEC 10918-1; EXIF 2.3 tags A001, A403; ICC.1 profiles in APP2: from memory.
 */
export function photoFileNotes(bytes: Uint8Array): PhotoFileNotes {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 4 || view.getUint16(0) !== 0xffd8) return {};
  let notes: PhotoFileNotes = {};
  for (let at = 2; at + 4 <= bytes.length && bytes[at] === 0xff;) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xda) break;
    const length = view.getUint16(at + 2);
    if (length < 2) break;
    const segment = bytes.subarray(at + 4, Math.min(bytes.length, at + 2 + length));
    if (marker === 0xe1 && startsWith(segment, 'Exif\0\0')) notes = { ...notes, ...exifNotes(segment.subarray(6)) };
    if (marker === 0xe2 && startsWith(segment, 'ICC_PROFILE\0')) notes = { ...notes, ...profileNotes(segment) };
    at += 2 + length;
  }
  return notes;
}

const startsWith = (bytes: Uint8Array, text: string): boolean =>
  bytes.length >= text.length && [...text].every((sign, i) => bytes[i] === sign.charCodeAt(0));

/** Profiles name themselves in plain letters (version 2) or two bytes to each (version 4): the zeros are skipped. */
function profileNotes(segment: Uint8Array): PhotoFileNotes {
  let text = '';
  for (const byte of segment) if (byte >= 0x20 && byte < 0x7f) text += String.fromCharCode(byte);
  if (/display p3/i.test(text)) return { space: 'display-p3' };
  return /srgb/i.test(text) ? { space: 'srgb' } : {};
}

function exifNotes(tiff: Uint8Array): PhotoFileNotes {
  if (tiff.length < 8) return {};
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  const little = view.getUint16(0) === 0x4949;
  const short = (at: number): number => (at + 2 <= tiff.length ? view.getUint16(at, little) : 0);
  const long = (at: number): number => (at + 4 <= tiff.length ? view.getUint32(at, little) : 0);
  const entries = (ifd: number): ReadonlyMap<number, number> => {
    const count = Math.min(short(ifd), 512);
    return new Map(Array.from({ length: count }, (_, i) => [short(ifd + 2 + i * 12), ifd + 2 + i * 12 + 8] as const));
  };
  const exifAt = entries(long(4)).get(EXIF_IFD);
  if (exifAt === undefined) return {};
  const exif = entries(long(exifAt));
  const spaceAt = exif.get(COLOUR_SPACE);
  const whiteAt = exif.get(WHITE_BALANCE);
  return {
    ...(spaceAt === undefined ? {} : { exifSpace: short(spaceAt) === 1 ? ('srgb' as const) : ('uncalibrated' as const) }),
    ...(whiteAt === undefined ? {} : { whiteBalance: short(whiteAt) === 1 ? ('manual' as const) : ('auto' as const) }),
  };
}
