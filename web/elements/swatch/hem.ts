import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { CUT, GAP, linePath, pair, ringPath, type Point } from './cloth-shape.ts';

/**
 * How a shape of the hem is inked. `band`: grey fill with a line; `fold`: the same, paler; `paper`: the ground's fill with a line; `ink`: full;
 * `line`: a strong line; `thin`: a fine one; `cord`: a thick strand; `core`: the light inside of one; `halo`: ground left around one.
 */
export type HemInk = 'band' | 'fold' | 'paper' | 'ink' | 'line' | 'thin' | 'cord' | 'core' | 'halo';

/** One shape of the hem. */
export interface HemMark {
  readonly d: string;
  readonly ink: HemInk;
}

/** Where a hem is drawn. */
export interface HemPlace {
  /** A point by its share of the width and its distance below the cloth's lower edge, in units. */
  readonly at: (u: number, v: number) => Point;
  readonly random: () => number;
  /** True where no cloth hangs above, as in the small mark: what the cloth's outline would show is then drawn as well. */
  readonly alone?: boolean;
}

/** How deep a hem is, in units. */
export const HEM_DEPTH = 17;
/** More knots than there are classes of evidence cannot be. */
const MOST_KNOTS = 5;

const steps = (count: number): readonly number[] => Array.from({ length: count + 1 }, (_, i) => i / count);

/** The grey edge that says a verdict; nothing for a cloth that has none. */
export function hemMarks(verdict: Verdict | undefined, classes: number, place: HemPlace): readonly HemMark[] {
  switch (verdict) {
    case undefined:
      return [];
    case 'attested':
      return [...fullHem(place), ...knots(classes, place)];
    case 'attested-as-cloth':
      return [...fullHem(place), ...seal(place)];
    case 'feasible':
      return turned(place);
    case 'plausible':
      return basted(place);
    case 'disputed':
      return twisted(place);
    case 'unsupported':
      return raw(place);
    case 'out-of-period':
      return pulled(place);
    case 'contradicted':
      return cut(place);
  }
}

const strip = ({ at }: HemPlace, from: number, to: number): readonly Point[] => [
  ...steps(12).map((u) => at(u, from)),
  ...steps(12).map((u) => at(1 - u, to)),
];

/** A band sewn down with close stitches. */
function fullHem(place: HemPlace): readonly HemMark[] {
  const { at } = place;
  const stitches = steps(15)
    .slice(0, -1)
    .map((u) => linePath([at(u + 0.018, 3.2), at(u + 0.048, 3.2)]));
  return [
    { d: ringPath(strip(place, 0, HEM_DEPTH)), ink: 'band' },
    { d: stitches.join(''), ink: 'line' },
  ];
}

/** Knots evenly along the band, one for each class of evidence, with their two short ends. */
function knots(classes: number, { at }: HemPlace): readonly HemMark[] {
  const count = Math.max(0, Math.min(MOST_KNOTS, Math.floor(classes)));
  return Array.from({ length: count }, (_, i): HemMark[] => {
    const u = 0.5 + (i - (count - 1) / 2) * 0.178;
    const centre = at(u, 10.6);
    const ends = [linePath([centre, at(u - 0.045, HEM_DEPTH + 5)]), linePath([centre, at(u + 0.05, HEM_DEPTH + 4)])];
    return [
      { d: circle(centre, 5), ink: 'ink' },
      { d: ends.join(''), ink: 'line' },
    ];
  }).flat();
}

/** A lead seal hanging from the band on a slip of cloth: not quite round, a rim, and a merchant's mark struck into it. */
function seal({ at }: HemPlace): readonly HemMark[] {
  const [x, y] = at(0.5, HEM_DEPTH + 10);
  const slip: Point[] = [at(0.45, 4.5), at(0.55, 4.5), at(0.54, HEM_DEPTH + 2), at(0.46, HEM_DEPTH + 2)];
  const disc = (r: number): string =>
    ringPath(
      steps(28)
        .slice(0, -1)
        .map((t): Point => {
          const turn = t * Math.PI * 2;
          const reach = r * (1 + 0.045 * Math.sin(3 * turn + 0.6) + 0.03 * Math.sin(5 * turn));
          return [x + reach * Math.cos(turn), y + reach * Math.sin(turn)];
        }),
    );
  const struck = `M${pair([x - 2, y + 6.5])}L${pair([x - 2, y - 6.5])}L${pair([x + 4, y - 3])}M${pair([x - 2, y - 0.5])}L${pair([x + 4, y + 3])}`;
  return [
    { d: ringPath(slip), ink: 'paper' },
    { d: disc(12.5), ink: 'ink' },
    { d: struck, ink: 'core' },
  ];
}

