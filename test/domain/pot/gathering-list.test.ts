import { describe, expect, test } from 'vitest';
import { planDyeDay } from '../../../web/domain/pot/dye-day-plan.ts';
import { gatheringList } from '../../../web/domain/pot/gathering-list.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const { base } = aNotebook({
  'dyestuffs/weld.md': aNote(
    'kind: dyestuff\nlatin: Reseda luteola\nmatter: plant\npart: whole flowering herb\ngather: {months: [6, 7], year-of-growth: second, note: before much seed}',
  ),
  'dyestuffs/madder.md': aNote('kind: dyestuff\nmatter: plant\npart: root\ngather: {months: [10, 11, 3], year-of-growth: third}'),
  'dyestuffs/myrtle.md': aNote('kind: dyestuff\nmatter: plant\npart: leaf\ncautions: [Grows on protected bogs.]'),
  'dyestuffs/cork.md': aNote('kind: dyestuff\nmatter: lichen\ngather: {months: [11]}'),
  'dyestuffs/webcap.md': aNote('kind: dyestuff\nmatter: fungus\npart: cap\ngather: {months: [9]}\ncautions: [Deadly webcaps look alike.]'),
  'dyestuffs/kermes.md': aNote('kind: dyestuff\nmatter: insect'),
  'recipes/all.md': aNote(`kind: recipe
ingredients:
  - {what: weld, role: dye, amount: 50–100 %, form: dried tops}
  - {what: madder, role: dye, amount: 50 %}
  - {what: myrtle, role: dye, amount: 100 %, form: fresh leaf}
  - {what: cork, role: dye, amount: 50 %}
  - {what: webcap, role: dye, amount: 100 %}
  - {what: kermes, role: dye, amount: 50 %}`),
});

describe('gatheringList', () => {
  const list = gatheringList(base, planDyeDay(base, [{ recipe: 'all', fibreGrams: 600 }]));
  test('is by month, with part, year of growth and note', () => {
    expect(list.months.map(({ month, gather }) => [month, gather.map(({ dyestuff }) => dyestuff)])).toEqual([
      [3, ['madder']],
      [6, ['weld']],
      [7, ['weld']],
      [9, ['webcap']],
      [10, ['madder']],
      [11, ['madder']],
    ]);
    expect(list.months[1]?.gather[0]).toMatchObject({
      part: 'whole flowering herb',
      yearOfGrowth: 'second',
      note: 'before much seed',
      latin: ['Reseda luteola'],
    });
  });
  // 600 g of wool at 50 % are 300 g of dried madder, 2.1 kg fresh at one grower's 7:1.
  test('reckons fresh from dried by each ratio that may speak', () => {
    const madder = list.months[0]?.gather[0];
    expect(madder?.needed).toEqual({ from: 300, to: 300, unit: 'g' });
    expect(madder?.fresh.map(({ grams }) => grams)).toEqual([
      { from: 2100, to: 2100 },
      { from: 900, to: 1500 },
    ]);
    // Fresh leaf is asked for as it is.
    expect(list.noMonth[0]?.fresh).toEqual([]);
  });
  test('never lists a lichen for gathering, nor what is bought', () => {
    expect(list.months.flatMap(({ gather }) => gather).some(({ dyestuff }) => dyestuff === 'cork')).toBe(false);
    expect(list.notGathered).toEqual([
      { dyestuff: 'cork', why: 'lichen' },
      { dyestuff: 'kermes', why: 'bought' },
    ]);
  });
  test('carries the rules of gathering', () => {
    const rules = new Map([...list.months.flatMap(({ gather }) => gather), ...list.noMonth].map((one) => [one.dyestuff, one.rules]));
    expect(rules.get('weld')).toEqual(['ask-owner', 'take-little']);
    expect(rules.get('madder')).toContain('no-uprooting');
    expect(rules.get('myrtle')).toContain('protected');
    expect(rules.get('webcap')).toEqual(expect.arrayContaining(['expert-only', 'poisonous']));
  });
  test('no lichen of the demonstration is ever listed for gathering', async () => {
    const demo = await demoNotebook();
    const items = demo.base.ofKind('recipe').map(({ id }) => ({ recipe: id, fibreGrams: 100 }));
    const found = gatheringList(demo.base, planDyeDay(demo.base, items));
    const gathered = [...found.months.flatMap(({ gather }) => gather), ...found.noMonth];
    expect(gathered.length).toBeGreaterThan(10);
    for (const { dyestuff } of gathered) {
      const record = demo.base.note(dyestuff)?.record;
      expect(record?.kind === 'dyestuff' && record.matter).not.toBe('lichen');
    }
  });
});
