/** Runs in the browser: keeps a notebook as the program does, and opens it to a first verdict. */
import { openDB } from 'idb';
import { Keeper } from '../../../web/notebook/keeper.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { openIdbStore } from '../../../web/store/idb-store.ts';

const DATABASE = 'first-verdict';
const READINGS = { madeBy: 'bench', fromNotes: 1, afterNotes: 1 };

const plain = () => openDB(`${DATABASE}-plain`, 1, { upgrade: (fresh) => fresh.createObjectStore('notes', { keyPath: 'path' }) });

async function opened(readings?: typeof READINGS): Promise<{ engine: LocalEngine; keeper: Keeper }> {
  const store = await openIdbStore(DATABASE, { now: () => Date.now(), newId: () => crypto.randomUUID() });
  if (!store.ok) throw new Error(store.error);
  const engine = new LocalEngine();
  const keeper = new Keeper(store.value, engine, readings);
  const kept = await keeper.openKept();
  if (!kept.ok) throw new Error(kept.error);
  return { engine, keeper };
}

/** Takes the notes from the server, and keeps them and what reading them gave. */
async function fill(): Promise<void> {
  const { keeper } = await opened();
  await keeper.beginEmpty();
  const kept = await plain();
  const encoder = new TextEncoder();
  for (let from = 0; ;) {
    const notes = (await (await fetch(`/notes?from=${from}`)).json()) as readonly { readonly path: string; readonly text: string }[];
    if (notes.length === 0) break;
    const written = await keeper.store.put(notes.map(({ path, text }) => ({ path, bytes: encoder.encode(text) })));
    if (!written.ok) throw new Error(written.error);
    const writing = kept.transaction('notes', 'readwrite', { durability: 'relaxed' });
    await Promise.all([...notes.map((note) => writing.store.put(note)), writing.done]);
    from += notes.length;
  }
  kept.close();
  await (await opened(READINGS)).keeper.keepReadings();
}

async function verdict(dye: string, readings?: typeof READINGS): Promise<string> {
  const { engine } = await opened(readings);
  return JSON.stringify(await engine.answer({ dye, region: 'world', when: '1400' }));
}

const WAYS: Readonly<Record<string, (dye: string) => Promise<string>>> = {
  notes: async () => String((await (await plain()).getAll('notes')).length),
  'kept readings': (dye) => verdict(dye, READINGS),
  'every note read': (dye) => verdict(dye),
};

Object.assign(globalThis, {
  firstVerdict: {
    fill,
    take: async (way: string, dye: string) => {
      const start = performance.now();
      const said = await WAYS[way]?.(dye);
      return { said, took: performance.now() - start };
    },
  },
});
