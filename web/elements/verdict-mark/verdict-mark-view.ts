import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { verdictWords } from '../../notebook/words/verdict-words.ts';
import { seeded } from '../shared/seeded.ts';
import { CUT, GAP, ringPath, type Point } from '../swatch/cloth-shape.ts';
import { hemMarks, type HemMark } from '../swatch/hem.ts';

/** The mark's area in units: a strip of cloth with its hem, nothing above it. */
export const MARK_BOX = { width: 106, height: 66 } as const;

/** What to draw and say. */
export interface VerdictMarkView {
  readonly word: string;
  readonly means: string;
  /** The strip of undyed cloth above the hem, as closed rings. */
  readonly cloth: string;
  readonly hem: readonly HemMark[];
}

const LEFT = 3;
const WIDTH = 92;
const TOP = 2;
const EDGE = 34;

const at = (u: number, v: number): Point => [LEFT + u * WIDTH, EDGE + v];
const box = (from: number, to: number): string => ringPath([at(0, from), at(1, from), at(1, to), at(0, to)]);

/** The hem of a verdict by itself, on a strip of grey cloth, and its word. */
export function verdictMarkView(verdict: Verdict, classes: number): VerdictMarkView {
  const { word, means } = verdictWords[verdict];
  return { word, means, cloth: strip(verdict), hem: hemMarks(verdict, classes, { at: placeOf(verdict), random: seeded(verdict) }) };
}

/** A cut corner reaches as far up as the strip does; a pulled thread lies in its middle. */
const placeOf =
  (verdict: Verdict): ((u: number, v: number) => Point) =>
  (u, v) =>
    at(u, verdict === 'contradicted' ? v * ((EDGE - TOP) / -CUT.v) : v);

function strip(verdict: Verdict): string {
  const top = TOP - EDGE;
  if (verdict === 'out-of-period') return box(top, GAP.from) + box(GAP.to, 0);
  if (verdict === 'contradicted') return ringPath([at(0, top), at(1, top), at(CUT.u, 0), at(0, 0)]);
  return box(top, 0);
}
