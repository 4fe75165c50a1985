import type { NotebookFile } from './notebook.ts';

/** A note that is being written: the text and how it came to be. Nothing in it is read; whoever shows it reads the text. */
export interface Draft {
  readonly path: string;
  /** The text as it was opened or last saved; '' for a new note. */
  readonly base: string;
  /** True for a note that lies nowhere yet. */
  readonly isNew: boolean;
  /** Files picked for it, to be saved with it once its text names them. */
  readonly files?: readonly NotebookFile[];
  /** The text as it stands. */
  readonly text: string;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

/** A text that can be gone back or forward to. */
export interface Step {
  readonly text: string;
  /** What was being done: edits with the same label, one after another, are one step. */
  readonly label: string;
}

/** Steps that can be gone back (our choice: an afternoon's writing). */
const MOST_STEPS = 200;

/** Opens a text for writing. */
export const openDraft = (path: string, text: string, isNew = false): Draft => ({
  path,
  base: isNew ? '' : text,
  isNew,
  text,
  past: [],
  future: [],
});

/** Whether there is something to save. */
export const isDirty = ({ isNew, text, base }: Draft): boolean => isNew || text !== base;

/**
 * The draft with another text.
 *
 * @param label what was being done; the same label as the step before makes one step of both.
 */
export function withText(draft: Draft, text: string, label: string): Draft {
  if (text === draft.text) return draft;
  const goesOn = draft.future.length === 0 && draft.past.at(-1)?.label === label;
  const past = goesOn ? draft.past : [...draft.past, { text: draft.text, label }].slice(-MOST_STEPS);
  return { ...draft, text, past, future: [] };
}

/** One step back. */
export function undone(draft: Draft): Draft {
  const step = draft.past.at(-1);
  if (!step) return draft;
  return { ...draft, text: step.text, past: draft.past.slice(0, -1), future: [{ text: draft.text, label: step.label }, ...draft.future] };
}

/** One step forward again. */
export function redone(draft: Draft): Draft {
  const [step, ...future] = draft.future;
  if (!step) return draft;
  return { ...draft, text: step.text, past: [...draft.past, { text: draft.text, label: step.label }], future };
}

/** The draft with one more file, to be saved with it. */
export const withFile = (draft: Draft, file: NotebookFile): Draft => ({
  ...draft,
  files: [...(draft.files ?? []).filter(({ path }) => path !== file.path), file],
});

/** The files to save with a text: those it names. */
export const filesOf = ({ files = [] }: Draft, text: string): readonly NotebookFile[] => files.filter(({ path }) => text.includes(path));

/** The draft once this text of it has been saved; what was typed meanwhile stays to be saved. */
export const savedAs = (draft: Draft, text: string): Draft => ({ ...draft, base: text, isNew: false });
