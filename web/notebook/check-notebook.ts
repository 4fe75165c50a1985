import { type CheckContext, checkNote } from '../domain/claim/check-note.ts';
import type { Diagnostic } from '../domain/diagnostic.ts';
import type { Note } from '../domain/note/note.ts';
import { parseNote } from '../domain/note/parse-note.ts';
import type { FileFinding, Notebook } from './notebook.ts';

/**
 * Everything found wrong in a notebook, by file and place: what each note shows alone, then what shows between notes.
 *
 * @param today `YYYY-MM-DD`, for reviews that are overdue; without it none is.
 */
export function notebookFindings(notebook: Notebook, today?: string): readonly FileFinding[] {
  const context = { ...notebook.checkContext(), ...(today === undefined ? {} : { today }) };
  return [...notebook.base.notes()].sort((a, b) => (a.file < b.file ? -1 : 1)).flatMap((note) => fileFindings(notebook, note, context));
}

/** What is wrong in one note as it lies in the notebook. */
export function noteFindings(notebook: Notebook, path: string): readonly Diagnostic[] {
  const note = notebook.base.noteIn(path);
  return note ? findingsOf(notebook, note, notebook.checkContext()) : [];
}

/** What is wrong in the notes of these files, alone and between notes, in the order of the paths. */
export function findingsInFiles(notebook: Notebook, paths: readonly string[]): readonly FileFinding[] {
  const context = notebook.checkContext();
  return paths.flatMap((path) => {
    const note = notebook.base.noteIn(path);
    return note ? fileFindings(notebook, note, context) : [];
  });
}

/** What would be wrong in a note if its text were this: the notebook itself does not change. */
export function textFindings(notebook: Notebook, path: string, text: string): readonly Diagnostic[] {
  const { value, diagnostics } = parseNote(path, text);
  return inOrder([...diagnostics, ...checkNote(notebook.base, value, notebook.checkContext())]);
}

const fileFindings = (notebook: Notebook, note: Note, context: CheckContext): readonly FileFinding[] =>
  findingsOf(notebook, note, context).map((diagnostic) => ({ file: note.file, id: note.id, text: note.source, diagnostic }));

const findingsOf = (notebook: Notebook, note: Note, context: CheckContext): readonly Diagnostic[] =>
  inOrder([...notebook.foundInText(note.file), ...checkNote(notebook.base, note, context)]);

const inOrder = (found: readonly Diagnostic[]): readonly Diagnostic[] => [...found].sort((a, b) => a.range[0] - b.range[0]);
