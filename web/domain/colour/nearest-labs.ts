import { ciede2000Of } from './ciede2000.ts';
import { BOX_NUMBERS, type BoundQuery, boundQuery, leastDifference, writeBox } from './ciede2000-bound.ts';
import type { Lab } from './lab.ts';

/** A colour that was found. */
export interface NearLab {
  /** Its place in the list that was searched, from 0. */
  readonly at: number;
  readonly deltaE00: number;
}

/** So many colours are compared one by one. Our choice, by measuring: a box costs about as much as a difference. */
const LEAF = 32;

/** What is being looked for, and what was found so far, nearest first and equals by place. */
interface Search {
  readonly query: BoundQuery;
  readonly most: number;
  /** Nothing farther is wanted any more. */
  limit: number;
  readonly found: NearLab[];
}

/**
 * Many colours laid out so that the nearest to any colour are found by CIEDE2000 without looking at most of them, and yet
 * exactly: halved again and again along the longest side of their box, and a half is passed over only when `leastDifference`
 * shows that it holds nothing near enough.
 */
export class NearestLabs {
  /** Which colour of the list lies where. */
  readonly #order: Uint32Array;
  readonly #labs: Float64Array;
  readonly #boxes: Float64Array;
  readonly #depth: number;

  /** @param labs L*, a*, b* of one colour after the other, all under the same conditions. */
  constructor(labs: Float64Array) {
    const count = labs.length / 3;
    this.#order = Uint32Array.from({ length: count }, (_, at) => at);
    this.#labs = labs.slice();
    this.#depth = Math.max(0, Math.ceil(Math.log2(count / LEAF)));
    this.#boxes = new Float64Array(BOX_NUMBERS * (2 ** (this.#depth + 1) - 1));
    if (count > 0) this.#divide(0, 0, count, this.#depth);
  }

  /** The nearest colours, nearest first; equals in the order of the list. */
  nearest([l, a, b]: Lab, most: number): readonly NearLab[] {
    return most > 0 ? this.#search({ query: boundQuery(l, a, b), most, limit: Infinity, found: [] }) : [];
  }

  /** Every colour at most so far away, nearest first; equals in the order of the list. */
  within([l, a, b]: Lab, limit: number): readonly NearLab[] {
    return this.#search({ query: boundQuery(l, a, b), most: Infinity, limit, found: [] });
  }

  #search(search: Search): readonly NearLab[] {
    if (this.#order.length > 0) this.#visit(0, 0, this.#order.length, this.#depth, search);
    return search.found.sort(byDifference);
  }

  #divide(node: number, start: number, end: number, depth: number): void {
    writeBox(this.#labs, start, end, this.#boxes, BOX_NUMBERS * node);
    if (depth === 0) return;
    const middle = (start + end) >> 1;
    this.#halve(start, middle, end, this.#longest(BOX_NUMBERS * node));
    this.#divide(2 * node + 1, start, middle, depth - 1);
    this.#divide(2 * node + 2, middle, end, depth - 1);
  }

  #longest(box: number): number {
    const side = (axis: number): number => (this.#boxes[box + 2 * axis + 1] ?? 0) - (this.#boxes[box + 2 * axis] ?? 0);
    return [0, 1, 2].reduce((longest, axis) => (side(axis) > side(longest) ? axis : longest));
  }

  /** Moves what is least on an axis before the middle (Hoare's selection). */
  #halve(start: number, middle: number, end: number, axis: number): void {
    const value = (at: number): number => this.#labs[3 * at + axis] ?? 0;
    let [low, high] = [start, end - 1];
    while (low < high) {
      const pivot = value((low + high) >> 1);
      let [i, j] = [low, high];
      while (i <= j) {
        while (value(i) < pivot) i += 1;
        while (value(j) > pivot) j -= 1;
        if (i <= j) this.#swap(i++, j--);
      }
      if (middle <= j) high = j;
      else if (middle >= i) low = i;
      else return;
    }
  }

  #swap(one: number, other: number): void {
    const [order, labs] = [this.#order, this.#labs];
    const held = order[one] ?? 0;
    order[one] = order[other] ?? 0;
    order[other] = held;
    for (let axis = 0; axis < 3; axis += 1) {
      const value = labs[3 * one + axis] ?? 0;
      labs[3 * one + axis] = labs[3 * other + axis] ?? 0;
      labs[3 * other + axis] = value;
    }
  }

  #visit(node: number, start: number, end: number, depth: number, search: Search): void {
    if (depth === 0) {
      this.#compare(start, end, search);
      return;
    }
    const middle = (start + end) >> 1;
    const left = leastDifference(this.#boxes, BOX_NUMBERS * (2 * node + 1), search.query);
    const right = leastDifference(this.#boxes, BOX_NUMBERS * (2 * node + 2), search.query);
    const visitLeft = (): void => {
      if (left <= search.limit) this.#visit(2 * node + 1, start, middle, depth - 1, search);
    };
    if (left <= right) visitLeft();
    if (right <= search.limit) this.#visit(2 * node + 2, middle, end, depth - 1, search);
    if (left > right) visitLeft();
  }

  #compare(start: number, end: number, search: Search): void {
    const { l, a, b } = search.query;
    for (let nth = start; nth < end; nth += 1) {
      const deltaE00 = ciede2000Of(l, a, b, this.#labs[3 * nth] ?? 0, this.#labs[3 * nth + 1] ?? 0, this.#labs[3 * nth + 2] ?? 0);
      if (deltaE00 <= search.limit) take(search, { at: this.#order[nth] ?? 0, deltaE00 });
    }
  }
}

const byDifference = (one: NearLab, other: NearLab): number => one.deltaE00 - other.deltaE00 || one.at - other.at;

/** Where only so many are wanted they are kept in order, so that the last of them says how near is near enough. */
function take(search: Search, one: NearLab): void {
  const { found, most } = search;
  found.push(one);
  if (most === Infinity) return;
  for (let at = found.length - 1; at > 0; at -= 1) {
    const before = found[at - 1];
    if (!before || byDifference(before, one) <= 0) break;
    found[at] = before;
    found[at - 1] = one;
  }
  if (found.length > most) found.pop();
  if (found.length === most) search.limit = found.at(-1)?.deltaE00 ?? search.limit;
}
