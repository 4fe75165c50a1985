import type { Result } from './result.ts';

/**
 * Counts the writes to a notebook. A number is never used twice, so a file that was removed and written again has
 * another version than it had before.
 */
export type Version = number;

/** Milliseconds since 1970-01-01T00:00Z. */
export type Instant = number;

/**
 * Why the store could not do what was asked.
 * - `quota`: the browser gives no more room.
 * - `blocked`: another tab holds an older notebook open and did not let go.
 * - `terminated`: the browser ended the connection, as when its data are cleared.
 * - `newer-version`: the notebook was made, or has just been taken over, by a newer version of the program.
 * - `closed`: this page closed the store.
 * - `unavailable`: the browser keeps nothing here, or failed in a way it did not name.
 */
export type StoreFailure = 'quota' | 'blocked' | 'terminated' | 'newer-version' | 'closed' | 'unavailable';

/** What the store knows of a file without reading it. */
export interface FileStamp {
  /** Path inside the notebook, `/` between parts. */
  readonly path: string;
  readonly version: Version;
  readonly byteCount: number;
  /** When this version was written here. */
  readonly savedAt: Instant;
  /** When its text was last changed: by its reader, or as the folder or zip it came from says. */
  readonly modifiedAt: Instant;
}

/** A file as it lies in the store, byte for byte as it came. */
export interface StoredFile extends FileStamp {
  readonly bytes: Uint8Array;
}

/** A version that another took the place of, or that was removed. */
export interface EarlierVersion extends FileStamp {
  readonly endedAt: Instant;
  readonly ended: 'replaced' | 'removed';
}

/** A file to write. */
export interface PutFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** The version the writer had before their eyes; absent for a file that is new to them. */
  readonly basedOn?: Version;
  /** Now, when absent. */
  readonly modifiedAt?: Instant;
}

/** A file to take out; its versions stay among the earlier ones. */
export interface RemoveFile {
  readonly path: string;
  readonly removed: true;
  /** The version the reader had before their eyes; without one nothing is removed. */
  readonly basedOn?: Version;
}

export type Change = PutFile | RemoveFile;

/** A change that was based on another version than the stored one. */
export interface Conflict {
  readonly path: string;
  /** What lies there now; absent where it was removed. */
  readonly stored?: StoredFile;
}

/** A write is whole or not at all. Files whose bytes are already stored keep their version. */
export type PutResult =
  | { readonly ok: true; readonly value: readonly FileStamp[] }
  | { readonly ok: false; readonly error: 'conflict'; readonly conflicts: readonly Conflict[] }
  | { readonly ok: false; readonly error: StoreFailure };

/** What other tabs did to the notebook, and how a store ends without having been closed. */
export type StoreEvent =
  | { readonly type: 'changed'; readonly files: readonly FileStamp[]; readonly removed: readonly string[] }
  | { readonly type: 'ended'; readonly reason: 'terminated' | 'newer-version' };

/** An import as it was planned: batches of paths, each written whole. */
export interface ImportPlan {
  /** What is read in, in the reader's words: the name of a folder or zip. */
  readonly from: string;
  readonly batches: readonly (readonly string[])[];
}

/** One batch of a planned import. */
export interface ImportBatch {
  readonly importId: string;
  readonly batch: number;
}

/** An import whose tab or browser ended before it did. */
export interface UnfinishedImport {
  readonly importId: string;
  readonly from: string;
  readonly startedAt: Instant;
  readonly planned: number;
  /** Paths never written. */
  readonly missing: readonly string[];
}

/** Something made from the notes that can be made again. */
export interface Derived {
  /** The version of what made it, and whatever else it depends on: asked for with another, it is not there. */
  readonly madeBy: string;
  readonly bytes: Uint8Array;
}

/** Where one notebook is kept. Whatever it returns as written is written. */
export interface NotebookStore {
  /** Chosen when the notebook was first kept, and the same ever after. */
  readonly notebookId: string;

  /** Every file, without its bytes, in order of path. */
  stamps(): Promise<Result<readonly FileStamp[], StoreFailure>>;
  /**
   * Every wanted file, in batches that suit the store, as the notebook stood when reading began.
   * A failed batch is the last one.
   */
  loadAll(wanted?: (stamp: FileStamp) => boolean): AsyncIterable<Result<readonly StoredFile[], StoreFailure>>;
  /** The named files in the order asked; those that are not there are left out. */
  read(paths: readonly string[]): Promise<Result<readonly StoredFile[], StoreFailure>>;

  /**
   * Writes and removes files, all or none; each path at most once. A batch of an import is crossed off its plan in the
   * same breath, and the last one closes it.
   */
  put(changes: readonly Change[], batch?: ImportBatch): Promise<PutResult>;

  /** Earlier versions, the newest first. */
  history(path: string): Promise<Result<readonly EarlierVersion[], StoreFailure>>;
  /** An earlier version with its bytes. */
  readEarlier(path: string, version: Version): Promise<Result<StoredFile, StoreFailure | 'missing'>>;
  /** Writes an earlier version as the newest one. `basedOn` is absent where the file is removed. */
  restore(path: string, version: Version, basedOn?: Version): Promise<PutResult | { readonly ok: false; readonly error: 'missing' }>;
  /** Files that were removed and not written again, each as it last was. */
  removedFiles(): Promise<Result<readonly EarlierVersion[], StoreFailure>>;

  setting(key: string): Promise<Result<unknown, StoreFailure>>;
  /** Keeps a plain value. */
  keepSetting(key: string, value: unknown): Promise<Result<void, StoreFailure>>;
  derived(name: string, madeBy: string): Promise<Result<Uint8Array | undefined, StoreFailure>>;
  keepDerived(name: string, derived: Derived): Promise<Result<void, StoreFailure>>;

  /** Writes down what an import is about to write, before its first batch. */
  planImport(plan: ImportPlan): Promise<Result<string, StoreFailure>>;
  /** Imports that ended before their last batch; not those that another tab is busy with. */
  unfinishedImports(): Promise<Result<readonly UnfinishedImport[], StoreFailure>>;
  /** Forgets an import's plan: its reader knows what is missing. */
  closeImport(importId: string): Promise<Result<void, StoreFailure>>;

  /** Tells of other tabs' changes; gives back how to stop listening. */
  subscribe(listener: (event: StoreEvent) => void): () => void;
  close(): void;
}
