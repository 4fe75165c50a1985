import type { NotebookStore, StoreFailure, UnfinishedImport } from '../domain/ports.ts';
import type { Engine } from '../notebook/engine.ts';
import { Keeper } from '../notebook/keeper.ts';
import type { NotebookFile } from '../notebook/notebook.ts';
import { openIdbStore } from '../store/idb-store.ts';
import type { StoreSurroundings } from '../store/store-surroundings.ts';

/** A hash of the code that reads notes; empty where that code is being worked on. */
declare const READING_CODE: string;
/** What was read is kept once the notebook has been left alone for so long (our choice). */
const LEFT_ALONE = 10_000;

/** The database's name in this browser. One notebook for now: another would have a name of its own. */
const DATABASE = 'tenterground';
/**
 * Where a notebook that is only reviewed lies, apart from the reviewer's own.
 *
 * @param address of a published one: each keeps the remarks made on it; empty for one read in from a file.
 */
export const reviewedDatabase = (address: string): string => `tenterground-reviewed${address === '' ? '' : `:${address}`}`;

const surroundings: StoreSurroundings = { now: () => Date.now(), newId: () => crypto.randomUUID() };

/**
 * What stands in for a notebook that did not open. Where the browser keeps nothing at all, it lasts as long as the page;
 * where there is a notebook that only cannot be had now, nothing is taken that would be lost.
 */
async function standIn(why: StoreFailure): Promise<NotebookStore> {
  const { MemoryDisk, MemoryStore } = await import('../store/memory-store.ts');
  if (why === 'unavailable') return new MemoryStore(new MemoryDisk(), surroundings);
  const { RefusingStore } = await import('../store/refusing-store.ts');
  return new RefusingStore(why, surroundings);
}

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
export async function startNotebook(
  engine: Engine,
  demonstration: () => Promise<readonly NotebookFile[]>,
  database = DATABASE,
): Promise<StartedNotebook> {
  const opened = await openIdbStore(database, surroundings);
  const store = opened.ok ? opened.value : await standIn(opened.error);
  const keeper = new Keeper(store, engine, READING_CODE === '' ? undefined : { madeBy: READING_CODE });
  const found = await keeper.openKept();
  if (!found.ok || !found.value) await keeper.show(await demonstration());
  keepReadingsOf(keeper);
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

/** Has what was read kept whenever the notebook has been left alone for a while. */
function keepReadingsOf(keeper: Keeper): void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const wait = () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void keeper.keepReadings(), LEFT_ALONE);
  };
  wait();
  keeper.subscribe(wait);
}
