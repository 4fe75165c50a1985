import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { verdictWords } from '../../notebook/words/verdict-words.ts';
import { seeded } from '../shared/seeded.ts';
import { BOX, clothShape, pair, ringPath, type Point } from './cloth-shape.ts';
import { hemMarks, type HemMark } from './hem.ts';
import { linearOf, shade } from './shade.ts';
import { weaveKindOf, weaveOf } from './weave.ts';

/** What is known of the cloth to draw. */
export interface SwatchInput {
  readonly hex: string;
  /** CSS `color(display-p3 r g b)`, where it is to be drawn for a wide screen; '' otherwise. */
  readonly wide: string;
  readonly fibre: string;
  readonly verdict?: Verdict | undefined;
  readonly classes: number;
  readonly predicted: boolean;
  readonly outOfGamut: boolean;
  readonly seed: string;
  readonly label: string;
}

/** Shapes of one shade, repeated over the cloth. */
export interface ShadedTile {
  readonly size: number;
  readonly paths: readonly { readonly d: string; readonly fill: string }[];
}

/** What to draw, in units. */
export interface SwatchView {
  readonly name: string;
  /** Words under the cloth: that it is predicted, that the screen cannot show it. */
  readonly remarks: readonly string[];
  readonly outline: string;
  readonly fill: string;
  readonly tiles: readonly ShadedTile[];
  /** Stops of soft upright bands, across the cloth; none for a matt cloth. */
  readonly sheen: readonly { readonly at: number; readonly colour: string; readonly opacity: number }[];
  /** Degrees the weave lies off the upright. */
  readonly lean: number;
  readonly hem: readonly HemMark[];
  readonly tag: { readonly thread: string; readonly card: string; readonly hole: Point };
}

/** Grey of a cloth whose colour is not known. */
const UNDYED = '#b0b0b0';
/** No cloth reaches farther to the right, in units. */
const CLOTH_REACH = 104;
/** Shades closer than this are drawn as one: it keeps the drawing small and no eye sees it. */
const SHADE_STEP = 0.01;

/** The drawing of one swatch; the same input always gives the same drawing. */
export function swatchView(input: SwatchInput): SwatchView {
  const [fill = UNDYED] = [input.wide, input.hex].filter((colour) => linearOf(colour)).map((colour) => colour.trim());
  const random = seeded(input.seed || `${input.hex} ${input.fibre}`);
  const shape = clothShape(input.verdict, random);
  const weave = weaveOf(weaveKindOf(input.fibre), random);
  const remarks = [
    ...(input.predicted ? ['predicted'] : []),
    ...(input.outOfGamut ? [input.wide === '' ? 'screen shows it duller' : 'ordinary screens show it duller'] : []),
  ];
  const words = [input.label || fill, ...(input.verdict ? [verdictWords[input.verdict].word.toLowerCase()] : []), ...remarks];
  return {
    name: words.join(', '),
    remarks,
    outline: shape.pieces.map(ringPath).join(''),
    fill,
    tiles: weave.tiles.map(({ size, marks }) => ({ size, paths: byShade(fill, marks) })),
    sheen: sheenStops(fill, weave.sheen),
    lean: (random() - 0.5) * 3,
    hem: hemMarks(input.verdict, input.classes, { at: shape.at, random }),
    tag: parcelTag(shape.top(0.95), random),
  };
}

function byShade(hex: string, marks: readonly { readonly d: string; readonly k: number }[]): ShadedTile['paths'] {
  const groups = new Map<number, string>();
  for (const { d, k } of marks) {
    const step = Math.round(k / SHADE_STEP);
    if (step !== 0) groups.set(step, (groups.get(step) ?? '') + d);
  }
  return [...groups].map(([step, d]) => ({ d, fill: shade(hex, step * SHADE_STEP) }));
}

/** Two whole waves across the cloth, half of it lit and half in shadow by the same amount. */
function sheenStops(hex: string, strength: number): SwatchView['sheen'] {
  if (strength === 0) return [];
  const lit = shade(hex, strength);
  const dim = shade(hex, -strength);
  return Array.from({ length: 17 }, (_, i) => {
    const wave = Math.sin((i / 16) * Math.PI * 4);
    return { at: i / 16, colour: wave >= 0 ? lit : dim, opacity: Math.round(Math.abs(wave) * 100) / 100 };
  });
}

/**
 * Where a tile's corners go so that it covers the cloth, also when the whole lies up to two degrees off the upright.
 *
 * @param size side of the tile, in units.
 */
export function tilePlaces(size: number): readonly Point[] {
  const over = 8;
  const along = (length: number): readonly number[] =>
    Array.from({ length: Math.ceil((length + 2 * over) / size) }, (_, i) => i * size - over);
  return along(BOX.height).flatMap((y) => along(CLOTH_REACH).map((x): Point => [x, y]));
}

/** A parcel tag, its thread drawn through the cloth's upper corner. */
function parcelTag(tie: Point, random: () => number): SwatchView['tag'] {
  const turn = (6 + random() * 10) * (Math.PI / 180);
  const hole: Point = [tie[0] + 17, tie[1] + 19 + random() * 4];
  const card: readonly Point[] = [
    [-4, -5],
    [4, -5],
    [9, 1],
    [9, 32],
    [-9, 32],
    [-9, 1],
  ];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const placed = card.map(([x, y]): Point => [hole[0] + x * cos - y * sin, hole[1] + x * sin + y * cos]);
  const start: Point = [tie[0] - 3, tie[1] + 6];
  const thread = `M${pair(start)}C${pair([tie[0] + 4, tie[1] - 1])} ${pair([hole[0] - 2, hole[1] - 16])} ${pair(hole)}`;
  return { thread, card: ringPath(placed), hole };
}
