import type { StoreFailure } from '../domain/ports.ts';

/** What became of a wish to save or delete. */
export type SaveOutcome =
  | { readonly is: 'saved' }
  /** The note no longer stands as its writer saw it; `stored` is what stands there now, absent where it was deleted. */
  | { readonly is: 'conflict'; readonly stored?: string }
  /** Another file has the path a new note was to have. */
  | { readonly is: 'taken' }
  | { readonly is: 'failed'; readonly why: StoreFailure };

/** A note that its writer wants saved. */
export interface NoteToSave {
  readonly path: string;
  readonly text: string;
  /** The text the writer had before their eyes; absent for a new note. */
  readonly basedOn?: string;
}

/** An earlier version of a note. */
export interface EarlierNote {
  readonly version: number;
  /** Milliseconds since 1970-01-01T00:00Z: when it was written, and when another took its place. */
  readonly savedAt: number;
  readonly endedAt: number;
}

/** Earlier versions, the newest first, or why there are none to show. */
export type EarlierNotes =
  { readonly is: 'found'; readonly versions: readonly EarlierNote[] } | { readonly is: 'failed'; readonly why: StoreFailure };

/** The text of an earlier version. */
export type EarlierText =
  { readonly is: 'found'; readonly text: string } | { readonly is: 'missing' } | { readonly is: 'failed'; readonly why: StoreFailure };
