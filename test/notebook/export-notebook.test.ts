import { describe, expect, test } from 'vitest';
import type { NotebookStore } from '../../web/domain/ports.ts';
import { exportNotebook } from '../../web/notebook/export-notebook.ts';
import { folderNameOf } from '../../web/notebook/export-zip.ts';
import { importFiles } from '../../web/notebook/import/import-files.ts';
import { openZip } from '../../web/notebook/import/open-zip.ts';
import { isHidden, pathFault } from '../../web/notebook/import/path-fault.ts';
import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';
import { countingSurroundings } from '../contract/note-store.ts';
import { fc, runs } from '../helpers/property.ts';

const fresh = () => new MemoryStore(new MemoryDisk(), countingSurroundings());

async function exported(store: NotebookStore): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  for await (const piece of exportNotebook(store, 'my-notes')) {
    if (!piece.ok) throw new Error(piece.error);
    pieces.push(piece.value);
  }
  return new Uint8Array(Buffer.concat(pieces));
}

async function contents(store: NotebookStore): Promise<readonly (readonly [string, string])[]> {
  const all: [string, string][] = [];
  for await (const batch of store.loadAll()) {
    if (batch.ok) for (const { path, bytes } of batch.value) all.push([path, Buffer.from(bytes).toString('base64')]);
  }
  return all;
}

async function imported(zip: Uint8Array): Promise<MemoryStore> {
  const opened = openZip('x.zip', zip);
  if (!opened.ok) throw new Error(opened.error);
  const store = fresh();
  const report = await importFiles(store, opened.value);
  expect(report.skipped).toEqual([]);
  return store;
}

const part = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }).map((text) => text.replace(/\//g, '-'));
const path = fc
  .array(part, { minLength: 1, maxLength: 4 })
  .map((parts) => parts.join('/'))
  .filter((text) => pathFault(text) === undefined && !isHidden(text));
const content = fc.oneof(
  fc.uint8Array({ maxLength: 400 }),
  fc.string({ maxLength: 400 }).map((text) => new TextEncoder().encode(text)),
);
const files = fc.uniqueArray(fc.record({ path, bytes: content, modifiedAt: fc.integer({ min: 1e12, max: 2e12 }) }), {
  maxLength: 12,
  selector: (file) => file.path,
});

describe('exportNotebook', () => {
  test('read in again gives the same paths and bytes, whatever they are', async () => {
    await fc.assert(
      fc.asyncProperty(files, async (given) => {
        const store = fresh();
        await store.put(given);
        const again = await imported(await exported(store));
        expect(await contents(again)).toEqual(await contents(store));
      }),
      runs(150),
    );
  });

  test('exported again after that, the zip is the same byte for byte', async () => {
    await fc.assert(
      fc.asyncProperty(files, async (given) => {
        const store = fresh();
        await store.put(given);
        const zip = await exported(store);
        expect(Buffer.compare(await exported(await imported(zip)), zip)).toBe(0);
      }),
      runs(50),
    );
  });

  test('a notebook whose files all lie in one folder keeps that folder', async () => {
    const store = fresh();
    await store.put([{ path: 'recipes/a.md', bytes: new Uint8Array([1]) }]);
    expect((await contents(await imported(await exported(store)))).map(([one]) => one)).toEqual(['recipes/a.md']);
  });

  test('a date before zips began does not keep a file out', async () => {
    const store = fresh();
    await store.put([{ path: 'old.md', bytes: new Uint8Array([1]), modifiedAt: 0 }]);
    expect(await contents(await imported(await exported(store)))).toEqual(await contents(store));
  });

  test('a closed store ends it with the reason', async () => {
    const store = fresh();
    store.close();
    const pieces = [];
    for await (const piece of exportNotebook(store, 'x')) pieces.push(piece);
    expect(pieces).toEqual([{ ok: false, error: 'closed' }]);
  });
});

describe('folderNameOf', () => {
  test.each([
    ['Wadholm Quay', 'wadholm-quay'],
    ['Färberei & Söhne / 2024', 'farberei-sohne-2024'],
    ['../..', 'notebook'],
    ['紅花', 'notebook'],
  ])('%s is %s', (title, name) => expect(folderNameOf(title)).toBe(name));
});
