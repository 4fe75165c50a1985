import type { Conversion } from './conversion.ts';
import { twelveDigits } from './conversion.ts';

/**
 * Specific gravity from degrees Twaddell.
 *
 * @source SG = 1 + °Tw / 200, definition of the scale.
 */
export const gravityFromTwaddell = (degrees: number): Conversion => ({
  value: twelveDigits(1 + degrees / 200),
  unit: 'SG',
  sum: `1 + ${degrees} ÷ 200`,
  source: 'definition of the Twaddell scale',
});

/** Degrees Twaddell from specific gravity. */
export const twaddellFromGravity = (gravity: number): Conversion => ({
  value: twelveDigits(200 * (gravity - 1)),
  unit: '°Tw',
  sum: `200 × (${gravity} − 1)`,
  source: 'definition of the Twaddell scale',
});

/** A Baumé scale for liquids heavier than water. The modulus is kept with every reading, because books differ. */
export interface BaumeModulus {
  readonly modulus: number;
  readonly source: string;
}

/** Moduli met with in print. A reading without one is no density. */
export const BAUME_MODULI = {
  us: { modulus: 145, source: 'US scale at 60 °F' },
  assay: { modulus: 144.3, source: 'an older assaying text' },
  rational: { modulus: 144.32, source: 'a European scale, from memory' },
  dutch: { modulus: 146.78, source: 'a European scale, from memory' },
} as const satisfies Record<string, BaumeModulus>;

/**
 * Specific gravity of a liquid heavier than water from degrees Baumé.
 *
 * @returns undefined where the degrees reach the modulus: no liquid is so dense.
 * @source SG = m / (m − °Bé).
 */
export function gravityFromBaume(degrees: number, { modulus, source }: BaumeModulus = BAUME_MODULI.us): Conversion | undefined {
  if (degrees >= modulus) return undefined;
  return {
    value: twelveDigits(modulus / (modulus - degrees)),
    unit: 'SG',
    sum: `${modulus} ÷ (${modulus} − ${degrees})`,
    source,
    caution: `With the modulus ${modulus}; another book’s scale gives another density.`,
  };
}

/** Degrees Baumé from the specific gravity of a liquid heavier than water; undefined for none. */
export function baumeFromGravity(gravity: number, { modulus, source }: BaumeModulus = BAUME_MODULI.us): Conversion | undefined {
  if (gravity <= 0) return undefined;
  return { value: twelveDigits(modulus - modulus / gravity), unit: '°Bé', sum: `${modulus} − ${modulus} ÷ ${gravity}`, source };
}

/** Moduli for liquids lighter than water: SG = numerator / (offset + °Bé). */
export const BAUME_LIGHT = {
  us: { numerator: 140, offset: 130, source: 'US scale at 60 °F' },
  assay: { numerator: 146, offset: 136, source: 'an older assaying text' },
} as const;

/** Specific gravity of a liquid lighter than water from degrees Baumé (10 °Bé and more on the US scale). */
export function gravityFromLightBaume(degrees: number, scale: keyof typeof BAUME_LIGHT = 'us'): Conversion {
  const { numerator, offset, source } = BAUME_LIGHT[scale];
  return { value: twelveDigits(numerator / (offset + degrees)), unit: 'SG', sum: `${numerator} ÷ (${offset} + ${degrees})`, source };
}
