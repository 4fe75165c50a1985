import type { FoundFiles } from '../../notebook/import/found-files.ts';
import type { ImportProgress, ImportReport } from '../../notebook/import/import-files.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** What is to be read in, and how its reader is kept informed. */
export interface ReadIn {
  readonly found: FoundFiles;
  readonly whereDifferent: 'replace' | 'keep-mine';
  readonly onProgress: (progress: ImportProgress) => void;
  readonly isStopped: () => boolean;
}

/** The reader wants a folder or zip read into the notebook. */
export class ReadInRequestEvent extends RequestEvent<ReadIn, ImportReport> {
  static readonly type = 'tg-read-in-request';
  constructor(readIn: ReadIn) {
    super(ReadInRequestEvent.type, readIn);
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-read-in-request': ReadInRequestEvent;
  }
}
