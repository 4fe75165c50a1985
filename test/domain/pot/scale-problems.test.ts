import { describe, expect, test } from 'vitest';
import { noteId } from '../../../web/domain/note/note.ts';
import { neverDosed } from '../../../web/domain/pot/never-dosed.ts';
import { type ScaleChoices, scaleRecipe } from '../../../web/domain/pot/scale-recipe.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';

const NOTES = {
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\nformula: KAl(SO4)2·12H2O'),
  'mordants/bichrome.md': aNote('kind: mordant\ntitle: Bichrome\nformula: K2Cr2O7'),
  'mordants/copper.md': aNote('kind: mordant\ntitle: Copper'),
  'mordants/iron.md': aNote('kind: mordant\ntitle: Iron\nnames: [copperas, green vitriol]'),
  'dyestuffs/lung.md': aNote('kind: dyestuff\ntitle: Tree lungwort\nlatin: Lobaria pulmonaria\nmatter: lichen'),
  'dyestuffs/cork.md': aNote('kind: dyestuff\ntitle: Cork\nmatter: lichen\ncautions: [In places a protected lichen.]'),
};
const scaled = (ingredient: string, grams: number | undefined, choices: ScaleChoices = {}, more = '') => {
  const { base } = aNotebook({ ...NOTES, 'recipes/r.md': aNote(`kind: recipe\n${more}\ningredients: [${ingredient}]`) });
  const found = scaleRecipe(base, noteId('r'), grams, 'public', choices);
  if (!found) throw new Error('the recipe is there');
  return found;
};
const first = (...args: Parameters<typeof scaled>) => scaled(...args).ingredients[0];
const alum = (amount: string) => `{what: alum, role: mordant, amount: "${amount}"}`;

describe('scaleRecipe, bad input', () => {
  test.each([
    ['-5 %', 'amount-negative'],
    ['0 %', 'amount-zero'],
    ['15', 'unit-missing'],
    ['a handful', 'amount-unread'],
    ['3 hogsheads', 'unit-unknown'],
    ['2 parts', 'parts-of-what'],
    ['3 libbre', 'measure-ambiguous'],
    ['2 g/L', 'liquor-missing'],
  ] as const)('“%s” says %s and plans nothing', (amount, problem) => {
    const found = first(alum(amount), 100);
    expect(found?.problem).toBe(problem);
    expect(found?.asPlanned).toBeUndefined();
    expect(found?.asWritten).toBe(amount);
  });
  test.each([
    ['500 %', 100],
    ['5 kg/lb', 100],
  ])('%s of alum warns and is still shown', (amount, grams) => {
    const found = first(alum(amount), grams);
    expect(found?.problems).toContain('absurd');
    expect(found?.asPlanned).toBeDefined();
  });
  test('a fibre mass that is missing or cannot be', () => {
    expect(scaled(alum('15 %'), undefined)).toMatchObject({
      problems: ['fibre-mass-missing'],
      ingredients: [{ problem: 'fibre-mass-missing' }],
    });
    for (const grams of [0, -50, NaN, Infinity, 1e9]) {
      const found = scaled(alum('15 %'), grams, {}, 'liquor: "30:1"');
      expect(found.problems).toEqual(['fibre-mass-impossible']);
      expect(found.liquor).toBeUndefined();
      expect(found.ingredients[0]?.asPlanned).toBeUndefined();
    }
  });
  test('a liquor that is no ratio, and a vat that needs none', () => {
    expect(scaled(alum('15 %'), 100, {}, 'liquor: plenty').problems).toEqual(['liquor-unread']);
    expect(scaled(alum('15 %'), 100, {}, 'liquor: vat').problems).toEqual([]);
  });
  test('a chain of recipes in a circle', () => {
    const { base } = aNotebook({
      'recipes/a.md': aNote('kind: recipe\nfollows: [b]'),
      'recipes/b.md': aNote('kind: recipe\nfollows: [c]'),
      'recipes/c.md': aNote('kind: recipe\nfollows: [a, a]'),
      'recipes/d.md': aNote('kind: recipe\nfollows: [a]'),
    });
    expect(scaleRecipe(base, noteId('a'), 100)?.problems).toEqual(['chain-in-circle']);
    expect(scaleRecipe(base, noteId('d'), 100)?.problems).toEqual([]);
  });
});

