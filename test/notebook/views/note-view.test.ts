import { describe, expect, test } from 'vitest';
import { questionOf, readAddress } from '../../../web/notebook/address.ts';
import { noteView } from '../../../web/notebook/views/note-view.ts';
import { aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const bibliography = JSON.stringify([
  { id: 'cardon-2007', author: [{ family: 'Cardon' }], issued: { 'date-parts': [[2007]] }, title: 'Natural Dyes' },
]);
const files = {
  ...aWorld,
  'bibliography.json': bibliography,
  'dyestuffs/madder.md': `${aNote(
    'kind: dyestuff\ntitle: Madder\nlatin: Rubia tinctorum\nmatter: plant\nnames: [{name: Krapp, lang: de}]\nsource: "cardon-2007, p. 107"\nchecked: excerpt\n' +
      'availability:\n  - {region: england, when: c. 1290, status: imported, known-by: trade, sure: likely, use: painting, source: "other, p. 1"}',
  )}See [the red](../recipes/red.md).\n`,
  'recipes/red.md': aNote(
    'kind: recipe\ntitle: Red\nfibre: wool\ningredients:\n  - {what: Krapp, role: dye, amount: 50 %}\nsteps: [Heat., Wait.]\ncautions: [Hot.]\nsource: cardon-2007',
  ),
  'trials/one.md': aNote(
    'kind: trial\ntitle: One\nrecipe: red\ndate: 2025-05-14\nfibre: wool\nfibre-mass: 50 g\ncode: A-1\ncolour: {lab: [41, 38, 24], illuminant: D65, observer: 10, by: instrument}\ninvented: true',
  ),
};
const notebook = aNotebook(files);
const view = (id: string) => noteView(notebook, id);
const text = (line: readonly { readonly text: string }[] | undefined) => line?.map((piece) => piece.text).join('');
const rowOf = (id: string, label: string) => view(id)?.rows.find((row) => row.label === label)?.line;

describe('noteView', () => {
  test('is undefined for an id the notebook does not have', () => {
    expect(view('nothing')).toBeUndefined();
  });

  test('carries names, kind, file and the bibliography entry of a source', () => {
    expect(view('madder')).toMatchObject({
      kindWord: 'Dyestuff',
      file: 'dyestuffs/madder.md',
      latin: ['Rubia tinctorum'],
      names: [{ name: 'Krapp', lang: 'de' }],
      sources: [{ key: 'cardon-2007', locator: 'p. 107', entry: 'Cardon 2007, Natural Dyes' }],
      checked: 'read in excerpt',
    });
  });

  test('a claim says what, where, when with its reading, how known, and what narrows it', () => {
    const [claim] = view('madder')?.claims ?? [];
    expect(text(claim?.region)).toBe('England');
    expect(text(claim?.when)).toBe('c. 1290 read as 1265–1315, core 1290');
    expect(claim).toMatchObject({ source: 'other, p. 1', narrowed: ['likely', 'for painting'] });
  });

  test('references lead to the notes they mean, by any name', () => {
    const ingredients = view('red')?.sections.find((section) => section.is === 'table');
    expect(ingredients?.is === 'table' && ingredients.rows[0]?.[0]).toEqual([{ text: 'Madder', note: 'madder' }]);
    expect(rowOf('red', 'On')).toEqual([{ text: 'Wool', note: 'wool' }]);
    expect(view('red')?.cautions).toEqual(['Hot.']);
  });

  test('a sample is a cloth with its numbers', () => {
    const cloths = view('one')?.sections.find((section) => section.is === 'cloths');
    const [cloth] = cloths?.is === 'cloths' ? cloths.cloths : [];
    expect(cloth).toMatchObject({ title: 'A-1', weave: 'wool', inScreenGamut: true });
    expect(text(cloth?.lines.at(-1))).toContain('41.0, 38.0, 24.0');
  });

  test('links go both ways: by reference and by a link in the body', () => {
    expect(view('red')?.linksTo.map(({ id }) => id)).toEqual(['wool', 'madder']);
    expect(view('red')?.linksFrom.map(({ id }) => id)).toEqual(['madder', 'one']);
    expect(view('madder')?.linksFrom.map(({ id }) => id)).toEqual(['red']);
  });

  test('problems have their line and column and what to write instead', () => {
    const [problem] = view('madder')?.problems ?? [];
    expect(problem).toMatchObject({ code: 'source-unknown', severity: 'warning', line: 10, column: 5 });
    expect(problem?.instead).not.toBe('');
  });
});

describe('a sample with its photo, a thread with its colour now', () => {
  const shown = aNotebook({
    ...files,
    'trials/two.md': aNote(
      'kind: trial\nrecipe: red\nfibre: wool\nphoto: photos/two-1.jpg\ncolour: {lab: [41, 38, 24], illuminant: D65, observer: 2, by: photo}',
    ),
    'textiles/twill.md': aNote(
      'kind: textile\ntitle: Twill\nregion: england\nwhen: c. 1450\nthreads:\n  - {where: warp, fibre: wool, colour-now: {lab: [55, -8, 14], illuminant: D65, observer: 10}}\n  - {where: weft, colour-now: brownish}',
    ),
  });
  const clothsOf = (id: string) =>
    noteView(shown, id)?.sections.flatMap((section) => (section.is === 'cloths' ? section.cloths : [])) ?? [];

  test('the photo is shown beside the value', () => {
    expect(clothsOf('two')).toMatchObject([{ photo: 'photos/two-1.jpg' }]);
  });

  test('a photo among the words is a picture although its bytes stay in the store', () => {
    const notebook = aNotebook({ 'reading/seen.md': `${aNote('kind: plain\ntitle: Seen')}![A hood](../photos/hood.png)\n` });
    const picture = () => noteView(notebook, 'seen')?.body.flatMap((block) => (block.is === 'paragraph' ? block.words : []));
    expect(picture()).toMatchObject([{ is: 'picture-lost' }]);
    notebook.mention('photos/hood.png');
    expect(picture()).toEqual([{ is: 'picture', path: 'photos/hood.png', words: 'A hood' }]);
  });

  test('what a thread may have been is asked with its place, date and fibre; words alone ask nothing', () => {
    const [warp, ...others] = clothsOf('twill');
    expect(others).toEqual([]);
    expect(questionOf(readAddress(warp?.asFound ?? ''))).toMatchObject({
      colour: '55,-8,14 D65/10 lab',
      region: 'england',
      when: 'c. 1450',
      fibre: 'wool',
      asFound: true,
    });
  });
});
