import type { Verdict } from '../../domain/verdict/standing-words.ts';

/** A point of the drawing, in units: the cloth is about 96 wide. */
export type Point = readonly [x: number, y: number];

/** The drawing's whole area, cloth, tag and hem, in units. */
export const BOX = { width: 134, height: 186 } as const;
/** How wide the cloth is in that area: the knob that sizes a swatch speaks of this. */
export const CLOTH_WIDTH = 96;

/** A hand-cut piece of cloth. */
export interface ClothShape {
  /** The cloth's pieces as closed rings: one, or two where a thread is pulled right across. */
  readonly pieces: readonly (readonly Point[])[];
  /** A point by its share of the width and its distance below (or, negative, above) the lower edge. */
  readonly at: (u: number, v: number) => Point;
  /** A point by its share of the width on the upper edge. */
  readonly top: (u: number) => Point;
}

const LEFT = 3;
const RIGHT = 99;
const TOP = 9;
const BOTTOM = 146;
/** Where the thread was pulled, above the lower edge. */
export const GAP = { from: -25, to: -17 } as const;
/** The cut corner: where it leaves the lower edge, and how far up the side it comes out. */
export const CUT = { u: 0.48, v: -50 } as const;
const STEPS = 16;

const run = (from: number, to: number): readonly number[] => Array.from({ length: STEPS + 1 }, (_, i) => from + ((to - from) * i) / STEPS);

/**
 * The outline of one cloth: no side quite straight, no two alike, always the same for the same random numbers.
 *
 * @param verdict decides whether a corner is missing, a thread pulled, the lower edge frayed.
 * @param random next number, 0 ≤ n < 1.
 */
export function clothShape(verdict: Verdict | undefined, random: () => number): ClothShape {
  const wave = (size: number, length: number): ((t: number) => number) => {
    const phase = random() * Math.PI * 2;
    const height = size * (0.4 + random() * 0.6);
    return (t) => height * Math.sin((t / length) * Math.PI * 2 + phase);
  };
  const sides = [wave(1.1, 150), wave(0.5, 61), wave(1.1, 140), wave(0.5, 57)] as const;
  const hang = wave(0.5, 0.8);
  const lower = wave(0.7, 0.9);
  const tilt = (random() - 0.5) * 2.4;
  const sag = 1.6 + random() * 1.4;
  const flare = random() * 2 - 0.6;

  const x = (u: number, y: number): number => {
    const spread = (flare * (y - TOP)) / (BOTTOM - TOP);
    const left = LEFT + sides[0](y) + sides[1](y) - spread;
    const right = RIGHT + sides[2](y) + sides[3](y) + spread;
    return left + (right - left) * u;
  };
  const topY = (u: number): number => TOP + sag * Math.sin(Math.PI * u) + hang(u) * 0.5;
  const bottomY = (u: number): number => BOTTOM + tilt * (u - 0.5) + lower(u);
  const point = (u: number, y: number): Point => [x(u, y), y];
  const at = (u: number, v: number): Point => point(u, bottomY(u) + v);
  const top = (u: number): Point => point(u, topY(u));
  const right = (from: number, to: number): Point[] => run(from, to).map((y) => point(1, y));
  const left = (from: number, to: number): Point[] => run(from, to).map((y) => point(0, y));

  const upper = run(0, 1).map(top);
  const edge = (v: number, from: number, to: number): Point[] => run(from, to).map((u) => at(u, v));
  const body = (v: number): readonly Point[] => [
    ...upper,
    ...right(topY(1), bottomY(1) + v),
    ...edge(v, 1, 0),
    ...left(bottomY(0) + v, topY(0)),
  ];

  if (verdict === 'out-of-period') return { pieces: [body(GAP.from), [...edge(GAP.to, 0, 1), ...edge(0, 1, 0)]], at, top };
  if (verdict === 'contradicted') {
    const ring = [...upper, ...right(topY(1), bottomY(1) + CUT.v), ...edge(0, CUT.u, 0), ...left(bottomY(0), topY(0))];
    return { pieces: [ring], at, top };
  }
  if (verdict === 'unsupported') {
    const ragged = Array.from({ length: 33 }, (_, i) => at(1 - i / 32, (i % 2) * 3.4 - random() * 4.5));
    return { pieces: [[...upper, ...right(topY(1), bottomY(1) - 4), ...ragged, ...left(bottomY(0) - 4, topY(0))]], at, top };
  }
  return { pieces: [body(0)], at, top };
}

/** A ring of points as the `d` of a path. */
export const ringPath = (points: readonly Point[]): string => `M${points.map(pair).join('L')}Z`;

/** A line through points, not closed, as the `d` of a path. */
export const linePath = (points: readonly Point[]): string => `M${points.map(pair).join('L')}`;

/** A point as it stands in a path; hundredths of a unit are finer than any printer. */
export const pair = ([x, y]: Point): string => `${round(x)} ${round(y)}`;

const round = (n: number): number => Math.round(n * 100) / 100;
