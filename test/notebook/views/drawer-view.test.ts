import { describe, expect, test } from 'vitest';
import { drawerNotes, drawerView } from '../../../web/notebook/views/drawer-view.ts';
import { aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const notebook = aNotebook({
  ...aWorld,
  'd/madder.md': aNote(
    'kind: dyestuff\ntitle: Madder\nlatin: Rubia tinctorum\navailability: [{region: york, when: 850–950, status: grown, source: a}]',
  ),
  'd/weld.md': aNote('kind: dyestuff\ntitle: Weld'),
  'r/red.md': aNote('kind: recipe\ntitle: Red\nfibre: wool\ningredients: [{what: Rubia tinctorum, role: dye}]'),
  't/one.md': aNote('kind: trial\ntitle: One\nrecipe: red\ndate: 2025-05-14'),
  'x/old.md': aNote('kind: text\ntitle: Old text\nregion: england\nwhen: 1301–1350\nsource: a'),
  'x/bc.md': aNote('kind: text\ntitle: Older\nregion: england\nwhen: 50 BC\nsource: a'),
  'plain.md': 'Words.',
});
const cards = (by: Parameters<typeof drawerView>[1]) => drawerView(notebook, by).map(({ title, count }) => `${title} ${count}`);
const ids = (by: Parameters<typeof drawerView>[1], key: string) => drawerNotes(notebook, by, key).map(({ id }) => id);

describe('drawerView', () => {
  test('by kind, in the order of kinds', () => {
    expect(cards('kind').slice(0, 2)).toEqual(['Dyestuffs 2', 'Fibres 4']);
    expect(cards('kind').at(-1)).toBe('Reading notes 1');
  });

  test('by dyestuff: under any of its names, and a trial under its recipe’s', () => {
    expect(cards('dyestuff')).toEqual(['Madder 3', 'Weld 1']);
    expect(ids('dyestuff', 'madder')).toEqual(['madder', 'one', 'red']);
  });

  test('by place: a material stands where it is claimed, and what says no place stands last', () => {
    expect(ids('place', 'york')).toContain('madder');
    expect(ids('place', 'england')).toContain('old');
    expect(drawerView(notebook, 'place').at(-1)?.key).toBe('none');
  });

  test('by date: centuries in order, a span under each it touches', () => {
    expect(cards('date').slice(0, 4)).toEqual(['1st century BC 1', '9th century 1', '10th century 1', '14th century 1']);
    expect(drawerView(notebook, 'date').at(-1)?.title).toBe('No date');
  });

  test('a card tells itself from the next', () => {
    expect(drawerNotes(notebook, 'kind', 'dyestuff')[0]).toMatchObject({ title: 'Madder', says: 'Rubia tinctorum' });
    expect(drawerNotes(notebook, 'kind', 'text')[0]).toMatchObject({ says: 'England, 1301–1350' });
  });

  test('follows the notebook', () => {
    const changing = aNotebook({ 'a.md': aNote('kind: dyestuff\ntitle: A') });
    expect(drawerView(changing, 'kind')).toHaveLength(1);
    changing.remove('a.md');
    expect(drawerView(changing, 'kind')).toHaveLength(0);
  });
});
