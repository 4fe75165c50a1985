import type { StoreFailure } from '../../domain/ports.ts';
import type { Result } from '../../domain/result.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** What to take out: the whole notebook as a zip, or one file as it is. */
export type TakeOut = { readonly what: 'notebook' } | { readonly what: 'file'; readonly path: string };

/** A file for the reader to keep elsewhere. */
export interface TakenOut {
  readonly name: string;
  readonly file: Blob;
}

/** The reader wants a copy of the notebook, or of one file. */
export class TakeOutRequestEvent extends RequestEvent<TakeOut, Result<TakenOut, StoreFailure | 'missing'>> {
  static readonly type = 'tg-take-out-request';
  constructor(what: TakeOut) {
    super(TakeOutRequestEvent.type, what);
  }
}

/** The reader wants to be reminded of an export after so many days; 0 is never. */
export class BackupDaysEvent extends CustomEvent<{ readonly days: number }> {
  static readonly type = 'tg-backup-days';
  constructor(days: number) {
    super(BackupDaysEvent.type, { detail: { days }, bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-backup-days': BackupDaysEvent;
    'tg-take-out-request': TakeOutRequestEvent;
  }
}
