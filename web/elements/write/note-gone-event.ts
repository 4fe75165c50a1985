/** A note was deleted; whoever shows the notebook may offer to put it back. */
export class NoteGoneEvent extends CustomEvent<{ readonly path: string; readonly text: string; readonly title: string }> {
  static readonly type = 'tg-note-gone';
  constructor(path: string, text: string, title: string) {
    super(NoteGoneEvent.type, { detail: { path, text, title }, bubbles: true, composed: true });
  }
}

/** A note was saved for the first time, or under this id. */
export class NoteKeptEvent extends CustomEvent<{ readonly id: string; readonly isNew: boolean }> {
  static readonly type = 'tg-note-kept';
  constructor(id: string, isNew: boolean) {
    super(NoteKeptEvent.type, { detail: { id, isNew }, bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-note-gone': NoteGoneEvent;
    'tg-note-kept': NoteKeptEvent;
  }
}
