import type { ImportReport } from '../../notebook/import/import-files.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** What a notebook begins with: nothing, a starter shelf with or without claims, or the demonstration. */
export type Beginning =
  { readonly with: 'nothing' } | { readonly with: 'shelf'; readonly claims: boolean } | { readonly with: 'demonstration' };

/** How it went: what was read in, or why nothing could be. */
export type Begun = { readonly is: 'begun'; readonly report?: ImportReport } | { readonly is: 'failed' };

/** The reader wants to begin a notebook. */
export class BeginRequestEvent extends RequestEvent<Beginning, Begun> {
  static readonly type = 'tg-begin-request';
  constructor(beginning: Beginning) {
    super(BeginRequestEvent.type, beginning);
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-begin-request': BeginRequestEvent;
  }
}
