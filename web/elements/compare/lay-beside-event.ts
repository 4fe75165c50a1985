import type { FoundFiles } from '../../notebook/import/found-files.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** Another notebook that lies beside this one, to be compared with. */
export interface NotebookBeside {
  /** The name of its folder or zip. */
  readonly name: string;
  readonly notes: number;
  /** Files that could not be read. */
  readonly unread: number;
}

/** The reader wants another notebook laid beside this one; it is read, and kept nowhere. */
export class LayBesideRequestEvent extends RequestEvent<FoundFiles, NotebookBeside> {
  static readonly type = 'tg-lay-beside-request';
  constructor(found: FoundFiles) {
    super(LayBesideRequestEvent.type, found);
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-lay-beside-request': LayBesideRequestEvent;
  }
}
