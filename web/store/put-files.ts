import type { Change, Conflict, FileStamp, ImportBatch, Instant, PutFile, PutResult } from '../domain/ports.ts';
import { ok } from '../domain/result.ts';
import { cutFile, packFiles } from './block-codec.ts';
import type { IDBPTransaction, StoreNames } from 'idb';
import type { FileRecord, NotebookDatabase, NotebookSchema } from './notebook-schema.ts';
import { sameBytes } from './same-bytes.ts';
import { stampOf } from './stamp-of.ts';
import { wholeTransaction } from './whole-transaction.ts';

const WRITTEN = ['counters', 'files', 'earlier', 'blocks', 'imports', 'batches'] as const;
type Writing = IDBPTransaction<NotebookSchema, StoreNames<NotebookSchema>[], 'readwrite'>;

/** What a write did, beside its result: what other tabs must hear. */
export interface Written {
  readonly result: PutResult;
  readonly files: readonly FileStamp[];
  readonly removed: readonly string[];
}

/**
 * Writes and removes files in one transaction, and returns when it is done.
 *
 * @error throws what IndexedDB throws; the store turns it into words.
 */
export function putFiles(database: NotebookDatabase, changes: readonly Change[], savedAt: Instant, batch?: ImportBatch): Promise<Written> {
  // Strict: the browser says done when the disk has it, so that "saved" survives a power cut too.
  const writing: Writing = database.transaction([...WRITTEN], 'readwrite', { durability: 'strict' });
  return wholeTransaction(writing, () => putWithin(writing, changes, savedAt, batch));
}

async function putWithin(writing: Writing, changes: readonly Change[], savedAt: Instant, batch?: ImportBatch): Promise<Written> {
  const bytesOf = readerOf(writing);
  const found = await Promise.all(changes.map(({ path }) => writing.objectStore('files').get(path)));

  const conflicting = changes.flatMap(({ path, basedOn }, at) => (found[at]?.version === basedOn ? [] : [{ path, record: found[at] }]));
  if (conflicting.length > 0) {
    const conflicts = await Promise.all(
      conflicting.map(async ({ path, record }): Promise<Conflict> => {
        return record ? { path, stored: { ...stampOf(record), bytes: await bytesOf(record) } } : { path };
      }),
    );
    return { result: { ok: false, error: 'conflict', conflicts }, files: [], removed: [] };
  }

  const unchanged = await Promise.all(
    changes.map(async (change, at) => {
      const record = found[at];
      if (!('bytes' in change) || !record || record.byteCount !== change.bytes.length) return undefined;
      return sameBytes(await bytesOf(record), change.bytes) ? stampOf(record) : undefined;
    }),
  );
  const counters = await writing.objectStore('counters').get('counters');
  if (!counters) throw new Error('the notebook has no counters');
  const version = counters.lastVersion + 1;
  const puts = changes.filter((change, at): change is PutFile => 'bytes' in change && !unchanged[at]);
  const removed = changes.filter((change) => 'removed' in change).map(({ path }) => path);
  const { blocks, places } = packFiles(
    puts.map(({ bytes }) => bytes),
    counters.lastBlock + 1,
  );

  const requests: Promise<unknown>[] = [];
  const ask = (request: Promise<unknown>) => {
    // Should a later request be refused outright, nobody is left to hear that this one was given up with it.
    request.catch(() => undefined);
    requests.push(request);
  };
  for (const [key, bytes] of blocks) ask(writing.objectStore('blocks').add(bytes, key));
  const records = puts.map(({ path, bytes, modifiedAt = savedAt }, at): FileRecord => {
    const place = places[at];
    if (!place) throw new Error(`no place for ${path}`);
    return { path, version, byteCount: bytes.length, savedAt, modifiedAt, place };
  });
  for (const [at, change] of changes.entries()) {
    const before = found[at];
    if (unchanged[at] || !before) continue;
    const ended = 'removed' in change ? 'removed' : 'replaced';
    ask(writing.objectStore('earlier').put({ ...before, endedAt: savedAt, ended }));
  }
  for (const path of removed) ask(writing.objectStore('files').delete(path));
  for (const record of records) ask(writing.objectStore('files').put(record));
  if (records.length + removed.length > 0) {
    const lastBlock = counters.lastBlock + blocks.length;
    ask(writing.objectStore('counters').put({ ...counters, lastVersion: version, lastBlock }, 'counters'));
  }
  if (batch) ask(crossOff(writing, batch));
  await Promise.all(requests);

  const files = records.map(stampOf);
  const byPath = new Map(files.map((stamp) => [stamp.path, stamp]));
  const stamps = changes.flatMap(({ path }, at) => unchanged[at] ?? byPath.get(path) ?? []);
  return { result: ok(stamps), files, removed };
}

/** Reads files' bytes within a transaction; each block only once. */
function readerOf(writing: Writing): (record: FileRecord) => Promise<Uint8Array> {
  const blocks = new Map<number, Promise<Uint8Array | undefined>>();
  return async ({ place }) => {
    const reading = blocks.get(place.block) ?? writing.objectStore('blocks').get(place.block);
    blocks.set(place.block, reading);
    const block = await reading;
    if (!block) throw new Error(`block ${place.block} is missing`);
    return cutFile(block, place);
  };
}

/** Strikes a batch off its import's plan, and the plan when nothing is left of it. */
async function crossOff(writing: Writing, { importId, batch }: ImportBatch): Promise<void> {
  const batches = writing.objectStore('batches');
  await batches.delete([importId, batch]);
  const left = await batches.count(batchesOf(importId));
  if (left === 0) await writing.objectStore('imports').delete(importId);
}

/** Every batch of one import. */
export const batchesOf = (importId: string): IDBKeyRange => IDBKeyRange.bound([importId, 0], [importId, Infinity]);
