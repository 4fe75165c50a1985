import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { FileStamp, Instant } from '../domain/ports.ts';
import type { Place } from './block-codec.ts';

/** The current version of a file, and where its bytes lie. */
export interface FileRecord extends FileStamp {
  readonly place: Place;
}

/** A version before the current one; its bytes stay where they were first written. */
export interface EarlierRecord extends FileRecord {
  readonly endedAt: Instant;
  readonly ended: 'replaced' | 'removed';
}

/** The counters of a notebook, and its name. */
export interface CountersRecord {
  readonly notebookId: string;
  readonly lastVersion: number;
  readonly lastBlock: number;
}

/** An import that has not ended. */
export interface ImportRecord {
  readonly importId: string;
  readonly from: string;
  readonly startedAt: Instant;
  readonly planned: number;
}

/** What the database holds. Records are read by later versions of the program: a change here is a migration. */
export interface NotebookSchema extends DBSchema {
  counters: { key: 'counters'; value: CountersRecord };
  files: { key: string; value: FileRecord };
  earlier: { key: [path: string, version: number]; value: EarlierRecord };
  /** Files packed together; a block is written once and never changed. */
  blocks: { key: number; value: Uint8Array };
  settings: { key: string; value: unknown };
  imports: { key: string; value: ImportRecord };
  /** The batches of an import that are still to be written. */
  batches: { key: [importId: string, batch: number]; value: readonly string[] };
  derived: { key: string; value: { readonly madeBy: string; readonly bytes: Uint8Array } };
}

export type NotebookDatabase = IDBPDatabase<NotebookSchema>;
type Upgrade = (
  database: NotebookDatabase,
  transaction: IDBPTransaction<NotebookSchema, StoreNames<NotebookSchema>[], 'versionchange'>,
) => void;

/** Every step from an empty database to today's. Steps are only ever added at the end. */
export const MIGRATIONS: readonly Upgrade[] = [
  (database) => {
    database.createObjectStore('counters');
    database.createObjectStore('files', { keyPath: 'path' });
    database.createObjectStore('earlier', { keyPath: ['path', 'version'] });
    database.createObjectStore('blocks');
    database.createObjectStore('settings');
    database.createObjectStore('derived');
  },
  (database) => {
    database.createObjectStore('imports', { keyPath: 'importId' });
    database.createObjectStore('batches');
  },
];

/** Takes a database from an older version to today's. */
export function migrate(
  database: NotebookDatabase,
  from: number,
  transaction: IDBPTransaction<NotebookSchema, StoreNames<NotebookSchema>[], 'versionchange'>,
): void {
  for (const step of MIGRATIONS.slice(from)) step(database, transaction);
}
