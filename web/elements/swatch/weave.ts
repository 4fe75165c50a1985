import { pair, type Point } from './cloth-shape.ts';

/** How a cloth is woven, as far as the eye tells at arm's length. */
export type WeaveKind = 'twill' | 'slubbed' | 'lustrous' | 'plain' | 'smooth';

/** One shape of a tile in a lighter (k > 0) or darker (k < 0) shade of the cloth's colour. */
export interface WeaveMark {
  readonly d: string;
  readonly k: number;
  /** Square units; the tile's marks cancel out: the sum of k × area is 0. */
  readonly area: number;
}

/** A square that repeats over the cloth. */
export interface WeaveTile {
  readonly size: number;
  readonly marks: readonly WeaveMark[];
}

/** What to lay over the plain colour. */
export interface Weave {
  readonly tiles: readonly WeaveTile[];
  /** Strength of soft upright bands of light, 0 for none; they cancel out as well. */
  readonly sheen: number;
}

/** The weave a fibre is drawn with; one that is not known is drawn plain. */
export function weaveKindOf(fibre: string): WeaveKind {
  if (/wool|hair|fleece/.test(fibre)) return 'twill';
  if (/linen|flax|hemp|nettle|ramie/.test(fibre)) return 'slubbed';
  if (/silk/.test(fibre)) return 'lustrous';
  if (/skin|leather|parchment/.test(fibre)) return 'smooth';
  return 'plain';
}

/** The weave of one piece of cloth: the same random numbers give the same threads. */
export function weaveOf(kind: WeaveKind, random: () => number): Weave {
  switch (kind) {
    case 'twill':
      return { tiles: [twill(3, 0.065, 0.075, 0.05, random), hairs(48, 26, 0.13, random)], sheen: 0 };
    case 'slubbed':
      return { tiles: [plain(3.2, 10, 0.04, 0.12, 0.06, random), slubs(64, 7, 0.2, random)], sheen: 0 };
    case 'lustrous':
      return { tiles: [satin(1.5, 0.07, random)], sheen: 0.2 };
    case 'plain':
      return { tiles: [plain(2.4, 10, 0.03, 0.09, 0.02, random)], sheen: 0 };
    case 'smooth':
      return { tiles: [pores(32, 40, 0.1, random)], sheen: 0.05 };
  }
}

/** Numbers around nought that sum to nought: how much lighter or darker each thread of a tile is. */
function evenedOut(count: number, size: number, random: () => number): readonly number[] {
  const raw = Array.from({ length: count }, () => (random() * 2 - 1) * size);
  const mean = raw.reduce((sum, n) => sum + n, 0) / count;
  return raw.map((n) => n - mean);
}

/** A thread's visible stretch: a lens, its one half in the light and the other in shadow, the same shape mirrored. */
function float(from: Point, to: Point, bulge: number, k: number, relief: number): readonly WeaveMark[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  const [nx, ny] = [(dy / length) * bulge * 2, (-dx / length) * bulge * 2];
  const [mx, my] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const half = (side: 1 | -1): string => `M${pair(from)}Q${pair([mx + side * nx, my + side * ny])} ${pair(to)}Z`;
  // A quadratic curve over a chord of length l, its control point 2 b away, encloses 2 l b / 3.
  const area = (2 * length * bulge) / 3;
  // Light falls from the upper left: of an upright thread the left half is lit, of a level one the upper.
  const lit = Math.abs(dy) > Math.abs(dx) ? -1 : 1;
  return [
    { d: half(lit), k: k + relief, area },
    { d: half(lit === 1 ? -1 : 1), k: k - relief, area },
  ];
}

/** Marks that cross the tile's lower or right border come back at the opposite one. */
const wrapped = (size: number, draw: (dx: number, dy: number) => readonly WeaveMark[], over: readonly [boolean, boolean]): WeaveMark[] => {
  const whole = draw(0, 0);
  const again = [...(over[0] ? draw(-size, 0) : []), ...(over[1] ? draw(0, -size) : [])];
  return [...whole, ...again.map((mark) => ({ ...mark, area: 0 }))];
};

