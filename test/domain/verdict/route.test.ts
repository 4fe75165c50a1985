import { describe, expect, test } from 'vitest';
import { noteId } from '../../../web/domain/note/note.ts';
import { recipesHangingOn, routeOf, undyedRoute } from '../../../web/domain/verdict/route.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const MATERIALS = {
  'dyestuffs/walnut.md': aDyestuff('Walnut husk'),
  'dyestuffs/weld.md': aDyestuff('Weld'),
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum'),
  'assistants/bran.md': aNote('kind: assistant\ntitle: Bran'),
  'processes/scouring.md': aNote('kind: process\ntitle: Scouring'),
};
const recipe = (ingredients: string, more = '') => aNote(`kind: recipe\nfibre: wool\n${more}ingredients: [${ingredients}]`);
const notebook = (recipes: Readonly<Record<string, string>>) => aNotebook({ ...aWorld, ...MATERIALS, ...recipes }).base;

describe('a route: every material of a recipe and of those it follows, each once', () => {
  test('without a fibre it is the ingredients alone', () => {
    expect(routeOf(notebook({ 'recipes/a.md': recipe('{what: weld, role: dye}') }), noteId('a'), undefined)).toEqual({
      id: 'a',
      recipe: 'a',
      materials: [{ id: 'weld', role: 'dye', recipe: 'a' }],
      dyes: ['weld'],
      inCircle: [],
    });
  });
  test('with one, the fibre is a material too', () => {
    const route = routeOf(notebook({ 'recipes/a.md': recipe('{what: weld, role: dye}') }), noteId('a'), 'wool');
    expect(route.fibre).toBe('wool');
    expect(route.materials.at(-1)).toEqual({ id: 'wool', role: 'fibre' });
  });
  test('asked again, it is the route of the fibre asked for, or of none', () => {
    const base = notebook({ 'recipes/a.md': recipe('{what: weld, role: dye}') });
    const fibres = [undefined, 'wool', 'silk', undefined, 'wool'];
    expect(fibres.map((fibre) => routeOf(base, noteId('a'), fibre).fibre)).toEqual(fibres);
    expect(routeOf(base, noteId('a'), undefined)).not.toHaveProperty('fibre');
  });
  test('a recipe that was edited has the route of what it says now', () => {
    const notes = aNotebook({ ...aWorld, ...MATERIALS, 'recipes/a.md': recipe('{what: weld, role: dye}') });
    expect(routeOf(notes.base, noteId('a'), undefined).dyes).toEqual(['weld']);
    notes.put({ path: 'recipes/a.md', bytes: new TextEncoder().encode(recipe('{what: walnut, role: dye}')) });
    expect(routeOf(notes.base, noteId('a'), undefined).dyes).toEqual(['walnut']);
  });
  test('of a dye asked for twice the first recipe is told, and what was used instead there', () => {
    const base = notebook({
      'recipes/first.md': recipe('{what: weld, role: dye}'),
      'recipes/then.md': recipe('{what: unheard-of, role: dye, stands-for: weld}', 'follows: first\n'),
    });
    expect(routeOf(base, noteId('then'), undefined).materials).toEqual([{ id: 'weld', role: 'dye', recipe: 'first' }]);
  });
  test('an ingredient without a role does what its note is', () => {
    const what = ['weld', 'alum', 'bran', 'scouring', 'unheard-of'].map((id) => `{what: ${id}}`).join(', ');
    const route = routeOf(notebook({ 'recipes/a.md': recipe(what) }), noteId('a'), undefined);
    expect(route.materials.map(({ id, role }) => [id, role])).toEqual([
      ['weld', 'dye'],
      ['alum', 'mordant'],
      ['bran', 'assistant'],
      ['scouring', 'process'],
      ['unheard-of', 'assistant'],
    ]);
    expect(route.dyes).toEqual(['weld']);
  });
  test.each([
    ['first a modifier, then a dye', 'modifier', 'dye'],
    ['first a dye, then a modifier', 'dye', 'modifier'],
  ])('what dyes anywhere in the chain is a dye of the route: %s', (_order, first, then) => {
    const base = notebook({
      'recipes/first.md': recipe(`{what: walnut, role: ${first}}`),
      'recipes/then.md': recipe(`{what: Walnut husk, role: ${then}}`, 'follows: first\n'),
    });
    const route = routeOf(base, noteId('then'), undefined);
    expect(route.dyes).toEqual(['walnut']);
    expect(route.materials.map(({ id, role }) => [id, role])).toEqual([['walnut', 'dye']]);
  });
  test('of a material asked for twice in one role the first recipe is told', () => {
    const base = notebook({
      'recipes/first.md': recipe('{what: alum, role: mordant}'),
      'recipes/then.md': recipe('{what: alum, role: mordant}, {what: weld, role: dye}', 'follows: first\n'),
    });
    expect(routeOf(base, noteId('then'), undefined).materials).toEqual([
      { id: 'alum', role: 'mordant', recipe: 'first' },
      { id: 'weld', role: 'dye', recipe: 'then' },
    ]);
  });
  test('what follows a recipe that is missing, or a note that is none, keeps its own ingredients', () => {
    const base = notebook({ 'recipes/a.md': recipe('{what: weld, role: dye}', 'follows: [lost, alum]\n') });
    expect(routeOf(base, noteId('a'), undefined).materials).toEqual([{ id: 'weld', role: 'dye', recipe: 'a' }]);
  });
});

describe('an undyed colour', () => {
  const base = notebook({
    'fibres/sheep.md': aNote(
      'kind: fibre\ntitle: Sheep\nundyed:\n  - {name: white}\n  - {name: moorit, availability: [{region: england, when: 1300, status: made}]}',
    ),
  });
  test('is the fibre alone, or with the claims of that very colour', () => {
    expect(undyedRoute(base, noteId('sheep'), 'white')).toEqual({
      id: 'sheep/white',
      undyed: 'white',
      materials: [{ id: 'sheep', role: 'fibre' }],
      dyes: [],
      fibre: 'sheep',
      inCircle: [],
    });
    expect(undyedRoute(base, noteId('sheep'), 'moorit')?.materials).toEqual([
      { id: 'sheep', role: 'fibre' },
      { id: 'sheep/moorit', role: 'undyed' },
    ]);
  });
  test('that the fibre does not have, or whose fibre is missing or none, has no route', () => {
    expect(undyedRoute(base, noteId('sheep'), 'blue')).toBeUndefined();
    expect(undyedRoute(base, noteId('goat'), 'white')).toBeUndefined();
    expect(undyedRoute(base, noteId('alum'), 'white')).toBeUndefined();
  });
});

test('the recipes that hang on a material are those whose chain asks for it, or for what stands for it', () => {
  const base = notebook({
    'recipes/green.md': recipe('{what: weld, role: dye}', 'follows: scoured\n'),
    'recipes/scoured.md': recipe('{what: scouring, role: process}, {what: bran, role: assistant}'),
    'recipes/brown.md': recipe('{what: unheard-of, role: dye, stands-for: walnut}'),
  });
  expect(recipesHangingOn(base, 'scouring')).toEqual(['green', 'scoured']);
  expect(recipesHangingOn(base, 'walnut')).toEqual(['brown']);
  expect(recipesHangingOn(base, 'unheard-of')).toEqual([]);
});
