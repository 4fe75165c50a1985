import { describe, expect, test } from 'vitest';
import type { PlanItem } from '../../../web/domain/pot/dye-day.ts';
import { planDyeDay } from '../../../web/domain/pot/dye-day-plan.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const recipe = (yaml: string) => aNote(`kind: recipe\nfibre: wool\nliquor: "30:1"\n${yaml}`);
const { base } = aNotebook({
  'fibres/wool.md': aNote('kind: fibre\nclass: protein'),
  'fibres/silk.md': aNote('kind: fibre\nclass: protein'),
  'fibres/linen.md': aNote('kind: fibre\nclass: cellulose'),
  'mordants/alum.md': aNote('kind: mordant'),
  'mordants/iron.md': aNote('kind: mordant\nnames: [copperas]'),
  'mordants/tin.md': aNote('kind: mordant\ntitle: Tin'),
  'mordants/chrome.md': aNote('kind: mordant\ntitle: Chrome'),
  'assistants/bran.md': aNote('kind: assistant\neveryday: true'),
  'dyestuffs/weld.md': aNote('kind: dyestuff'),
  'dyestuffs/madder.md': aNote('kind: dyestuff'),
  'dyestuffs/woad.md': aNote('kind: dyestuff'),
  'recipes/yellow.md': recipe(
    'ingredients: [{what: alum, role: mordant, amount: 10–20 %}, {what: weld, role: dye, amount: 50–100 %}]\nsteps: [Alum at 80 °C one hour., "Weld at 80 °C, 45 minutes."]',
  ),
  'recipes/red.md': recipe(
    'ingredients: [{what: alum, role: mordant, amount: 15–25 %}, {what: madder, role: dye, amount: 50 %}]\nsteps: [Alum one hour., Soak the madder overnight; dye one to two hours.]',
  ),
  'recipes/strong.md': recipe('ingredients: [{what: alum, role: mordant, amount: 30 %}, {what: madder, role: dye, amount: 50 %}]'),
  'recipes/blue.md': aNote(
    'kind: recipe\nfibre: wool\nliquor: vat\ningredients: [{what: woad, role: dye, amount: 500 %}, {what: bran, role: assistant}]',
  ),
  'recipes/green.md': recipe(
    'follows: [blue]\ningredients: [{what: alum, role: mordant, amount: 10–20 %}, {what: weld, role: dye, amount: 50 %}]',
  ),
  'recipes/green-yellow-first.md': recipe('follows: [yellow]\ningredients: [{what: woad, role: dye, amount: 500 %}]'),
  'recipes/olive.md': recipe(
    'ingredients: [{what: alum, role: mordant, amount: 10–20 %}, {what: weld, role: dye, amount: 50–100 %}, {what: iron, role: modifier, amount: 2 %}]',
  ),
  'recipes/scarlet.md': recipe('ingredients: [{what: tin, role: mordant, amount: 5 %}, {what: madder, role: dye, amount: 10 %}]'),
  'recipes/chrome-red.md': recipe('ingredients: [{what: chrome, role: mordant, amount: 3 %}, {what: madder, role: dye, amount: 10 %}]'),
  'recipes/round-a.md': recipe('follows: [round-b]\ningredients: [{what: weld, role: dye, amount: 10 %}]'),
  'recipes/round-b.md': recipe('follows: [round-a]\ningredients: [{what: madder, role: dye, amount: 10 %}]'),
});
const plan = (...items: readonly PlanItem[]) => planDyeDay(base, items);
const order = (...items: readonly PlanItem[]) =>
  plan(...items).baths.map(({ kind, materials, items: which }) => `${kind} ${materials.join('+')} ${which.join()}`);

