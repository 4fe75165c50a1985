import type { NoteDocument } from './note-documents.ts';
import type { FoundNote } from './note-search.ts';

/** What is asked of the search worker; the answer carries the same `id`. */
export type SearchRequest =
  | { readonly id: number; readonly do: 'put'; readonly documents: readonly NoteDocument[] }
  | { readonly id: number; readonly do: 'remove'; readonly files: readonly string[] }
  | { readonly id: number; readonly do: 'clear' }
  | { readonly id: number; readonly do: 'query'; readonly text: string; readonly most?: number };

/** What the search worker answers. */
export type SearchReply =
  | { readonly id: number; readonly is: 'done'; readonly size: number }
  | { readonly id: number; readonly is: 'found'; readonly notes: readonly FoundNote[] }
  /** A later query came before this one was begun. */
  | { readonly id: number; readonly is: 'overtaken' }
  | { readonly id: number; readonly is: 'failed'; readonly why: string };

/** Either end of a worker: both can post and listen. */
export interface SearchWire {
  postMessage(message: unknown): void;
  addEventListener(type: 'message', listener: (event: { readonly data: unknown }) => void): void;
}
