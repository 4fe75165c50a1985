import { describe, expect, test } from 'vitest';
import { noteId } from '../../../web/domain/note/note.ts';
import { CAUTION_SOURCES } from '../../../web/domain/pot/caution-table.ts';
import { planCautions, recipeCautions, substanceCautions } from '../../../web/domain/pot/cautions-for.ts';
import { planDyeDay } from '../../../web/domain/pot/dye-day-plan.ts';
import { cautionWords } from '../../../web/notebook/words/pot-caution-words.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const { base } = aNotebook({
  'fibres/wool.md': aNote('kind: fibre\nclass: protein'),
  'fibres/linen.md': aNote('kind: fibre\nclass: cellulose'),
  'mordants/iron.md': aNote('kind: mordant\nnames: [copperas]\ncautions: [Ours is kept in the red tin.]'),
  'mordants/tin.md': aNote('kind: mordant'),
  'mordants/alum.md': aNote('kind: mordant'),
  'dyestuffs/oak-galls.md': aNote('kind: dyestuff\nmatter: plant'),
  'dyestuffs/cork.md': aNote('kind: dyestuff\nmatter: lichen'),
  'dyestuffs/madder.md': aNote('kind: dyestuff\nmatter: plant'),
  'recipes/black.md': aNote(
    'kind: recipe\nfibre: wool\nliquor: "40:1"\ningredients: [{what: oak-galls, role: dye, amount: 10 %}, {what: iron, role: mordant, amount: 3 %}]\nsteps: [Crush the galls., Simmer at 80 °C one hour., Rinse.]\ncautions: [Two people at the rinsing trough.]',
  ),
  'recipes/scarlet.md': aNote(
    'kind: recipe\nfibre: wool\ningredients: [{what: tin, role: mordant, amount: 4 %}, {what: madder, role: dye, amount: 10 %}]',
  ),
  'recipes/red-linen.md': aNote(
    'kind: recipe\nfibre: linen\ningredients: [{what: alum, role: mordant, amount: 10 %}, {what: madder, role: dye, amount: 10 %}]',
  ),
});
const codes = (list: readonly { readonly code?: string }[]) => list.flatMap(({ code }) => (code === undefined ? [] : [code]));

describe('substanceCautions', () => {
  test('by any name, by form and by matter, the note’s own words beside them', () => {
    expect(codes(substanceCautions(base, 'copperas'))).toEqual(['iron-harmful', 'iron-weakens']);
    expect(substanceCautions(base, 'iron').some(({ text }) => text === 'Ours is kept in the red tin.')).toBe(true);
    expect(codes(substanceCautions(base, 'cork'))).toContain('lichen');
    expect(codes(substanceCautions(base, 'alum', 'potassium dichromate'))).toContain('chrome-never');
    expect(codes(substanceCautions(base, 'oil of vitriol'))).toContain('history-never');
    expect(codes(substanceCautions(base, 'bran'))).toEqual([]);
  });
});

describe('recipeCautions', () => {
  const found = recipeCautions(base, noteId('black'));
  test('stand at the step where the hand is', () => {
    expect(found.filter(({ place }) => place === 'step').map(({ step, code }) => [step, code])).toEqual([
      [0, 'powder-dust'],
      [1, 'hot-liquor'],
    ]);
  });
  test('put iron with tannin on the tag, and the recipe’s own words and the competent person last', () => {
    expect(codes(found.filter(({ place }) => place === 'tag'))).toEqual(['iron-tannin-weakens', 'not-for-small-children']);
    expect(found.at(-2)?.text).toBe('Two people at the rinsing trough.');
    expect(found.at(-1)?.code).toBe('competent-person');
    expect(recipeCautions(base, noteId('nothing'))).toEqual([]);
  });
});

describe('planCautions', () => {
  const day = (recipe: string, grams: number, audience: 'public' | 'staff' = 'public') =>
    codes(planCautions(base, planDyeDay(base, [{ recipe, fibreGrams: grams }], audience), audience));
  test('wool is quarantined, linen is not', () => {
    expect(day('black', 100)).toContain('quarantine-wool');
    expect(day('red-linen', 100)).not.toContain('quarantine-wool');
  });
  test('a heavy pot, the children’s station and the waste, where they apply', () => {
    expect(day('black', 100)).not.toContain('heavy-pot');
    expect(day('black', 500)).toContain('heavy-pot');
    expect(day('black', 500)).toContain('children-station');
    expect(day('black', 500, 'staff')).not.toContain('children-station');
    expect(day('scarlet', 100, 'staff')).toContain('waste-metals');
    expect(day('red-linen', 100)).not.toContain('waste-metals');
    expect(day('red-linen', 100)).toContain('waste-alum-iron');
  });
  test('nothing planned needs no caution', () => expect(planCautions(base, planDyeDay(base, []))).toEqual([]));
});

describe('the table', () => {
  test('every caution has a source and words of its own', () => {
    expect(Object.keys(cautionWords).sort()).toEqual(Object.keys(CAUTION_SOURCES).sort());
    expect(new Set(Object.values(cautionWords)).size).toBe(Object.keys(cautionWords).length);
    for (const sources of Object.values(CAUTION_SOURCES)) expect(sources.every((source) => source.length > 3)).toBe(true);
  });
  test('every recipe of the demonstration ends with local rules, and every lichen, tin and chrome one warns', async () => {
    const demo = await demoNotebook();
    for (const { id } of demo.base.ofKind('recipe')) expect(recipeCautions(demo.base, id).at(-1)?.code).toBe('competent-person');
    expect(codes(recipeCautions(demo.base, noteId('northern-orchil-wool')))).toContain('lichen');
    expect(codes(recipeCautions(demo.base, noteId('cochineal-tin-wool')))).toEqual(
      expect.arrayContaining(['tin-harmful', 'tin-copper-staff', 'history-never']),
    );
    expect(codes(recipeCautions(demo.base, noteId('logwood-chrome-wool')))).toContain('chrome-never');
    expect(codes(recipeCautions(demo.base, noteId('woad-wool')))).toContain('lye-burns');
  });
});
