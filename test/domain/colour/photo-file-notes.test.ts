import { describe, expect, test } from 'vitest';
import { photoFileNotes } from '../../../web/domain/colour/photo-file-notes.ts';

const letters = (text: string): number[] => [...text].map((sign) => sign.charCodeAt(0));
const segment = (marker: number, body: readonly number[]): number[] => [
  0xff,
  marker,
  (body.length + 2) >> 8,
  (body.length + 2) & 255,
  ...body,
];
/** A TIFF header, one directory that leads to the EXIF one, and there the two tags. Little-endian. */
function exif(space: number, white: number): number[] {
  const entry = (tag: number, type: number, value: number) => [tag & 255, tag >> 8, type, 0, 1, 0, 0, 0, value & 255, value >> 8, 0, 0];
  const first = [1, 0, ...entry(0x8769, 4, 26), 0, 0, 0, 0];
  const second = [2, 0, ...entry(0xa001, 3, space), ...entry(0xa403, 3, white), 0, 0, 0, 0];
  return [...letters('Exif\0\0'), ...letters('II'), 42, 0, 8, 0, 0, 0, ...first, ...second];
}
const jpeg = (...segments: readonly number[][]) => new Uint8Array([0xff, 0xd8, ...segments.flat(), 0xff, 0xda, 0, 2]);

describe('photoFileNotes', () => {
  test('reads colour space and white balance of EXIF', () => {
    expect(photoFileNotes(jpeg(segment(0xe1, exif(1, 0))))).toEqual({ exifSpace: 'srgb', whiteBalance: 'auto' });
    expect(photoFileNotes(jpeg(segment(0xe1, exif(0xffff, 1))))).toEqual({ exifSpace: 'uncalibrated', whiteBalance: 'manual' });
  });

  test('knows a Display P3 profile, named in plain letters or two bytes to each', () => {
    const plain = segment(0xe2, letters('ICC_PROFILE\0\x01\x01....desc Display P3'));
    const wide = segment(0xe2, [...letters('ICC_PROFILE\0\x01\x01'), ...letters('Display P3').flatMap((code) => [0, code])]);
    expect(photoFileNotes(jpeg(plain)).space).toBe('display-p3');
    expect(photoFileNotes(jpeg(segment(0xe1, exif(0xffff, 0)), wide))).toMatchObject({ space: 'display-p3', whiteBalance: 'auto' });
  });

  test('a file that breaks off, or is no JPEG, says nothing and does not fail', () => {
    const whole = jpeg(segment(0xe1, exif(1, 0)));
    for (let end = 0; end < whole.length; end++) expect(() => photoFileNotes(whole.subarray(0, end))).not.toThrow();
    expect(photoFileNotes(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 0]))).toEqual({});
  });
});
