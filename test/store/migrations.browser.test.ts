import { deleteDB, openDB } from 'idb';
import { describe, expect, onTestFinished, test } from 'vitest';
import { openIdbStore } from '../../web/store/idb-store.ts';
import { MIGRATIONS } from '../../web/store/notebook-schema.ts';
import { countingSurroundings } from '../contract/note-store.ts';

interface FixtureStore {
  readonly name: string;
  readonly keyPath?: string | readonly string[];
  readonly records: readonly (readonly [key: IDBValidKey | undefined, value: unknown])[];
}

const text = (words: string): Uint8Array => new TextEncoder().encode(words);

/**
 * Databases as each version of the schema left them, written out by hand and not by the migrations themselves: the same
 * little notebook, with one note changed once and one removed.
 */
const FIXTURES: readonly (readonly FixtureStore[])[] = [
  [
    { name: 'counters', records: [['counters', { notebookId: 'kept', lastVersion: 3, lastBlock: 3 }]] },
    {
      name: 'files',
      keyPath: 'path',
      records: [
        [
          undefined,
          { path: 'madder.md', version: 2, byteCount: 3, savedAt: 20, modifiedAt: 19, place: { block: 2, offset: 0, length: 3 } },
        ],
      ],
    },
    {
      name: 'earlier',
      keyPath: ['path', 'version'],
      records: [
        [
          undefined,
          {
            path: 'madder.md',
            version: 1,
            byteCount: 3,
            savedAt: 10,
            modifiedAt: 9,
            place: { block: 1, offset: 0, length: 3 },
            endedAt: 20,
            ended: 'replaced',
          },
        ],
        [
          undefined,
          {
            path: 'weld.md',
            version: 1,
            byteCount: 4,
            savedAt: 10,
            modifiedAt: 8,
            place: { block: 1, offset: 3, length: 4 },
            endedAt: 30,
            ended: 'removed',
          },
        ],
      ],
    },
    {
      name: 'blocks',
      records: [
        [1, text('oneweld')],
        [2, text('two')],
      ],
    },
    { name: 'settings', records: [['tolerance', 6]] },
    { name: 'derived', records: [['index', { madeBy: '1', bytes: text('index') }]] },
  ],
];

let databases = 0;

async function writeFixture(version: number): Promise<string> {
  const name = `migration-${(databases += 1)}`;
  onTestFinished(() => deleteDB(name));
  const database = await openDB(name, version, {
    upgrade: (opened) => {
      for (const { name: store, keyPath, records } of FIXTURES[version - 1] ?? []) {
        const made = opened.createObjectStore(
          store,
          keyPath === undefined ? {} : { keyPath: [keyPath].flat().length > 1 ? [keyPath].flat() : ([keyPath].flat()[0] ?? '') },
        );
        for (const [key, value] of records) void made.put(value, key);
      }
    },
  });
  database.close();
  return name;
}

describe('migrations', () => {
  test('every version before today’s has its fixture', () => {
    expect(FIXTURES).toHaveLength(MIGRATIONS.length - 1);
  });

  test.each(FIXTURES.map((_, at) => at + 1))('a notebook of version %i keeps its notes, versions and settings', async (version) => {
    const opened = await openIdbStore(await writeFixture(version), countingSurroundings());
    if (!opened.ok) throw new Error(opened.error);
    const store = opened.value;
    onTestFinished(() => store.close());
    expect(store.notebookId).toBe('kept');
    expect(await store.read(['madder.md'])).toMatchObject({ ok: true, value: [{ version: 2, modifiedAt: 19, bytes: text('two') }] });
    expect(await store.history('madder.md')).toMatchObject({ ok: true, value: [{ version: 1, ended: 'replaced' }] });
    expect(await store.readEarlier('madder.md', 1)).toMatchObject({ ok: true, value: { bytes: text('one') } });
    expect(await store.removedFiles()).toMatchObject({ ok: true, value: [{ path: 'weld.md', version: 1 }] });
    expect(await store.setting('tolerance')).toEqual({ ok: true, value: 6 });
    // It can be written to, and goes on counting where it was.
    expect(await store.put([{ path: 'madder.md', bytes: text('three'), basedOn: 2 }])).toMatchObject({ ok: true, value: [{ version: 4 }] });
    expect(await store.restore('weld.md', 1)).toMatchObject({ ok: true, value: [{ path: 'weld.md', version: 5 }] });
    const planned = await store.planImport({ from: 'a folder', batches: [['x']] });
    expect(planned.ok).toBe(true);
  });
});
