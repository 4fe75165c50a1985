import { describe, expect, test } from 'vitest';
import { amountShown, dosesIn, NO_DOSE, withoutDoses } from '../../../web/domain/pot/without-doses.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { fc } from '../../helpers/property.ts';

const { base } = aNotebook({
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum'),
  'mordants/tin-salt.md': aNote('kind: mordant\ntitle: Tin salt\nnames: [stannous chloride]'),
  'mordants/red-crystals.md': aNote('kind: mordant\ntitle: The red crystals\nformula: K2Cr2O7'),
});
const said = (text: string, audience?: 'staff') => withoutDoses(base, text, audience);

describe('withoutDoses', () => {
  test.each([
    'Dissolve 3 g potassium dichromate in water',
    'Bichromate, three per cent of the fibre',
    'Add the dichromate: ½ oz to the pound',
    'Use 3–4 % chrome',
    '2 ounces of orpiment with 1/2 lb lime',
    'A spoonful of sugar of lead',
    'aqua fortis one pint',
    'quicksilver. Then 10 grains of it',
    'the red crystals, 3 % of the weight',
    '20 ml oil of vitriol',
    '3g K-dichromate',
    'one and a half ounces of bichromate of potash',
  ])('“%s” loses its amount and keeps its name', (text) => {
    const shown = said(text);
    expect(shown).toContain(NO_DOSE);
    expect(shown).not.toMatch(/\d\s*(?:g|%|oz|ml|lb)/);
    expect(said(text, 'staff')).toBe(shown);
  });

  test('tin and copper lose theirs in their own sentence, for others than staff', () => {
    const text = 'Alum 15 % for an hour. Then 2 % stannous chloride; rinse in 10 L of water';
    expect(said(text)).toBe(`Alum 15 % for an hour. Then ${NO_DOSE} stannous chloride; rinse in 10 L of water`);
    expect(said(text, 'staff')).toBe(text);
  });

  test.each([
    'Lead the skeins through the bath with 3 g sugar of lead',
    'Lead, 3 g, into the bath',
    'Add 3 g of lead: the wool goes through it',
    'Add 3 g lead the wool through it',
    'Chalk and lead, 3 g, the wool goes into it',
    '3 g of tin and lead the skeins through',
    'Wool in a tin bath of 3 %',
    'Put the tin in, 3 g',
    'Take 3 g in a tin solution.',
    'Tin, 3 g in a tin.',
    'From the tin, 3 g',
  ])('“%s” still loses its amount', (text) => {
    expect(said(text)).toContain(NO_DOSE);
    expect(said(text)).not.toMatch(/\b3\b/);
  });

  test.each([
    'Alum 15 % at 80 °C for 60 minutes',
    'Heat 10 L in a copper kettle',
    'A lead-lined cistern, 40 gallons',
    'Lead the skeins through the bath; alum 15 %',
    'Dissolve 15 % alum, then lead the wet wool slowly into it',
    'Alum, 15 g, and lead them round the pot in 10 L of water',
    'Keep 30 g of alum in a small tin.',
    'Alum 15 %, from a tin with a lid',
    'Two quarts of water in a tin bucket',
    'Iron, 2 % of the fibre, 10 min',
    '',
  ])('“%s” stays as it is', (text) => expect(said(text)).toBe(text));

  test('times and temperatures stay beside what is not dosed', () => {
    expect(said('10:20 dichromate 3 %, held at 88 °C for 45 min')).toBe(`10:20 dichromate ${NO_DOSE}, held at 88 °C for 45 min`);
  });

  test('whatever number stands before a unit, none is left beside a dichromate', () => {
    const number = fc.oneof(
      fc.integer({ min: 1, max: 999 }).map(String),
      fc.double({ min: 0.1, max: 99, noNaN: true }).map((one) => one.toFixed(2)),
    );
    const unit = fc.constantFrom(
      'g',
      'g/L',
      '%',
      ' % WOF',
      ' oz',
      ' lb',
      ' ml',
      ' grains',
      ' parts',
      ' kg',
      ' grams',
      ' drachms',
      ' pints',
    );
    fc.assert(
      fc.property(number, unit, fc.constantFrom('dichromate', 'orpiment', 'litharge', 'quicksilver'), (amount, of, what) => {
        for (const text of [`${amount}${of} ${what}`, `${what}: ${amount}${of}`, `take ${what}, ${amount}${of}, and stir`])
          expect(said(text)).not.toContain(amount);
      }),
    );
  });
});

describe('amountShown', () => {
  const ingredient = (what: string, form?: string) => ({
    range: [0, 0] as const,
    what: { text: what, range: [0, 0] as const },
    amount: { text: '3 %', value: 3, unit: '%' },
    ...(form === undefined ? {} : { form }),
  });
  test.each([
    ['alum', undefined, '3 %'],
    ['tin-salt', undefined, NO_DOSE],
    ['red-crystals', undefined, NO_DOSE],
    ['alum', 'chrome alum', NO_DOSE],
    ['somebody else’s dichromate', undefined, NO_DOSE],
  ])('%s, %s: %s', (what, form, expected) => expect(amountShown(base, ingredient(what, form))).toBe(expected));
  test('staff see tin, never chromium', () => {
    expect(amountShown(base, ingredient('tin-salt'), 'staff')).toBe('3 %');
    expect(amountShown(base, ingredient('red-crystals'), 'staff')).toBe(NO_DOSE);
  });
});

test('a mass of figures or blanks holds no amount, and ends', () => {
  for (const text of ['1'.repeat(200_000), `1${' '.repeat(200_000)}x`]) expect(dosesIn(text)).toEqual([]);
  const [dose] = dosesIn(`1${' '.repeat(100_000)}2${' '.repeat(100_000)}½ teaspoons`);
  expect(dose?.[0]).toBe(0);
});
