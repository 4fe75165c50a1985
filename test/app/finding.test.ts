import { describe, expect, test } from 'vitest';
import { SearchingFinder } from '../../web/app/finding.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { aSearchWorker } from '../helpers/a-search-worker.ts';
import { aNote, aWorld } from '../helpers/a-notebook.ts';

const encoder = new TextEncoder();

const files: Readonly<Record<string, string>> = {
  ...aWorld,
  'd/madder.md': `${aNote('kind: dyestuff\ntitle: Madder\nlatin: Rubia tinctorum\nnames: [Krapp]\navailability: [{region: england, when: 1200–1400, status: grown, known-by: text, source: a}]')}`,
  'm/alum.md': aNote('kind: mordant\ntitle: Alum\neveryday: true'),
  'r/red.md': aNote('kind: recipe\ntitle: Madder red\nfibre: wool\ningredients: [{what: madder, role: dye}, {what: alum, role: mordant}]'),
  'r/linen.md': aNote('kind: recipe\ntitle: Madder on linen\nfibre: linen\ningredients: [{what: madder, role: dye}]'),
  'n/krapp.md': 'Der Krapp ist rot.\n',
  'n/blue.md': 'Nothing red here, but a maddening blue.\n',
};

async function aFinder(): Promise<{ readonly finder: SearchingFinder; readonly engine: LocalEngine; readonly started: () => number }> {
  const engine = new LocalEngine();
  await engine.open(Object.entries(files).map(([path, text]) => ({ path, bytes: encoder.encode(text) })));
  let starts = 0;
  const finder = new SearchingFinder(engine, () => {
    starts += 1;
    return aSearchWorker();
  });
  return { finder, engine, started: () => starts };
}

const idsOf = async (found: ReturnType<SearchingFinder['find']>) =>
  (await found)?.groups.map(
    ({ group, notes }) =>
      `${group}: ${notes
        .map(({ id }) => id)
        .sort()
        .join(' ')}`,
  );

describe('SearchingFinder', () => {
  test('the worker starts when somebody first types a word, and says how far it is', async () => {
    const { finder, started } = await aFinder();
    await finder.find({ words: '', kind: 'recipe' });
    expect(started()).toBe(0);
    const told: number[] = [];
    await finder.find({ words: 'madder' }, ({ of }) => told.push(of));
    // One that answers, and one that makes the index.
    expect(started()).toBe(2);
    expect(told).toEqual([Object.keys(files).length]);
  });

  test('where the notes could not be taken in, the next who looks tries again', async () => {
    const { finder, engine } = await aFinder();
    const documents = engine.documents.bind(engine);
    engine.documents = () => Promise.reject(new Error('not now'));
    await expect(finder.find({ words: 'madder' })).rejects.toThrow('not now');
    engine.documents = documents;
    expect(await idsOf(finder.find({ words: 'madder' }))).toEqual(['words: linen madder red', 'other-name: krapp']);
  });

  test('words, beginnings, and the same dyestuff under another name', async () => {
    const { finder } = await aFinder();
    expect(await idsOf(finder.find({ words: 'madder' }))).toEqual(['words: linen madder red', 'other-name: krapp']);
    expect(await idsOf(finder.find({ words: 'madd' }))).toEqual(['words: blue linen madder red']);
    expect(await idsOf(finder.find({ words: 'maddar' }))).toEqual(['near: linen madder red']);
  });

  test('a name leads to everything on it', async () => {
    const { finder } = await aFinder();
    expect((await finder.find({ words: 'Rubia tinctorum' }))?.named).toEqual([{ id: 'madder', title: 'Madder', isDyestuff: true }]);
    expect((await finder.find({ words: 'rubia' }))?.named).toEqual([]);
  });

  test('the rest of the sentence narrows', async () => {
    const { finder } = await aFinder();
    expect(await idsOf(finder.find({ words: 'madder', kind: 'recipe' }))).toEqual(['words: linen red']);
    expect(await idsOf(finder.find({ words: 'madder', fibre: 'Linen' }))).toEqual(['words: linen']);
    expect(await idsOf(finder.find({ words: 'madder', mordant: 'alum' }))).toEqual(['words: red']);
    expect(await idsOf(finder.find({ words: 'madder', region: 'england', when: 'c. 1300' }))).toEqual(['words: madder']);
    expect(await idsOf(finder.find({ words: 'madder', region: 'england', when: '1600' }))).toEqual([]);
    const standing = { words: '', kind: 'dyestuff', region: 'england', when: '1300' };
    expect(await idsOf(finder.find({ ...standing, standing: 'to-hand' }))).toEqual(['words: madder']);
    expect(await idsOf(finder.find({ ...standing, standing: 'unrecorded' }))).toEqual([]);
  });

  test('what cannot be understood narrows nothing and is told', async () => {
    const { finder } = await aFinder();
    const found = await finder.find({ words: 'madder', region: 'nowhere', when: 'some day', standing: 'to-hand' });
    expect(found?.problems.map(({ part }) => part)).toEqual(['region', 'when', 'standing']);
    expect(found?.count).toBe(4);
  });

  test('the word that answers is marked, with its line', async () => {
    const { finder } = await aFinder();
    const found = await finder.find({ words: 'krapp' });
    const note = found?.groups[0]?.notes.find(({ id }) => id === 'krapp');
    expect(note?.places).toEqual([{ line: 1, before: 'Der ', found: 'Krapp', after: ' ist rot.' }]);
    const titled = (await finder.find({ words: 'red' }))?.groups[0]?.notes.find(({ id }) => id === 'red');
    expect(titled?.marked).toEqual([
      { text: 'Madder ', isMarked: false },
      { text: 'red', isMarked: true },
    ]);
  });

  test('the latest wish wins', async () => {
    const { finder } = await aFinder();
    const [first, second] = await Promise.all([finder.find({ words: 'ma' }), finder.find({ words: 'krapp' })]);
    expect(first).toBeUndefined();
    expect(second?.count).toBeGreaterThan(0);
  });

  test('it follows what is written and deleted', async () => {
    const { finder, engine } = await aFinder();
    await finder.find({ words: 'madder' });
    await engine.put([{ path: 'n/new.md', bytes: encoder.encode('A violet word.') }]);
    void finder.follow(['n/new.md']);
    expect(await idsOf(finder.find({ words: 'violet' }))).toEqual(['words: new']);
    await engine.remove(['n/new.md']);
    void finder.follow(['n/new.md']);
    expect(await idsOf(finder.find({ words: 'violet' }))).toEqual([]);
  });
});
