import type { Conversion, SourcedRange } from './conversion.ts';
import { twelveDigits } from './conversion.ts';

/** Milligrams of CaCO₃ to the millimole, from the atomic weights of calcium, carbon and oxygen. */
const CACO3 = 100.09;
/** Milligrams of CaO to the millimole. */
const CAO = 56.077;
const GRAIN_MG = 64.79891;

/** mg/L of CaCO₃ to one of each unit. */
const UNITS = {
  ppm: { factor: 1, source: 'mg/L of CaCO₃' },
  'mmol/L': { factor: CACO3, source: 'calcium and magnesium together; molar mass of CaCO₃ from the IUPAC atomic weights' },
  '°dH': { factor: (10 * CACO3) / CAO, source: '10 mg/L of CaO, molar masses from the IUPAC atomic weights (17.85)' },
  '°fH': { factor: 10, source: '10 mg/L of CaCO₃' },
  '°e': {
    factor: GRAIN_MG / 4.54609,
    source: 'one grain of CaCO₃ in an imperial gallon (14.25; 14.28 and 14.3 are in print)',
    caution: 'Also called Clark. A figure of 7.19 mg/L that goes about is wrong.',
  },
  gpg: { factor: GRAIN_MG / 3.785411784, source: 'one grain of CaCO₃ in a US gallon (17.12; 17.1 is in print)' },
  'meq/L': { factor: CACO3 / 2, source: 'half a millimole of a doubly charged ion' },
} as const satisfies Record<string, { readonly factor: number; readonly source: string; readonly caution?: string }>;

/** A unit of water hardness. */
export type HardnessUnit = keyof typeof UNITS;
/** Every unit of water hardness. */
export const HARDNESS_UNITS = Object.keys(UNITS) as readonly HardnessUnit[];

const WRITTEN: readonly (readonly [HardnessUnit, RegExp])[] = [
  ['°dH', /^(?:°\s*)?(?:dh|d|dgh|gh|german)$/iu],
  ['°fH', /^(?:°\s*)?(?:fh|f|french)$/iu],
  ['°e', /^(?:°\s*)?(?:e|eh|clark|english)$/iu],
  ['ppm', /^(?:ppm|mg\s*\/\s*l)(?:\s*(?:of\s*)?caco[3₃])?$/iu],
  ['mmol/L', /^mmol\s*\/\s*l$/iu],
  ['meq/L', /^meq\s*\/\s*l$/iu],
  ['gpg', /^(?:gpg|grains? per gallon)$/iu],
];

/** A hardness in another unit, by way of mg/L of CaCO₃. */
export function convertHardness(value: number, from: HardnessUnit, to: HardnessUnit): Conversion {
  const factor = UNITS[from].factor / UNITS[to].factor;
  const told: { readonly source: string; readonly caution?: string } = UNITS[from === 'ppm' ? to : from];
  return {
    value: twelveDigits(value * factor),
    unit: to,
    factor,
    source: told.source,
    ...(told.caution === undefined ? {} : { caution: told.caution }),
  };
}

/** Reads a hardness as written, such as `18 °dH`, `250 ppm`; undefined without a number and a known unit. */
export function readHardness(text: string): { readonly value: number; readonly unit: HardnessUnit } | undefined {
  const [, number, sign] = /^(?:c\.|about|~)?\s*(\d+(?:[.,]\d+)?)\s*(\S[^]*)$/u.exec(text.trim()) ?? [];
  const unit = sign === undefined ? undefined : WRITTEN.find(([, pattern]) => pattern.test(sign))?.[0];
  return number === undefined || unit === undefined ? undefined : { value: Number(number.replace(',', '.')), unit };
}

/**
 * Hardness from a water company's report.
 *
 * @param calciumMgL, magnesiumMgL of the metals themselves, mg/L.
 * @source molar masses: 2.497 × Ca + 4.118 × Mg.
 */
export function hardnessFromReport(calciumMgL: number, magnesiumMgL: number): Conversion {
  return {
    value: twelveDigits((calciumMgL * CACO3) / 40.078 + (magnesiumMgL * CACO3) / 24.305),
    unit: 'ppm',
    sum: `${calciumMgL} × 2.497 + ${magnesiumMgL} × 4.118`,
    source: 'molar masses of CaCO₃, calcium and magnesium from the IUPAC atomic weights',
  };
}

/** What water is called; guidance differs between countries, so the number is shown beside it. */
export type HardnessBand = 'soft' | 'moderate' | 'hard' | 'very-hard';

/** @source bands up to 60, 120 and 180 mg/L CaCO₃: the middle one from a water laboratory's page, the rest from memory. */
export function hardnessBand(ppm: number): HardnessBand {
  if (ppm <= 60) return 'soft';
  if (ppm <= 120) return 'moderate';
  return ppm <= 180 ? 'hard' : 'very-hard';
}

/** Chalk to the gram of dried madder in soft water. */
export const CHALK_FOR_MADDER: SourcedRange = {
  from: 0.06,
  to: 0.06,
  source: 'suzi-madder-2013: 6 g of chalk to 100 g of dried root, one grower',
  caution: 'Chalk hardly dissolves; most of it stays in the bath as a store.',
};