/** Turned up and left: an empty fold whose one end hangs open. */
function turned({ at }: HemPlace): readonly HemMark[] {
  const fold: Point[] = [
    ...steps(8).map((u) => at(u * 0.5, 0.6)),
    ...steps(8).map((t) => at(0.5 + t * 0.5, 0.6 + 11 * t ** 1.6)),
    ...steps(12).map((u) => at(1 - u, HEM_DEPTH - 2 + 8 * (1 - u) ** 3)),
  ];
  const crease = steps(12).map((u) => at(u, HEM_DEPTH - 6 + 9.5 * u ** 3));
  return [
    { d: ringPath(fold), ink: 'fold' },
    { d: linePath(crease), ink: 'thin' },
  ];
}

/** Long slanting stitches over a plain fold: the seam that holds for now. */
function basted(place: HemPlace): readonly HemMark[] {
  const { at } = place;
  const long = [0.03, 0.23, 0.43, 0.63, 0.83].map((u) => linePath([at(u, HEM_DEPTH - 0.5), at(u + 0.14, -5)]));
  return [
    { d: ringPath(strip(place, 0, HEM_DEPTH - 3.5)), ink: 'fold' },
    { d: long.join(''), ink: 'halo' },
    { d: long.join(''), ink: 'cord' },
  ];
}

/** Two cords twisted about each other, one dark and one pale, over and under in turn. */
function twisted({ at }: HemPlace): readonly HemMark[] {
  const turns = 2.5;
  const strand = (sign: 1 | -1, from: number, to: number): string =>
    linePath(
      steps(14).map((t) => {
        const u = from + (to - from) * t;
        return at(u, 8.5 + sign * 5.8 * Math.cos(u * Math.PI * 2 * turns));
      }),
    );
  const length = 1 / (turns * 2);
  // Between crossings, at odd quarters of a turn, the strand on top changes: the dark one first, then the pale one over it.
  const over = Array.from({ length: Math.round(turns * 2) }, (_, i) => i).filter((i) => i % 2 === 1);
  const middle = over.map((i) => [(i + 0.5) * length - length * 0.36, (i + 0.5) * length + length * 0.36] as const);
  return [
    { d: strand(-1, 0, 1), ink: 'cord' },
    { d: strand(-1, 0, 1), ink: 'core' },
    { d: strand(1, 0, 1), ink: 'halo' },
    { d: strand(1, 0, 1), ink: 'cord' },
    ...middle.flatMap(([from, to]): HemMark[] => [
      { d: strand(-1, from, to), ink: 'halo' },
      { d: strand(-1, from, to), ink: 'cord' },
      { d: strand(-1, from, to), ink: 'core' },
    ]),
  ];
}

/** No hem: warp ends hang loose. */
function raw({ at, random, alone }: HemPlace): readonly HemMark[] {
  const ends = steps(17).map((u) => {
    const place = 0.015 + u * 0.97;
    const lean = (random() - 0.5) * 0.05;
    const long = 7 + random() * 11;
    return `M${pair(at(place, alone ? 0 : -5))}Q${pair(at(place - lean, long * 0.5))} ${pair(at(place + lean, long))}`;
  });
  return [{ d: ends.join(''), ink: 'line' }];
}

/** One weft thread is gone; the warp stands bare in the gap, and the thread hangs out at the side. */
function pulled({ at }: HemPlace): readonly HemMark[] {
  const middle = (GAP.from + GAP.to) / 2;
  const warp = steps(13)
    .slice(0, -1)
    .map((u) => linePath([at(u + 0.038, GAP.from), at(u + 0.038, GAP.to)]));
  const loose = `M${pair(at(0.84, middle))}L${pair(at(1.0, middle))}C${pair(at(1.12, middle))} ${pair(at(1.1, middle + 16))} ${pair(at(1.03, 0))}S${pair(at(1.02, 20))} ${pair(at(1.12, 15))}`;
  return [
    { d: warp.join(''), ink: 'thin' },
    { d: loose, ink: 'line' },
  ];
}

/** The corner is gone; a heavy line shows the cut, a fine one where the cloth would have been. */
function cut({ at }: HemPlace): readonly HemMark[] {
  return [
    { d: dotted([at(CUT.u + 0.04, 0), at(1, 0)], 7) + dotted([at(1, -4), at(1, CUT.v + 8)], 7), ink: 'thin' },
    { d: linePath([at(CUT.u - 0.03, 2), at(1.03, CUT.v - 3)]), ink: 'cord' },
  ];
}

/** A straight line as short dashes. */
function dotted([from, to]: readonly [Point, Point], count: number): string {
  const part = (t: number): Point => [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
  return Array.from({ length: count }, (_, i) => linePath([part(i / count), part((i + 0.45) / count)])).join('');
}

const circle = ([x, y]: Point, r: number): string => `M${pair([x - r, y])}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
