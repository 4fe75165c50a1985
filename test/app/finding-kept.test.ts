import { describe, expect, test, vi } from 'vitest';
import { type IndexStore, SearchingFinder } from '../../web/app/finding.ts';
import { Keeper } from '../../web/notebook/keeper.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { KEPT_INDEX } from '../../web/search/kept-index.ts';
import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';
import { countingSurroundings } from '../contract/note-store.ts';
import { aSearchWorker } from '../helpers/a-search-worker.ts';
import { countedDocuments } from '../helpers/counted-documents.ts';

/** How long what is done unnoticed is waited for, on a slow machine. */
const PATIENCE = 20_000;

const bytes = (text: string) => new TextEncoder().encode(text);
const note = (nth: number, word = 'weld') => ({ path: `n${nth}.md`, bytes: bytes(`# Note ${nth}\n${word} and wool.\n`) });
const NOTES = Array.from({ length: 12 }, (_, nth) => note(nth));

/** A page over a disk: its store, engine and finder, and which documents the finder asked the engine for. */
async function aVisit(disk: MemoryDisk, change: (store: MemoryStore) => IndexStore = (store) => store) {
  const store = new MemoryStore(disk, countingSurroundings());
  const engine = new LocalEngine();
  const keeper = new Keeper(store, engine);
  const { counting, asked } = countedDocuments(engine);
  const kept = change(store);
  const finder = new SearchingFinder(counting, aSearchWorker, () => (keeper.isKept ? kept : undefined));
  const followed: Promise<void>[] = [];
  keeper.subscribe((event) => {
    if (event.type === 'changed') followed.push(finder.follow(event.paths));
  });
  await keeper.openKept();
  const find = async (words: string) => {
    await Promise.all(followed);
    return (await finder.find({ words }))?.groups.flatMap(({ notes }) => notes.map(({ id }) => id)).sort();
  };
  return { store, keeper, finder, asked, find };
}

async function aKeptNotebook() {
  const disk = new MemoryDisk();
  const first = await aVisit(disk);
  await first.keeper.beginEmpty();
  await first.keeper.write(NOTES);
  expect(await first.find('weld')).toHaveLength(12);
  expect(first.asked).toHaveLength(12);
  await vi.waitFor(() => expect(disk.derived.has(KEPT_INDEX.name)).toBe(true), PATIENCE);
  return { disk, first };
}
const base = async (store: MemoryStore, path: string) => {
  const read = await store.read([path]);
  return { basedOn: (read.ok && read.value[0]?.version) || 0 };
};

