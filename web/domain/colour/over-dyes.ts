import { TEXTILE } from './conditions.ts';
import { dyeTerm, fromKs, spectrumToKs } from './kubelka-munk.ts';
import { asLab10, type Lab10 } from './lab.ts';
import type { Nearness } from './nearness.ts';
import { type Spectrum, WORKING_BANDS } from './spectrum.ts';
import { bandWeights, whitePoint } from './spectrum-to-xyz.ts';
import { xyzToLab } from './xyz-lab.ts';

const BANDS = WORKING_BANDS.count;
const WEIGHTS = bandWeights(WORKING_BANDS.startNm, WORKING_BANDS.stepNm, BANDS, TEXTILE);
const [X, Y, Z] = [Float64Array.from(WEIGHTS.x), Float64Array.from(WEIGHTS.y), Float64Array.from(WEIGHTS.z)];
const WHITE = whitePoint(TEXTILE.illuminant, TEXTILE.observer);

/** Where each wide band ends: before 490, 550 and 600 nm, and with the last band. Our choice, by measuring. */
const ENDS = [11, 17, 22, BANDS] as const;
const WIDE = ENDS.length;
/** X, then Y, then Z, each of every wide band. Interpolation makes a weight or two slightly negative: bounds leave those out. */
const PARTS = [X, Y, Z].flatMap((weights) =>
  ENDS.map((end, nth) => ({
    start: ENDS[nth - 1] ?? 0,
    weights: weights.subarray(ENDS[nth - 1] ?? 0, end).map((one) => Math.max(0, one)),
  })),
);
/** What the weights left out take away at most. */
const LEFT_OUT = [X, Y, Z].reduce((all, weights) => weights.reduce((sum, one) => sum + Math.max(0, -one), all), 0);
const sums = (values: readonly number[]): Float64Array =>
  Float64Array.from(PARTS, ({ start, weights }) => weights.reduce((sum, weight, nth) => sum + weight * (values[start + nth] ?? 0), 0));
/** What each wide band says about X, Y or Z, at a reflectance of 1; none of them says anything about Z from 600 nm on. */
const SHARES = sums(Array.from({ length: BANDS }, () => 1));
const means = (values: readonly number[]): Float64Array => sums(values).map((sum, part) => (sum === 0 ? 0 : sum / (SHARES[part] ?? 1)));

/**
 * Dyeings on one ground, any two of which can be laid over each other: what `overDye` foretells, for many pairs.
 *
 * A pair is given up as soon as its X, Y or Z is known to lie outside what is near, from a few wide bands instead of all. A second
 * dye only takes light away: a wide band adds at most what either dyeing alone adds there. And it adds at least what it would if its
 * bands all had their mean K/S, each counted as much as it says, because reflectance is convex in K/S (Jensen); the mean of a sum is
 * the sum of the means, which are worked out beforehand, so this takes one root.
 *
 * @source as `overDye`.
 */
export class OverDyes {
  /** K/S that each dyeing adds to the ground, dyeing by dyeing, and K/S of each on the ground. */
  readonly #terms: Float64Array;
  readonly #dyed: Float64Array;
  /** The mean of both in each of `PARTS`. */
  readonly #meanTerms: Float64Array;
  readonly #meanDyed: Float64Array;
  /** What each dyeing alone adds to X, Y and Z in each of `PARTS`. */
  readonly #alone: Float64Array;

  /** @param dyed each on `ground`. */
  constructor(ground: Spectrum, dyed: readonly Spectrum[]) {
    const under = spectrumToKs(ground);
    this.#terms = new Float64Array(BANDS * dyed.length);
    this.#dyed = new Float64Array(BANDS * dyed.length);
    this.#meanTerms = new Float64Array(PARTS.length * dyed.length);
    this.#meanDyed = new Float64Array(PARTS.length * dyed.length);
    this.#alone = new Float64Array(PARTS.length * dyed.length);
    dyed.forEach((spectrum, nth) => {
      const term = dyeTerm(spectrum, ground);
      const both = term.map((value, band) => (under[band] ?? 0) + value);
      this.#terms.set(term, BANDS * nth);
      this.#dyed.set(both, BANDS * nth);
      this.#meanTerms.set(means(term), PARTS.length * nth);
      this.#meanDyed.set(means(both), PARTS.length * nth);
      this.#alone.set(sums(both.map(fromKs)), PARTS.length * nth);
    });
  }

  /**
   * What `spectrumToLab10` gives of `overDye` of two of the dyeings, to the last digit.
   *
   * @param near absent where every colour is wanted.
   * @returns undefined only for a colour that is surely not near.
   */
  lab10(first: number, second: number, near?: Nearness): Lab10 | undefined {
    if (near && !this.#mayBeNear(first, second, near)) return undefined;
    let [x, y, z] = [0, 0, 0];
    for (let band = 0; band < BANDS; band += 1) {
      const r = fromKs((this.#dyed[BANDS * first + band] ?? 0) + (this.#terms[BANDS * second + band] ?? 0));
      x += r * (X[band] ?? 0);
      y += r * (Y[band] ?? 0);
      z += r * (Z[band] ?? 0);
    }
    const lab = xyzToLab([x, y, z], WHITE);
    return near && !near.mayHold(lab) ? undefined : asLab10(lab);
  }

  /** Y first: it tells most pairs apart. */
  #mayBeNear(first: number, second: number, { least, most }: Nearness): boolean {
    return (
      this.#least(first, second, 1) <= most[1] &&
      this.#most(first, second, 1) >= least[1] &&
      this.#most(first, second, 2) >= least[2] &&
      this.#least(first, second, 0) <= most[0] &&
      this.#most(first, second, 0) >= least[0] &&
      this.#least(first, second, 2) <= most[2]
    );
  }

  /** What X, Y or Z (0, 1, 2) is at least. */
  #least(first: number, second: number, axis: number): number {
    const [ofFirst, ofSecond] = [PARTS.length * first, PARTS.length * second];
    let sum = -LEFT_OUT;
    for (let part = WIDE * axis; part < WIDE * axis + WIDE; part += 1)
      sum += (SHARES[part] ?? 0) * nearlyFromKs((this.#meanDyed[ofFirst + part] ?? 0) + (this.#meanTerms[ofSecond + part] ?? 0));
    return sum;
  }

  /** What X, Y or Z is at most. */
  #most(first: number, second: number, axis: number): number {
    const [ofFirst, ofSecond] = [PARTS.length * first, PARTS.length * second];
    let sum = 0;
    for (let part = WIDE * axis; part < WIDE * axis + WIDE; part += 1)
      sum += Math.min(this.#alone[ofFirst + part] ?? 0, this.#alone[ofSecond + part] ?? 0);
    return sum;
  }
}

/** `fromKs` without its division: off by 1e-12 at most for K/S below 1000, for which `Nearness` leaves room. */
const nearlyFromKs = (ks: number): number => 1 + ks - Math.sqrt(ks * ks + 2 * ks);
