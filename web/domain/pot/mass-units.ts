import type { Measure } from './measure.ts';

const mass = (factor: number, source: string, more: Pick<Measure, 'caution' | 'ounces'> = {}): Measure => ({
  factor,
  of: 'mass',
  source,
  ...more,
});

const AGREEMENT = 'International Yard and Pound agreement of 1959';
const LUEGER = 'Lueger 1909, entry Pfund';
const MEYERS = 'Meyers 1908, entry Libbra';
const COLOGNE = 'an encyclopedia article on the Cologne mark: 233.856 g';

/**
 * Weights by the names people write, in lower case: grams to one.
 *
 * A town's weight changed with the century and the trade; a figure here is the one in print for the weight of that name.
 */
export const MASS_UNITS: Readonly<Record<string, Measure>> = {
  mg: mass(0.001, 'SI'),
  g: mass(1, 'SI'),
  kg: mass(1000, 'SI'),
  oz: mass(28.349523125, AGREEMENT, { ounces: 16, caution: 'Read as avoirdupois: a Troy ounce is 31.1 g.' }),
  lb: mass(453.59237, AGREEMENT, {
    ounces: 16,
    caution: 'Read as the 16-ounce avoirdupois pound; an old recipe may mean one of 12 ounces.',
  }),
  dram: mass(1.7718451953125, `${AGREEMENT}: a sixteenth of an ounce`, { caution: 'An apothecary’s dram is 3.89 g.' }),
  grain: mass(0.06479891, AGREEMENT),
  'oz troy': mass(31.1034768, 'Troy pound of 5760 grains, 12 oz (Lueger: 373.242 g)', { ounces: 12 }),
  'lb troy': mass(373.2417216, 'Troy pound of 5760 grains (Lueger: 373.242 g)', { ounces: 12, caution: '12 ounces to the pound.' }),
  'lb tower': mass(349.914114, '5400 grains; about 1½ Cologne marks', { ounces: 12, caution: '12 ounces to the pound.' }),
  'cologne mark': mass(233.856, COLOGNE),
  'cologne pound': mass(467.712, `${COLOGNE}; two marks, 16 oz or 32 Lot`, { ounces: 16 }),
  'cologne ounce': mass(29.232, `${COLOGNE}; an eighth`, { ounces: 16 }),
  lot: mass(14.616, `${COLOGNE}; 1/32 of the pound`, { caution: 'Other towns had other Lots.' }),
  'nuremberg apothecary pound': mass(357.84, 'a table of apothecaries’ weights', { ounces: 12, caution: '12 ounces; drugs only.' }),
  'nuremberg pound': mass(509.996, 'from memory', { ounces: 16, caution: 'From memory: look it up before trusting it.' }),
  'vienna pound': mass(560.012, LUEGER),
  skålpund: mass(425, LUEGER),
  'russian pound': mass(409.512, LUEGER),
  'spanish pound': mass(460.093, LUEGER, { ounces: 16 }),
  'portuguese pound': mass(459, LUEGER, { ounces: 16 }),
  'customs-union pound': mass(500, LUEGER, { caution: 'German lands from 1858 only.' }),
  'libbra sottile': mass(301.23, `Venice; ${MEYERS}`, {
    ounces: 12,
    caution: '12 oncie; dyestuffs, silk and drugs went by this light pound. Medieval estimate: 300.97 g.',
  }),
  'libbra grossa': mass(476.999, `Venice; ${MEYERS}`, { ounces: 12, caution: '12 oncie. Medieval estimates: 475.5–475.7 g.' }),
  'oncia sottile': mass(301.23 / 12, `Venice; ${MEYERS}; a twelfth of the light pound`, { ounces: 12 }),
  'oncia grossa': mass(476.999 / 12, `Venice; ${MEYERS}; a twelfth of the heavy pound`, { ounces: 12 }),
  'florentine libbra': mass(339.542, MEYERS, { ounces: 12, caution: '12 once.' }),
  'milanese libbra piccola': mass(326.793, MEYERS, { ounces: 12, caution: '12 once.' }),
  'genoese libbra sottile': mass(316.75, MEYERS, { ounces: 12, caution: '12 once.' }),
  'neapolitan libbra': mass(320.759, MEYERS, { ounces: 12, caution: '12 once.' }),
  'livre poids de marc': mass(489.506, 'Paris, 16 onces; computed from an encyclopedia article on the livre usuelle', { ounces: 16 }),
  'once poids de marc': mass(489.506 / 16, 'Paris, a sixteenth of the livre', { ounces: 16 }),
  'scots trois pound': mass(494.5, 'middle of 493.1 g (Nicholson), 495.9 g and 496 g (Scottish Archive Network)', {
    ounces: 16,
    caution: 'Sources give 493–496 g.',
  }),
  'scots tron pound': mass(624.1, 'middle of 623.5 g (Nicholson) and 624.7 g (Scottish Archive Network)', {
    caution: 'Local and unstable: another table implies 665 g.',
  }),
};
