import type { StoreFailure } from '../../domain/ports.ts';
import type { Remark } from '../../notebook/remarks.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** A remark as it is written; its id and time come when it is kept. */
export type WrittenRemark = Pick<Remark, 'note' | 'line' | 'text' | 'by'>;

/** What became of a change to the remarks. `unreadable`: the notebook's file of remarks is no such file, and was left alone. */
export type RemarkOutcome = 'kept' | 'unreadable' | 'changed-meanwhile' | StoreFailure;

/** What became of a file of remarks that was read in. */
export type RemarksReadIn =
  | { readonly is: 'merged'; readonly added: number; readonly known: number; readonly unread: number }
  | { readonly is: 'refused'; readonly why: 'not-remarks' | 'newer' }
  | { readonly is: 'not-kept'; readonly why: Exclude<RemarkOutcome, 'kept'> };

/** The reader made a remark. */
export class RemarkAddRequestEvent extends RequestEvent<WrittenRemark, RemarkOutcome> {
  static readonly type = 'tg-remark-add-request';
  constructor(remark: WrittenRemark) {
    super(RemarkAddRequestEvent.type, remark);
  }
}

/** A remark was dealt with. */
export class RemarkDoneRequestEvent extends RequestEvent<{ readonly id: string }, RemarkOutcome> {
  static readonly type = 'tg-remark-done-request';
  constructor(id: string) {
    super(RemarkDoneRequestEvent.type, { id });
  }
}

/** Somebody's file of remarks shall be merged in. */
export class RemarksReadInRequestEvent extends RequestEvent<{ readonly bytes: Uint8Array }, RemarksReadIn> {
  static readonly type = 'tg-remarks-read-in-request';
  constructor(bytes: Uint8Array) {
    super(RemarksReadInRequestEvent.type, { bytes });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-remark-add-request': RemarkAddRequestEvent;
    'tg-remark-done-request': RemarkDoneRequestEvent;
    'tg-remarks-read-in-request': RemarksReadInRequestEvent;
  }
}
