import { ciede2000 } from '../colour/ciede2000.ts';
import { TEXTILE } from '../colour/conditions.ts';
import { deltaE00 } from '../colour/delta-e.ts';
import type { Lab, Lab10 } from '../colour/lab.ts';
import type { SwatchColour } from '../colour/swatch-colour.ts';

/** What colour was asked for. */
export type AskedColour =
  /** Lab without conditions: taken in each trial's own, and the answer says so. */
  | { readonly kind: 'bare-lab'; readonly lab: Lab }
  /** Colours with conditions; several when a colour-word covers several: the nearest counts. */
  | { readonly kind: 'swatches'; readonly swatches: readonly SwatchColour[] };

/** The colours that were asked for, as a predicted colour is compared with them. */
export const labsAsked = (asked: AskedColour): readonly Lab[] =>
  asked.kind === 'bare-lab' ? [asked.lab] : asked.swatches.map(({ lab10 }): Lab => [lab10[0], lab10[1], lab10[2]]);

/** How far a cloth is from what was asked, and the Lab that was compared. */
export interface Difference {
  /** ΔE00 ≥ 0. */
  readonly deltaE00: number;
  readonly lab: Lab;
}

/**
 * The difference of a cloth's colour from the asked one: in D65/10°, or, for a Lab without conditions, in the trial's own.
 * No difference is taken between a 2° and a 10° value.
 *
 * @returns undefined only when nothing was asked.
 */
export function differenceFrom(asked: AskedColour, cloth: SwatchColour): Difference | undefined {
  if (asked.kind === 'bare-lab') {
    const own = labInOwnConditions(cloth);
    return { deltaE00: ciede2000([...asked.lab], [...own]), lab: own };
  }
  const distances = asked.swatches.map(({ lab10 }) => deltaE00(lab10, cloth.lab10));
  return distances.length === 0 ? undefined : { deltaE00: Math.min(...distances), lab: cloth.lab10 };
}

/** The difference of a predicted colour from the asked one. A bare Lab is compared in D65/10°: a prediction has no trial's conditions. */
export function differenceOfLab10(asked: AskedColour, lab10: Lab10): Difference | undefined {
  if (asked.kind === 'bare-lab') return { deltaE00: ciede2000([...asked.lab], [lab10[0], lab10[1], lab10[2]]), lab: lab10 };
  const distances = asked.swatches.map((swatch) => deltaE00(swatch.lab10, lab10));
  return distances.length === 0 ? undefined : { deltaE00: Math.min(...distances), lab: lab10 };
}

/** The Lab a trial stated, or of the XYZ it stated, in its own conditions; for a curve the cloth's D65/10°, for a screen colour D65/2°. */
export function labInOwnConditions(cloth: SwatchColour): Lab {
  if (cloth.spectrumIs === 'measured' || cloth.spectrumIs === 'predicted') return cloth.lab10;
  if (cloth.stated.lab) return cloth.stated.lab;
  return cloth.stated.observer === TEXTILE.observer ? cloth.lab10 : cloth.lab2;
}
