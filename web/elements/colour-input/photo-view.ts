import { SCREEN } from '../../domain/colour/conditions.ts';
import type { Lab2 } from '../../domain/colour/lab.ts';
import type { RgbSpace } from '../../domain/colour/linear-rgb.ts';
import { parseColourText } from '../../domain/colour/parse-colour.ts';
import { averagePatch, type PhotoPatch } from '../../domain/colour/photo-patch.ts';
import { type PhotoReference, samplePhoto } from '../../domain/colour/photo-sample.ts';
import { labToScreen } from '../../domain/colour/screen.ts';
import { swatchFromLab } from '../../domain/colour/swatch-colour.ts';
import { carryColour, originInWords } from '../../notebook/typed-colour.ts';
import { patchProblemWords, photoProblemWords } from '../../notebook/words/photo-words.ts';

/** What a photo's colours are corrected by. */
export const CORRECTIONS = ['none', 'white', 'white-grey', 'chart'] as const;
export type Correction = (typeof CORRECTIONS)[number];

export const CORRECTION_WORDS: Readonly<Record<Correction, string>> = {
  none: 'nothing: believe the camera',
  white: 'a white card',
  'white-grey': 'a white and a grey card',
  chart: 'a chart of known patches',
};

/** Areas a reader can choose. */
export type AreaName = 'cloth' | 'white' | 'grey' | 'chart';
export const AREA_WORDS: Readonly<Record<AreaName, string>> = {
  cloth: 'the cloth',
  white: 'the white card',
  grey: 'the grey card',
  chart: 'the whole chart',
};

/** The areas a correction needs. */
export const areasOf = (correction: Correction): readonly AreaName[] =>
  correction === 'none'
    ? ['cloth']
    : correction === 'white'
      ? ['cloth', 'white']
      : correction === 'white-grey'
        ? ['cloth', 'white', 'grey']
        : ['cloth', 'chart'];

/** A rectangle of a photo, each number a share of its width or height, 0–1. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The area between two corners, held inside the photo. */
export function areaBetween(a: readonly [number, number], b: readonly [number, number]): Area {
  const hold = (v: number): number => Math.min(1, Math.max(0, v));
  const [x0, x1] = [hold(Math.min(a[0], b[0])), hold(Math.max(a[0], b[0]))];
  const [y0, y1] = [hold(Math.min(a[1], b[1])), hold(Math.max(a[1], b[1]))];
  return { x: x0, y: y0, width: x1 - x0, height: y1 - y0 };
}

/** Signs that three numbers at the end of a line can take (our choice). */
const LONGEST_LAB = 120;

const STEP = 0.01;
const SMALLEST = 0.01;

/** The area after a key: arrows move it, with Shift they make it larger or smaller. Undefined for other keys. */
export function areaAfterKey(area: Area, key: string, shift: boolean): Area | undefined {
  const [dx, dy] = { ArrowLeft: [-STEP, 0], ArrowRight: [STEP, 0], ArrowUp: [0, -STEP], ArrowDown: [0, STEP] }[key] ?? [];
  if (dx === undefined || dy === undefined) return undefined;
  const hold = (v: number, low: number, high: number): number => Math.min(high, Math.max(low, v));
  if (shift) return { ...area, width: hold(area.width + dx, SMALLEST, 1 - area.x), height: hold(area.height + dy, SMALLEST, 1 - area.y) };
  return { ...area, x: hold(area.x + dx, 0, 1 - area.width), y: hold(area.y + dy, 0, 1 - area.height) };
}

/** The middles of a chart's patches, row by row: half of each side, so that edges and gaps stay out. */
export function patchAreas(chart: Area, columns: number, rows: number): readonly Area[] {
  const [width, height] = [chart.width / columns, chart.height / rows];
  return Array.from({ length: columns * rows }, (_, i) => ({
    x: chart.x + ((i % columns) + 0.25) * width,
    y: chart.y + (Math.floor(i / columns) + 0.25) * height,
    width: width / 2,
    height: height / 2,
  }));
}

/**
 * The known colours of a chart, one a line, in reading order.
 *
 * @param text `L, a, b` lines, 2° observer; a name may stand before them.
 * @param light the maker states them for: D50 values go to D65 through a reconstructed spectrum.
 * @returns undefined when a line cannot be read.
 */
export function knownPatches(text: string, light: 'D65' | 'D50'): readonly Lab2[] | undefined {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const read = lines.map((line): Lab2 | undefined => {
    const numbers = /(-?[\d.]+)[\s,;]+(-?[\d.]+)[\s,;]+(-?[\d.]+)\s*$/.exec(line.slice(-LONGEST_LAB).replaceAll('−', '-'));
    const typed = numbers && parseColourText(`${numbers[1]},${numbers[2]},${numbers[3]}`);
    if (typed?.kind !== 'lab') return undefined;
    const swatch = swatchFromLab(typed.lab, { illuminant: light, observer: 2 }, 'lab');
    return swatch.ok ? swatch.value.lab2 : undefined;
  });
  return read.every((lab) => lab !== undefined) ? (read as readonly Lab2[]) : undefined;
}

