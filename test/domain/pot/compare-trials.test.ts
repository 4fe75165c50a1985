import { describe, expect, test } from 'vitest';
import { compareTrials } from '../../../web/domain/pot/compare-trials.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';

interface Told {
  readonly alum?: string;
  readonly madder?: string;
  readonly hardness?: string;
  readonly more?: string;
  readonly log?: string;
}
const trial = ({ alum = '15 %', madder = '50 %', hardness = '18 °dH', more = '', log = '10:00 reached 70 °C' }: Told = {}) =>
  aNote(`kind: trial
recipe: r
date: 2025-05-14
by: A. B.
vessel: enamel pan
water: {hardness: "${hardness}", pH: 7.4}
lots: [root of 2022]
actual:
  - {what: alum, role: mordant, amount: ${alum}}
  - {what: madder, role: dye, amount: ${madder}}
log: ["${log}", "11:00 heat off after 60 min"]
fibre: wool
fibre-mass: 100 g
onto: white
${more}`);
const compared = (...trials: readonly string[]) => {
  const { base } = aNotebook({
    'mordants/alum.md': aNote('kind: mordant\ntitle: Alum'),
    'dyestuffs/madder.md': aNote('kind: dyestuff\ntitle: Madder'),
    'recipes/r.md': aNote('kind: recipe\nfibre: wool'),
    ...Object.fromEntries(trials.map((text, at) => [`trials/t${at}.md`, text])),
  });
  return compareTrials(
    base,
    trials.map((_, at) => `t${at}`),
  );
};

describe('compareTrials', () => {
  test('finds nothing between two alike', () => {
    const found = compared(trial(), trial());
    expect(found?.differences).toEqual([]);
    expect(found?.single).toBeUndefined();
  });
  test('names the one thing that was changed', () => {
    const found = compared(trial(), trial({ hardness: '2 °dH' }));
    expect(found?.single).toMatchObject({ aspect: 'hardness', values: ['18 °dH', '2 °dH'] });
    expect(compared(trial(), trial({ hardness: '2 °dH', alum: '10 %' }))?.single).toBeUndefined();
  });
  test('puts what likely matters more first', () => {
    const found = compared(
      trial(),
      trial({ madder: '100 %', hardness: '9 °dH', log: '10:00 reached 90 °C', more: 'bath: {nth: 2}' })
        .replace('A. B.', 'C. D.')
        .replace('100 g', '50 g'),
    );
    expect(found?.differences.map(({ aspect }) => aspect)).toEqual(['bath', 'dye-amount', 'temperature', 'hardness', 'mass', 'person']);
    const effects = found?.differences.map(({ effect }) => effect) ?? [];
    expect([...effects].sort((a, b) => b - a)).toEqual(effects);
  });
  test('weighs a small difference less than a large one of the same kind', () => {
    const effect = (madder: string) => compared(trial(), trial({ madder }))?.differences[0]?.effect ?? NaN;
    expect(effect('55 %')).toBeLessThan(effect('75 %'));
    expect(effect('75 %')).toBeLessThan(effect('100 %'));
  });
  test('the same hardness in other units is not a difference of numbers worth naming first', () => {
    const found = compared(trial({ hardness: '10 °dH' }), trial({ hardness: '17.8 °fH' }));
    expect(found?.differences[0]).toMatchObject({ aspect: 'hardness', effect: 0.6 });
  });
  test('a material that only one of them used', () => {
    const found = compared(
      trial(),
      trial().replace('{what: alum, role: mordant, amount: 15 %}', '{what: iron, role: mordant, amount: 3 %}'),
    );
    expect(found?.differences.slice(0, 2).map(({ aspect, material }) => [aspect, material])).toEqual([
      ['mordant', 'alum'],
      ['mordant', 'iron'],
    ]);
  });
  test('does not take silence for a difference', () => {
    const found = compared(
      trial(),
      trial()
        .replace(/water:.*\n/, '')
        .replace(/vessel:.*\n/, ''),
    );
    expect(found?.differences).toEqual([]);
    expect(found?.unsaid.map(({ aspect }) => aspect).sort()).toEqual(['hardness', 'pH', 'vessel']);
  });
  test('takes three at once, lists unknown ones and needs two', () => {
    const { base } = aNotebook({ 'trials/a.md': trial(), 'trials/b.md': trial({ alum: '10 %' }), 'trials/c.md': trial({ alum: '20 %' }) });
    expect(compareTrials(base, ['a', 'b', 'c', 'gone'])).toMatchObject({
      missing: ['gone'],
      single: { aspect: 'mordant-amount', values: ['15 %', '10 %', '20 %'] },
    });
    expect(compareTrials(base, ['a', 'gone'])).toBeUndefined();
    expect(compareTrials(base, ['a', 'a'])).toBeUndefined();
  });
});
