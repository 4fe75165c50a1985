import { type BoundQuery, boundQuery, farthestLightness, leastDifferenceOf } from './ciede2000-bound.ts';
import type { Lab } from './lab.ts';
import { lightnessToY } from './xyz-lab.ts';

/** Rounding on the way from a spectrum to a Lab must not shut a colour out. */
const ROUNDING = 1e-6;

/** What lies within a ΔE00 of any of some colours, as far as can be said before the difference is taken: never too narrow. */
export class Nearness {
  /** Y of whatever lies within, Y of the white = 100. */
  readonly leastY: number;
  readonly mostY: number;
  readonly #queries: readonly BoundQuery[];
  readonly #limit: number;

  constructor(targets: readonly Lab[], limit: number) {
    this.#queries = targets.map(([l, a, b]) => boundQuery(l, a, b));
    this.#limit = limit + ROUNDING;
    this.leastY = Math.min(...targets.map(([l]) => lightnessToY(farthestLightness(l, this.#limit, -1)))) - ROUNDING;
    this.mostY = Math.max(...targets.map(([l]) => lightnessToY(farthestLightness(l, this.#limit, 1)))) + ROUNDING;
  }

  /** False only for a colour that lies farther than the limit from all of them. */
  mayHold([l, a, b]: Lab): boolean {
    return this.#queries.some((query) => leastDifferenceOf(query, l, a, b) <= this.#limit);
  }
}
