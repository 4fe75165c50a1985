/** A measure with what it comes to, and who says so. */
export interface Measure {
  /** Grams, millilitres or metres to one of it. */
  readonly factor: number;
  readonly of: 'mass' | 'volume';
  readonly source: string;
  /** What to look at before trusting the conversion. */
  readonly caution?: string;
}

/**
 * Measures by the names people write, in lower case. A bare "lb" is the avoirdupois pound; which pound an old recipe means
 * is asked by its caution. A measure that is not here is kept as it stands and never converted.
 */
export const MEASURES: Readonly<Record<string, Measure>> = {
  mg: { factor: 0.001, of: 'mass', source: 'SI' },
  g: { factor: 1, of: 'mass', source: 'SI' },
  kg: { factor: 1000, of: 'mass', source: 'SI' },
  oz: {
    factor: 28.349523125,
    of: 'mass',
    source: 'International Yard and Pound agreement 1959',
    caution: 'Read as avoirdupois: a Troy ounce is 31.1 g.',
  },
  lb: {
    factor: 453.59237,
    of: 'mass',
    source: 'International Yard and Pound agreement 1959',
    caution: 'Read as the 16-ounce avoirdupois pound; an old recipe may mean one of 12 ounces.',
  },
  'oz troy': { factor: 31.1034768, of: 'mass', source: 'Troy pound of 5760 grains, 12 oz (Lueger: 373.242 g)' },
  'lb troy': {
    factor: 373.2417216,
    of: 'mass',
    source: 'Troy pound of 5760 grains (Lueger: 373.242 g)',
    caution: '12 ounces to the pound.',
  },
  'lb tower': { factor: 349.91, of: 'mass', source: '5400 grains; about 1½ Cologne marks', caution: '12 ounces to the pound.' },
  'cologne mark': { factor: 233.856, of: 'mass', source: 'Cologne mark, 233.856 g' },
  'cologne pound': { factor: 467.712, of: 'mass', source: 'two Cologne marks, 16 oz or 32 Lot' },
  lot: { factor: 14.616, of: 'mass', source: '1/32 of the Cologne pound', caution: 'Other towns had other Lots.' },
  'libbra sottile': {
    factor: 301.23,
    of: 'mass',
    source: 'Venice, Meyers',
    caution: '12 oncie; dyestuffs, silk and drugs went by this light pound.',
  },
  'libbra grossa': { factor: 476.999, of: 'mass', source: 'Venice, Meyers', caution: '12 oncie.' },
  'livre poids de marc': { factor: 489.506, of: 'mass', source: 'Paris, 16 onces' },
  skålpund: { factor: 425, of: 'mass', source: 'Sweden, Lueger' },
  ml: { factor: 1, of: 'volume', source: 'SI' },
  l: { factor: 1000, of: 'volume', source: 'SI' },
  pint: {
    factor: 568.26125,
    of: 'volume',
    source: 'imperial pint, Weights and Measures Act 1824',
    caution: 'Before 1824 ask which pint: the wine pint is 473 ml.',
  },
  'wine pint': { factor: 473.176473, of: 'volume', source: 'wine gallon of 231 cubic inches' },
  gallon: {
    factor: 4546.09,
    of: 'volume',
    source: 'imperial gallon',
    caution: 'Before 1824 ask which gallon: wine 3.785, ale 4.621, corn 4.405 L.',
  },
  'wine gallon': { factor: 3785.411784, of: 'volume', source: 'wine gallon of 231 cubic inches (the US gallon)' },
  'ale gallon': { factor: 4621.15, of: 'volume', source: 'ale gallon of 282 cubic inches' },
};

const SAME: Readonly<Record<string, string>> = {
  gram: 'g',
  grams: 'g',
  kilo: 'kg',
  kilos: 'kg',
  ounce: 'oz',
  ounces: 'oz',
  pound: 'lb',
  pounds: 'lb',
  lbs: 'lb',
  litre: 'l',
  litres: 'l',
  liter: 'l',
  liters: 'l',
  pints: 'pint',
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
};

/** The measure a unit names; undefined for one that is only kept as it stands. */
export function measureOf(unit: string): (Measure & { readonly name: string }) | undefined {
  const written = unit.trim().toLowerCase().replace(/\s+/g, ' ');
  const name = Object.hasOwn(SAME, written) ? (SAME[written] ?? written) : written;
  const found = Object.hasOwn(MEASURES, name) ? MEASURES[name] : undefined;
  return found && { ...found, name };
}
