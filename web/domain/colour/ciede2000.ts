import type { BareLab } from './lab.ts';

const RADIAN = Math.PI / 180;
const POW_25_7 = 25 ** 7;
/** Hues exactly 180 degrees apart must not flip to the other side on rounding. */
const HALF_TURN = 180 + 1e-9;

/** kL, kC, kH; all 1 unless the caller says so. Textiles are also judged with kL = 2. */
export interface Ciede2000Weights {
  readonly kL: number;
  readonly kC: number;
  readonly kH: number;
}
const UNIT: Ciede2000Weights = { kL: 1, kC: 1, kH: 1 };

/**
 * The CIEDE2000 formula on bare numbers. Call `deltaE00` instead where the values carry their conditions.
 *
 * @param one, other CIELAB under the same illuminant and observer.
 * @returns ΔE00, dimensionless, ≥ 0; 0 when equal; symmetric.
 * @source Sharma, Wu & Dalal 2005, doi:10.1002/col.20070.
 */
export const ciede2000 = (one: BareLab, other: BareLab, weights?: Ciede2000Weights): number =>
  ciede2000Of(one[0], one[1], one[2], other[0], other[1], other[2], weights);

/** `ciede2000` of numbers that lie in typed arrays, one after the other. */
export function ciede2000Of(l1: number, a1: number, b1: number, l2: number, a2: number, b2: number, weights = UNIT): number {
  const g = 0.5 * (1 - saturation((Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2));
  const ap1 = (1 + g) * a1;
  const ap2 = (1 + g) * a2;
  const c1 = Math.sqrt(ap1 * ap1 + b1 * b1);
  const c2 = Math.sqrt(ap2 * ap2 + b2 * b2);
  const h1 = hue(ap1, b1);
  const h2 = hue(ap2, b2);
  const grey = c1 * c2 === 0;

  let dh = 0;
  let meanH = h1 + h2;
  if (!grey) {
    dh = h2 - h1;
    if (dh > HALF_TURN) dh -= 360;
    else if (dh < -HALF_TURN) dh += 360;
    meanH = Math.abs(h1 - h2) <= HALF_TURN ? (h1 + h2) / 2 : h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
  }
  const dL = l2 - l1;
  const dC = c2 - c1;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((dh / 2) * RADIAN);
  const l = (l1 + l2) / 2;
  const c = (c1 + c2) / 2;
  const t =
    1 -
    0.17 * Math.cos((meanH - 30) * RADIAN) +
    0.24 * Math.cos(2 * meanH * RADIAN) +
    0.32 * Math.cos((3 * meanH + 6) * RADIAN) -
    0.2 * Math.cos((4 * meanH - 63) * RADIAN);
  const turn = 30 * Math.exp(-(((meanH - 275) / 25) ** 2));
  const rt = -2 * Math.sin(2 * turn * RADIAN) * saturation(c);
  const l50 = (l - 50) ** 2;
  const termL = dL / (weights.kL * (1 + (0.015 * l50) / Math.sqrt(20 + l50)));
  const termC = dC / (weights.kC * (1 + 0.045 * c));
  const termH = dH / (weights.kH * (1 + 0.015 * c * t));
  return Math.sqrt(Math.max(0, termL ** 2 + termC ** 2 + termH ** 2 + rt * termC * termH));
}

/** How near a chroma is to full effect, 0–1: the seventh-power term of both G and R_T. */
export function saturation(chroma: number): number {
  const cubed = chroma * chroma * chroma;
  const seventh = cubed * cubed * chroma;
  return Math.sqrt(seventh / (seventh + POW_25_7));
}

function hue(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const degrees = Math.atan2(b, a) / RADIAN;
  return degrees < 0 ? degrees + 360 : degrees;
}
