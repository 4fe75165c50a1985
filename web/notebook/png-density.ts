import { crc32 } from './import/crc-32.ts';

const SIGNATURE = 8;
const MM_PER_INCH = 25.4;

/**
 * A PNG that says how many points lie on an inch, so that it is printed at its true size.
 *
 * @param png as a browser draws it, without a density of its own.
 * @source PNG (Third Edition), 11.3.4.3 pHYs: points per metre in both directions; it stands before the picture's data.
 */
export function withDensity(png: Uint8Array, dotsPerInch: number): Uint8Array<ArrayBuffer> {
  const perMetre = Math.round((dotsPerInch / MM_PER_INCH) * 1000);
  const chunk = new Uint8Array(21);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set([0x70, 0x48, 0x59, 0x73], 4);
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  chunk[16] = 1;
  view.setUint32(17, crc32(chunk.subarray(4, 17)));
  // IHDR comes first and is 25 bytes long with its length, name and checksum.
  const at = SIGNATURE + 25;
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, at));
  whole.set(chunk, at);
  whole.set(png.subarray(at), at + chunk.length);
  return whole;
}
