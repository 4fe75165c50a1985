import type { Notebook } from './notebook.ts';

/** A note's file for writing. */
export interface NoteText {
  readonly id: string;
  readonly path: string;
  /** The whole file. */
  readonly text: string;
  readonly title: string;
  /** True where it may not be written back until it is converted. */
  readonly readOnly: boolean;
}

/** The text of the note that holds an id; undefined where there is none. */
export function noteText(notebook: Notebook, id: string): NoteText | undefined {
  const note = notebook.base.note(id);
  return note && { id: note.id, path: note.file, text: note.source, title: note.title, readOnly: notebook.isReadOnly(note.file) };
}
