import { openDB } from 'idb';
import type { StoreFailure } from '../domain/ports.ts';
import { failed, ok, type Result } from '../domain/result.ts';
import { migrate, MIGRATIONS, type NotebookDatabase, type NotebookSchema } from './notebook-schema.ts';
import { failureOf } from './store-failure.ts';

/** How a database ends without having been closed by us. */
export type Ending = 'terminated' | 'newer-version';

/**
 * Opens the database, bringing it up to date.
 *
 * A tab of an older version lets go when it is asked to; one that does not leaves us `blocked`, and the opening is given up.
 *
 * @error `newer-version` where a newer program has changed it; `blocked`; `quota`; `unavailable`.
 */
export async function openDatabase(
  name: string,
  ended: (reason: Ending) => void,
): Promise<Result<NotebookDatabase, Exclude<StoreFailure, 'closed' | 'terminated'>>> {
  return new Promise((resolve) => {
    let givenUp = false;
    const opening = openDB<NotebookSchema>(name, MIGRATIONS.length, {
      upgrade: (database, from, _to, transaction) => migrate(database, from, transaction),
      blocked: () => {
        givenUp = true;
        resolve(failed('blocked'));
      },
      blocking: (_current, wanted, event) => {
        // A newer program wants to change the database, or someone to delete it: let go at once, or they would wait for us.
        (event.target as IDBDatabase).close();
        ended(wanted === null ? 'terminated' : 'newer-version');
      },
      terminated: () => ended('terminated'),
    });
    opening.then(
      (database) => {
        if (givenUp) database.close();
        else resolve(ok(database));
      },
      (error: unknown) => {
        const failure = failureOf(error);
        resolve(failed(failure === 'closed' || failure === 'terminated' ? 'unavailable' : failure));
      },
    );
  });
}
