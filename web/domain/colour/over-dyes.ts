import { TEXTILE } from './conditions.ts';
import { dyeTerm, fromKs, spectrumToKs } from './kubelka-munk.ts';
import { asLab10, type Lab10 } from './lab.ts';
import type { Nearness } from './nearness.ts';
import { type Spectrum, WORKING_BANDS } from './spectrum.ts';
import { bandWeights, whitePoint } from './spectrum-to-xyz.ts';
import { xyzToLab } from './xyz-lab.ts';

const BANDS = WORKING_BANDS.count;
const { x: X, y: Y, z: Z } = bandWeights(WORKING_BANDS.startNm, WORKING_BANDS.stepNm, BANDS, TEXTILE);
const WHITE = whitePoint(TEXTILE.illuminant, TEXTILE.observer);
/** The bands that say most about Y first: after a few of them most pairs are known to be too light or too dark. */
const ORDER = Array.from({ length: BANDS }, (_, band) => band).sort((one, other) => (Y[other] ?? 0) - (Y[one] ?? 0));
const inOrder = (values: ArrayLike<number>): number[] => ORDER.map((band) => values[band] ?? 0);
const X_IN_ORDER = Float64Array.from(inOrder(X));
const Y_IN_ORDER = Float64Array.from(inOrder(Y));
const Z_IN_ORDER = Float64Array.from(inOrder(Z));
/** Where each band stands in that order. */
const PLACE = Uint8Array.from(ORDER, (_, band) => ORDER.indexOf(band));
/** Bands after which Y is looked at. Our choice, by measuring. */
const STAGES = [0, 5, 9, 14, BANDS] as const;
/** What the bands after each stage say about Y together. */
const Y_AFTER = Float64Array.from(STAGES, (end) => Y_IN_ORDER.subarray(end).reduce((sum, weight) => sum + weight, 0));

/**
 * Dyeings on one ground, any two of which can be laid over each other: what `overDye` foretells, for many pairs.
 *
 * @source as `overDye`.
 */
export class OverDyes {
  /** K/S that each dyeing adds to the ground, dyeing by dyeing, bands in `ORDER`. */
  readonly #terms: Float64Array;
  /** K/S of each dyeing on the ground, likewise. */
  readonly #dyed: Float64Array;
  /** What the bands after each stage add to Y at most: a second dye only takes light away. */
  readonly #rest: Float64Array;
  /** Mean K/S of the bands after each stage, each as much as it says about Y: of the terms, and of the dyeings. */
  readonly #meanTerms: Float64Array;
  readonly #meanDyed: Float64Array;
  readonly #reflectance = new Float64Array(BANDS);

  /** @param dyed each on `ground`. */
  constructor(ground: Spectrum, dyed: readonly Spectrum[]) {
    const under = inOrder(spectrumToKs(ground));
    this.#terms = new Float64Array(BANDS * dyed.length);
    this.#dyed = new Float64Array(BANDS * dyed.length);
    this.#rest = new Float64Array(STAGES.length * dyed.length);
    this.#meanTerms = new Float64Array(STAGES.length * dyed.length);
    this.#meanDyed = new Float64Array(STAGES.length * dyed.length);
    dyed.forEach((spectrum, nth) => {
      const term = inOrder(dyeTerm(spectrum, ground));
      const both = term.map((value, band) => (under[band] ?? 0) + value);
      this.#terms.set(term, BANDS * nth);
      this.#dyed.set(both, BANDS * nth);
      STAGES.forEach((end, stage) => {
        this.#rest[STAGES.length * nth + stage] = yFrom(end, both);
        this.#meanTerms[STAGES.length * nth + stage] = meanFrom(end, term);
        this.#meanDyed[STAGES.length * nth + stage] = meanFrom(end, both);
      });
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
    for (let band = 0; band < BANDS; band += 1)
      this.#reflectance[band] = fromKs((this.#dyed[BANDS * first + band] ?? 0) + (this.#terms[BANDS * second + band] ?? 0));
    let [x, y, z] = [0, 0, 0];
    for (let band = 0; band < BANDS; band += 1) {
      const r = this.#reflectance[PLACE[band] ?? 0] ?? 0;
      x += r * (X[band] ?? 0);
      y += r * (Y[band] ?? 0);
      z += r * (Z[band] ?? 0);
    }
    return asLab10(xyzToLab([x, y, z], WHITE));
  }

  /** False as soon as Y is known to lie outside, and for a colour that lies outside. */
  #mayBeNear(first: number, second: number, near: Nearness): boolean {
    const { leastY, mostY } = near;
    const [dyed, terms] = [this.#dyed, this.#terms];
    const [ofFirst, ofSecond] = [BANDS * first, BANDS * second];
    let [band, x, y, z] = [0, 0, 0, 0];
    for (let stage = 0; stage < STAGES.length; stage += 1) {
      const end = STAGES[stage] ?? BANDS;
      for (; band < end; band += 1) {
        const r = nearlyFromKs((dyed[ofFirst + band] ?? 0) + (terms[ofSecond + band] ?? 0));
        x += r * (X_IN_ORDER[band] ?? 0);
        y += r * (Y_IN_ORDER[band] ?? 0);
        z += r * (Z_IN_ORDER[band] ?? 0);
      }
      const [one, other] = [STAGES.length * first + stage, STAGES.length * second + stage];
      if (y + Math.min(this.#rest[one] ?? 0, this.#rest[other] ?? 0) < leastY) return false;
      if (y + (Y_AFTER[stage] ?? 0) * nearlyFromKs((this.#meanDyed[one] ?? 0) + (this.#meanTerms[other] ?? 0)) > mostY) return false;
    }
    return near.mayHold(xyzToLab([x, y, z], WHITE));
  }
}

const yFrom = (band: number, ks: readonly number[]): number =>
  ks.slice(band).reduce((sum, value, nth) => sum + (Y_IN_ORDER[band + nth] ?? 0) * fromKs(value), 0);

const meanFrom = (band: number, ks: readonly number[]): number => {
  const after = Y_IN_ORDER.subarray(band);
  const sum = after.reduce((all, weight) => all + weight, 0);
  return sum === 0 ? 0 : after.reduce((all, weight, nth) => all + weight * (ks[band + nth] ?? 0), 0) / sum;
};

/** `fromKs` without its division: off by 1e-12 at most, for K/S below 1000, which a bound leaves room for. */
const nearlyFromKs = (ks: number): number => 1 + ks - Math.sqrt(ks * ks + 2 * ks);