describe('scaleRecipe, choices', () => {
  test('a per cent out of the range, and one beside it', () => {
    expect(first(alum('10–25 %'), 200, { percent: { alum: 15 } })).toMatchObject({
      asPlanned: { from: 30, to: 30 },
      problems: [],
      asWritten: '10–25 %',
    });
    expect(first(alum('10–25 %'), 200, { percent: { alum: 40 } })?.problems).toEqual(['choice-outside']);
  });
  // 4 oz to the pound: 25 % in a pound of 16 ounces, 33.3 % in one of 12 (arithmetic on the definition of the pounds).
  test('which pound is asked, and its own ounce goes with it', () => {
    const asked = first(alum('4 oz/lb'), 300);
    expect(asked?.problem).toBe('measure-ambiguous');
    expect(asked?.possible).toContain('lb troy');
    expect(asked?.asPlanned?.from).toBeCloseTo(75, 9);
    const troy = first(alum('4 oz/lb'), 300, { measures: { lb: 'lb troy' } });
    expect(troy?.problems).toEqual([]);
    expect(troy?.asPlanned?.from).toBeCloseTo(100, 9);
  });
  // 3 libbre sottili of Venice: 903.69 g (Meyers 1908, 301.23 g each).
  test('a libbra once its town is chosen', () => {
    expect(first(alum('3 libbre'), 300, { measures: { libbre: 'libbra sottile' } })?.asPlanned?.from).toBeCloseTo(903.69, 6);
  });
  test('parts once one part is weighed', () => {
    expect(first(alum('2–3 parts'), 300, { partGrams: 20 })?.asPlanned).toEqual({ from: 40, to: 60, unit: 'g' });
  });
  // The Stockholm papyrus: half a mina of madder to a mina of wool is 50 % in any mina; written as a ratio, it needs no mina.
  test('a ratio of one weight needs no unit', () => {
    expect(first('{what: alum, role: mordant, amount: "1:2"}', 300)?.asPlanned?.from).toBe(150);
  });
});

describe('never dosed', () => {
  test.each([
    ['bichromate of potash', 'chromium'],
    ['Orpiment vat', 'arsenic'],
    ['sugar of lead', 'lead'],
    ['corrosive sublimate', 'mercury'],
    ['aqua fortis', 'strong-acid'],
    ['oil of vitriol', 'strong-acid'],
    ['Scheidewasser', 'strong-acid'],
    ['tin composition', 'tin-making'],
    ['Lobaria pulmonaria', 'protected-lichen'],
  ])('%s is refused for %s', (name, reason) => expect(neverDosed([name])).toBe(reason));
  test.each(['alum', 'copperas', 'green vitriol', 'cream of tartar', 'leading dye', 'plumbago root', 'arsenal'])('%s is not', (name) =>
    expect(neverDosed([name])).toBeUndefined(),
  );
  test('by formula, by form and by matter, whoever asks and whatever the note is called', () => {
    expect(first('{what: bichrome, role: mordant, amount: 3 %}', 100)).toMatchObject({
      problem: 'never-dosed',
      refused: 'chromium',
      asWritten: '',
    });
    expect(first('{what: alum, role: mordant, amount: 3 %, form: potassium dichromate}', 100)?.refused).toBe('chromium');
    // A word beside it that sounds harmless does not excuse it.
    for (const form of ['"potassium dichromate, without lumps"', '"history only: bichromate"'])
      expect(first(`{what: alum, role: mordant, amount: 3 %, form: ${form}}`, 100)).toMatchObject({ refused: 'chromium', asWritten: '' });
    expect(first('{what: lung, role: dye, amount: 100 %}', 100)?.refused).toBe('protected-lichen');
    expect(first('{what: cork, role: dye, amount: 100 %}', 100)?.refused).toBe('protected-lichen');
    expect(first('{what: cork, role: dye, amount: 100 %, form: bought powder}', 100)?.asPlanned?.from).toBe(100);
  });
  test('copper is kept from the public by name and by form, iron is not', () => {
    expect(first('{what: copper, role: mordant, amount: 2 %}', 100)).toMatchObject({ problem: 'staff-only', asWritten: '' });
    expect(first('{what: alum, role: mordant, amount: 2 %, form: blue vitriol}', 100)?.problem).toBe('staff-only');
    expect(first('{what: iron, role: mordant, amount: 2 %, form: copperas}', 100)?.asPlanned?.from).toBe(2);
  });
});
