import { converter } from 'culori';
import type { Lab2 } from './lab.ts';
import { asLab2 } from './lab.ts';

/** Colour spaces a browser's canvas can hold a photo in. */
export type RgbSpace = 'srgb' | 'display-p3';

/** Red, green and blue in linear light, 1 = white; may leave 0–1 after correction. */
export type LinearRgb = readonly [r: number, g: number, b: number];

const toLab65 = converter('lab65');

/**
 * Linear light of an encoded channel 0–1; sRGB and Display P3 share the curve.
 *
 * @source IEC 61966-2-1.
 */
export const decodeChannel = (v: number): number => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);

/** The inverse of `decodeChannel`, mirrored below 0. */
export function encodeChannel(v: number): number {
  const size = Math.abs(v);
  const encoded = size <= 0.0031308 ? 12.92 * size : 1.055 * size ** (1 / 2.4) - 0.055;
  return v < 0 ? -encoded : encoded;
}

/** D65, 2 degree Lab of linear light in a space. */
export function linearToLab2(rgb: LinearRgb, space: RgbSpace): Lab2 {
  const [r, g, b] = rgb;
  const {
    l,
    a,
    b: yellowBlue,
  } = space === 'srgb'
    ? toLab65({ mode: 'lrgb', r, g, b })
    : toLab65({ mode: 'p3', r: encodeChannel(r), g: encodeChannel(g), b: encodeChannel(b) });
  return asLab2([l, a, yellowBlue]);
}
