import { NOTE_KINDS, type NoteKind } from '../../domain/note/note.ts';
import { shortEntry } from '../bibliography.ts';
import type { Notebook } from '../notebook.ts';

/** What a field may be completed to: the word that goes into the note, and what it stands for. */
export interface Completion {
  readonly value: string;
  readonly label: string;
}

/** What this notebook knows that a form can complete from. */
export interface WritingChoices {
  readonly names: Readonly<Partial<Record<NoteKind, readonly Completion[]>>>;
  /** `fibre/undyed name` of every undyed colour. */
  readonly undyed: readonly Completion[];
  readonly sources: readonly Completion[];
  readonly tags: readonly Completion[];
  /** Files that are no notes: photos, spectra. */
  readonly files: readonly Completion[];
}

/** Everything a form can complete from. */
export function writingChoices(notebook: Notebook): WritingChoices {
  const { base } = notebook;
  const kinds: readonly NoteKind[] = [...NOTE_KINDS, 'plain'];
  const byLabel = (a: Completion, b: Completion) => a.label.localeCompare(b.label, 'en');
  return {
    names: Object.fromEntries(
      kinds.map((kind) => [
        kind,
        base
          .ofKind(kind)
          .map(({ id, title }): Completion => ({ value: id, label: title }))
          .sort(byLabel),
      ]),
    ),
    undyed: base
      .ofKind('fibre')
      .flatMap(({ id, title, record }) => record.undyed.map(({ name }) => ({ value: `${id}/${name}`, label: `${title}, ${name}` }))),
    sources: [...notebook.bibliography().values()].map((entry) => ({ value: entry.key, label: shortEntry(entry) })).sort(byLabel),
    tags: [...new Set([...base.notes()].flatMap(({ tags }) => tags))].sort().map((tag) => ({ value: tag, label: tag })),
    files: [...notebook.attachmentPaths()].sort().map((path) => ({ value: path, label: path })),
  };
}
