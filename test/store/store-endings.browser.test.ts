import { deleteDB, openDB } from 'idb';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import type { NotebookStore, StoreEvent } from '../../web/domain/ports.ts';
import { openIdbStore } from '../../web/store/idb-store.ts';
import { MIGRATIONS } from '../../web/store/notebook-schema.ts';
import { countingSurroundings } from '../contract/note-store.ts';

let databases = 0;
const freshName = () => {
  const name = `endings-${(databases += 1)}`;
  onTestFinished(() => deleteDB(name));
  return name;
};

async function opened(name: string): Promise<NotebookStore> {
  const result = await openIdbStore(name, countingSurroundings());
  if (!result.ok) throw new Error(result.error);
  onTestFinished(() => result.value.close());
  return result.value;
}

describe('opening', () => {
  test('a notebook of a newer program is left alone', async () => {
    const name = freshName();
    (await openDB(name, MIGRATIONS.length + 1)).close();
    expect(await openIdbStore(name, countingSurroundings())).toEqual({ ok: false, error: 'newer-version' });
  });

  test('is blocked while another tab holds an older notebook and does not let go', async () => {
    const name = freshName();
    const stubborn = await openDB(name, MIGRATIONS.length - 1);
    onTestFinished(() => stubborn.close());
    expect(await openIdbStore(name, countingSurroundings())).toEqual({ ok: false, error: 'blocked' });
  });
});

describe('an open store', () => {
  test('lets go when a newer program takes the notebook over, and says so', async () => {
    const name = freshName();
    const store = await opened(name);
    const events: StoreEvent[] = [];
    store.subscribe((event) => events.push(event));
    (await openDB(name, MIGRATIONS.length + 1)).close();
    expect(events).toEqual([{ type: 'ended', reason: 'newer-version' }]);
    expect(await store.put([{ path: 'a', bytes: new Uint8Array(1) }])).toEqual({ ok: false, error: 'newer-version' });
  });

  test('says so when its data are taken away', async () => {
    const name = freshName();
    const store = await opened(name);
    const events: StoreEvent[] = [];
    store.subscribe((event) => events.push(event));
    await deleteDB(name);
    expect(events).toEqual([{ type: 'ended', reason: 'terminated' }]);
    expect(await store.stamps()).toEqual({ ok: false, error: 'terminated' });
  });

  test('says when the room is used up, writes nothing of it, and goes on with what fits', async () => {
    const store = await opened(freshName());
    await store.put([{ path: 'a', bytes: new Uint8Array(10) }]);
    // The browser refuses a record; the refusal is made here because a test browser’s room cannot be made small.
    type Add = (this: IDBObjectStore, value: unknown, key?: IDBValidKey) => IDBRequest<IDBValidKey>;
    const add = Reflect.get(IDBObjectStore.prototype, 'add') as Add;
    const refusing = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (this: IDBObjectStore, value, key) {
      if (value instanceof Uint8Array && value.length > 1000) throw new DOMException('no room', 'QuotaExceededError');
      return add.call(this, value, key);
    });
    onTestFinished(() => refusing.mockRestore());
    const tooMuch = [
      { path: 'b', bytes: new Uint8Array(10) },
      { path: 'c', bytes: new Uint8Array(300_000) },
    ];
    expect(await store.put(tooMuch)).toEqual({ ok: false, error: 'quota' });
    const stamps = await store.stamps();
    expect(stamps.ok && stamps.value.map(({ path }) => path)).toEqual(['a']);
    expect(await store.put([{ path: 'b', bytes: new Uint8Array(10) }])).toMatchObject({ ok: true });
  });
});
