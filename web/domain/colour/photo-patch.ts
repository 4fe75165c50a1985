import type { Result } from '../result.ts';
import { failed, ok } from '../result.ts';
import { ciede2000 } from './ciede2000.ts';
import type { LinearRgb, RgbSpace } from './linear-rgb.ts';
import { decodeChannel, linearToLab2 } from './linear-rgb.ts';

/** A patch of a photo, averaged in linear light. */
export interface PhotoPatch {
  readonly space: RgbSpace;
  /** Mean of each channel, linear, 0–1. */
  readonly mean: LinearRgb;
  /** Opaque pixels it rests on. */
  readonly pixels: number;
  /** Mean ΔE00 (D65/2°, uncorrected) of single pixels from the mean: how uneven the patch is. */
  readonly spread: number;
}

/** Why a patch is refused. */
export type PatchProblem = 'patch-empty' | 'patch-clipped' | 'patch-dark';

/** A channel at or above this has lost what was brighter. */
const CLIPPED_FROM = 254;
/** More than this share of clipped pixels spoils the mean. Our choice: one in a hundred is a glint. */
const CLIPPED_SHARE = 0.01;
/** Mean luminance, linear, under which camera noise outweighs colour. Our choice: about L* 4. */
const DARKEST = 0.0045;
/** A half-transparent pixel shows what lies behind it. */
const OPAQUE = 255;
/** Pixels looked at for the spread: enough for a mean, quick on a phone. */
const SPREAD_PIXELS = 2000;

/**
 * Averages a patch of a photo: each pixel is taken to linear light first.
 *
 * @param rgba four bytes a pixel, red, green, blue, alpha, as a canvas gives them.
 * @param space of the canvas the bytes come from.
 * @error `patch-empty` without opaque pixels; `patch-clipped` when more than 1 % are blown out; `patch-dark` when it is nearly black.
 */
export function averagePatch(rgba: ArrayLike<number>, space: RgbSpace = 'srgb'): Result<PhotoPatch, PatchProblem> {
  const pixels: number[] = [];
  let [r, g, b, clipped] = [0, 0, 0, 0];
  for (let i = 0; i + 3 < rgba.length; i += 4) {
    if ((rgba[i + 3] ?? 0) < OPAQUE) continue;
    const [red, green, blue] = [rgba[i] ?? 0, rgba[i + 1] ?? 0, rgba[i + 2] ?? 0];
    pixels.push(i);
    if (Math.max(red, green, blue) >= CLIPPED_FROM) clipped += 1;
    r += decodeChannel(red / 255);
    g += decodeChannel(green / 255);
    b += decodeChannel(blue / 255);
  }
  const count = pixels.length;
  if (count === 0) return failed('patch-empty');
  if (clipped > CLIPPED_SHARE * count) return failed('patch-clipped');
  const mean: LinearRgb = [r / count, g / count, b / count];
  if (0.2126 * mean[0] + 0.7152 * mean[1] + 0.0722 * mean[2] < DARKEST) return failed('patch-dark');
  return ok({ space, mean, pixels: count, spread: spreadOf(rgba, pixels, mean, space) });
}

function spreadOf(rgba: ArrayLike<number>, pixels: readonly number[], mean: LinearRgb, space: RgbSpace): number {
  const middle = linearToLab2(mean, space);
  const stride = Math.ceil(pixels.length / SPREAD_PIXELS);
  let [sum, looked] = [0, 0];
  for (let k = 0; k < pixels.length; k += stride) {
    const at = pixels[k] ?? 0;
    const channel = (offset: number): number => decodeChannel((rgba[at + offset] ?? 0) / 255);
    const lab = linearToLab2([channel(0), channel(1), channel(2)], space);
    sum += ciede2000([lab[0], lab[1], lab[2]], [middle[0], middle[1], middle[2]]);
    looked += 1;
  }
  return sum / looked;
}