describe('planDyeDay, order', () => {
  test('blue first or yellow first, as the recipe says', () => {
    expect(order({ recipe: 'green', fibreGrams: 100 })).toEqual(['vat woad 0', 'mordant alum 0', 'dye weld 0']);
    expect(order({ recipe: 'green-yellow-first', fibreGrams: 100 })).toEqual(['mordant alum 0', 'dye weld 0', 'dye woad 0']);
  });
  test('iron after the dye, mordants ahead of the day', () => {
    const { baths } = plan({ recipe: 'olive', fibreGrams: 100 });
    expect(baths.map(({ kind, when }) => `${kind} ${when}`)).toEqual(['mordant ahead', 'dye day', 'after day']);
    // On blue wool the alum cannot be done ahead of the vat.
    expect(plan({ recipe: 'green', fibreGrams: 100 }).baths.map(({ when }) => when)).toEqual(['day', 'day', 'day']);
  });
  test('no bath comes before one it needs, over every recipe of the demonstration', async () => {
    const demo = await demoNotebook();
    const items = demo.base.ofKind('recipe').map(({ id }) => ({ recipe: id, fibreGrams: 100 }));
    const { baths, problems } = planDyeDay(demo.base, items);
    expect(baths.length).toBeGreaterThan(items.length);
    for (const { nth, after } of baths) for (const before of after) expect(before).toBeLessThan(nth);
    for (const at of items.keys()) expect(baths.some(({ items: which }) => which.includes(at))).toBe(true);
    expect([...new Set(problems.map(({ code }) => code))].sort()).toEqual(['never-dosed', 'staff-only']);
  });
});

describe('planDyeDay, shared baths', () => {
  test('one alum bath where the per cents meet, weighed for all the wool', () => {
    const { baths } = plan({ recipe: 'yellow', fibreGrams: 200 }, { recipe: 'red', fibreGrams: 300 });
    // 10–20 % and 15–25 % meet at 15–20 %: 75–100 g on 500 g.
    expect(baths[0]).toMatchObject({
      kind: 'mordant',
      items: [0, 1],
      fibreGrams: 500,
      weights: [{ what: 'alum', planned: { from: 75, to: 100, unit: 'g' } }],
      liquor: { from: 15_000 },
    });
  });
  test('not where the per cents do not meet, nor across classes of fibre, nor on dyed and undyed', () => {
    expect(
      order({ recipe: 'yellow', fibreGrams: 100 }, { recipe: 'strong', fibreGrams: 100 }).filter((one) => one.startsWith('mordant')),
    ).toHaveLength(2);
    expect(
      order({ recipe: 'yellow', fibreGrams: 100 }, { recipe: 'red', fibreGrams: 100, fibre: 'linen' }).filter((one) =>
        one.startsWith('mordant'),
      ),
    ).toHaveLength(2);
    expect(
      order({ recipe: 'yellow', fibreGrams: 100 }, { recipe: 'green', fibreGrams: 100 }).filter((one) => one.startsWith('mordant')),
    ).toHaveLength(2);
    expect(
      order({ recipe: 'yellow', fibreGrams: 100 }, { recipe: 'red', fibreGrams: 100, fibre: 'silk' }).filter((one) =>
        one.startsWith('mordant'),
      ),
    ).toHaveLength(1);
  });
  test('one vat for the blue and for the green that begins in it', () => {
    expect(order({ recipe: 'blue', fibreGrams: 100 }, { recipe: 'green', fibreGrams: 100 })[0]).toBe('vat woad 0,1');
  });
  test('an exhaust bath comes after the full one and takes no fresh dye', () => {
    const { baths } = plan(
      { recipe: 'red', fibreGrams: 100, exhaustOf: 1, uptake: { from: 0.65, to: 0.65 } },
      { recipe: 'red', fibreGrams: 200 },
    );
    const dyes = baths.filter(({ kind }) => kind === 'dye');
    expect(dyes.map(({ items }) => items)).toEqual([[1], [0]]);
    expect(dyes[1]).toMatchObject({ exhausts: dyes[0]?.nth, weights: [] });
    // 50 % on 200 g, 0.65 taken up, 100 g next: 35 % (arithmetic on the mass balance).
    const left = dyes[1]?.left;
    expect(left?.is === 'reckoned' && left.from).toBeCloseTo(35, 9);
    expect(plan({ recipe: 'red', fibreGrams: 200 }, { recipe: 'red', fibreGrams: 100, exhaustOf: 0 }).baths.at(-1)?.left).toEqual({
      is: 'unknown',
    });
  });
});

