import { describe, expect, test } from 'vitest';
import { noteFilter, type SearchFilter } from '../../web/notebook/filter-notes.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../helpers/a-notebook.ts';

const { base } = aNotebook({
  ...aWorld,
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\neveryday: true'),
  'dyestuffs/madder.md': aDyestuff('Madder', 'region: england, when: 1200–1400, status: imported, known-by: trade, source: book'),
  'dyestuffs/logwood.md': aDyestuff('Logwood', 'region: europe, when: until 1500, status: absent, reason: other-continent, source: book'),
  'recipes/red.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: alum, role: mordant}, {what: madder, role: dye}]'),
  'recipes/black.md': aNote('kind: recipe\nfibre: linen\ningredients: [{what: logwood, role: dye}]'),
  'trials/t1.md': aNote('kind: trial\nrecipe: red\nfibre: fine-wool'),
  'texts/york-act.md': aNote('kind: text\ntitle: York\nregion: york\nwhen: 1300\nfibre: linen'),
  'texts/old.md': aNote('kind: text\ntitle: Old\nregion: ireland\nwhen: 900'),
  'reading/page.md': aNote('kind: plain\ntitle: Page\ntags: [england]'),
});
const ids = (filter: SearchFilter) =>
  [...base.notes()]
    .filter(noteFilter(base, filter))
    .filter(({ file }) => !(file in aWorld))
    .map(({ id }) => String(id))
    .sort();

describe('noteFilter', () => {
  test('by kind', () => {
    expect(ids({ kinds: ['text', 'trial'] })).toEqual(['old', 't1', 'york-act']);
  });

  test('by region: the region itself and what lies inside it, by record, tags or claims', () => {
    expect(ids({ region: 'england' })).toEqual(['madder', 'page', 'york-act']);
    expect(ids({ region: 'york' })).toEqual(['york-act']);
  });

  test('by years, and by years at a place', () => {
    expect(ids({ span: { from: 1250, to: 1350 } })).toEqual(['madder', 'york-act']);
    expect(ids({ region: 'ireland', span: { from: 880, to: 920 } })).toEqual(['old']);
    expect(ids({ region: 'ireland', span: { from: 1300, to: 1300 } })).toEqual([]);
  });

  test('by fibre, a kind of it counting, a trial of none by its recipe', () => {
    expect(ids({ fibre: 'wool', kinds: ['recipe', 'trial', 'text'] })).toEqual(['red', 't1']);
    expect(ids({ fibre: 'fine-wool', kinds: ['recipe', 'trial', 'text'] })).toEqual(['t1']);
    expect(ids({ fibre: 'linen', kinds: ['recipe', 'trial', 'text'] })).toEqual(['black', 'york-act']);
  });

  test('by mordant', () => {
    expect(ids({ mordant: 'alum' })).toEqual(['alum', 'red', 't1']);
  });

  test('by standing of a material, a recipe and a trial through its recipe', () => {
    const at = { region: 'england', span: { from: 1300, to: 1300 } };
    expect(ids({ standing: { any: ['imported'], ...at } })).toEqual(['madder', 'red', 't1']);
    expect(ids({ standing: { any: ['absent'], ...at } })).toEqual(['black', 'logwood']);
  });

  test('everything when nothing is asked', () => {
    expect(ids({})).toHaveLength(9);
  });
});
