import type { FindingProgress, TypedFinding } from '../../notebook/ports-finding.ts';
import type { FoundView } from '../../notebook/views/found-view.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** What is wanted, and whom to tell how far the notes have been taken in. */
export interface Find {
  readonly typed: TypedFinding;
  readonly onProgress: (progress: FindingProgress) => void;
}

/** The reader looks for notes; undefined where a later wish came meanwhile. */
export class FindRequestEvent extends RequestEvent<Find, FoundView | undefined> {
  static readonly type = 'tg-find-request';
  constructor(find: Find) {
    super(FindRequestEvent.type, find);
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-find-request': FindRequestEvent;
  }
}
