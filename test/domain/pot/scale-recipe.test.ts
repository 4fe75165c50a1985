import { describe, expect, test } from 'vitest';
import { noteId } from '../../../web/domain/note/note.ts';
import { scaleRecipe } from '../../../web/domain/pot/scale-recipe.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { fc, runs } from '../../helpers/property.ts';

const scaled = (ingredients: string, grams: number, liquor = '', audience: 'public' | 'staff' = 'public') => {
  const { base } = aNotebook({
    'mordants/alum.md': aNote('kind: mordant\ntitle: Alum'),
    'mordants/chrome.md': aNote('kind: mordant\ntitle: Chrome\nnames: [potassium dichromate]'),
    'mordants/tin.md': aNote('kind: mordant\ntitle: Tin'),
    'recipes/r.md': aNote(
      `kind: recipe\n${liquor === '' ? '' : `liquor: "${liquor}"\n`}ingredients: [${ingredients}]\nsteps: [hold at 80 °C for one hour]`,
    ),
  });
  const found = scaleRecipe(base, noteId('r'), grams, audience);
  if (!found) throw new Error('the recipe is there');
  return found;
};
const first = (...args: Parameters<typeof scaled>) => scaled(...args).ingredients[0];

describe('scaleRecipe, worked examples', () => {
  // Weight of fibre: mass = dry fibre × % ÷ 100. Source: J. Sinden's article on WOF, examples computed from its formula.
  test.each([
    ['10 %', 350, 35, 35],
    ['10–25 %', 250, 25, 62.5],
    ['15% WOF', 80, 12, 12],
  ])('%s on %d g', (amount, grams, from, to) => {
    expect(first(`{what: alum, role: mordant, amount: ${amount}}`, grams)?.asPlanned).toEqual({ from, to, unit: 'g' });
  });
  // Liquor ratio 30:1 on 400 g is 12 litres (30 ml to the gram).
  test('liquor and grams to the litre', () => {
    const recipe = scaled('{what: alum, role: mordant, amount: 5 g/L}', 400, '30:1');
    expect(recipe.liquor).toEqual({ from: 12_000, to: 12_000, unit: 'ml' });
    expect(recipe.ingredients[0]?.asPlanned).toEqual({ from: 60, to: 60, unit: 'g' });
    expect(first('{what: alum, role: mordant, amount: 5 g/L}', 400)?.problem).toBe('liquor-missing');
  });
  // A quarter of a pound of alum to a pound of wool is 25 % in any pound; 4 oz/lb on 1 kg is 250 g.
  test('ounces to the pound of fibre', () => {
    expect(first('{what: alum, role: mordant, amount: 4 oz/lb}', 1000)?.asPlanned?.from).toBeCloseTo(250, 6);
  });
  // The light pound of Venice, 301.23 g (Meyers): three of them are 903.69 g.
  test('historic measures keep factor and source; unknown ones their words', () => {
    const venice = first('{what: alum, role: mordant, amount: 3 libbra sottile}', 500);
    expect(venice?.asPlanned?.from).toBeCloseTo(903.69, 6);
    expect(venice?.conversions.join()).toContain('Meyers');
    expect(first('{what: alum, role: mordant, amount: 3 hogsheads}', 500)).toMatchObject({
      problem: 'unit-unknown',
      asWritten: '3 hogsheads',
    });
    expect(first('{what: alum, role: mordant, amount: a sufficiency}', 500)?.problem).toBe('amount-unread');
  });
});

describe('scaleRecipe, what it will not do', () => {
  test('never doses chromium, whoever asks', () => {
    for (const audience of ['public', 'staff'] as const) {
      const chrome = first('{what: chrome, role: mordant, amount: 3 %}', 100, '', audience);
      expect(chrome).toMatchObject({ problem: 'never-dosed', refused: 'chromium' });
      expect(chrome?.asPlanned).toBeUndefined();
    }
  });
  test('shows amounts of tin to staff only', () => {
    expect(first('{what: tin, role: mordant, amount: 4 %}', 100)?.asPlanned).toBeUndefined();
    expect(first('{what: tin, role: mordant, amount: 4 %}', 100, '', 'staff')?.asPlanned?.from).toBe(4);
  });
  test('warns at an absurd amount and still shows it', () => {
    expect(first('{what: alum, role: mordant, amount: 500 %}', 100)).toMatchObject({ problem: 'absurd', asPlanned: { from: 500 } });
  });
  test('leaves time and temperature as they are', () => {
    expect(scaled('{what: alum, role: mordant, amount: 5 %}', 5000).steps).toEqual(['hold at 80 °C for one hour']);
  });
});

describe('scaleRecipe, for any mass', () => {
  test('is linear and reversible', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 200, noNaN: true }), fc.double({ min: 1, max: 5000, noNaN: true }), (percent, grams) => {
        const amount = `{what: alum, role: mordant, amount: ${percent.toFixed(3)} %}`;
        const one = first(amount, grams)?.asPlanned?.from ?? NaN;
        const three = first(amount, grams * 3)?.asPlanned?.from ?? NaN;
        expect(three / one).toBeCloseTo(3, 6);
        expect((one / grams) * 100).toBeCloseTo(Number(percent.toFixed(3)), 6);
      }),
      runs(200),
    );
  });
});
