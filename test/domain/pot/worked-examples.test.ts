import { describe, expect, test } from 'vitest';
import { parseAmount } from '../../../web/domain/note/amount.ts';
import { gravityFromBaume, gravityFromLightBaume, BAUME_MODULI } from '../../../web/domain/pot/density-scales.ts';
import { dryOf, freshOf, ratiosFor } from '../../../web/domain/pot/fresh-dry.ts';
import { convertMeasure } from '../../../web/domain/pot/measures.ts';
import { molarMass } from '../../../web/domain/pot/molar-mass.ts';
import { metalShare, MORDANT_SALTS, saltOf } from '../../../web/domain/pot/mordant-equivalence.ts';
import { checkCharacter } from '../../../web/domain/pot/check-character.ts';
import { printSkeinCode, readSkeinCode } from '../../../web/domain/pot/skein-code.ts';
import { type AmountGround, understandAmount } from '../../../web/domain/pot/understand-amount.ts';
import { CHALK_FOR_MADDER, convertHardness, hardnessBand, readHardness } from '../../../web/domain/pot/water-hardness.ts';
import { fc } from '../../helpers/property.ts';

const planned = (amount: string, ground: AmountGround) => understandAmount(parseAmount(amount), 'dye', ground).asPlanned;

describe('an ounce to the pound, as the printed recipes have it', () => {
  // Per cent of the fibre that the ratio comes to. Sources: E. Mairet, A Book on Vegetable Dyes (1916): fustic, cochineal, alder bark's
  // copperas; a page on indigo vats (wroot.blog) quoting the same book: indigo; a page reprinting old manuals (dyeing.ca): alum and tartar.
  test.each([
    ['5 oz/lb', 31.25, 'fustic, from'],
    ['6 oz/lb', 37.5, 'fustic, to'],
    ['3 oz/lb', 18.75, 'cochineal, from'],
    ['6 oz/lb', 37.5, 'cochineal, to'],
    ['½ oz/lb', 3.125, 'copperas on alder bark'],
    ['1 oz/lb', 6.25, 'indigo, medium; cream of tartar with ¼ lb of alum'],
    ['1/4 lb/lb', 25, 'alum'],
  ])('%s is %d %% (%s)', (amount, percent) =>
    expect(planned(amount, { fibreGrams: 100, choices: { measures: { lb: 'lb' } } })?.from).toBeCloseTo(percent, 9),
  );
  // Mairet's industrial recipes are for 6¼ lb, so that an ounce is one per cent: 3 oz of a mordant are 3 %.
  test('6¼ lb are a hundred ounces', () => {
    const fibreGrams = convertMeasure(6.25, 'lb')?.value ?? NaN;
    expect(fibreGrams).toBeCloseTo(convertMeasure(100, 'oz')?.value ?? NaN, 6);
    expect(((planned('3 oz', { fibreGrams })?.from ?? NaN) / fibreGrams) * 100).toBeCloseTo(3, 9);
  });
});

describe('bath and fibre', () => {
  const bath = (ratio: string, fibreGrams: number) => (parseAmount(ratio).value ?? NaN) * fibreGrams;
  // J. Cowern's course page: 10 g of wool in 400 ml is 40:1.
  test('40:1', () => expect(bath('40:1', 10)).toBe(400));
  // A weaver's page (borealweaver): 4 to 4½ gallons, taken as US, for a pound of wool; 33:1 to 38:1 by arithmetic.
  test('gallons to the pound', () => {
    const pound = convertMeasure(1, 'lb')?.value ?? NaN;
    expect((convertMeasure(4, 'us gallon')?.value ?? NaN) / pound).toBeCloseTo(33.4, 1);
    expect((convertMeasure(4.5, 'us gallon')?.value ?? NaN) / pound).toBeCloseTo(37.6, 1);
  });
  // The error of reading a wine gallon as imperial, 17 % of the imperial one: 231 cubic inches against 4.546 L, by arithmetic.
  test('the wrong gallon', () => {
    const [wine, imperial] = [convertMeasure(1, 'wine gallon')?.value ?? NaN, convertMeasure(1, 'gallon')?.value ?? NaN];
    expect(1 - wine / imperial).toBeCloseTo(0.167, 3);
  });
  // A table of Scots measures (dozenalsociety.org.uk): gallon of eight pints, 13.66 L.
  test('the Scots gallon', () => expect(convertMeasure(1, 'scots gallon')?.value).toBeCloseTo(13_660, -1));
});

