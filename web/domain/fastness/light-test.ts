import type { EvidenceBase } from '../claim/evidence-base.ts';
import { deltaE00 } from '../colour/delta-e.ts';
import { type GreyScaleChange, greyScaleChange } from '../colour/grey-scale.ts';
import { type SwatchColour, swatchFromStated } from '../colour/swatch-colour.ts';
import type { Note } from '../note/note.ts';

/** One reading of a light test. */
export interface LightReading {
  readonly date?: string;
  /** As written. */
  readonly dose?: string;
  /** Mlx·h, where the dose is one. */
  readonly megaluxHours?: number;
  readonly colour?: SwatchColour;
  /** Against the first reading that has a colour. */
  readonly change?: GreyScaleChange;
  readonly deltaE00?: number;
}

/** A blue wool reference that lay beside the sample, and how far it had gone. */
export interface BlueWoolReached {
  /** 1–8. */
  readonly blueWool: number;
  /** Grey-scale grade it had reached. */
  readonly grade: string;
}

/** What became of a sample in the light. */
export interface LightTest {
  readonly note: Note['id'];
  readonly title: string;
  readonly sample: string;
  readonly readings: readonly LightReading[];
  /** As written: which card, and what it showed. */
  readonly reference: string;
  readonly blueWools: readonly BlueWoolReached[];
}

/** The light tests of a sample, by its code; all of the notebook's where none is given. */
export function lightTests(base: EvidenceBase, code?: string): readonly LightTest[] {
  return base
    .ofKind('exposure')
    .filter(({ record }) => code === undefined || (record.sample !== undefined && record.sample === code))
    .map(({ id, title, record }) => {
      const first = record.readings.map(({ colour }) => colourOf(colour)).find((colour) => colour !== undefined);
      return {
        note: id,
        title,
        sample: record.sample ?? '',
        readings: record.readings.map(({ date, dose, colour }): LightReading => {
          const swatch = colourOf(colour);
          const megaluxHours = dose === undefined ? undefined : readMegaluxHours(dose);
          return {
            ...(date && { date: date.text }),
            ...(dose === undefined ? {} : { dose }),
            ...(megaluxHours === undefined ? {} : { megaluxHours }),
            ...(swatch && { colour: swatch }),
            ...(swatch && first && { change: greyScaleChange(first.lab10, swatch.lab10), deltaE00: deltaE00(first.lab10, swatch.lab10) }),
          };
        }),
        reference: record.reference ?? '',
        blueWools: blueWoolsIn(record.reference ?? ''),
      };
    });
}

const colourOf = (colour: Parameters<typeof swatchFromStated>[0] | undefined): SwatchColour | undefined => {
  const swatch = colour && swatchFromStated(colour);
  return swatch?.ok ? swatch.value : undefined;
};

/** To Mlx·h from each unit a dose is written in. */
const PER_UNIT: Readonly<Record<string, number>> = { '': 1e-6, k: 1e-3, m: 1 };

/**
 * A light dose in Mlx·h: `0.8 Mlx·h`, `150 klx h`, `800 000 lx·h`. Undefined for anything else: weeks in a window are no dose.
 */
export function readMegaluxHours(dose: string): number | undefined {
  const found = /^(\d+(?:[.,]\d+)?)([kM]?)(?:lx|lux)[·.*-]?h(?:ours?)?$/i.exec(dose.replace(/\s+/g, ''));
  if (!found) return undefined;
  const value = Number((found[1] ?? '').replace(',', '.'));
  return Number.isFinite(value) ? value * (PER_UNIT[(found[2] ?? '').toLowerCase()] ?? Number.NaN) : undefined;
}

const STRIP_OR_GRADE = /\b(?:BW|blue wool)\s?([1-8])\b|\bgr[ae]y.?scale\s+([1-5](?:[-–][1-5])?)|[;,.]/gi;

/** "BW2 reached grey-scale 4": what the strips beside the sample showed, each in a clause of its own. */
function blueWoolsIn(reference: string): readonly BlueWoolReached[] {
  const found: BlueWoolReached[] = [];
  let strip: string | undefined;
  for (const [, blueWool, grade] of reference.matchAll(STRIP_OR_GRADE)) {
    if (strip !== undefined && grade !== undefined) found.push({ blueWool: Number(strip), grade: grade.replace('–', '-') });
    strip = blueWool === undefined ? undefined : (strip ?? blueWool);
  }
  return found;
}
