import type { Conditions, Illuminant, Observer } from './conditions.ts';
import type { Xyz } from './lab.ts';
import type { Spectrum } from './spectrum.ts';
import { spragueAt } from './sprague.ts';
import { A, D50, D65, FL11, FL2, LED_B3 } from './tables/illuminants.ts';
import { CIE_1931_2, CIE_1964_10 } from './tables/observers.ts';

const TABLE_START = 380;
const TABLE_STEP = 5;
const POWERS: Readonly<Record<Illuminant, Float64Array>> = { D65, A, D50, 'LED-B3': LED_B3, FL2, FL11 };

/** What each band of a spectrum adds to X, Y and Z when its reflectance is 1; the three sums are the white. */
export interface BandWeights {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly white: Xyz;
}

const memo = new Map<string, BandWeights>();
const MEMO_LIMIT = 64;

/**
 * The weights that turn reflectances on the given bands into XYZ: Sprague to 5 nm, ends held, sums 380–780 nm.
 *
 * @returns Y of the white = 100 exactly, up to rounding.
 * @source CIE 15, tables under `tables/`. Interpolation is linear in the values, so the weights are the answers for unit curves.
 */
export function bandWeights(startNm: number, stepNm: number, count: number, { illuminant, observer }: Conditions): BandWeights {
  const key = `${startNm}/${stepNm}/${count}/${illuminant}/${observer}`;
  const known = memo.get(key);
  if (known) return known;
  const power = POWERS[illuminant];
  const matching = observer === 2 ? CIE_1931_2 : CIE_1964_10;
  let total = 0;
  power.forEach((s, i) => (total += s * (matching.y[i] ?? 0)));
  const k = 100 / total;
  const [x, y, z] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  const unit = new Array<number>(count).fill(0);
  for (let band = 0; band < count; band++) {
    unit[band] = 1;
    const curve = { startNm, stepNm, values: unit };
    let [sx, sy, sz] = [0, 0, 0];
    for (let i = 0; i < power.length; i++) {
      const w = (power[i] ?? 0) * spragueAt(curve, TABLE_START + TABLE_STEP * i);
      sx += w * (matching.x[i] ?? 0);
      sy += w * (matching.y[i] ?? 0);
      sz += w * (matching.z[i] ?? 0);
    }
    x[band] = k * sx;
    y[band] = k * sy;
    z[band] = k * sz;
    unit[band] = 0;
  }
  const weights = { x, y, z, white: [sum(x), sum(y), sum(z)] as const };
  if (memo.size >= MEMO_LIMIT) memo.clear();
  memo.set(key, weights);
  return weights;
}

const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);

/** White point by the same sums with reflectance 1: never typed in from elsewhere. Y = 100. */
export function whitePoint(illuminant: Illuminant, observer: Observer): Xyz {
  return bandWeights(TABLE_START, TABLE_STEP, D65.length, { illuminant, observer }).white;
}

/**
 * XYZ of a reflectance curve.
 *
 * @param spectrum values 0–1; any start and step.
 * @returns XYZ with Y = 100 for a perfect white.
 * @error none; a spectrum without values is black.
 */
export function spectrumToXyz(spectrum: Spectrum, illuminant: Illuminant, observer: Observer): Xyz {
  const { values, startNm, stepNm } = spectrum;
  const weights = bandWeights(startNm, stepNm, values.length, { illuminant, observer });
  let [x, y, z] = [0, 0, 0];
  for (let i = 0; i < values.length; i++) {
    const r = values[i] ?? 0;
    x += r * (weights.x[i] ?? 0);
    y += r * (weights.y[i] ?? 0);
    z += r * (weights.z[i] ?? 0);
  }
  return [x, y, z];
}
