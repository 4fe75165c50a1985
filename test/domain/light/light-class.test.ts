import { describe, expect, test } from 'vitest';
import { lightClassOf } from '../../../web/domain/light/light-class.ts';
import { noteId } from '../../../web/domain/note/note.ts';
import { routeOf } from '../../../web/domain/verdict/route.ts';
import { aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const dye = (title: string, ...grades: readonly string[]) =>
  aNote(`kind: dyestuff\ntitle: ${title}\nlightfast:\n${grades.map((grade) => `  - {${grade}}`).join('\n')}`);
const recipe = (fibre: string, ...ingredients: readonly string[]) =>
  aNote(`kind: recipe\ntitle: R\nfibre: ${fibre}\ningredients:\n${ingredients.map((one) => `  - {${one}}`).join('\n')}`);

const notebook = aNotebook({
  ...aWorld,
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum'),
  'mordants/tin.md': aNote('kind: mordant\ntitle: Tin'),
  'dyestuffs/madder.md': dye(
    'Madder',
    'on: wool, grade: "4-6", scale: blue wool class',
    'on: wool, mordant: alum, grade: "3-6", scale: blue wool class',
    'on: wool, mordant: tin, grade: "7", scale: blue wool class',
    'on: silk, grade: "1", scale: blue wool class',
    'on: wool, grade: below L2, scale: AATCC blue wool',
  ),
  'dyestuffs/woad.md': dye('Woad', 'on: wool, grade: "5-6", scale: blue wool class'),
  'dyestuffs/kermes.md': dye('Kermes', 'on: wool, grade: "1-3", scale: blue wool class'),
  'dyestuffs/cochineal.md': dye('Cochineal', 'on: wool, grade: "4", scale: blue wool class'),
  'dyestuffs/weld.md': dye('Weld', 'on: wool, grade: below L2, scale: AATCC blue wool'),
  'recipes/red.md': recipe('wool', 'what: alum, role: mordant', 'what: madder, role: dye'),
  'recipes/violet.md': recipe('wool', 'what: alum, role: mordant', 'what: madder, role: dye', 'what: woad, role: dye'),
  'recipes/green.md': recipe('wool', 'what: weld, role: dye', 'what: woad, role: dye'),
  'recipes/scarlet.md': recipe('wool', 'what: cochineal, role: dye, stands-for: kermes'),
  'recipes/kermes-red.md': recipe('wool', 'what: kermes, role: dye'),
});
const { base } = notebook;
const classOf = (id: string, fibre: string) => lightClassOf(base, routeOf(base, noteId(id), fibre));

describe('lightClassOf', () => {
  test('every source that fits fibre and mordant counts, the others are named with why', () => {
    const found = classOf('red', 'wool');
    expect(found.classes).toEqual({ from: 3, to: 6 });
    expect(found.grades.map(({ passedOver }) => passedOver)).toEqual([undefined, undefined, 'other-mordant', 'other-fibre', 'other-scale']);
  });

  test('a kind of wool is wool', () => {
    expect(classOf('red', 'fine-wool').classes).toEqual({ from: 3, to: 6 });
  });

  test('a fibre without a grade is unknown, not as wool', () => {
    expect(classOf('red', 'linen')).toMatchObject({ unknown: 'no-grade', without: ['madder'] });
  });

  test('over several dyes the most sensitive decides', () => {
    expect(classOf('violet', 'wool').classes).toEqual({ from: 3, to: 6 });
  });

  test('one dye of unknown class makes the whole unknown', () => {
    expect(classOf('green', 'wool')).toMatchObject({ unknown: 'no-grade', without: ['weld'] });
    expect(classOf('green', 'wool').classes).toBeUndefined();
  });

  test('what was really used fades: by recipe, and by trial', () => {
    expect(classOf('scarlet', 'wool').classes).toEqual({ from: 4, to: 4 });
    const route = routeOf(base, noteId('kermes-red'), 'wool');
    expect(lightClassOf(base, route, 'wool', new Map([['kermes', 'cochineal']])).classes).toEqual({ from: 4, to: 4 });
    expect(lightClassOf(base, route, 'wool').classes).toEqual({ from: 1, to: 3 });
  });

  test('undyed cloth has no class', () => {
    expect(lightClassOf(base, { id: 'wool/white', materials: [{ id: 'wool', role: 'fibre' }], dyes: [], inCircle: [] })).toEqual({
      unknown: 'undyed',
      without: [],
      grades: [],
    });
  });
});
