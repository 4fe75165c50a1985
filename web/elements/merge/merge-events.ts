/** The reader decided what the note shall say. */
export class MergeDoneEvent extends CustomEvent<{ readonly text: string }> {
  static readonly type = 'tg-merge-done';
  constructor(text: string) {
    super(MergeDoneEvent.type, { detail: { text }, bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-merge-done': MergeDoneEvent;
  }
}