/** Two over, two under, moving on by one: diagonal ribs. */
function twill(pitch: number, contrast: number, relief: number, uneven: number, random: () => number): WeaveTile {
  const count = 12;
  const size = pitch * count;
  const warp = evenedOut(count, uneven, random);
  const weft = evenedOut(count, uneven, random);
  const marks: WeaveMark[] = [];
  for (let i = 0; i < count; i += 1) {
    for (let step = 0; step < count; step += 4) {
      const j = (step + ((4 - (i % 4)) % 4)) % count;
      const upright = (dx: number, dy: number) =>
        float(
          [(i + 0.5) * pitch + dx, (j - 0.1) * pitch + dy],
          [(i + 0.5) * pitch + dx, (j + 2.1) * pitch + dy],
          pitch * 0.36,
          contrast + (warp[i] ?? 0),
          relief,
        );
      marks.push(...wrapped(size, upright, [false, j + 2.1 > count]));
      const first = (step + ((6 - (i % 4)) % 4)) % count;
      const level = (dx: number, dy: number) =>
        float(
          [(first - 0.1) * pitch + dx, (i + 0.5) * pitch + dy],
          [(first + 2.1) * pitch + dx, (i + 0.5) * pitch + dy],
          pitch * 0.36,
          -contrast + (weft[i] ?? 0),
          relief,
        );
      marks.push(...wrapped(size, level, [first + 2.1 > count, false]));
    }
  }
  return { size, marks };
}

/** One over, one under. */
function plain(pitch: number, count: number, contrast: number, relief: number, uneven: number, random: () => number): WeaveTile {
  const warp = evenedOut(count, uneven, random);
  const weft = evenedOut(count, uneven, random);
  const marks: WeaveMark[] = [];
  for (let i = 0; i < count; i += 1) {
    for (let j = 0; j < count; j += 1) {
      const [x, y] = [(i + 0.5) * pitch, (j + 0.5) * pitch];
      const reach = pitch * 0.5;
      if ((i + j) % 2 === 0) marks.push(...float([x, y - reach], [x, y + reach], pitch * 0.38, contrast + (warp[i] ?? 0), relief));
      else marks.push(...float([x - reach, y], [x + reach, y], pitch * 0.38, -contrast + (weft[j] ?? 0), relief));
    }
  }
  return { size: pitch * count, marks };
}

/** Long level floats, fine and close, each row moved on: the ground of a glossy cloth. */
function satin(pitch: number, relief: number, random: () => number): WeaveTile {
  const rows = 16;
  const size = pitch * rows;
  const tone = evenedOut(rows, 0.03, random);
  const marks: WeaveMark[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let part = 0; part < 2; part += 1) {
      const x = (((row * 5) % 8) * pitch + (part * size) / 2) % size;
      const long = size / 2 - 0.4;
      const level = (dx: number, dy: number) =>
        float([x + dx, (row + 0.5) * pitch + dy], [x + long + dx, (row + 0.5) * pitch + dy], pitch * 0.42, tone[row] ?? 0, relief);
      marks.push(...wrapped(size, level, [x + long > size, false]));
    }
  }
  return { size, marks };
}

/** Thicker stretches of hand-spun thread, more of them lying level. */
function slubs(size: number, count: number, strength: number, random: () => number): WeaveTile {
  const marks = Array.from({ length: count }, (_, i) => {
    const long = 10 + random() * 20;
    const level = i % 3 !== 2;
    const along = 1 + random() * (size - long - 2);
    // Each has a lane of its own, so none covers another of its direction.
    const across = ((i + 0.2 + random() * 0.6) / count) * size;
    const bulge = 0.55 + random() * 0.6;
    return level
      ? float([along, across], [along + long, across], bulge, 0, strength)
      : float([across, along], [across, along + long], bulge, 0, strength);
  });
  return { size, marks: marks.flat() };
}

/** Loose hairs of a soft wool, one light for each dark. */
function hairs(size: number, count: number, strength: number, random: () => number): WeaveTile {
  const marks = Array.from({ length: count }, (_, i) => {
    const angle = random() * Math.PI;
    const long = 4 + (i >> 1) * 0.1;
    const [x, y] = [6 + random() * (size - 12), 6 + random() * (size - 12)];
    const to: Point = [x + Math.cos(angle) * long, y + Math.sin(angle) * long];
    // Two halves of one tone: a hair is a lens all light or all dark; it has its counterpart of the same length.
    return float([x, y], to, 0.28, i % 2 === 0 ? strength : -strength, 0);
  });
  return { size, marks: marks.flat() };
}

/** Pores of tawed skin. */
function pores(size: number, count: number, strength: number, random: () => number): WeaveTile {
  const marks = Array.from({ length: count }, () => {
    const [x, y] = [1 + random() * (size - 2), 1 + random() * (size - 2)];
    return float([x - 0.45, y], [x + 0.45, y], 0.35, 0, -strength);
  });
  return { size, marks: marks.flat() };
}
