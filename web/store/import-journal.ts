import type { ImportPlan, Instant, UnfinishedImport } from '../domain/ports.ts';
import type { NotebookDatabase } from './notebook-schema.ts';
import { batchesOf } from './put-files.ts';
import { wholeTransaction } from './whole-transaction.ts';

/** Writes an import's plan down. */
export async function writePlan(database: NotebookDatabase, importId: string, plan: ImportPlan, startedAt: Instant): Promise<void> {
  const writing = database.transaction(['imports', 'batches'], 'readwrite', { durability: 'strict' });
  const planned = plan.batches.reduce((sum, paths) => sum + paths.length, 0);
  await wholeTransaction(writing, () =>
    Promise.all([
      writing.objectStore('imports').put({ importId, from: plan.from, startedAt, planned }),
      ...plan.batches.map((paths, batch) => writing.objectStore('batches').put([...paths], [importId, batch])),
    ]),
  );
}

/** Every plan that was not finished, whoever is at it. */
export async function readPlans(database: NotebookDatabase): Promise<readonly UnfinishedImport[]> {
  const reading = database.transaction(['imports', 'batches']);
  return wholeTransaction(reading, async () => {
    const records = await reading.objectStore('imports').getAll();
    return Promise.all(
      records.map(async ({ importId, from, startedAt, planned }) => {
        const batches = await reading.objectStore('batches').getAll(batchesOf(importId));
        return { importId, from, startedAt, planned, missing: batches.flat() };
      }),
    );
  });
}

/** Forgets an import's plan. */
export async function dropPlan(database: NotebookDatabase, importId: string): Promise<void> {
  const writing = database.transaction(['imports', 'batches'], 'readwrite', { durability: 'strict' });
  await wholeTransaction(writing, () =>
    Promise.all([writing.objectStore('imports').delete(importId), writing.objectStore('batches').delete(batchesOf(importId))]),
  );
}
