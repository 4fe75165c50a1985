/** Runs in the browser: keeps a notebook's notes and its index in several ways, and reads them again. */
import { openDB } from 'idb';
import { FrozenIndex } from '../../../web/search/frozen/frozen-index.ts';

const DATABASE = 'cold-open';
const FILE = 'index';

const database = () =>
  openDB(DATABASE, 1, {
    upgrade: (fresh) => {
      fresh.createObjectStore('notes', { keyPath: 'path' });
      fresh.createObjectStore('index');
    },
  });

/** Takes notes and index from the server and keeps them. */
async function fill(): Promise<void> {
  const kept = await database();
  for (let from = 0; ;) {
    const notes = (await (await fetch(`/notes?from=${from}`)).json()) as readonly unknown[];
    if (notes.length === 0) break;
    const writing = kept.transaction('notes', 'readwrite', { durability: 'relaxed' });
    await Promise.all([...notes.map((note) => writing.store.put(note)), writing.done]);
    from += notes.length;
  }
  const bytes = await (await fetch('/index')).arrayBuffer();
  await kept.put('index', bytes, FILE);
  const file = await (await navigator.storage.getDirectory()).getFileHandle(FILE, { create: true });
  const writing = await file.createWritable();
  await writing.write(bytes);
  await writing.close();
  kept.close();
}

const fromDatabase = async (): Promise<ArrayBuffer> => (await (await database()).get('index', FILE)) as ArrayBuffer;
const fromFile = async (): Promise<ArrayBuffer> =>
  (await (await (await navigator.storage.getDirectory()).getFileHandle(FILE)).getFile()).arrayBuffer();

function answer(bytes: ArrayBuffer): string {
  const found = FrozenIndex.open(bytes)?.rank([{ term: 'ma', beginning: true, near: false, swaps: [] }], 20) ?? [];
  return found.map(({ note }) => note).join();
}

/** Each way of a first answer; what it gives back is compared. */
const WAYS: Readonly<Record<string, () => Promise<string>>> = {
  notes: async () => String((await (await database()).getAll('notes')).length),
  'index in the database': async () => answer(await fromDatabase()),
  'index in a file': async () => answer(await fromFile()),
  'the file’s bytes alone': async () => String((await fromFile()).byteLength),
};

Object.assign(globalThis, {
  coldOpen: {
    fill,
    take: async (way: string) => {
      const start = performance.now();
      const said = await WAYS[way]?.();
      return { said, took: performance.now() - start };
    },
  },
});
