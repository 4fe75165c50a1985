import { describe, expect, onTestFinished, test } from 'vitest';
import type { NotebookStore, StoredFile, StoreEvent } from '../../web/domain/ports.ts';
import { sameBytes } from '../../web/store/same-bytes.ts';
import type { StoreSurroundings } from '../../web/store/store-surroundings.ts';

/** A place that several tabs keep one notebook in. */
export interface Disk {
  /** Opens the notebook in one more tab. */
  tab(): Promise<NotebookStore>;
  /** Ends a tab as a killed browser would: nothing is tidied up. */
  kill(tab: NotebookStore): Promise<void>;
}

/** A clock that goes one second further at every look, and ids that count. */
export function countingSurroundings(): StoreSurroundings {
  let looks = 0;
  let ids = 0;
  return { now: () => (looks += 1) * 1000, newId: () => `id-${(ids += 1)}` };
}

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const textOf = (file: StoredFile | undefined): string | undefined => file && new TextDecoder().decode(file.bytes);

/** The value of a success; anything else fails the test. */
function value<T>(result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: string }): T {
  if (!result.ok) throw new Error(`expected success, got ${result.error}`);
  return result.value;
}

async function everything(store: NotebookStore, wanted?: (stamp: { readonly path: string }) => boolean): Promise<Map<string, Uint8Array>> {
  const found = new Map<string, Uint8Array>();
  for await (const batch of store.loadAll(wanted)) for (const file of value(batch)) found.set(file.path, file.bytes);
  return found;
}

/** Waits until something heard matches, as messages between tabs take a moment. */
async function heard(events: readonly StoreEvent[], count: number): Promise<readonly StoreEvent[]> {
  await expect.poll(() => events.length, { timeout: 30_000 }).toBeGreaterThanOrEqual(count);
  return events;
}

