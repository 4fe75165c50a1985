import type {
  Change,
  Derived,
  EarlierVersion,
  FileStamp,
  ImportBatch,
  ImportPlan,
  NotebookStore,
  PutResult,
  StoredFile,
  StoreEvent,
  StoreFailure,
  UnfinishedImport,
  Version,
} from '../domain/ports.ts';
import { failed, ok, type Result } from '../domain/result.ts';
import { dropPlan, readPlans, writePlan } from './import-journal.ts';
import { ImportLocks } from './import-locks.ts';
import { filesOf, inBatches } from './load-files.ts';
import type { EarlierRecord, FileRecord, NotebookDatabase } from './notebook-schema.ts';
import { openDatabase } from './open-database.ts';
import { putFiles } from './put-files.ts';
import { stampOf } from './stamp-of.ts';
import { failureOf } from './store-failure.ts';
import type { StoreSurroundings } from './store-surroundings.ts';
import { TabChannel } from './tab-channel.ts';
import { wholeTransaction } from './whole-transaction.ts';

type Failed<E extends string> = { readonly ok: false; readonly error: E };

/**
 * Opens the notebook that lies in the browser's database of this name, or begins it.
 *
 * @error `newer-version`, `blocked`, `quota`, `unavailable`.
 */
export async function openIdbStore(name: string, around: StoreSurroundings): Promise<Result<NotebookStore, StoreFailure>> {
  let endedEarly: 'terminated' | 'newer-version' | undefined;
  let onEnd = (reason: 'terminated' | 'newer-version') => {
    endedEarly = reason;
  };
  const opened = await openDatabase(name, (reason) => onEnd(reason));
  if (!opened.ok) return opened;
  try {
    const notebookId = await notebookIdOf(opened.value, around);
    const store = new IdbStore(opened.value, name, notebookId, around);
    onEnd = (reason) => store.end(reason);
    if (endedEarly) store.end(endedEarly);
    return ok(store);
  } catch (error) {
    return failed(failureOf(error));
  }
}

async function notebookIdOf(database: NotebookDatabase, around: StoreSurroundings): Promise<string> {
  const writing = database.transaction('counters', 'readwrite');
  return wholeTransaction(writing, async () => {
    const found = await writing.store.get('counters');
    const notebookId = found?.notebookId ?? around.newId();
    if (!found) await writing.store.put({ notebookId, lastVersion: 0, lastBlock: 0 }, 'counters');
    return notebookId;
  });
}

/** A notebook in IndexedDB. */
class IdbStore implements NotebookStore {
  readonly notebookId: string;
  readonly #database: NotebookDatabase;
  readonly #around: StoreSurroundings;
  readonly #channel: TabChannel;
  readonly #locks: ImportLocks;
  readonly #listeners = new Set<(event: StoreEvent) => void>();
  #ended: 'closed' | 'terminated' | 'newer-version' | undefined;

  constructor(database: NotebookDatabase, name: string, notebookId: string, around: StoreSurroundings) {
    this.notebookId = notebookId;
    this.#database = database;
    this.#around = around;
    this.#channel = new TabChannel(`${name}:changes`, (event) => this.#say(event));
    this.#locks = new ImportLocks(`${name}:import:`);
  }

  stamps(): Promise<Result<readonly FileStamp[], StoreFailure>> {
    return this.#try(async () => (await this.#database.getAll('files')).map(stampOf));
  }

  async *loadAll(wanted: (stamp: FileStamp) => boolean = () => true): AsyncGenerator<Result<readonly StoredFile[], StoreFailure>> {
    const records = await this.#try(() => this.#database.getAll('files'));
    if (!records.ok) {
      yield records;
      return;
    }
    for (const batch of inBatches(records.value.filter(wanted))) {
      const files = await this.#try(() => filesOf(this.#database, batch));
      yield files;
      if (!files.ok) return;
    }
  }