describe('salts beside the mordants', () => {
  const mass = (formula: string) => molarMass(formula) ?? NaN;
  // From the molar masses (IUPAC atomic weights): 100 g of soda ash are 270 g of crystals.
  test('soda ash and crystals', () => expect((100 * mass('Na2CO3·10H2O')) / mass('Na2CO3')).toBeCloseTo(270, 0));
  // Three acetates to an aluminium: 100 g of potassium alum need 51.9 g of sodium acetate, or 86.1 g with its water.
  test('aluminium acetate made at home', () => {
    const perHundred = (acetate: string) => (100 / mass('KAl(SO4)2·12H2O')) * 3 * mass(acetate);
    expect(perHundred('NaCH3COO')).toBeCloseTo(51.9, 1);
    expect(perHundred('NaCH3COO·3H2O')).toBeCloseTo(86.1, 1);
  });
  // Maiwa's page (naturaldyes.ca): alum 15 % or aluminium acetate 8 % on the same cotton: 0.85 % and 1.33 % of aluminium.
  test('equal aluminium is not what recipes in print keep to', () => {
    const share = (id: string) => metalShare(MORDANT_SALTS.find((salt) => salt.id === id)?.formula ?? '', 'Al') ?? NaN;
    expect(15 * share('potassium-alum')).toBeCloseTo(0.85, 2);
    expect(8 * share('aluminium-diacetate')).toBeCloseTo(1.33, 2);
  });
  // Registry numbers: copper sulphate from its International Chemical Safety Card 1416, copperas from a supplier's safety data sheet,
  // tin chloride from chemicaldictionary.org; the alums' from memory.
  test.each([
    ['7784-24-9', 'potassium-alum'],
    ['7784-26-1', 'ammonium-alum'],
    ['10043-01-3', 'aluminium-sulphate'],
    ['7758-99-8', 'copper-sulphate'],
    ['7782-63-0', 'copperas'],
    ['10025-69-1', 'tin-chloride-2'],
  ])('the label’s %s is %s, with a sound check digit', (cas, id) => {
    expect(saltOf(`CAS ${cas}`)?.id).toBe(id);
    const digits = cas.replaceAll('-', '');
    const sum = [...digits]
      .slice(0, -1)
      .reverse()
      .reduce((total, digit, at) => total + Number(digit) * (at + 1), 0);
    expect(sum % 10).toBe(Number(digits.at(-1)));
  });
});

describe('water', () => {
  // Bands: a water laboratory's page for 61–120 mg/L; the others from memory.
  test.each([
    [0, 'soft'],
    [60, 'soft'],
    [61, 'moderate'],
    [120, 'moderate'],
    [121, 'hard'],
    [180, 'hard'],
    [181, 'very-hard'],
  ] as const)('%d mg/L is %s', (ppm, band) => expect(hardnessBand(ppm)).toBe(band));
  // A question page that gives the English degree as 7.19 mg/L is wrong: 14.25 from a grain in an imperial gallon.
  test('an English degree, and not the wrong one that goes about', () => {
    const found = convertHardness(1, '°e', 'ppm');
    expect(found.value).toBeCloseTo(14.25, 2);
    expect(found.caution).toContain('7.19');
    expect(readHardness('10 °Clark')).toEqual({ value: 10, unit: '°e' });
  });
  // One grower's page on madder (suzisplace4knitting, 2013): 6 g of chalk with 100 g of dried root.
  test('chalk for madder', () => expect(100 * CHALK_FOR_MADDER.from).toBeCloseTo(6, 9));
});

describe('density', () => {
  // US moduli: a conservation mailing list's note (cool.conservation-us.org); the older ones: an assaying text (superbook.org.ua).
  test('water is ten degrees on both light scales, nought on every heavy one', () => {
    expect(gravityFromLightBaume(10).value).toBe(1);
    expect(gravityFromLightBaume(10, 'assay').value).toBe(1);
    for (const modulus of Object.values(BAUME_MODULI)) expect(gravityFromBaume(0, modulus)?.value).toBe(1);
  });
  test('30 °Bé light: 140 ÷ 160 and 146 ÷ 166', () => {
    expect(gravityFromLightBaume(30).value).toBeCloseTo(0.875, 9);
    expect(gravityFromLightBaume(30, 'assay').value).toBeCloseTo(0.8795, 4);
  });
});

