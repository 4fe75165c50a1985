import { deleteDB, openDB } from 'idb';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import type { NotebookStore } from '../../web/domain/ports.ts';
import { openIdbStore } from '../../web/store/idb-store.ts';
import { countingSurroundings } from '../contract/note-store.ts';

let databases = 0;
async function opened(): Promise<{ readonly name: string; readonly store: NotebookStore }> {
  const name = `whole-${(databases += 1)}`;
  onTestFinished(() => deleteDB(name));
  const result = await openIdbStore(name, countingSurroundings());
  if (!result.ok) throw new Error(result.error);
  onTestFinished(() => result.value.close());
  return { name, store: result.value };
}

/** All that lies in a database, read past the store. */
async function heldIn(name: string): Promise<object> {
  const database = await openDB(name);
  const held = await Promise.all(
    [...database.objectStoreNames].map(async (one) => [one, await database.getAllKeys(one), await database.getAll(one)]),
  );
  database.close();
  return held;
}

const CHANGING = ['add', 'put', 'delete'] as const;
type Change = (this: IDBObjectStore, ...given: unknown[]) => IDBRequest;

/**
 * Lets so many changes pass and fails the next one: the browser refuses it, or grants it and gives its transaction up.
 *
 * @returns how to mend it, which names the object store that was changed; undefined where there was no such change.
 */
function failAfter(changes: number, how: 'refused' | 'given up'): () => string | undefined {
  let [left, at]: [number, string?] = [changes];
  const spies = CHANGING.map((name) => {
    const change = Reflect.get(IDBObjectStore.prototype, name) as Change;
    return vi.spyOn(IDBObjectStore.prototype, name).mockImplementation(function (this: IDBObjectStore, ...given: unknown[]) {
      left -= 1;
      if (left !== -1) return change.apply(this, given);
      at = this.name;
      if (how === 'refused') throw new DOMException('no room', 'QuotaExceededError');
      const request = change.apply(this, given);
      request.addEventListener('success', () => this.transaction.abort());
      return request;
    });
  });
  return () => {
    for (const spy of spies) spy.mockRestore();
    return at;
  };
}

describe('a write', () => {
  test.each(['refused', 'given up'] as const)(
    'that is %s at any of its steps is not said to be done, and leaves everything as it was',
    async (how) => {
      const { name, store } = await opened();
      const bytes = (length: number) => new Uint8Array(length).fill(length);
      const first = await store.put(['a', 'b'].map((path) => ({ path, bytes: bytes(10) })));
      const planned = await store.planImport({ from: 'a.zip', batches: [['a', 'c']] });
      if (!first.ok || !planned.ok) throw new Error('not begun');
      const basedOn = first.value[0]?.version ?? 0;
      const before = await heldIn(name);
      const changed = new Set<string>();
      for (let changes = 0; ; changes++) {
        const mend = failAfter(changes, how);
        const written = await store.put(
          [
            { path: 'a', bytes: bytes(20), basedOn },
            { path: 'b', removed: true, basedOn },
            { path: 'c', bytes: bytes(30) },
          ],
          { importId: planned.value, batch: 0 },
        );
        const at = mend();
        expect(written.ok, `after ${changes} changes, in ${at}`).toBe(at === undefined);
        if (at === undefined) break;
        expect(await heldIn(name), `after ${changes} changes, in ${at}`).toEqual(before);
        changed.add(at);
      }
      expect([...changed].toSorted()).toEqual(['batches', 'blocks', 'counters', 'earlier', 'files', 'imports']);
      expect(await heldIn(name)).not.toEqual(before);
    },
  );

  test('waits for the disk and not only for the system: whatever a reader would miss', async () => {
    const { store } = await opened();
    const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
    onTestFinished(() => begun.mockRestore());
    await store.put([{ path: 'a', bytes: new Uint8Array(10) }]);
    await store.keepSetting('begun', true);
    const planned = await store.planImport({ from: 'a.zip', batches: [['b']] });
    await store.closeImport(planned.ok ? planned.value : '');
    const writing = begun.mock.results.flatMap(({ value }) =>
      value instanceof IDBTransaction && value.mode !== 'readonly' ? [value] : [],
    );
    expect(writing.map(({ durability }) => durability)).toEqual(['strict', 'strict', 'strict', 'strict']);
  });
});