  read(paths: readonly string[]): Promise<Result<readonly StoredFile[], StoreFailure>> {
    return this.#try(async () => {
      const reading = this.#database.transaction('files');
      const records = await wholeTransaction(reading, () => Promise.all(paths.map((path) => reading.store.get(path))));
      return filesOf(this.#database, records.filter(isThere));
    });
  }

  async put(changes: readonly Change[], batch?: ImportBatch): Promise<PutResult> {
    const written = await this.#try(() => putFiles(this.#database, changes, this.#around.now(), batch));
    if (!written.ok) return written;
    const { result, files, removed } = written.value;
    if (files.length + removed.length > 0) this.#channel.tell({ type: 'changed', files, removed });
    return result;
  }

  history(path: string): Promise<Result<readonly EarlierVersion[], StoreFailure>> {
    return this.#try(async () => {
      const records = await this.#database.getAll('earlier', IDBKeyRange.bound([path, 0], [path, Infinity]));
      return records.map(earlierOf).reverse();
    });
  }

  async readEarlier(path: string, version: Version): Promise<Result<StoredFile, StoreFailure | 'missing'>> {
    const found = await this.#try(async () => {
      const record = await this.#database.get('earlier', [path, version]);
      return record && filesOf(this.#database, [record]);
    });
    if (!found.ok) return found;
    const file = found.value?.[0];
    return file ? ok(file) : failed('missing');
  }

  async restore(path: string, version: Version, basedOn?: Version): Promise<PutResult | Failed<'missing'>> {
    const earlier = await this.readEarlier(path, version);
    if (!earlier.ok) return earlier;
    const { bytes, modifiedAt } = earlier.value;
    return this.put([{ path, bytes, modifiedAt, ...(basedOn !== undefined && { basedOn }) }]);
  }

  removedFiles(): Promise<Result<readonly EarlierVersion[], StoreFailure>> {
    return this.#try(async () => {
      const reading = this.#database.transaction(['files', 'earlier']);
      return wholeTransaction(reading, async () => {
        const [files, earlier] = [reading.objectStore('files'), reading.objectStore('earlier')];
        const [paths, keys] = await Promise.all([files.getAllKeys(), earlier.getAllKeys()]);
        const present = new Set(paths);
        // Keys come in order of path and then version, so the last one of a path is its newest.
        const last = new Map(keys.filter(([path]) => !present.has(path)));
        const records = await Promise.all([...last].map((key) => earlier.get(key)));
        return records.filter(isThere).map(earlierOf);
      });
    });
  }

  setting(key: string): Promise<Result<unknown, StoreFailure>> {
    return this.#try(() => this.#database.get('settings', key));
  }

  keepSetting(key: string, value: unknown): Promise<Result<void, StoreFailure>> {
    return this.#try(async () => {
      const writing = this.#database.transaction('settings', 'readwrite', { durability: 'strict' });
      await wholeTransaction(writing, () => writing.store.put(value, key));
    });
  }

  derived(name: string, madeBy: string): Promise<Result<Uint8Array | undefined, StoreFailure>> {
    return this.#try(async () => {
      const found = await this.#database.get('derived', name);
      return found?.madeBy === madeBy ? found.bytes : undefined;
    });
  }

  keepDerived(name: string, { madeBy, bytes }: Derived): Promise<Result<void, StoreFailure>> {
    return this.#try(async () => {
      const writing = this.#database.transaction('derived', 'readwrite');
      await wholeTransaction(writing, () => writing.store.put({ madeBy, bytes: withOwnBuffer(bytes) }, name));
    });
  }

  planImport(plan: ImportPlan): Promise<Result<string, StoreFailure>> {
    return this.#try(async () => {
      const importId = this.#around.newId();
      await this.#locks.hold(importId);
      await writePlan(this.#database, importId, plan, this.#around.now());
      return importId;
    });
  }

  unfinishedImports(): Promise<Result<readonly UnfinishedImport[], StoreFailure>> {
    return this.#try(async () => {
      const [plans, busy] = await Promise.all([readPlans(this.#database), this.#locks.held()]);
      return plans.filter(({ importId }) => !busy.has(importId));
    });
  }

  async closeImport(importId: string): Promise<Result<void, StoreFailure>> {
    const dropped = await this.#try(() => dropPlan(this.#database, importId));
    this.#locks.release(importId);
    return dropped;
  }

  subscribe(listener: (event: StoreEvent) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  close(): void {
    this.#ended ??= 'closed';
    this.#database.close();
    this.#channel.close();
    this.#locks.releaseAll();
  }

  /** The database went away without our asking. */
  end(reason: 'terminated' | 'newer-version'): void {
    if (this.#ended) return;
    this.#ended = reason;
    this.#channel.close();
    this.#locks.releaseAll();
    this.#say({ type: 'ended', reason });
  }

  #say(event: StoreEvent): void {
    for (const listener of this.#listeners) listener(event);
  }

  async #try<T>(work: () => Promise<T>): Promise<Result<T, StoreFailure>> {
    if (this.#ended) return failed(this.#ended);
    try {
      return ok(await work());
    } catch (error) {
      if (this.#ended) return failed(this.#ended);
      // Anything but the browser's own refusal is a mistake of ours and not to be swallowed.
      if (!(error instanceof DOMException)) throw error;
      return failed(failureOf(error));
    }
  }
}

/** A part of a larger buffer would be kept with all of it. */
const withOwnBuffer = (bytes: Uint8Array): Uint8Array => (bytes.byteLength === bytes.buffer.byteLength ? bytes : bytes.slice());

const isThere = <T extends FileRecord>(record: T | undefined): record is T => record !== undefined;

const earlierOf = ({ endedAt, ended, ...record }: EarlierRecord): EarlierVersion => ({ ...stampOf(record), endedAt, ended });
