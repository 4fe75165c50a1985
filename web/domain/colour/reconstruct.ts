import type { Conditions } from './conditions.ts';
import type { Lab, Xyz } from './lab.ts';
import { solveLinear } from './solve-linear.ts';
import type { Spectrum } from './spectrum.ts';
import { WORKING_BANDS } from './spectrum.ts';
import type { BandWeights } from './spectrum-to-xyz.ts';
import { bandWeights } from './spectrum-to-xyz.ts';
import { labToXyz, xyzToLab } from './xyz-lab.ts';

/** A curve made from a colour: one of the many that look alike, namely the smoothest. */
export interface Reconstruction {
  readonly spectrum: Spectrum;
  /** False where no reflectance between 0 and 1 gives the colour: then the curve is that of the nearest duller one. */
  readonly exact: boolean;
}

const N = WORKING_BANDS.count;
const SIZE = N + 3;
const MAX_STEPS = 60;
/** XYZ is met to this part of the white's Y. */
const TOLERANCE = 1e-9;
/** Longest step of one band's z in one iteration: keeps the method from overshooting into the flat ends of tanh. */
const LONGEST_STEP = 2;
/** Luminance 0–1 that a curve strictly inside 0–1 can have. */
const DARKEST = 1e-5;
const LIGHTEST = 1 - 1e-5;
/** Newton's method can miss a dark, deep colour from afar: where one step misses it walks there from grey, in steps of at least this share of the chroma. */
const SHORTEST_WALK = 2 ** -14;

/**
 * The smoothest reflectance curve (36 bands, 380–730 nm) that gives a colour: the least squared slope of
 * z = artanh(2R − 1), which keeps R inside 0–1.
 *
 * @param xyz Y of the white = 100, under `conditions`.
 * @returns values strictly inside 0–1; `exact` false for colours no surface can have.
 * @source Burns, "Chromatic adaptation transform by spectral reconstruction", Color Res. Appl. 44 (2019), and his note on
 * least hyperbolic tangent slope squared (2020); from memory, written anew as Newton's method on the Lagrangian.
 */
export function reconstructFromXyz(xyz: Xyz, conditions: Conditions): Reconstruction {
  const weights = bandWeights(WORKING_BANDS.startNm, WORKING_BANDS.stepNm, N, conditions);
  const y = Math.min(LIGHTEST, Math.max(DARKEST, xyz[1] / 100));
  const grey: Curve = { z: new Float64Array(N).fill(Math.atanh(2 * y - 1)), multipliers: new Float64Array(3) };
  const [lightness] = xyzToLab([0, y * 100, 0], weights.white);
  const [, a, b] = xyzToLab(xyz, weights.white);
  let nearest = grey;
  let reached = 0;
  for (let step = 1; step >= SHORTEST_WALK && reached < 1;) {
    const share = Math.min(1, reached + step);
    const aim = share === 1 ? xyz : labToXyz([lightness, a * share, b * share], weights.white);
    const found = smoothest(aim, weights, nearest);
    if (found) {
      nearest = found;
      reached = share;
      step *= 2;
    } else step /= 2;
  }
  return { spectrum: spectrumOf(nearest), exact: reached === 1 };
}

/** The same from Lab; L* 0–100. */
export function reconstructFromLab(lab: Lab, conditions: Conditions): Reconstruction {
  const { white } = bandWeights(WORKING_BANDS.startNm, WORKING_BANDS.stepNm, N, conditions);
  return reconstructFromXyz(labToXyz(lab, white), conditions);
}

/** Where the method stands: z by band, and the weights it gives X, Y and Z. */
interface Curve {
  readonly z: Float64Array;
  readonly multipliers: Float64Array;
}

function smoothest(xyz: Xyz, weights: BandWeights, from: Curve): Curve | undefined {
  const luminance = xyz[1] / 100;
  if (!(luminance >= DARKEST && luminance <= LIGHTEST && xyz[0] > 0 && xyz[2] > 0)) return undefined;
  const t = [weights.x, weights.y, weights.z];
  const z = from.z.slice();
  const multipliers = from.multipliers.slice();
  const matrix = new Float64Array(SIZE * SIZE);
  const right = new Float64Array(SIZE);
  for (let step = 0; step < MAX_STEPS; step++) {
    matrix.fill(0);
    let miss = 0;
    for (let k = 0; k < 3; k++) right[N + k] = (xyz[k] ?? 0) / 100;
    for (let i = 0; i < N; i++) {
      const here = z[i] as number;
      const th = Math.tanh(here);
      const slope = (1 - th * th) / 2;
      let pull = 0;
      for (let k = 0; k < 3; k++) {
        const w = ((t[k] as Float64Array)[i] as number) / 100;
        pull += w * (multipliers[k] as number);
        right[N + k] = (right[N + k] as number) - w * ((1 + th) / 2);
        matrix[i * SIZE + N + k] = w * slope;
        matrix[(N + k) * SIZE + i] = w * slope;
      }
      const before = i > 0 ? here - (z[i - 1] as number) : 0;
      const after = i < N - 1 ? here - (z[i + 1] as number) : 0;
      right[i] = -(before + after + slope * pull);
      miss = Math.max(miss, Math.abs(right[i] as number));
      if (i > 0) matrix[i * SIZE + i - 1] = -1;
      if (i < N - 1) matrix[i * SIZE + i + 1] = -1;
      matrix[i * SIZE + i] = (i > 0 ? 1 : 0) + (i < N - 1 ? 1 : 0) - 2 * th * slope * pull;
    }
    for (let k = 0; k < 3; k++) miss = Math.max(miss, Math.abs(right[N + k] as number));
    if (miss < TOLERANCE) return { z, multipliers };
    if (!solveLinear(matrix, right)) return undefined;
    let longest = 0;
    for (let i = 0; i < N; i++) longest = Math.max(longest, Math.abs(right[i] as number));
    if (!Number.isFinite(longest)) return undefined;
    const damping = longest > LONGEST_STEP ? LONGEST_STEP / longest : 1;
    for (let i = 0; i < N; i++) z[i] = (z[i] as number) + damping * (right[i] as number);
    for (let k = 0; k < 3; k++) multipliers[k] = (multipliers[k] as number) + damping * (right[N + k] as number);
  }
  return undefined;
}

function spectrumOf({ z }: Curve): Spectrum {
  return { startNm: WORKING_BANDS.startNm, stepNm: WORKING_BANDS.stepNm, values: Array.from(z, toReflectance) };
}

/** (1 + tanh z) / 2 without losing the small end to rounding. */
const toReflectance = (z: number): number => 1 / (1 + Math.exp(-2 * z));
