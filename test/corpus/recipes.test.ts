import { describe, expect, test } from 'vitest';
import { demoNotes } from './read-demo.ts';

const recipes = demoNotes('recipes', 'recipe');
const trials = demoNotes('trials', 'trial');

/** Named as history, never with an amount. */
const NEVER_DOSED = ['chrome', 'tin', 'tin-composition', 'indigo-sulphate', 'saxon-blue'];
/** Where one of these goes in, the recipe itself warns. */
const WARNS = {
  copper: /copper/i,
  iron: /iron/i,
  tin: /tin/i,
  chrome: /chrome/i,
  'wood-ash-lye': /lye/i,
  'stale-urine': /urine/i,
  lime: /lime/i,
} as const;

describe('the recipes of the demonstration', () => {
  test('are read without a finding', () => {
    expect(recipes.length).toBeGreaterThanOrEqual(44);
    expect(recipes.flatMap(({ note, diagnostics }) => diagnostics.map(({ code, about }) => [note.id, code, ...about]))).toEqual([]);
  });

  test.each(recipes.map(({ note, record }) => [String(note.id), record, note] as const))(
    '%s has a fibre, a dye, steps, a caution and a source',
    (_id, record, note) => {
      expect(record.fibre.length).toBeGreaterThan(0);
      expect(record.ingredients.some(({ role }) => role === 'dye')).toBe(true);
      expect(record.steps.length).toBeGreaterThanOrEqual(3);
      expect(record.cautions.join(' ')).toMatch(/Follow local rules and the supplier’s safety data sheet/);
      expect(note.sources.length).toBeGreaterThan(0);
      expect(note.checked).toBeDefined();
    },
  );

  test.each(Object.entries(WARNS))('warn of %s where it goes in', (what, words) => {
    const using = recipes.filter(({ record }) => record.ingredients.some((one) => one.what?.text === what));
    expect(using.filter(({ record }) => !words.test(record.cautions.join(' '))).map(({ note }) => note.id)).toEqual([]);
  });

  test('never give an amount of what may only be named, neither do their trials', () => {
    const used = [
      ...recipes.flatMap(({ note, record }) => record.ingredients.map((one) => [note.id, one] as const)),
      ...trials.flatMap(({ note, record }) => record.actual.map((one) => [note.id, one] as const)),
    ];
    const named = used.filter(([, { what }]) => NEVER_DOSED.includes(what?.text ?? ''));
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter(([, { amount }]) => amount).map(([id]) => id)).toEqual([]);
    expect(used.filter(([, { what }]) => /lead|arsenic|orpiment|mercury|vitriol|aqua.fortis/i.test(what?.text ?? ''))).toEqual([]);
  });

  test('an over-dye begins from a recipe that is here', () => {
    const ids = new Set(recipes.map(({ note }) => String(note.id)));
    const chained = recipes.filter(({ record }) => record.follows.length > 0);
    expect(chained.length).toBeGreaterThanOrEqual(5);
    expect(chained.flatMap(({ record }) => record.follows).filter(({ text }) => !ids.has(text))).toEqual([]);
  });

  test('a stand-in is declared in the trial and said again among its deviations', () => {
    const standing = trials.filter(({ record }) => record.actual.some(({ standsFor }) => standsFor));
    expect(standing.length).toBeGreaterThanOrEqual(5);
    expect(standing.filter(({ record }) => !record.deviations.some((text) => /stands in/.test(text))).map(({ note }) => note.id)).toEqual(
      [],
    );
  });
});
