import { beforeAll, describe, expect, test } from 'vitest';
import type { TypedItem } from '../../../web/notebook/dye-day-address.ts';
import type { Notebook } from '../../../web/notebook/notebook.ts';
import { dyeDayView } from '../../../web/notebook/views/dye-day-view.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

let demo: Notebook;
beforeAll(async () => {
  demo = await demoNotebook();
});
const view = (items: readonly Partial<TypedItem>[], staff = false) =>
  dyeDayView(demo, { items: items.map((one) => ({ recipe: '', fibreGrams: 100, skeins: 1, ...one })), staff, begins: '09:00' });

describe('dyeDayView', () => {
  test('two alumed yarns share one bath, weighed for both; 350 g at 10 % are 35 g (facts: the dyer’s % WOF example)', () => {
    const { baths, fibresNeeded } = view([
      { recipe: 'madder-alum-wool', fibreGrams: 300, percent: { alum: 10 } },
      { recipe: 'weld-alum-wool', fibreGrams: 50, percent: { alum: 10 } },
    ]);
    expect(baths[0]).toMatchObject({
      title: 'Mordant bath: alum',
      isShared: true,
      isAhead: true,
      pot: '10.5 L of liquor, in a pot of 14 L or more',
    });
    expect(baths[0]?.weights).toMatchObject([{ amount: '35 g', what: 'Alum' }]);
    expect(fibresNeeded).toEqual(['350 g wool']);
  });

  test('green: the vat comes first because the recipe says so, and the alum waits for it', () => {
    const { items, baths } = view([{ recipe: 'green-woad-weld-wool' }]);
    expect(items[0]?.order).toMatch(/^1 vat: woad.*, then 2 mordant bath: alum, then 3 dye bath: weld/);
    expect(baths.map(({ isAhead }) => isAhead)).not.toContain(true);
  });

  test('a rest of a bath: 200 g at 100 %, 65 % taken up, then 100 g: 70 % (facts, exhaust baths)', () => {
    const { baths } = view([
      { recipe: 'madder-alum-wool', fibreGrams: 200, percent: { madder: 100 } },
      { recipe: 'madder-alum-wool', fibreGrams: 100, exhaustOf: 0, uptake: { from: 0.65, to: 0.65 } },
    ]);
    const rest = baths.find(({ left }) => left !== '');
    expect(rest?.left).toContain('70 % of this fibre’s weight at most (100 % × (1 − 0.65) × 200 g ÷ 100 g)');
    expect(rest?.weights.map(({ what }) => what)).not.toContain('Madder');
  });

  test('tin is weighed out for staff only; chrome for nobody', () => {
    const files = {
      'fibres/wool.md': aNote('kind: fibre\nclass: protein'),
      'mordants/tin.md': aNote('kind: mordant\ntitle: Tin salt'),
      'dyestuffs/lac.md': aNote('kind: dyestuff'),
      'recipes/scarlet.md': aNote(
        'kind: recipe\nfibre: wool\nliquor: "30:1"\ningredients: [{what: tin, role: mordant, amount: 2 %}, {what: lac, role: dye, amount: 10 %}]',
      ),
    };
    const tin = (staff: boolean) =>
      dyeDayView(aNotebook(files), { items: [{ recipe: 'scarlet', fibreGrams: 100, skeins: 1 }], staff, begins: '09:00' })
        .baths.flatMap(({ weights }) => weights)
        .find(({ what }) => /tin/i.test(what));
    expect(tin(false)).toMatchObject({ amount: '' });
    expect(tin(true)?.amount).toBe('2 g');
    const chrome = view([{ recipe: 'logwood-chrome-wool' }], true).baths.flatMap(({ weights }) => weights);
    expect(chrome.find(({ what }) => /chrom/i.test(what))).toMatchObject({ amount: '' });
  });

  test('the clock runs from the hour the day begins; heat at a step says so there', () => {
    const { timeline, baths } = view([{ recipe: 'madder-alum-wool' }]);
    expect(timeline.find(({ bath }) => bath === 2)?.clock).toBe('09:00 to 10:00, or 09:00 to 11:00 where everything takes longest');
    expect(baths[1]?.steps.find(({ text }) => text.includes('65–70 °C'))?.cautions.join(' ')).toContain('scalds');
  });

  test('gathering: each plant once, under its months, with what has to be settled first', () => {
    const { months, plants, notGathered } = view([{ recipe: 'madder-alum-wool' }, { recipe: 'cudbear-wool' }]);
    expect(months.map(({ month }) => month)).toContain('October');
    expect(plants.filter(({ id }) => id === 'madder')).toHaveLength(1);
    expect(plants[0]?.rules.join(' ')).toContain('landowner');
    expect(notGathered.join(' ')).toContain('A lichen: not gathered');
  });

  test('what cannot be planned says so and the rest stands', () => {
    const { items, baths, problems } = view([
      { recipe: 'no-such' },
      { recipe: 'weld-alum-wool', fibreGrams: -5 },
      { recipe: 'weld-alum-wool' },
    ]);
    expect(items.map((one) => one.problems.length)).toEqual([1, 1, 0]);
    expect(baths.length).toBeGreaterThan(0);
    expect(problems).toEqual([]);
    expect(view([]).problems[0]).toContain('Nothing is planned yet');
  });

  test('every recipe of the demonstration can be planned, and the day always ends with local rules and a competent person', () => {
    for (const { id } of demo.base.ofKind('recipe')) {
      const { care, baths } = view([{ recipe: id }]);
      expect(baths.length, id).toBeGreaterThan(0);
      expect(care.at(-1)?.texts.at(-1), id).toContain('competent person');
    }
  });
});
