import type { EarlierNotes, EarlierText, NoteToSave, SaveOutcome } from '../../notebook/ports-writing.ts';
import type { NotebookFile } from '../../notebook/notebook.ts';
import type { ValuePath } from '../../domain/note/locate-value.ts';
import type { PlainValue, RawYaml } from '../../domain/note/yaml-text.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** What the writer did to the text. */
export type DraftEdit =
  | { readonly is: 'set'; readonly path: ValuePath; readonly value: PlainValue | RawYaml }
  | { readonly is: 'remove'; readonly path: ValuePath }
  | { readonly is: 'text'; readonly text: string; readonly label: string }
  /** A file the text is about to name. */
  | { readonly is: 'file'; readonly file: NotebookFile };

/** The writer changed the text, through a form or by typing. */
export class DraftEditEvent extends CustomEvent<DraftEdit> {
  static readonly type = 'tg-draft-edit';
  constructor(edit: DraftEdit) {
    super(DraftEditEvent.type, { detail: edit, bubbles: true, composed: true });
  }
}

/** The writer wants a note saved. */
export class NoteSaveRequestEvent extends RequestEvent<NoteToSave, SaveOutcome> {
  static readonly type = 'tg-note-save-request';
  constructor(note: NoteToSave) {
    super(NoteSaveRequestEvent.type, note);
  }
}

/** The writer wants many new notes saved together, or such notes, as they were written, taken back: all or none. */
export class NotesSaveRequestEvent extends RequestEvent<
  { readonly notes: readonly NoteToSave[]; readonly takenBack: readonly NoteToSave[] },
  SaveOutcome
> {
  static readonly type = 'tg-notes-save-request';
  constructor(notes: readonly NoteToSave[], takenBack: readonly NoteToSave[] = []) {
    super(NotesSaveRequestEvent.type, { notes, takenBack });
  }
}

/** The writer wants a note deleted; `basedOn` is the text they saw. */
export class NoteDeleteRequestEvent extends RequestEvent<{ readonly path: string; readonly basedOn: string }, SaveOutcome> {
  static readonly type = 'tg-note-delete-request';
  constructor(path: string, basedOn: string) {
    super(NoteDeleteRequestEvent.type, { path, basedOn });
  }
}

/** The reader asks for a note's earlier versions. */
export class NoteHistoryRequestEvent extends RequestEvent<{ readonly path: string }, EarlierNotes> {
  static readonly type = 'tg-note-history-request';
  constructor(path: string) {
    super(NoteHistoryRequestEvent.type, { path });
  }
}

/** The reader asks for the text of an earlier version. */
export class NoteEarlierRequestEvent extends RequestEvent<{ readonly path: string; readonly version: number }, EarlierText> {
  static readonly type = 'tg-note-earlier-request';
  constructor(path: string, version: number) {
    super(NoteEarlierRequestEvent.type, { path, version });
  }
}

/** The writer wants a note saved with files that belong to it, photos mostly: together or not at all. */
export class CaptureSaveRequestEvent extends RequestEvent<
  { readonly note: NoteToSave; readonly photos: readonly NotebookFile[] },
  SaveOutcome
> {
  static readonly type = 'tg-capture-save-request';
  constructor(note: NoteToSave, photos: readonly NotebookFile[]) {
    super(CaptureSaveRequestEvent.type, { note, photos });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-draft-edit': DraftEditEvent;
    'tg-note-save-request': NoteSaveRequestEvent;
    'tg-notes-save-request': NotesSaveRequestEvent;
    'tg-note-delete-request': NoteDeleteRequestEvent;
    'tg-note-history-request': NoteHistoryRequestEvent;
    'tg-note-earlier-request': NoteEarlierRequestEvent;
    'tg-capture-save-request': CaptureSaveRequestEvent;
  }
}
