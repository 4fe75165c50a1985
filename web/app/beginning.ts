import '../elements/begin/begin-events.ts';
import type { Beginning, Begun } from '../elements/begin/begin-events.ts';
import { ok } from '../domain/result.ts';
import type { FoundFiles } from '../notebook/import/found-files.ts';
import type { Keeper } from '../notebook/keeper.ts';
import type { NotebookFile } from '../notebook/notebook.ts';

/** The part of the keeper that beginning needs. */
export type BeginningKeeper = Pick<Keeper, 'beginEmpty' | 'importFiles' | 'isKept'>;

/** Files at hand, as if they had been found in a folder. */
const foundFiles = (from: string, files: readonly NotebookFile[]): FoundFiles => ({
  from,
  mayBeWrapped: false,
  files: files.map(({ path, bytes }) => ({ path, byteCount: bytes.length, read: () => Promise.resolve(ok(bytes)) })),
});

/**
 * Begins a notebook.
 *
 * @param demonstration the demonstration's files, from which the starter shelf is taken, too.
 * @error what cannot be fetched leaves everything as it is.
 */
export async function beginNotebook(
  keeper: BeginningKeeper,
  beginning: Beginning,
  demonstration: () => Promise<readonly NotebookFile[]>,
): Promise<Begun> {
  if (beginning.with === 'nothing') {
    // A notebook that is kept already is never emptied.
    if (keeper.isKept) return { is: 'failed' };
    return { is: (await keeper.beginEmpty()).ok ? 'begun' : 'failed' };
  }
  const files = await demonstration().catch(() => undefined);
  if (!files) return { is: 'failed' };
  const report =
    beginning.with === 'demonstration'
      ? await keeper.importFiles(foundFiles('The demonstration', files), { whereDifferent: 'keep-mine' })
      : await keeper.importFiles(foundFiles('Starter shelf', await shelf(files, beginning.claims)), { whereDifferent: 'keep-mine' });
  return { is: 'begun', report };
}

async function shelf(files: readonly NotebookFile[], withClaims: boolean): Promise<readonly NotebookFile[]> {
  const { starterShelf } = await import('../notebook/starter-shelf.ts');
  return starterShelf(files, withClaims).files;
}