describe('the kept index', () => {
  test('a second visit reads no document that did not change', async () => {
    const { disk } = await aKeptNotebook();
    const second = await aVisit(disk);
    expect(await second.find('weld')).toHaveLength(12);
    expect(second.asked).toEqual([]);
  });

  test('what was written, added or removed meanwhile is found as it is now', async () => {
    const { disk, first } = await aKeptNotebook();
    await first.keeper.write([
      { ...note(3, 'woad'), ...(await base(first.store, 'n3.md')) },
      note(20, 'woad'),
      { path: 'n5.md', removed: true, ...(await base(first.store, 'n5.md')) },
    ]);
    const second = await aVisit(disk);
    expect(await second.find('woad')).toEqual(['n20', 'n3']);
    expect(second.asked).toEqual(['n20.md', 'n3.md']);
    expect(await second.find('weld')).toHaveLength(10);
    expect(await second.find('note 5')).toEqual([]);
  });

  test('what another tab writes is found here, and its index serves the next visit', async () => {
    const { disk, first } = await aKeptNotebook();
    const other = await aVisit(disk);
    await other.find('weld');
    await other.keeper.write([{ ...note(7, 'kermes'), ...(await base(other.store, 'n7.md')) }]);
    await vi.waitFor(async () => expect(await first.find('kermes')).toEqual(['n7']), PATIENCE);
    expect(await other.find('kermes')).toEqual(['n7']);
    const third = await aVisit(disk);
    expect(await third.find('kermes')).toEqual(['n7']);
    expect(third.asked).toEqual(['n7.md']);
  });

  test.each([
    ['cut short', (kept: Uint8Array) => kept.slice(0, kept.length - 16)],
    ['empty', () => new Uint8Array(0)],
    ['changed in one place', (kept: Uint8Array) => kept.with(700, (kept[700] ?? 0) ^ 1)],
  ])('bytes that are %s are made anew, silently', async (_, spoil) => {
    const { disk } = await aKeptNotebook();
    const kept = disk.derived.get(KEPT_INDEX.name)?.bytes ?? new Uint8Array(0);
    disk.derived.set(KEPT_INDEX.name, { madeBy: KEPT_INDEX.madeBy, bytes: spoil(kept) });
    const second = await aVisit(disk);
    expect(await second.find('weld')).toHaveLength(12);
    expect(second.asked).toHaveLength(12);
    await vi.waitFor(() => expect(disk.derived.get(KEPT_INDEX.name)?.bytes).toEqual(kept), PATIENCE);
  });

  test('an index of another form or another rule of words is not asked for', async () => {
    const { disk } = await aKeptNotebook();
    disk.derived.set(KEPT_INDEX.name, { madeBy: '0.0', bytes: disk.derived.get(KEPT_INDEX.name)?.bytes ?? new Uint8Array(0) });
    const second = await aVisit(disk);
    expect(await second.find('weld')).toHaveLength(12);
    expect(second.asked).toHaveLength(12);
  });

  test('a store that fails or has no room takes nothing from the answer', async () => {
    const disk = new MemoryDisk();
    const keeping = vi.fn(() => Promise.resolve({ ok: false, error: 'quota' } as const));
    const visit = await aVisit(disk, () => ({
      derived: () => Promise.resolve({ ok: false, error: 'unavailable' }),
      keepDerived: keeping,
    }));
    await visit.keeper.beginEmpty();
    await visit.keeper.write(NOTES);
    expect(await visit.find('weld')).toHaveLength(12);
    await vi.waitFor(() => expect(keeping).toHaveBeenCalled(), PATIENCE);
    await visit.keeper.write([{ ...note(3, 'woad'), ...(await base(visit.store, 'n3.md')) }]);
    expect(await visit.find('woad')).toEqual(['n3']);
  });

  test('of a notebook that is only shown nothing is kept', async () => {
    const disk = new MemoryDisk();
    const visit = await aVisit(disk);
    await visit.keeper.show(NOTES);
    expect(await visit.find('weld')).toHaveLength(12);
    expect(disk.derived.size).toBe(0);
  });

  test('the index is made anew once many notes were edited, and what is edited meanwhile stays found', async () => {
    const { disk, first } = await aKeptNotebook();
    const before = disk.derived.get(KEPT_INDEX.name)?.bytes;
    await first.keeper.write(Array.from({ length: 60 }, (_, nth) => note(100 + nth, 'alum')));
    expect(await first.find('alum')).toHaveLength(60);
    await first.keeper.write([note(200, 'kermes')]);
    expect(await first.find('kermes')).toEqual(['n200']);
    await vi.waitFor(() => expect(disk.derived.get(KEPT_INDEX.name)?.bytes).not.toEqual(before), PATIENCE);
    expect(await first.find('alum')).toHaveLength(60);
    expect(await first.find('kermes')).toEqual(['n200']);
    const next = await aVisit(disk);
    expect(await next.find('alum')).toHaveLength(60);
    expect(next.asked.length).toBeLessThanOrEqual(1);
  });

  test('another notebook opened while one is taken in is what is found', async () => {
    const { finder, keeper, find } = await aVisit(new MemoryDisk());
    await keeper.show(NOTES);
    const asked = find('weld');
    await keeper.show([note(1, 'kermes')]);
    await finder.forget();
    await asked;
    expect(await find('kermes')).toEqual(['n1']);
    expect(await find('weld')).toEqual([]);
  });
});
