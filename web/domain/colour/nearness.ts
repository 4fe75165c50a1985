import {
  BOX_NUMBERS,
  type BoundQuery,
  boundQuery,
  farthestLightness,
  leastDifference,
  leastDifferenceOf,
  writeBox,
} from './ciede2000-bound.ts';
import { TEXTILE } from './conditions.ts';
import type { Lab, Xyz } from './lab.ts';
import { whitePoint } from './spectrum-to-xyz.ts';
import { labToXyz } from './xyz-lab.ts';

const WHITE = whitePoint(TEXTILE.illuminant, TEXTILE.observer);
/** Rounding on the way from a spectrum to a Lab must not shut a colour out. */
const ROUNDING = 1e-6;
/** No cloth's a* or b* lies farther from 0: it sends back no more light than the white, so 500 and 200 times 1 − 16/116. */
const MOST_A = 432;
const MOST_B = 173;
/** A piece of the a*b* plane no wider than this, or than the limit, is not divided. Our choice: finer takes longer than it saves. */
const SMALL = 2;

/** Least and most a*, least and most b*. */
type Piece = readonly [a0: number, a1: number, b0: number, b1: number];

/** What lies within a ΔE00 of any of some colours, as far as can be said before the difference is taken: never too narrow. */
export class Nearness {
  readonly #queries: readonly BoundQuery[];
  readonly #limit: number;
  readonly #least: [number, number, number] = [Infinity, Infinity, Infinity];
  readonly #most: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  readonly #numbers = new Float64Array(BOX_NUMBERS);

  /** @param targets D65, 10 degrees. */
  constructor(targets: readonly Lab[], limit: number) {
    this.#queries = targets.map(([l, a, b]) => boundQuery(l, a, b));
    this.#limit = limit + ROUNDING;
    for (const query of this.#queries) this.#widen(query, [-MOST_A, MOST_A, -MOST_B, MOST_B]);
  }

  /** X, Y and Z of whatever lies within are no less, Y of the white = 100. */
  get least(): Xyz {
    return this.#least;
  }

  /** And no more. */
  get most(): Xyz {
    return this.#most;
  }

  /** False only for a colour that lies farther than the limit from all of them. */
  mayHold([l, a, b]: Lab): boolean {
    return this.#queries.some((query) => leastDifferenceOf(query, l, a, b) <= this.#limit);
  }

  /**
   * Makes room for whatever lies within and has an a* and b* of this piece. What the bound leaves of the limit for L* says how far up
   * and down it may lie; X grows with L* and a*, Z grows with L* and falls with b*, so corners have the least and the most. A piece
   * that would bring something new is halved until it is small: the smaller, the closer its bound.
   */
  #widen(query: BoundQuery, piece: Piece): void {
    const [a0, a1, b0, b1] = piece;
    writeBox(Float64Array.of(query.l, a0, b0, query.l, a1, b1), 0, 2, this.#numbers, 0);
    const apart = leastDifference(this.#numbers, 0, query);
    if (apart > this.#limit) return;
    const left = Math.sqrt(this.#limit ** 2 - apart ** 2);
    const least = labToXyz([farthestLightness(query.l, left, -1), a0, b1], WHITE);
    const most = labToXyz([farthestLightness(query.l, left, 1), a1, b0], WHITE);
    if ([0, 1, 2].every((axis) => at(least, axis) >= at(this.#least, axis) && at(most, axis) <= at(this.#most, axis))) return;
    if (Math.max(a1 - a0, b1 - b0) > Math.max(SMALL, this.#limit)) {
      for (const half of halves(piece)) this.#widen(query, half);
      return;
    }
    for (const axis of [0, 1, 2]) {
      this.#least[axis] = Math.min(at(this.#least, axis), at(least, axis));
      this.#most[axis] = Math.max(at(this.#most, axis), at(most, axis));
    }
  }
}

const at = (xyz: Xyz, axis: number): number => xyz[axis] ?? 0;

/** Across the longer side. */
const halves = ([a0, a1, b0, b1]: Piece): readonly [Piece, Piece] => {
  const [a, b] = [(a0 + a1) / 2, (b0 + b1) / 2];
  return a1 - a0 > b1 - b0
    ? [
        [a0, a, b0, b1],
        [a, a1, b0, b1],
      ]
    : [
        [a0, a1, b0, b],
        [a0, a1, b, b1],
      ];
};