describe('fresh and dried', () => {
  // 700 g of fresh madder gave 100 g: one grower (suzisplace4knitting, 2013).
  test('madder root', () => {
    const [ratio] = ratiosFor('madder', 'root');
    expect(ratio && dryOf(700, ratio)).toEqual({ from: 100, to: 100 });
  });
  // Half as much dried as fresh in the pot: a plant dyer's page (hellobotanika.com). A rule of strength, not of mass.
  test('flowers by strength', () => {
    const ratio = ratiosFor('no-plant-of-its-own', 'flower').find(({ claims }) => claims === 'dye-power');
    expect(ratio && freshOf(50, ratio)).toEqual({ from: 100, to: 100 });
    expect(ratio?.caution).toBeDefined();
  });
});

describe('any amount, for any mass of fibre', () => {
  const litres = (fibreGrams: number): AmountGround => {
    const bath = 30 * fibreGrams;
    return { fibreGrams, liquor: { from: bath, to: bath, unit: 'ml' }, choices: { measures: { lb: 'lb troy' } } };
  };
  const written = fc
    .tuple(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 0, max: 4000 }), fc.constantFrom(' %', ' g/L', ' oz/lb', ' g/kg', ':1'))
    .map(([from, more, unit]) => (unit === ':1' || more === 0 ? `${from / 100}${unit}` : `${from / 100}–${(from + more) / 100}${unit}`));
  const grams = fc.double({ min: 1, max: 10_000, noNaN: true });
  const close = (found: number | undefined, wanted: number) => expect(Math.abs((found ?? NaN) / wanted - 1)).toBeLessThan(1e-9);

  test('two masses together need what each needs alone, and scaling back gives the amount again', () => {
    fc.assert(
      fc.property(written, grams, grams, (amount, one, other) => {
        const [first, second, both] = [one, other, one + other].map((mass) => planned(amount, litres(mass)));
        for (const end of ['from', 'to'] as const) {
          close(both?.[end], (first?.[end] ?? NaN) + (second?.[end] ?? NaN));
          close(((second?.[end] ?? NaN) / other) * one, first?.[end] ?? NaN);
        }
      }),
    );
  });
  test('what is not written to the fibre does not grow with it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), grams, grams, (amount, one, other) => {
        expect(planned(`${amount} g`, litres(one))).toEqual(planned(`${amount} g`, litres(other)));
      }),
    );
  });
});

describe('every skein code of a year', () => {
  const SIGNS = [...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
  /** What a wrongly typed code was taken for, where that is another skein than the one on the tag. */
  const mistaken = (plain: string, right: string, wrongs: Iterable<string>): readonly string[] =>
    [...wrongs].filter((wrong) => {
      const read = readSkeinCode(wrong);
      return wrong !== plain && read !== undefined && printSkeinCode(read) !== right;
    });
  const wrongsOf = function* (code: string): Generator<string> {
    for (let at = 0; at < code.length; at++) {
      for (const sign of at === code.length - 1 ? [...SIGNS, '*'] : SIGNS) yield code.slice(0, at) + sign + code.slice(at + 1);
      if (at > 0) yield code.slice(0, at - 1) + (code[at] ?? '') + (code[at - 1] ?? '') + code.slice(at + 1);
    }
  };
  test('with one wrong character or two neighbours swapped is never another skein', () => {
    for (const skein of [1, 7, 12])
      for (let bath = 1; bath <= 999; bath++) {
        const right = printSkeinCode({ year: 26, bath, skein }) ?? '';
        const plain = right.replaceAll('-', '');
        expect(readSkeinCode(right)).toEqual({ year: 26, bath, skein });
        expect(mistaken(plain, right, wrongsOf(plain))).toEqual([]);
      }
  }, 60_000);
  test('uses every check character', () => {
    const used = new Set<string | undefined>();
    for (let bath = 1; bath <= 999; bath++) used.add(checkCharacter(`26${String(bath).padStart(3, '0')}1`));
    expect(used.size).toBe(37);
  });
});