/** Pixels of areas as a canvas gives them; those not chosen yet are absent. */
export interface PhotoPixels {
  readonly space: RgbSpace;
  readonly cloth?: ArrayLike<number>;
  readonly white?: ArrayLike<number>;
  readonly grey?: ArrayLike<number>;
  readonly chart?: readonly ArrayLike<number>[];
}

/** How the cards and the chart are known. */
export interface KnownReference {
  readonly correction: Correction;
  /** Per cent. */
  readonly whiteReflectance: number;
  readonly greyReflectance: number;
  readonly patches: readonly Lab2[];
}

/** The colour of the cloth in a photo, or what is in the way. */
export type PhotoReading =
  | { readonly is: 'waiting'; readonly says: string }
  | { readonly is: 'refused'; readonly says: string }
  | {
      readonly is: 'colour';
      readonly hex: string;
      readonly inScreenGamut: boolean;
      readonly lab: string;
      readonly says: readonly string[];
      readonly text: string;
      readonly by: 'photo' | 'photo-with-chart';
    };

/** Reads the cloth's colour from the chosen areas: averaged in linear light, corrected by what is known. */
export function readPhoto(pixels: PhotoPixels, known: KnownReference): PhotoReading {
  const refusals: string[] = [];
  const patch = (rgba: ArrayLike<number>, name: string): PhotoPatch | undefined => {
    const average = averagePatch(rgba, pixels.space);
    if (average.ok) return average.value;
    refusals.push(patchProblemWords(average.error, name));
    return undefined;
  };
  const missing = areasOf(known.correction).filter((area) => pixels[area] === undefined);
  const chosen = (area: 'cloth' | 'white' | 'grey') => {
    const rgba = pixels[area];
    return rgba && patch(rgba, AREA_WORDS[area]);
  };
  const cloth = chosen('cloth');
  const reference = referenceOf(pixels, known, chosen, patch);
  if (refusals.length > 0) return { is: 'refused', says: refusals.join(' ') };
  if (missing.length > 0 || !cloth)
    return { is: 'waiting', says: `Drag over ${missing.map((area) => AREA_WORDS[area]).join(', then over ')}.` };
  if (typeof reference === 'string') return { is: 'refused', says: reference };
  const sample = samplePhoto(cloth, reference);
  if (!sample.ok) return { is: 'refused', says: photoProblemWords(sample.error) };
  const { lab2, spread, chartError, origin } = sample.value;
  const { hex, inGamut } = labToScreen(lab2);
  return {
    is: 'colour',
    hex,
    inScreenGamut: inGamut,
    lab: `L* ${lab2[0].toFixed(1)}, a* ${lab2[1].toFixed(1)}, b* ${lab2[2].toFixed(1)} (D65, 2°)`,
    says: [
      `A colour ${originInWords(origin)}, from ${cloth.pixels} pixels.`,
      `Spread over the area: ΔE00 ${spread.toFixed(1)}.`,
      ...(chartError === undefined ? [] : [`The chart’s own patches come out ΔE00 ${chartError.toFixed(1)} from what is known of them.`]),
    ],
    text: carryColour({ lab: lab2, ...SCREEN, by: origin }),
    by: origin,
  };
}

function referenceOf(
  { chart }: PhotoPixels,
  { correction, whiteReflectance, greyReflectance, patches }: KnownReference,
  chosen: (area: 'white' | 'grey') => PhotoPatch | undefined,
  patch: (rgba: ArrayLike<number>, name: string) => PhotoPatch | undefined,
): PhotoReference | string {
  if (correction === 'none') return { kind: 'none' };
  if (correction === 'chart') {
    if (chart && chart.length !== patches.length)
      return `The grid has ${chart.length} patches, but ${patches.length} known colours are written. Write one line for each.`;
    const seen = (chart ?? []).map((rgba, i) => patch(rgba, `patch ${i + 1} of the chart`));
    return { kind: 'chart', patches: patches.flatMap((lab, i) => (seen[i] ? [{ seen: seen[i], known: lab }] : [])) };
  }
  const white = chosen('white');
  if (!white) return AREA_WORDS.white;
  if (correction === 'white') return { kind: 'white', white, whiteReflectance: whiteReflectance / 100 };
  const grey = chosen('grey');
  if (!grey) return AREA_WORDS.grey;
  return {
    kind: 'white-grey',
    white,
    whiteReflectance: whiteReflectance / 100,
    grey,
    greyReflectance: greyReflectance / 100,
  };
}
