import { describe, expect, test } from 'vitest';
import { addressOf, readAddress } from '../../web/notebook/address.ts';
import { dyeDayOf, settingsOfDyeDay, type TypedItem, withoutItem } from '../../web/notebook/dye-day-address.ts';
import { fc } from '../helpers/property.ts';

const item = fc
  .record(
    {
      recipe: fc.stringMatching(/^[a-zé0-9;:,% -]*[a-z]$/),
      fibreGrams: fc.double({ min: 0.1, max: 100_000, noNaN: true }),
      skeins: fc.integer({ min: 1, max: 99 }),
      fibre: fc.stringMatching(/^[a-z;,%-]*[a-z]$/),
      percent: fc.dictionary(fc.stringMatching(/^[a-z;:,%-]+$/), fc.double({ min: 0.01, max: 900, noNaN: true }), { minKeys: 1 }),
      uptake: fc.double({ min: 0, max: 1, noNaN: true }).map((share) => ({ from: share, to: 1 })),
      exhaustOf: fc.integer({ min: 0, max: 8 }),
    },
    { requiredKeys: ['recipe', 'fibreGrams', 'skeins'] },
  )
  .map((one) => ({ ...one, recipe: one.recipe.trim(), ...(one.percent && { percent: { ...one.percent } }) }))
  .filter(({ uptake }) => !/[eE]/.test(JSON.stringify(uptake ?? {}))) as fc.Arbitrary<TypedItem>;

describe('the address of a dye day', () => {
  test('a day goes into an address and comes out as it was', () => {
    fc.assert(
      fc.property(fc.array(item, { maxLength: 5 }), fc.boolean(), fc.constantFrom('09:00', '07:30', '23:59'), (items, staff, begins) => {
        const address = addressOf({ view: 'dye-day', settings: settingsOfDyeDay({ items, staff, begins }) });
        expect(dyeDayOf(readAddress(address).settings)).toEqual({ items, staff, begins });
      }),
    );
  });

  test('a plain address stays one a person can write', () => {
    expect(dyeDayOf(readAddress('#/dye-day?recipes=madder-alum-wool;weld-alum-wool&grams=250;100&skeins=3').settings).items).toEqual([
      { recipe: 'madder-alum-wool', fibreGrams: 250, skeins: 3 },
      { recipe: 'weld-alum-wool', fibreGrams: 100, skeins: 1 },
    ]);
  });

  test('what an address says wrongly is left out or asked for, never guessed', () => {
    const { items, begins } = dyeDayOf({
      recipes: 'a;b',
      grams: 'many',
      skeins: '0;100',
      'taken-up': '2;-1',
      'rest-of': 'x;0',
      begins: '25:00',
    });
    expect(items).toEqual([
      { recipe: 'a', fibreGrams: NaN, skeins: 1 },
      { recipe: 'b', fibreGrams: NaN, skeins: 1 },
    ]);
    expect(begins).toBe('09:00');
  });

  test('with an item left out, the rests of baths still name the same bath', () => {
    const [a, b, c, d] = ['a', 'b', 'b', 'a'].map((recipe) => ({ recipe, fibreGrams: 1, skeins: 1 })) as [
      TypedItem,
      TypedItem,
      TypedItem,
      TypedItem,
    ];
    const items = [a, b, { ...c, exhaustOf: 1 }, { ...d, exhaustOf: 0 }];
    expect(withoutItem(items, 0)).toEqual([b, { ...c, exhaustOf: 0 }, d]);
  });
});
