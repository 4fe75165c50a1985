import type { Conversion } from './conversion.ts';
import { twelveDigits } from './conversion.ts';
import { MASS_UNITS } from './mass-units.ts';
import type { Measure } from './measure.ts';
import { VOLUME_UNITS } from './volume-units.ts';

export type { Measure } from './measure.ts';

/**
 * Measures by the names people write, in lower case. A bare "lb" is the avoirdupois pound unless the reader says which is
 * meant (`possibleMeasures`). A measure that is not here is kept as it stands and never converted.
 */
export const MEASURES: Readonly<Record<string, Measure>> = { ...MASS_UNITS, ...VOLUME_UNITS };

const SAME: Readonly<Record<string, string>> = {
  gram: 'g',
  gramme: 'g',
  grams: 'g',
  grammes: 'g',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  milligram: 'mg',
  milligrams: 'mg',
  ounce: 'oz',
  ounces: 'oz',
  pound: 'lb',
  pounds: 'lb',
  lbs: 'lb',
  drams: 'dram',
  grains: 'grain',
  litre: 'l',
  litres: 'l',
  liter: 'l',
  liters: 'l',
  millilitre: 'ml',
  millilitres: 'ml',
  pints: 'pint',
  quarts: 'quart',
  gallons: 'gallon',
  gal: 'gallon',
  'troy oz': 'oz troy',
  'troy ounce': 'oz troy',
  'troy ounces': 'oz troy',
  'troy lb': 'lb troy',
  'troy pound': 'lb troy',
  'troy pounds': 'lb troy',
  'tower pound': 'lb tower',
  'tower pounds': 'lb tower',
  'cologne marks': 'cologne mark',
  'cologne pounds': 'cologne pound',
  'lb avoirdupois': 'lb',
  'avoirdupois pound': 'lb',
  'avoirdupois pounds': 'lb',
  lots: 'lot',
  loth: 'lot',
  skalpund: 'skålpund',
  'libbre sottili': 'libbra sottile',
  'libbre grosse': 'libbra grossa',
  'oncie sottili': 'oncia sottile',
  'wine gallons': 'wine gallon',
  'wine pints': 'wine pint',
  'ale gallons': 'ale gallon',
  'ale pints': 'ale pint',
  'us gallons': 'us gallon',
  'imperial gallon': 'gallon',
  'imperial gallons': 'gallon',
  'imperial pint': 'pint',
  'imperial pints': 'pint',
  zollpfund: 'customs-union pound',
  'scots pints': 'scots pint',
  'scots gallons': 'scots gallon',
};

/** Names that several measures share; the first is how they are read when nobody was asked. */
const SHARED: Readonly<Record<string, readonly string[]>> = {
  lb: [
    'lb',
    'lb troy',
    'lb tower',
    'cologne pound',
    'livre poids de marc',
    'scots trois pound',
    'scots tron pound',
    'vienna pound',
    'customs-union pound',
  ],
  oz: ['oz', 'oz troy', 'cologne ounce', 'once poids de marc', 'oncia sottile'],
  pint: ['pint', 'wine pint', 'ale pint', 'corn pint', 'scots pint'],
  gallon: ['gallon', 'wine gallon', 'ale gallon', 'corn gallon', 'scots gallon'],
};

/** Names that mean nothing without a town: never converted until one is chosen. */
const TOWNLESS: Readonly<Record<string, readonly string[]>> = {
  libbra: [
    'libbra sottile',
    'libbra grossa',
    'florentine libbra',
    'milanese libbra piccola',
    'genoese libbra sottile',
    'neapolitan libbra',
  ],
  oncia: ['oncia sottile', 'oncia grossa'],
  livre: ['livre poids de marc'],
  pfund: ['cologne pound', 'nuremberg pound', 'vienna pound', 'customs-union pound'],
  mark: ['cologne mark'],
  gr: ['grain', 'g'],
};
const PLURALS: Readonly<Record<string, string>> = { libbre: 'libbra', oncie: 'oncia', once: 'oncia', livres: 'livre', marks: 'mark' };

const nameOf = (unit: string): string => {
  const written = unit.trim().toLowerCase().replace(/\.$/, '').replace(/\s+/g, ' ');
  return held(SAME, written) ?? written;
};
const held = <T>(table: Readonly<Record<string, T>>, key: string): T | undefined => (Object.hasOwn(table, key) ? table[key] : undefined);

/** A measure and the name it goes by here. */
export type NamedMeasure = Measure & { readonly name: string };

/** The measure a unit names; undefined for one that is only kept as it stands. */
export function measureOf(unit: string): NamedMeasure | undefined {
  const name = nameOf(unit);
  const found = held(MEASURES, name);
  return found && { ...found, name };
}

/** Every measure a written unit may mean, most usual first: more than one must be asked about. Empty for an unknown unit. */
export function possibleMeasures(unit: string): readonly NamedMeasure[] {
  const name = nameOf(unit);
  const names = held(SHARED, name) ?? held(TOWNLESS, held(PLURALS, name) ?? name) ?? [name];
  return names.map(measureOf).filter((one) => one !== undefined);
}

/** An amount of a measure in grams or millilitres; undefined for a measure that is not converted. */
export function convertMeasure(value: number, unit: string): Conversion | undefined {
  const measure = measureOf(unit);
  return (
    measure && {
      value: twelveDigits(value * measure.factor),
      unit: measure.of === 'mass' ? 'g' : 'ml',
      factor: measure.factor,
      source: measure.source,
      ...(measure.caution === undefined ? {} : { caution: measure.caution }),
    }
  );
}

/** Grams or millilitres in another measure of the same kind; undefined where it is not converted or is of the other kind. */
export function inMeasure(value: number, of: 'g' | 'ml', unit: string): Conversion | undefined {
  const measure = measureOf(unit);
  if (!measure || (measure.of === 'mass') !== (of === 'g')) return undefined;
  return { value: twelveDigits(value / measure.factor), unit: measure.name, factor: 1 / measure.factor, source: measure.source };
}
