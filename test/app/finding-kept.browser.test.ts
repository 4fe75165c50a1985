import { afterEach, expect, test, vi } from 'vitest';
import { SearchingFinder } from '../../web/app/finding.ts';
import type { NotebookStore } from '../../web/domain/ports.ts';
import { Keeper } from '../../web/notebook/keeper.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { KEPT_INDEX } from '../../web/search/kept-index.ts';
import address from '../../web/search/worker/entry.ts?worker&url';
import { openIdbStore } from '../../web/store/idb-store.ts';
import { countedDocuments } from '../helpers/counted-documents.ts';

const name = `finding-${crypto.randomUUID()}`;
const ended: (() => void)[] = [];
afterEach(() => ended.splice(0).forEach((end) => end()));

const bytes = (text: string) => new TextEncoder().encode(text);
const NOTES = Array.from({ length: 12 }, (_, nth) => ({ path: `n${nth}.md`, bytes: bytes(`# Note ${nth}\nweld and wool.\n`) }));

/** A page over the browser's own database, with real workers, and which documents it asks the engine for. */
async function aVisit(): Promise<{
  readonly store: NotebookStore;
  readonly keeper: Keeper;
  readonly asked: string[];
  find(words: string): Promise<number>;
}> {
  const opened = await openIdbStore(name, { now: () => Date.now(), newId: () => crypto.randomUUID() });
  if (!opened.ok) throw new Error(opened.error);
  const engine = new LocalEngine();
  const keeper = new Keeper(opened.value, engine);
  await keeper.openKept();
  const { counting, asked } = countedDocuments(engine);
  const start = () => {
    const worker = new Worker(address, { type: 'module' });
    ended.push(() => worker.terminate());
    return worker;
  };
  const finder = new SearchingFinder(counting, start, () => opened.value);
  ended.push(() => opened.value.close());
  return { store: opened.value, keeper, asked, find: async (words) => (await finder.find({ words }))?.count ?? 0 };
}

test('a second visit answers from the kept index and reads only what changed', async () => {
  const first = await aVisit();
  await first.keeper.beginEmpty();
  await first.keeper.write(NOTES);
  expect(await first.find('weld')).toBe(12);
  const kept = async () => {
    const found = await first.store.derived(KEPT_INDEX.name, KEPT_INDEX.madeBy);
    return found.ok && found.value !== undefined;
  };
  await vi.waitFor(async () => expect(await kept()).toBe(true), 20_000);

  const second = await aVisit();
  expect(await second.find('weld')).toBe(12);
  expect(second.asked).toEqual([]);
  const { version } = (await second.keeper.read('n4.md')) ?? {};
  await second.keeper.write([{ path: 'n4.md', bytes: bytes('# Note 4\nkermes\n'), ...(version !== undefined && { basedOn: version }) }]);

  const third = await aVisit();
  expect(await third.find('kermes')).toBe(1);
  expect(third.asked).toEqual(['n4.md']);
  expect(await third.find('weld')).toBe(11);
});
