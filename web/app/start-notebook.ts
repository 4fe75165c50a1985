import type { StoreFailure, UnfinishedImport } from '../domain/ports.ts';
import type { Engine } from '../notebook/engine.ts';
import { Keeper } from '../notebook/keeper.ts';
import type { NotebookFile } from '../notebook/notebook.ts';
import { openIdbStore } from '../store/idb-store.ts';
import { MemoryDisk, MemoryStore } from '../store/memory-store.ts';
import type { StoreSurroundings } from '../store/store-surroundings.ts';

/** The database's name in this browser. One notebook for now: another would have a name of its own. */
const DATABASE = 'tenterground';

const surroundings: StoreSurroundings = { now: () => Date.now(), newId: () => crypto.randomUUID() };

/** A notebook that is open. */
export interface StartedNotebook {
  readonly keeper: Keeper;
  /** The engine the page asks: photos, whose bytes stay in the store, are answered from there. */
  readonly engine: Engine;
  /** Present where the notebook in this browser could not be opened; what is written is then lost with the page. */
  readonly failure?: StoreFailure;
  /** Imports that were cut off before they had written everything. */
  readonly unfinished: readonly UnfinishedImport[];
}

/**
 * Opens the notebook that this browser keeps. Where none was begun, the demonstration is shown, and kept only once its reader
 * changes something.
 */
export async function startNotebook(engine: Engine, demonstration: () => Promise<readonly NotebookFile[]>): Promise<StartedNotebook> {
  const opened = await openIdbStore(DATABASE, surroundings);
  const keeper = new Keeper(opened.ok ? opened.value : new MemoryStore(new MemoryDisk(), surroundings), engine);
  const found = await keeper.openKept();
  if (!found.ok || !found.value) await keeper.show(await demonstration());
  const unfinished = await keeper.store.unfinishedImports();
  const failure = opened.ok ? (found.ok ? undefined : found.error) : opened.error;
  return {
    keeper,
    engine: withPhotos(engine, keeper),
    unfinished: unfinished.ok ? unfinished.value : [],
    ...(failure && { failure }),
  };
}

const withPhotos = (engine: Engine, keeper: Keeper): Engine => ({
  ...engine,
  attachment: async (path) => (await engine.attachment(path)) ?? (await keeper.read(path))?.bytes,
});
