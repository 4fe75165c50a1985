import type {
  Change,
  Conflict,
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
import { sameBytes } from './same-bytes.ts';
import { stampOf } from './stamp-of.ts';
import type { StoreSurroundings } from './store-surroundings.ts';

type Earlier = EarlierVersion & StoredFile;
interface Planned {
  readonly plan: ImportPlan;
  readonly startedAt: number;
  readonly open: Set<number>;
  readonly by: MemoryStore;
}

/** What several memory stores share, as tabs share a disk. */
export class MemoryDisk {
  notebookId: string | undefined;
  version: Version = 0;
  readonly files = new Map<string, StoredFile>();
  readonly earlier: Earlier[] = [];
  readonly settings = new Map<string, unknown>();
  readonly derived = new Map<string, Derived>();
  readonly imports = new Map<string, Planned>();
  readonly tabs = new Set<MemoryStore>();
}

const copied = (file: StoredFile): StoredFile => ({ ...stampOf(file), bytes: file.bytes.slice() });

/** A notebook kept only as long as the page is open: for tests, and where the browser keeps nothing. */
export class MemoryStore implements NotebookStore {
  readonly notebookId: string;
  readonly #disk: MemoryDisk;
  readonly #around: StoreSurroundings;
  readonly #listeners = new Set<(event: StoreEvent) => void>();

  constructor(disk: MemoryDisk, around: StoreSurroundings) {
    this.#disk = disk;
    this.#around = around;
    this.notebookId = disk.notebookId ??= around.newId();
    disk.tabs.add(this);
  }

  stamps(): Promise<Result<readonly FileStamp[], StoreFailure>> {
    return this.#whileOpen(() => ok(this.#sorted().map(stampOf)));
  }

  async *loadAll(wanted: (stamp: FileStamp) => boolean = () => true): AsyncGenerator<Result<readonly StoredFile[], StoreFailure>> {
    yield await this.#whileOpen(() => ok(this.#sorted().filter(wanted).map(copied)));
  }

  read(paths: readonly string[]): Promise<Result<readonly StoredFile[], StoreFailure>> {
    return this.#whileOpen(() =>
      ok(
        paths.flatMap((path) => {
          const file = this.#disk.files.get(path);
          return file ? [copied(file)] : [];
        }),
      ),
    );
  }

  put(changes: readonly Change[], batch?: ImportBatch): Promise<PutResult> {
    return this.#whileOpen((): PutResult => {
      const conflicts = changes.flatMap((change): readonly Conflict[] => {
        const stored = this.#disk.files.get(change.path);
        if (stored?.version === change.basedOn) return [];
        return [{ path: change.path, ...(stored && { stored: copied(stored) }) }];
      });
      if (conflicts.length > 0) return { ok: false, error: 'conflict', conflicts };
      const stamps = this.#write(changes);
      if (batch) this.#crossOff(batch);
      return ok(stamps);
    });
  }

  #crossOff({ importId, batch }: ImportBatch): void {
    const planned = this.#disk.imports.get(importId);
    planned?.open.delete(batch);
    if (planned?.open.size === 0) this.#disk.imports.delete(importId);
  }

  #write(changes: readonly Change[]): readonly FileStamp[] {
    const disk = this.#disk;
    const savedAt = this.#around.now();
    const version = (disk.version += 1);
    const stamps: FileStamp[] = [];
    const written: FileStamp[] = [];
    const removed: string[] = [];
    for (const change of changes) {
      const before = disk.files.get(change.path);
      if ('bytes' in change && before && sameBytes(before.bytes, change.bytes)) {
        stamps.push(stampOf(before));
        continue;
      }
      if (before) disk.earlier.push({ ...before, endedAt: savedAt, ended: 'bytes' in change ? 'replaced' : 'removed' });
      if ('bytes' in change) {
        const bytes = change.bytes.slice();
        const { path, modifiedAt = savedAt } = change;
        const file = { path, version, byteCount: bytes.length, savedAt, modifiedAt, bytes };
        disk.files.set(path, file);
        written.push(stampOf(file));
        stamps.push(stampOf(file));
      } else {
        disk.files.delete(change.path);
        removed.push(change.path);
      }
    }
    if (written.length + removed.length > 0) this.#tellOthers({ type: 'changed', files: written, removed });
    return stamps;
  }

  history(path: string): Promise<Result<readonly EarlierVersion[], StoreFailure>> {
    return this.#whileOpen(() =>
      ok(
        this.#disk.earlier
          .filter((one) => one.path === path)
          .sort((a, b) => b.version - a.version)
          .map(withoutBytes),
      ),
    );
  }

  readEarlier(path: string, version: Version): Promise<Result<StoredFile, StoreFailure | 'missing'>> {
    return this.#whileOpen(() => {
      const found = this.#disk.earlier.find((one) => one.path === path && one.version === version);
      return found ? ok(copied(found)) : failed('missing');
    });
  }

  async restore(path: string, version: Version, basedOn?: Version) {
    const earlier = await this.readEarlier(path, version);
    if (!earlier.ok) return earlier;
    const { bytes, modifiedAt } = earlier.value;
    return this.put([{ path, bytes, modifiedAt, ...(basedOn !== undefined && { basedOn }) }]);
  }

  removedFiles(): Promise<Result<readonly EarlierVersion[], StoreFailure>> {
    return this.#whileOpen(() => {
      const last = new Map<string, EarlierVersion>();
      for (const one of this.#disk.earlier) if (!this.#disk.files.has(one.path)) last.set(one.path, withoutBytes(one));
      return ok([...last.values()].sort(byPath));
    });
  }

  setting(key: string): Promise<Result<unknown, StoreFailure>> {
    return this.#whileOpen(() => ok(structuredClone(this.#disk.settings.get(key))));
  }

  keepSetting(key: string, value: unknown): Promise<Result<void, StoreFailure>> {
    return this.#whileOpen(() => {
      this.#disk.settings.set(key, structuredClone(value));
      return ok(undefined);
    });
  }

  derived(name: string, madeBy: string): Promise<Result<Uint8Array | undefined, StoreFailure>> {
    return this.#whileOpen(() => {
      const found = this.#disk.derived.get(name);
      return ok(found?.madeBy === madeBy ? found.bytes.slice() : undefined);
    });
  }

  keepDerived(name: string, { madeBy, bytes }: Derived): Promise<Result<void, StoreFailure>> {
    return this.#whileOpen(() => {
      this.#disk.derived.set(name, { madeBy, bytes: bytes.slice() });
      return ok(undefined);
    });
  }

  planImport(plan: ImportPlan): Promise<Result<string, StoreFailure>> {
    return this.#whileOpen(() => {
      const importId = this.#around.newId();
      const open = new Set(plan.batches.keys());
      this.#disk.imports.set(importId, { plan, startedAt: this.#around.now(), open, by: this });
      return ok(importId);
    });
  }

  unfinishedImports(): Promise<Result<readonly UnfinishedImport[], StoreFailure>> {
    return this.#whileOpen(() =>
      ok(
        [...this.#disk.imports]
          .filter(([, { by }]) => !this.#disk.tabs.has(by))
          .map(([importId, { plan, startedAt, open }]) => ({
            importId,
            from: plan.from,
            startedAt,
            planned: plan.batches.flat().length,
            missing: plan.batches.filter((_, batch) => open.has(batch)).flat(),
          })),
      ),
    );
  }

  closeImport(importId: string): Promise<Result<void, StoreFailure>> {
    return this.#whileOpen(() => {
      this.#disk.imports.delete(importId);
      return ok(undefined);
    });
  }

  subscribe(listener: (event: StoreEvent) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  close(): void {
    this.#disk.tabs.delete(this);
  }

  #tellOthers(event: StoreEvent): void {
    for (const tab of this.#disk.tabs) {
      if (tab !== this) for (const listener of tab.#listeners) queueMicrotask(() => listener(event));
    }
  }

  #sorted(): readonly StoredFile[] {
    return [...this.#disk.files.values()].sort(byPath);
  }

  #whileOpen<T>(work: () => T): Promise<T | { readonly ok: false; readonly error: 'closed' }> {
    return Promise.resolve(this.#disk.tabs.has(this) ? work() : failed('closed'));
  }
}

const byPath = (a: FileStamp, b: FileStamp): number => (a.path < b.path ? -1 : 1);

const withoutBytes = ({ endedAt, ended, ...file }: Earlier): EarlierVersion => ({ ...stampOf(file), endedAt, ended });
