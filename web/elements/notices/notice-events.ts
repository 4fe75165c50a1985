/** The reader took a notice's offer up, or put the notice away. */
export class NoticeCloseEvent extends CustomEvent<{ readonly id: string; readonly taken: boolean }> {
  static readonly type = 'tg-notice-close';
  constructor(id: string, taken: boolean) {
    super(NoticeCloseEvent.type, { detail: { id, taken }, bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-notice-close': NoticeCloseEvent;
  }
}
