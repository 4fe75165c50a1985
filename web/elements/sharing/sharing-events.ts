import type { Meeting, SettleOutcome, Settlement } from '../../notebook/sharing/meeting.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** What the reader wants done about the folder. */
export type FolderWish = { readonly is: 'link'; readonly folder: FileSystemDirectoryHandle } | { readonly is: 'look' | 'allow' | 'unlink' };

/** The reader wants a folder linked, looked at, allowed again or unlinked. */
export class FolderRequestEvent extends RequestEvent<FolderWish, void> {
  static readonly type = 'tg-folder-request';
  constructor(wish: FolderWish) {
    super(FolderRequestEvent.type, wish);
  }
}

/** The reader decided between two versions; without a settlement both shall stay as they are. */
export class MeetingSettleRequestEvent extends RequestEvent<
  { readonly meeting: Meeting; readonly settlement?: Settlement },
  SettleOutcome
> {
  static readonly type = 'tg-meeting-settle-request';
  constructor(meeting: Meeting, settlement?: Settlement) {
    super(MeetingSettleRequestEvent.type, { meeting, ...(settlement && { settlement }) });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-folder-request': FolderRequestEvent;
    'tg-meeting-settle-request': MeetingSettleRequestEvent;
  }
}