/** What every notebook store keeps to. */
export function noteStoreContract(name: string, makeDisk: () => Promise<Disk>): void {
  const opened = async () => {
    const disk = await makeDisk();
    const tabs: NotebookStore[] = [];
    onTestFinished(() => tabs.forEach((tab) => tab.close()));
    const tab = async () => {
      const one = await disk.tab();
      tabs.push(one);
      return one;
    };
    return { disk, tab, store: await tab() };
  };

  describe(`${name}: writing and reading`, () => {
    test('a new notebook is empty and has a name of its own that the next tab finds again', async () => {
      const { store, tab } = await opened();
      expect(value(await store.stamps())).toEqual([]);
      expect(await everything(store)).toEqual(new Map());
      expect((await tab()).notebookId).toBe(store.notebookId);
      expect(store.notebookId).not.toBe('');
    });

    test('gives back every byte: any value, no bytes at all, and more than a block', async () => {
      const { store, tab } = await opened();
      const every = Uint8Array.from({ length: 256 }, (_, byte) => byte);
      const long = Uint8Array.from({ length: 700_001 }, (_, at) => (at * 31) % 251);
      const view = new Uint8Array(every.buffer, 10, 5);
      value(
        await store.put([
          { path: 'every.bin', bytes: every },
          { path: 'empty.md', bytes: new Uint8Array() },
          { path: 'photos/long.jpg', bytes: long },
          { path: 'view.bin', bytes: view },
          { path: 'übung/ʿudar 𝒳.md', bytes: bytes('\uFEFFä\r\n') },
        ]),
      );
      const again = await everything(await tab());
      expect([...again.keys()].sort()).toEqual(['empty.md', 'every.bin', 'photos/long.jpg', 'view.bin', 'übung/ʿudar 𝒳.md']);
      expect(again.get('every.bin')).toEqual(every);
      expect(again.get('empty.md')).toEqual(new Uint8Array());
      expect(sameBytes(again.get('photos/long.jpg') ?? new Uint8Array(), long)).toBe(true);
      expect(again.get('view.bin')).toEqual(Uint8Array.from([10, 11, 12, 13, 14]));
      expect(again.get('übung/ʿudar 𝒳.md')).toEqual(bytes('\uFEFFä\r\n'));
    });

    test('stamps say size and times, in order of path', async () => {
      const { store } = await opened();
      const written = value(
        await store.put([
          { path: 'b.md', bytes: bytes('bb'), modifiedAt: 77 },
          { path: 'a.md', bytes: bytes('a') },
        ]),
      );
      const stamps = value(await store.stamps());
      expect(stamps.map(({ path, byteCount }) => [path, byteCount])).toEqual([
        ['a.md', 1],
        ['b.md', 2],
      ]);
      expect(stamps[1]?.modifiedAt).toBe(77);
      expect(stamps[0]?.modifiedAt).toBe(stamps[0]?.savedAt);
      expect(written.map(({ path }) => path)).toEqual(['b.md', 'a.md']);
      expect(stamps).toEqual([...written].reverse());
    });

    test('reads the files asked for, in that order, and leaves out what is not there', async () => {
      const { store } = await opened();
      value(await store.put(['a', 'b', 'c'].map((path) => ({ path, bytes: bytes(path) }))));
      expect(value(await store.read(['c', 'nowhere', 'a'])).map(textOf)).toEqual(['c', 'a']);
    });

    test('loads only what is wanted', async () => {
      const { store } = await opened();
      value(await store.put(['a.md', 'b.jpg'].map((path) => ({ path, bytes: bytes(path) }))));
      expect([...(await everything(store, ({ path }) => path.endsWith('.md'))).keys()]).toEqual(['a.md']);
    });

    test('two thousand files written at once all come back', async () => {
      const { store, tab } = await opened();
      const files = Array.from({ length: 2000 }, (_, at) => ({ path: `n/${at}.md`, bytes: bytes(`note ${at} `.repeat(at % 97)) }));
      value(await store.put(files));
      const again = await everything(await tab());
      expect(again.size).toBe(2000);
      expect(files.every((file) => new TextDecoder().decode(again.get(file.path)) === new TextDecoder().decode(file.bytes))).toBe(true);
    });

    test('a caller may change its bytes afterwards without changing the notebook', async () => {
      const { store } = await opened();
      const mine = bytes('mine');
      value(await store.put([{ path: 'a', bytes: mine }]));
      mine.fill(0);
      const read = value(await store.read(['a']));
      read[0]?.bytes.fill(1);
      expect(value(await store.read(['a'])).map(textOf)).toEqual(['mine']);
    });
  });

  describe(`${name}: versions`, () => {
    test('a write on the version one saw is taken, and the one before is kept', async () => {
      const { store } = await opened();
      const [first] = value(await store.put([{ path: 'a', bytes: bytes('one'), modifiedAt: 5 }]));
      const [second] = value(await store.put([{ path: 'a', bytes: bytes('two'), basedOn: first?.version ?? -1 }]));
      expect(second?.version).toBeGreaterThan(first?.version ?? Infinity);
      const history = value(await store.history('a'));
      expect(history).toEqual([{ ...first, ended: 'replaced', endedAt: second?.savedAt }]);
      expect(textOf(value(await store.readEarlier('a', first?.version ?? -1)))).toBe('one');
    });

    test('two tabs never overwrite each other: the later one is told what lies there', async () => {
      const { store, tab } = await opened();
      const other = await tab();
      const [seen] = value(await store.put([{ path: 'a', bytes: bytes('start') }]));
      const basedOn = seen?.version ?? -1;
      const results = await Promise.all([
        store.put([{ path: 'a', bytes: bytes('mine'), basedOn }]),
        other.put([{ path: 'a', bytes: bytes('theirs'), basedOn }]),
      ]);
      expect(results.filter((result) => result.ok)).toHaveLength(1);
      const lost = results.find((result) => !result.ok);
      const won = results[0].ok ? 'mine' : 'theirs';
      expect(lost).toMatchObject({ ok: false, error: 'conflict', conflicts: [{ path: 'a', stored: { path: 'a' } }] });
      expect(lost && !lost.ok && lost.error === 'conflict' && textOf(lost.conflicts[0]?.stored)).toBe(won);
      expect(value(await store.read(['a'])).map(textOf)).toEqual([won]);
    });

    test('a new file does not replace one that another tab made under its name', async () => {
      const { store, tab } = await opened();
      value(await (await tab()).put([{ path: 'a', bytes: bytes('theirs') }]));
      expect(await store.put([{ path: 'a', bytes: bytes('mine') }])).toMatchObject({ error: 'conflict' });
    });

    test('a change to a file that was removed meanwhile is a conflict with nothing stored', async () => {
      const { store } = await opened();
      const [seen] = value(await store.put([{ path: 'a', bytes: bytes('one') }]));
      const basedOn = seen?.version ?? -1;
      value(await store.put([{ path: 'a', removed: true, basedOn }]));
      expect(await store.put([{ path: 'a', bytes: bytes('two'), basedOn }])).toEqual({
        ok: false,
        error: 'conflict',
        conflicts: [{ path: 'a' }],
      });
    });

    test('one conflict leaves the whole write undone', async () => {
      const { store } = await opened();
      value(await store.put([{ path: 'a', bytes: bytes('one') }]));
      const result = await store.put([
        { path: 'b', bytes: bytes('new') },
        { path: 'a', bytes: bytes('two'), basedOn: 9999 },
      ]);
      expect(result).toMatchObject({ error: 'conflict' });
      expect(value(await store.stamps()).map(({ path }) => path)).toEqual(['a']);
    });

    test('writing the bytes that are there already makes no version', async () => {
      const { store } = await opened();
      const [first] = value(await store.put([{ path: 'a', bytes: bytes('one'), modifiedAt: 5 }]));
      const [again] = value(await store.put([{ path: 'a', bytes: bytes('one'), basedOn: first?.version ?? -1, modifiedAt: 9 }]));
      expect(again).toEqual(first);
      expect(value(await store.history('a'))).toEqual([]);
    });

    test('a renamed file is taken from one place and put at the other in one write', async () => {
      const { store } = await opened();
      const [first] = value(await store.put([{ path: 'a', bytes: bytes('one') }]));
      value(
        await store.put([
          { path: 'a', removed: true, basedOn: first?.version ?? -1 },
          { path: 'b', bytes: bytes('one') },
        ]),
      );
      expect(value(await store.stamps()).map(({ path }) => path)).toEqual(['b']);
    });

    test('history is newest first and a restored version is a new one with the old bytes and its old date', async () => {
      const { store } = await opened();
      let basedOn: number | undefined;
      for (const text of ['one', 'two', 'three']) {
        const put = { path: 'a', bytes: bytes(text), modifiedAt: text.length, ...(basedOn !== undefined && { basedOn }) };
        basedOn = value(await store.put([put]))[0]?.version;
      }
      const history = value(await store.history('a'));
      expect(history).toHaveLength(2);
      expect(history[0]?.version).toBeGreaterThan(history[1]?.version ?? Infinity);
      const restored = value(await store.restore('a', history[1]?.version ?? -1, basedOn));
      expect(restored[0]).toMatchObject({ path: 'a', modifiedAt: 3 });
      expect(value(await store.read(['a'])).map(textOf)).toEqual(['one']);
      expect(value(await store.history('a'))).toHaveLength(3);
    });

    test('restoring on an outdated version is a conflict, and an unknown version is missing', async () => {
      const { store } = await opened();
      const [one] = value(await store.put([{ path: 'a', bytes: bytes('one') }]));
      value(await store.put([{ path: 'a', bytes: bytes('two'), basedOn: one?.version ?? -1 }]));
      expect(await store.restore('a', one?.version ?? -1, one?.version)).toMatchObject({ error: 'conflict' });
      expect(await store.restore('a', 4711)).toEqual({ ok: false, error: 'missing' });
    });

    test('a removed file is listed as it last was and comes back', async () => {
      const { store } = await opened();
      const [first] = value(await store.put([{ path: 'a', bytes: bytes('one') }]));
      const [second] = value(await store.put([{ path: 'a', bytes: bytes('two'), basedOn: first?.version ?? -1 }]));
      value(await store.put([{ path: 'a', removed: true, basedOn: second?.version ?? -1 }]));
      expect(await everything(store)).toEqual(new Map());
      const removed = value(await store.removedFiles());
      expect(removed).toMatchObject([{ path: 'a', version: second?.version, ended: 'removed' }]);
      value(await store.restore('a', removed[0]?.version ?? -1));
      expect(value(await store.read(['a'])).map(textOf)).toEqual(['two']);
      expect(value(await store.removedFiles())).toEqual([]);
      expect(value(await store.stamps())[0]?.version).toBeGreaterThan(second?.version ?? Infinity);
    });
  });

  describe(`${name}: beside the notes`, () => {
    test('settings are kept as plain values', async () => {
      const { store, tab } = await opened();
      expect(value(await store.setting('tolerance'))).toBeUndefined();
      value(await store.keepSetting('tolerance', { deltaE00: 6, words: ['a'] }));
      value(await store.keepSetting('tolerance', { deltaE00: 5, words: ['b'] }));
      expect(value(await (await tab()).setting('tolerance'))).toEqual({ deltaE00: 5, words: ['b'] });
    });

    test('something derived is found only by the version of what made it', async () => {
      const { store, tab } = await opened();
      value(await store.keepDerived('index', { madeBy: '3', bytes: bytes('postings') }));
      const other = await tab();
      expect(value(await other.derived('index', '3'))).toEqual(bytes('postings'));
      expect(value(await other.derived('index', '4'))).toBeUndefined();
      expect(value(await other.derived('other', '3'))).toBeUndefined();
    });

    test('other tabs hear of changes, the one that made them does not', async () => {
      const { store, tab } = await opened();
      const other = await tab();
      const mine: StoreEvent[] = [];
      const theirs: StoreEvent[] = [];
      store.subscribe((event) => mine.push(event));
      const stop = other.subscribe((event) => theirs.push(event));
      const [stamp] = value(await store.put([{ path: 'a', bytes: bytes('one') }]));
      expect(await heard(theirs, 1)).toEqual([{ type: 'changed', files: [stamp], removed: [] }]);
      value(await store.put([{ path: 'a', removed: true, basedOn: stamp?.version ?? -1 }]));
      expect((await heard(theirs, 2))[1]).toEqual({ type: 'changed', files: [], removed: ['a'] });
      stop();
      value(await store.put([{ path: 'b', bytes: bytes('two') }]));
      const third: StoreEvent[] = [];
      other.subscribe((event) => third.push(event));
      value(await store.put([{ path: 'c', bytes: bytes('three') }]));
      await heard(third, 1);
      expect(theirs).toHaveLength(2);
      expect(mine).toEqual([]);
    });

    test('a closed store says so to whatever is asked of it', async () => {
      const { store } = await opened();
      store.close();
      const closed = { ok: false, error: 'closed' };
      expect(await store.stamps()).toEqual(closed);
      expect(await store.put([{ path: 'a', bytes: bytes('one') }])).toEqual(closed);
      expect(await store.read(['a'])).toEqual(closed);
      expect(await store.keepSetting('a', 1)).toEqual(closed);
      for await (const batch of store.loadAll()) expect(batch).toEqual(closed);
    });
  });

  describe(`${name}: imports`, () => {
    const plan = { from: 'notes.zip', batches: [['a', 'b'], ['c'], ['d', 'e']] };

    test('after the browser was killed the next tab knows which files were never written', async () => {
      const { store, tab, disk } = await opened();
      const importId = value(await store.planImport(plan));
      value(
        await store.put(
          ['a', 'b'].map((path) => ({ path, bytes: bytes(path) })),
          { importId, batch: 0 },
        ),
      );
      await disk.kill(store);
      const next = await tab();
      expect(value(await next.unfinishedImports())).toMatchObject([{ importId, from: 'notes.zip', planned: 5, missing: ['c', 'd', 'e'] }]);
      expect([...(await everything(next)).keys()]).toEqual(['a', 'b']);
      value(await next.closeImport(importId));
      expect(value(await next.unfinishedImports())).toEqual([]);
    });

    test('an import that another tab is busy with is not unfinished', async () => {
      const { store, tab } = await opened();
      value(await store.planImport(plan));
      expect(value(await (await tab()).unfinishedImports())).toEqual([]);
      expect(value(await store.unfinishedImports())).toEqual([]);
    });

    test('the last batch closes it, whatever their order', async () => {
      const { store, tab, disk } = await opened();
      const importId = value(await store.planImport(plan));
      for (const batch of [2, 0, 1]) {
        const files = (plan.batches[batch] ?? []).map((path) => ({ path, bytes: bytes(path) }));
        value(await store.put(files, { importId, batch }));
      }
      await disk.kill(store);
      expect(value(await (await tab()).unfinishedImports())).toEqual([]);
    });

    test('a batch that is refused stays on the plan', async () => {
      const { store, tab, disk } = await opened();
      value(await store.put([{ path: 'c', bytes: bytes('older') }]));
      const importId = value(await store.planImport({ from: 'x', batches: [['c']] }));
      expect(await store.put([{ path: 'c', bytes: bytes('new') }], { importId, batch: 0 })).toMatchObject({ error: 'conflict' });
      await disk.kill(store);
      expect(value(await (await tab()).unfinishedImports())).toMatchObject([{ missing: ['c'] }]);
    });
  });
}