describe('planDyeDay, lists', () => {
  test('shopping is summed over baths, everyday things last', () => {
    const { shopping, fibres, largestPotMl } = plan(
      { recipe: 'red', fibreGrams: 200 },
      { recipe: 'olive', fibreGrams: 100 },
      { recipe: 'blue', fibreGrams: 50 },
    );
    expect(shopping.map(({ what, needed, more }) => [what, needed?.from, needed?.to, more])).toEqual([
      ['alum', 45, 60, false],
      ['iron', 2, 2, false],
      ['madder', 100, 100, false],
      ['weld', 50, 100, false],
      ['woad', 250, 250, false],
      ['bran', undefined, undefined, true],
    ]);
    expect(fibres).toEqual([{ fibre: 'wool', grams: 350 }]);
    // 30:1 on 300 g shared alum is 9 L, with a third of room 12 L.
    expect(largestPotMl).toBeCloseTo(12_000, 6);
  });
  test('doubling every mass doubles every weight', () => {
    const items = [
      { recipe: 'red', fibreGrams: 130 },
      { recipe: 'green', fibreGrams: 70 },
    ];
    const [one, two] = [plan(...items), plan(...items.map((item) => ({ ...item, fibreGrams: item.fibreGrams * 2 })))];
    one.shopping.forEach(({ needed }, at) => {
      if (needed) expect((two.shopping[at]?.needed?.from ?? NaN) / needed.from).toBeCloseTo(2, 9);
    });
    // Time never scales.
    expect(two.timeline).toEqual(one.timeline);
  });
  test('the timeline adds stated times, keeps nights apart and says where nothing is stated', () => {
    const { timeline } = plan({ recipe: 'red', fibreGrams: 100 }, { recipe: 'strong', fibreGrams: 100 });
    expect(timeline.map(({ when, begins, ends, stated, wait }) => [when, begins.from, ends.from, ends.to, stated, wait?.from])).toEqual([
      ['ahead', 0, 60, 60, true, undefined],
      ['ahead', 60, 60, 60, false, undefined],
      ['day', 0, 60, 120, true, 480],
      ['day', 60, 60, 120, false, undefined],
    ]);
  });
});

describe('planDyeDay, what it will not do and what is amiss', () => {
  test('never doses chromium, and tin for staff only', () => {
    const items = [
      { recipe: 'scarlet', fibreGrams: 100 },
      { recipe: 'chrome-red', fibreGrams: 100 },
    ];
    for (const audience of ['public', 'staff'] as const) {
      const { baths, shopping, problems } = planDyeDay(base, items, audience);
      const weight = (what: string) => baths.flatMap(({ weights }) => weights).find((one) => one.what === what);
      expect(weight('chrome')?.planned).toBeUndefined();
      expect(shopping.some(({ what }) => what === 'chrome')).toBe(false);
      expect(weight('tin')?.planned?.from).toBe(audience === 'staff' ? 5 : undefined);
      expect(problems.map(({ code }) => code).sort()).toEqual(audience === 'staff' ? ['never-dosed'] : ['never-dosed', 'staff-only']);
    }
  });
  test('says what is amiss and plans the rest', () => {
    const found = plan(
      { recipe: 'yelow', fibreGrams: 100 },
      { recipe: 'yellow', fibreGrams: 0 },
      { recipe: 'red', fibreGrams: 100, exhaustOf: 1 },
      { recipe: 'round-a', fibreGrams: 100 },
      { recipe: 'red', fibreGrams: 100, fibre: 'linen' },
      { recipe: 'red', fibreGrams: 100, fibre: 'straw' },
    );
    expect(found.problems.map(({ code, item }) => [code, item])).toEqual([
      ['recipe-unknown', 0],
      ['fibre-mass-impossible', 1],
      ['exhaust-of-nothing', 2],
      ['chain-in-circle', 3],
      ['fibre-other-class', 4],
      ['fibre-unknown', 5],
    ]);
    expect(found.problems[0]?.about).toContain('yellow');
    expect(found.baths.length).toBeGreaterThan(4);
    expect(plan().problems.map(({ code }) => code)).toEqual(['nothing-planned']);
  });
  test('an item that finishes its own bath, or one that finishes another exhaust, is no exhaust', () => {
    expect(plan({ recipe: 'red', fibreGrams: 100, exhaustOf: 0 }).problems.map(({ code }) => code)).toEqual(['exhaust-of-nothing']);
  });
});
