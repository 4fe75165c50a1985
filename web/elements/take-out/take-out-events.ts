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

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-take-out-request': TakeOutRequestEvent;
  }
}
