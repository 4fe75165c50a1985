import type { StoredFile } from '../domain/ports.ts';
import { BLOCK_BYTES, cutFile } from './block-codec.ts';
import type { FileRecord, NotebookDatabase } from './notebook-schema.ts';
import { stampOf } from './stamp-of.ts';
import { wholeTransaction } from './whole-transaction.ts';

/** Files are handed on when about this much has been read: enough to be fast, little enough to show that something happens. */
const BATCH_BYTES = 16 * BLOCK_BYTES;
const BATCH_BLOCKS = 256;

/** Groups records so that the files of one block are read together and a batch stays small. */
export function inBatches(records: readonly FileRecord[]): readonly (readonly FileRecord[])[] {
  const batches: FileRecord[][] = [];
  let size = 0;
  let blocks = 0;
  let lastBlock: number | undefined;
  for (const record of [...records].sort((a, b) => a.place.block - b.place.block || a.place.offset - b.place.offset)) {
    const isNewBlock = record.place.block !== lastBlock;
    if (batches.length === 0 || (isNewBlock && (size >= BATCH_BYTES || blocks >= BATCH_BLOCKS))) {
      batches.push([]);
      size = 0;
      blocks = 0;
    }
    batches.at(-1)?.push(record);
    size += record.byteCount;
    blocks += isNewBlock ? 1 : 0;
    lastBlock = record.place.block;
  }
  return batches;
}

/**
 * The files of some records, in their order; each block is read once.
 *
 * Blocks never change, so this needs no transaction in common with the reading of the records.
 */
export async function filesOf(database: NotebookDatabase, records: readonly FileRecord[]): Promise<readonly StoredFile[]> {
  const reading = database.transaction('blocks');
  const wanted = [...new Set(records.map(({ place }) => place.block))];
  const blocks = new Map(
    await wholeTransaction(reading, () => Promise.all(wanted.map(async (key) => [key, await reading.store.get(key)] as const))),
  );
  return records.map((record) => {
    const block = blocks.get(record.place.block);
    if (!block) throw new Error(`block ${record.place.block} is missing`);
    return { ...stampOf(record), bytes: cutFile(block, record.place) };
  });
}
