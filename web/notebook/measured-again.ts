import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { deltaE00 } from '../domain/colour/delta-e.ts';
import { type GreyScaleChange, greyScaleChange } from '../domain/colour/grey-scale.ts';
import type { Lab10 } from '../domain/colour/lab.ts';
import { swatchFromStated } from '../domain/colour/swatch-colour.ts';
import { isoDay, type IsoDay } from '../domain/light/iso-day.ts';

/** The last time a sample was measured again, against how it was at first. */
export interface MeasuredAgain {
  /** The light test or check that says so. */
  readonly note: string;
  readonly day: IsoDay;
  /** As written, such as "0.8 Mlx·h". */
  readonly dose: string;
  /** Change in colour against the first reading: grade 5 is none. */
  readonly change: GreyScaleChange;
  readonly deltaE00: number;
}

/**
 * The last reading of a sample among the notebook's light tests and checks.
 *
 * @param master the colour it had when it was dyed; the first reading where absent.
 * @returns undefined where nobody measured it twice.
 */
export function measuredAgain(base: EvidenceBase, code: string, master: Lab10 | undefined): MeasuredAgain | undefined {
  if (code === '') return undefined;
  const readings = base
    .ofKind('exposure')
    .filter(({ record }) => record.sample === code)
    .flatMap(({ id, record }) =>
      record.readings.flatMap(({ date, dose, colour }) => {
        const day = isoDay(date?.text ?? '');
        const swatch = colour && swatchFromStated(colour);
        return day && swatch?.ok ? [{ note: String(id), day, dose: dose ?? '', lab: swatch.value.lab10 }] : [];
      }),
    )
    .sort((a, b) => (a.day < b.day ? -1 : 1));
  const last = readings.at(-1);
  const first = master ?? (readings.length > 1 ? readings[0]?.lab : undefined);
  if (!last || !first) return undefined;
  const { note, day, dose, lab } = last;
  return { note, day, dose, change: greyScaleChange(first, lab), deltaE00: deltaE00(first, lab) };
}
