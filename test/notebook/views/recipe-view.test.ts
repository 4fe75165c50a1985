import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import { periodView } from '../../../web/notebook/views/period-view.ts';
import { recipeView } from '../../../web/notebook/views/recipe-view.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const demo = await demoNotebook();
const old = aNotebook({
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff('Madder'),
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum'),
  'mordants/tin.md': aNote('kind: mordant\ntitle: Tin chloride\nnames: [tin]'),
  'recipes/red.md': aNote(
    `kind: recipe
title: Red
fibre: wool
ingredients:
  - { what: alum, role: mordant, amount: 4 oz/lb }
  - { what: madder, role: dye, amount: 3 parts }
  - { what: tin, role: mordant, amount: 1 oz/lb }`,
  ),
});

describe('a measure that may mean several', () => {
  // The pound of 12 ounces and that of 16: Troy (Lueger 1909) and the agreement of 1959; 4 of 12 are 33.3 %, 4 of 16 are 25 %.
  test.each([
    [undefined, '25 g', ''],
    ['lb', '25 g', 'lb'],
    ['lb troy', '33.3 g', 'lb troy'],
    ['cologne pound', '25 g', 'cologne pound'],
  ])('%s: alum for 100 g of wool is %s', (chosen, planned, means) => {
    const view = recipeView(old, 'red', 100, 'public', chosen === undefined ? {} : { measures: { lb: chosen } });
    expect(view?.ingredients[0]).toMatchObject({ asPlanned: planned, unit: { written: 'lb', means } });
    // The other measures stay to be chosen, so that a choice can be taken back.
    expect(view?.ingredients[0]?.unit?.possible.map(({ name }) => name)).toEqual(expect.arrayContaining(['lb', 'lb troy', 'lb tower']));
    expect(/Say which is meant/.test(view?.ingredients[0]?.problem ?? '')).toBe(chosen === undefined);
  });

  test('parts weigh what the reader says one weighs', () => {
    const open = recipeView(old, 'red', 100)?.ingredients[1];
    expect(open).toMatchObject({ asPlanned: '', inParts: true, problem: expect.stringMatching(/how much one part weighs/) as string });
    expect(recipeView(old, 'red', 100, 'public', { partGrams: 7 })?.ingredients[1]).toMatchObject({ asPlanned: '21 g', problem: '' });
  });

  test('what is for staff alone gives no unit away', () => {
    const hidden = recipeView(old, 'red', 100)?.ingredients[2];
    expect(hidden).toMatchObject({ asPlanned: '', asWritten: '' });
    expect(hidden).not.toHaveProperty('unit');
    expect(recipeView(old, 'red', 100, 'staff')?.ingredients[2]).toMatchObject({ asPlanned: '6.25 g', unit: { written: 'lb' } });
  });
});

describe('a recipe of the demonstration', () => {
  test('its spread stands by fibre, water and person', () => {
    const view = recipeView(demo, 'madder-alum-wool', 100);
    expect(new Set(view?.spreadBy.map(({ by }) => by))).toEqual(new Set(['fibre', 'water', 'person']));
  });

  test('the figure is the mean CIEDE2000 from the mean', () => {
    const labs = { a1: [40, 40, 20], a2: [44, 36, 24], b1: [50, 30, 20] } as const;
    const trials = Object.entries(labs).map(([id, lab]): [string, string] => [
      `trials/${id}.md`,
      aNote(
        `kind: trial\ntitle: ${id}\nrecipe: red\nby: ${id.startsWith('a') ? 'Ann' : 'Bo'}\nfibre: wool\nsamples: [{code: ${id}, colour: {lab: [${lab.join(', ')}], illuminant: D65, observer: 10}}]`,
      ),
    ]);
    const view = recipeView(
      aNotebook({ ...aWorld, 'recipes/red.md': aNote('kind: recipe\ntitle: Red\nfibre: wool'), ...Object.fromEntries(trials) }),
      'red',
      100,
    );
    // MCDM by its definition (Billmeyer & Alessi 1981), here in CIEDE2000, for Ann's two.
    const apart = [labs.a1, labs.a2].map((lab) => ciede2000([...lab], [42, 38, 22]));
    const mcdm = ((apart[0] ?? NaN) + (apart[1] ?? NaN)) / 2;
    expect(view?.spreadBy.filter(({ by }) => by === 'person').map(({ key, says }) => [key, says])).toEqual([
      ['Ann', `2 samples of 2 pots: MCDM ΔE00 ${mcdm.toFixed(1)}, the farthest ${Math.max(...apart).toFixed(1)}`],
      ['Bo', '1 sample of 1 pot: no spread to tell'],
    ]);
  });

  test('madder to be weighed dry can be reckoned fresh, with the figure’s source', () => {
    const dye = recipeView(demo, 'madder-alum-wool', 600)?.ingredients.find(({ id }) => id === 'madder')?.dye;
    expect(dye?.ratios[0]).toMatchObject({ from: 7, to: 7, source: expect.stringContaining('suzi-madder-2013') as string });
    expect(dye?.grams.from).toBeCloseTo((600 * (dye?.percent.from ?? 0)) / 100, 9);
  });

  test('the claims that make it right for a place and date are there, and it leads to ask', () => {
    const judged = periodView(demo, 'madder-alum-wool', { region: 'hanse-towns', when: '1370' });
    const madder = judged?.period?.materials.find(({ id }) => id === 'madder');
    expect(madder?.stands).toMatch(/^Madder was (?:imported|to hand): .*\d{4}/);
    // Each claim once: what is said of a material stands with it alone.
    const said = judged?.period?.materials.flatMap(({ stands, claims }) => [stands, ...claims]) ?? [];
    expect(new Set([...said, ...(judged?.period?.because ?? [])]).size).toBe(said.length + (judged?.period?.because.length ?? 0));
    expect(decodeURIComponent(judged?.period?.ask ?? '')).toMatch(/^#\/ask\?colour=[\d.,-]+&region=hanse-towns&when=1370&fibre=wool$/);
    // Cochineal of the New World cannot have been in a Hanse town before 1492.
    expect(periodView(demo, 'cochineal-tin-wool', { region: 'hanse-towns', when: '1370' })?.period?.verdict).not.toMatch(
      /Attested|Feasible/,
    );
  });

  test('a place or date that cannot be read is told, and no recipe is no answer', () => {
    expect(periodView(demo, 'madder-alum-wool', { region: 'hanse-towns', when: 'soon' })).toMatchObject({
      problems: [{ part: 'when', problem: 'unreadable' }],
    });
    expect(periodView(demo, 'madder', { region: 'hanse-towns', when: '1370' })).toBeUndefined();
  });
});
