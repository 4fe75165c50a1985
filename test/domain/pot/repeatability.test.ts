import { describe, expect, test } from 'vitest';
import { repeatability } from '../../../web/domain/pot/repeatability.ts';
import { dyedRecipes } from '../../../web/domain/verdict/cloths.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

interface Pot {
  readonly lab: readonly [number, number, number];
  readonly amount?: string;
  readonly nth?: number;
  readonly onto?: string;
  readonly by?: string;
  readonly hardness?: string;
  readonly fibre?: string;
}
const spread = (pots: readonly Pot[]) => {
  const { base, colours } = aNotebook({
    'fibres/wool.md': aNote('kind: fibre\nclass: protein'),
    'fibres/silk.md': aNote('kind: fibre\nclass: protein'),
    'dyestuffs/madder.md': aNote('kind: dyestuff'),
    'recipes/r.md': aNote('kind: recipe\nfibre: [wool, silk]'),
    ...Object.fromEntries(
      pots.map(({ lab, amount = '50 %', nth, onto = 'white', by = 'A', hardness = '9 °dH', fibre = 'wool' }, at) => [
        `trials/t${at}.md`,
        aNote(`kind: trial
recipe: r
by: ${by}
water: {hardness: "${hardness}"}
${nth === undefined ? '' : `bath: {nth: ${nth}}`}
actual: [{what: madder, role: dye, amount: ${amount}}]
fibre: ${fibre}
onto: ${onto}
colour: {lab: [${lab.join(', ')}], illuminant: D65, observer: 10, by: instrument}`),
      ]),
    ),
  });
  return repeatability(base, dyedRecipes(base, colours)[0]?.samples ?? []);
};
/** On the grey axis near L* 50 ΔE00 is close to the difference of L*. */
const grey = (l: number): readonly [number, number, number] => [l, 0, 0];

describe('repeatability', () => {
  test('is untested below three pots of one way', () => {
    expect(spread([]).repeatable).toBe('untested');
    expect(spread([{ lab: grey(50) }, { lab: grey(50) }]).repeatable).toBe('untested');
    expect(spread([{ lab: grey(50) }, { lab: grey(40), amount: '100 %' }, { lab: grey(60), amount: '25 %' }]).repeatable).toBe('untested');
  });
  test('is yes where repeats lie near their mean, no where they do not', () => {
    const near = spread([{ lab: grey(49) }, { lab: grey(50) }, { lab: grey(51) }]);
    expect(near.repeatable).toBe('yes');
    // Mean of 1, 0, 1 on the grey axis: two thirds.
    expect(near.mcdm).toBeCloseTo(0.667, 1);
    expect(spread([{ lab: grey(40) }, { lab: grey(50) }, { lab: grey(60) }])).toMatchObject({ repeatable: 'no' });
  });
  test('the worst set of repeats decides', () => {
    const good = [48, 49, 50].map((l) => ({ lab: grey(l) }));
    const bad = [20, 35, 50].map((l) => ({ lab: grey(l), amount: '100 %' }));
    expect(spread([...good, ...bad]).repeatable).toBe('no');
  });
  test('leaves out later baths and other grounds, and says so', () => {
    const found = spread([
      { lab: grey(49) },
      { lab: grey(50) },
      { lab: grey(51) },
      { lab: grey(80), nth: 2 },
      { lab: grey(20), onto: 'brown' },
    ]);
    expect(found.repeatable).toBe('yes');
    expect(found.leftOut.map(({ sample: { sample }, why }) => [sample.onto, why])).toEqual([
      ['white', 'later-bath'],
      ['brown', 'other-ground'],
    ]);
  });
  test('groups by fibre, water and person', () => {
    const found = spread([
      { lab: grey(50), by: 'A', hardness: '2 °dH' },
      { lab: grey(54), by: 'B', hardness: '18 °dH' },
      { lab: grey(52), by: 'B', hardness: '18 °dH' },
      { lab: grey(70), by: 'B', hardness: '2 °dH', fibre: 'silk' },
    ]);
    expect(found.byFibre.map(({ key, count }) => [key, count])).toEqual([
      ['wool', 3],
      ['silk', 1],
    ]);
    expect(found.byPerson.map(({ key, count }) => [key, count])).toEqual([
      ['B', 3],
      ['A', 1],
    ]);
    expect(found.byWater.map(({ count }) => count)).toEqual([2, 2]);
    expect(found.byFibre[0]?.mean[0]).toBeCloseTo(52, 6);
    expect(found.byFibre[1]?.mcdm).toBeUndefined();
  });
  test('counts every sample of the demonstration once, in or out', async () => {
    const { base, colours } = await demoNotebook();
    for (const { samples } of dyedRecipes(base, colours)) {
      const found = repeatability(base, samples);
      expect(found.byFibre.reduce((sum, { count }) => sum + count, 0) + found.leftOut.length).toBe(samples.length);
    }
  });
});
