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
const Y_IN_ORDER = Float64Array.from(inOrder(Y));
/** Where each band stands in that order. */
const PLACE = Uint8Array.from(ORDER, (_, band) => ORDER.indexOf(band));
/** Bands after which Y is looked at. Our choice, by measuring. */
const STAGES = [0, 5, 9, 14, BANDS] as const;

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
  readonly #reflectance = new Float64Array(BANDS);

  /** @param dyed each on `ground`. */
  constructor(ground: Spectrum, dyed: readonly Spectrum[]) {
    const under = inOrder(spectrumToKs(ground));
    this.#terms = new Float64Array(BANDS * dyed.length);
    this.#dyed = new Float64Array(BANDS * dyed.length);
    this.#rest = new Float64Array(STAGES.length * dyed.length);
    dyed.forEach((spectrum, nth) => {
      const term = inOrder(dyeTerm(spectrum, ground));
      const both = term.map((value, band) => (under[band] ?? 0) + value);
      this.#terms.set(term, BANDS * nth);
      this.#dyed.set(both, BANDS * nth);
      STAGES.forEach((end, stage) => (this.#rest[STAGES.length * nth + stage] = yFrom(end, both)));
    });
  }

  /**
   * What `spectrumToLab10` gives of `overDye` of two of the dyeings, to the last digit.
   *
   * @param near absent where every colour is wanted.
   * @returns undefined only for a colour that is surely not near.
   */
  lab10(first: number, second: number, near?: Nearness): Lab10 | undefined {
    if (!this.#fill(first, second, near?.leastY ?? -Infinity, near?.mostY ?? Infinity)) return undefined;
    let [x, y, z] = [0, 0, 0];
    for (let band = 0; band < BANDS; band += 1) {
      const r = this.#reflectance[PLACE[band] ?? 0] ?? 0;
      x += r * (X[band] ?? 0);
      y += r * (Y[band] ?? 0);
      z += r * (Z[band] ?? 0);
    }
    const lab = asLab10(xyzToLab([x, y, z], WHITE));
    return near && !near.mayHold(lab) ? undefined : lab;
  }

  /** Works out the reflectance; false as soon as Y is known to lie outside. */
  #fill(first: number, second: number, leastY: number, mostY: number): boolean {
    let [band, y] = [0, 0];
    for (let stage = 0; stage < STAGES.length; stage += 1) {
      const end = STAGES[stage] ?? BANDS;
      for (; band < end; band += 1) {
        const r = fromKs((this.#dyed[BANDS * first + band] ?? 0) + (this.#terms[BANDS * second + band] ?? 0));
        this.#reflectance[band] = r;
        y += r * (Y_IN_ORDER[band] ?? 0);
      }
      const [one, other] = [this.#rest[STAGES.length * first + stage] ?? 0, this.#rest[STAGES.length * second + stage] ?? 0];
      if (y > mostY || y + Math.min(one, other) < leastY) return false;
    }
    return true;
  }
}

const yFrom = (band: number, ks: readonly number[]): number =>
  ks.slice(band).reduce((sum, value, nth) => sum + (Y_IN_ORDER[band + nth] ?? 0) * fromKs(value), 0);
