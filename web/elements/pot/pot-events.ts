import type { StoreFailure } from '../../domain/ports.ts';
import type { Result } from '../../domain/result.ts';
import type { logInWords } from '../../notebook/words/pot-log-words.ts';
import { RequestEvent } from '../shared/request-event.ts';
import type { TakenOut } from '../take-out/take-out-events.ts';

/** What became of a log that was brought in, and the pot it is of. */
export interface LogBroughtIn {
  readonly is: keyof typeof logInWords;
  readonly id?: string;
  /** Codes that its skeins may have instead, where two pots were given the same. */
  readonly free?: readonly string[];
}

/** A pot's log packed with its photos; without photos also as plain text. */
export interface PotTakenOut extends TakenOut {
  readonly plain?: TakenOut;
}

/** The reader wants a pot's note and its photos as one file. */
export class PotFileRequestEvent extends RequestEvent<{ readonly id: string }, Result<PotTakenOut, StoreFailure | 'missing'>> {
  static readonly type = 'tg-pot-file-request';
  constructor(id: string) {
    super(PotFileRequestEvent.type, { id });
  }
}

/** The reader brings in the log of another machine. */
export class LogInRequestEvent extends RequestEvent<{ readonly name: string; readonly bytes: Uint8Array }, LogBroughtIn> {
  static readonly type = 'tg-log-in-request';
  constructor(name: string, bytes: Uint8Array) {
    super(LogInRequestEvent.type, { name, bytes });
  }
}

/** Asks for the address that tags carry beside their code; with `set`, changes it. '' is none. */
export class TagAddressRequestEvent extends RequestEvent<{ readonly set?: string }, string> {
  static readonly type = 'tg-tag-address-request';
  constructor(set?: string) {
    super(TagAddressRequestEvent.type, set === undefined ? {} : { set });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-pot-file-request': PotFileRequestEvent;
    'tg-log-in-request': LogInRequestEvent;
    'tg-tag-address-request': TagAddressRequestEvent;
  }
}
