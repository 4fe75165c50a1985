import { saturation } from './ciede2000.ts';

/** Numbers that one box takes: least and most of L*, a*, b*; greatest chroma; middle of its hues and how far they reach from it. */
export const BOX_NUMBERS = 9;

/** A colour that boxes are compared with, with what the bound needs of it worked out. */
export interface BoundQuery {
  readonly l: number;
  readonly a: number;
  readonly b: number;
  readonly chroma: number;
  /** Degrees. */
  readonly hue: number;
}

/** What the G term adds to a chroma at most: chroma × G(chroma) has its greatest value, 6.375, at 16.6. */
export const MOST_STRETCH = 6.4;
/** A hue moves by no more when a* is stretched by 1 to 1.5: arcsin(0.5 / 2.5). */
const HUE_SLACK = 11.6;
/** Rounding in the bound or in the difference must not make the bound the greater. */
const ROUNDING = 1 - 1e-9;

const degrees = (a: number, b: number): number => (Math.atan2(b, a) * 180) / Math.PI;

/** The least turn from one hue to another, −180 to 180. */
const turn = (from: number, to: number): number => {
  const plain = to - from;
  return plain > 180 ? plain - 360 : plain < -180 ? plain + 360 : plain;
};

/** A colour made ready for `leastDifference`. */
export const boundQuery = (l: number, a: number, b: number): BoundQuery => ({ l, a, b, chroma: Math.hypot(a, b), hue: degrees(a, b) });

/**
 * Writes down the box around colours that lie as L*, a*, b* one after the other.
 *
 * @param start, end the first colour, and the one after the last; at least one.
 * @param at where the box's numbers begin in `boxes`.
 */
export function writeBox(labs: Float64Array, start: number, end: number, boxes: Float64Array, at: number): void {
  for (let axis = 0; axis < 3; axis += 1) {
    let [least, most] = [Infinity, -Infinity];
    for (let nth = start; nth < end; nth += 1) {
      const value = labs[3 * nth + axis] ?? 0;
      if (value < least) least = value;
      if (value > most) most = value;
    }
    boxes[at + 2 * axis] = least;
    boxes[at + 2 * axis + 1] = most;
  }
  const [aLeast = 0, aMost = 0, bLeast = 0, bMost = 0] = boxes.subarray(at + 2, at + 6);
  boxes[at + 6] = Math.hypot(Math.max(-aLeast, aMost), Math.max(-bLeast, bMost));
  const middle = degrees(aLeast + aMost, bLeast + bMost);
  const corners = [degrees(aLeast, bLeast), degrees(aLeast, bMost), degrees(aMost, bLeast), degrees(aMost, bMost)];
  const holdsGrey = aLeast <= 0 && aMost >= 0 && bLeast <= 0 && bMost >= 0;
  boxes[at + 7] = middle;
  boxes[at + 8] = holdsGrey ? 180 : Math.max(...corners.map((corner) => Math.abs(turn(middle, corner))));
}

/** Half the greatest |R_T| by whole chroma (rounded up) and whole degrees from 275 (rounded down), as two factors. */
const TOP_CHROMA = 255;
const byChroma = Float64Array.from({ length: TOP_CHROMA + 1 }, (_, chroma) => (chroma === TOP_CHROMA ? 1 : saturation(chroma)));
const byHue = Float64Array.from({ length: 181 }, (_, away) => Math.sin((Math.PI / 3) * Math.exp(-((away / 25) ** 2))));

/**
 * Half the greatest |R_T| of two colours.
 *
 * @param chroma no less than their mean C'. @param away no more than the degrees between their mean hue and 275.
 */
const halfRotation = (chroma: number, away: number): number =>
  (byChroma[Math.min(TOP_CHROMA, Math.ceil(chroma))] ?? 1) * (byHue[Math.max(0, Math.floor(away))] ?? 1);

/** S_L of a mean L*. */
const weightOfLightness = (mean: number): number => {
  const squared = (mean - 50) * (mean - 50);
  return 1 + (0.015 * squared) / Math.sqrt(20 + squared);
};

/** The least distance of a value from a run of values. */
const outside = (value: number, least: number, most: number): number => (value < least ? least - value : value > most ? value - most : 0);

/**
 * A difference that no colour of a box falls below, so that a whole box can be passed over without a mistake.
 *
 * Both a' carry one factor 1 + G ≥ 1, and ΔC'² + ΔH'² = (1+G)²Δa² + Δb² ≥ Δa² + Δb²; S_H ≤ S_C, for T ≤ 1.93 < 3;
 * and |R_T·y·z| ≤ ½|R_T|(y² + z²). Hence ΔE00² ≥ (ΔL/S_L)² + (1 − ½|R_T|)(Δa² + Δb²)/S_C², S_L, S_C and |R_T| each as great as the
 * box allows. In the blues ½|R_T| reaches 0.87: there a plain distance in Lab would pass over colours that are near.
 *
 * @returns ΔE00 or less, ≥ 0.
 * @source derived from Sharma, Wu & Dalal 2005, doi:10.1002/col.20070, eqs 2–22.
 */
export function leastDifference(boxes: Float64Array, at: number, { l, a, b, chroma, hue }: BoundQuery): number {
  const [lLeast, lMost] = [boxes[at] ?? 0, boxes[at + 1] ?? 0];
  const dl = outside(l, lLeast, lMost) / Math.max(weightOfLightness((l + lLeast) / 2), weightOfLightness((l + lMost) / 2));
  const da = outside(a, boxes[at + 2] ?? 0, boxes[at + 3] ?? 0);
  const db = outside(b, boxes[at + 4] ?? 0, boxes[at + 5] ?? 0);
  const meanChroma = (chroma + (boxes[at + 6] ?? 0)) / 2 + MOST_STRETCH;
  const spread = boxes[at + 8] ?? 180;
  const between = turn(hue, boxes[at + 7] ?? 0);
  const mayBeOpposite = Math.abs(between) + spread + 2 * HUE_SLACK >= 180;
  const away = mayBeOpposite ? 0 : awayFrom275(hue + between / 2) - spread / 2 - HUE_SLACK;
  const sc = 1 + 0.045 * meanChroma;
  return Math.sqrt(dl * dl + ((1 - halfRotation(meanChroma, away)) * (da * da + db * db)) / (sc * sc)) * ROUNDING;
}

/** Degrees between a hue, −270 to 360, and 275, either way round. */
function awayFrom275(hue: number): number {
  const away = Math.abs(hue - 275) % 360;
  return away > 180 ? 360 - away : away;
}

/** The bound for a single colour without a trigonometric function, for where every colour is asked about. */
export function leastDifferenceOf(query: BoundQuery, l: number, a: number, b: number): number {
  const dl = (query.l - l) / weightOfLightness((query.l + l) / 2);
  const [da, db] = [query.a - a, query.b - b];
  const chroma = Math.sqrt(a * a + b * b);
  const meanChroma = (query.chroma + chroma) / 2 + MOST_STRETCH;
  const within60 = query.a * a + query.b * b > 0.5 * query.chroma * chroma;
  const rotation = halfRotation(meanChroma, within60 ? awayFrom275(query.hue) - 30 - HUE_SLACK : 0);
  const sc = 1 + 0.045 * meanChroma;
  return Math.sqrt(dl * dl + ((1 - rotation) * (da * da + db * db)) / (sc * sc)) * ROUNDING;
}

/** How far up or down L* a colour of any chroma may lie from another's L*: ΔL/S_L grows with ΔL, so the end is found by halving. */
export function farthestLightness(l: number, limit: number, way: 1 | -1): number {
  let [near, far] = [0, 1000];
  for (let turns = 0; turns < 60; turns += 1) {
    const middle = (near + far) / 2;
    if (middle / weightOfLightness(l + (way * middle) / 2) <= limit) near = middle;
    else far = middle;
  }
  return l + way * far;
}
