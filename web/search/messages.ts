import type { NoteDocument } from './note-documents.ts';
import type { FileVersion, FoundNote } from './note-search.ts';

/** What is asked of the search worker; the answer carries the same `id`. */
export type SearchRequest =
  | { readonly id: number; readonly do: 'put'; readonly documents: readonly NoteDocument[] }
  | { readonly id: number; readonly do: 'remove'; readonly files: readonly string[] }
  | { readonly id: number; readonly do: 'clear' }
  /** Takes an index that was kept for all there is; what it lacks is told. */
  | { readonly id: number; readonly do: 'open'; readonly bytes: ArrayBuffer; readonly notebook: readonly FileVersion[] }
  /** Takes an index just made in the place of the one before; `since` are files put or removed since its making began. */
  | { readonly id: number; readonly do: 'adopt'; readonly bytes: ArrayBuffer; readonly since: readonly string[] }
  /** Takes notes into an index in the making, which answers nothing. */
  | { readonly id: number; readonly do: 'take'; readonly documents: readonly NoteDocument[] }
  /** Gives out the index in the making, as many times as wanted, and forgets it. */
  | { readonly id: number; readonly do: 'freeze'; readonly copies: number }
  | { readonly id: number; readonly do: 'query'; readonly text: string; readonly most?: number };

/** What the search worker answers. */
export type SearchReply =
  | { readonly id: number; readonly is: 'done'; readonly size: number; readonly edited: number }
  /** `lacking` is absent where the bytes were no index, and nothing was changed. */
  | { readonly id: number; readonly is: 'opened'; readonly lacking?: readonly string[] }
  | { readonly id: number; readonly is: 'frozen'; readonly copies: readonly ArrayBuffer[] }
  | { readonly id: number; readonly is: 'found'; readonly notes: readonly FoundNote[] }
  /** A later query came before this one was begun. */
  | { readonly id: number; readonly is: 'overtaken' }
  | { readonly id: number; readonly is: 'failed'; readonly why: string };

/** A message before it has its number; written out so that each member keeps its own keys. */
export type Unnumbered<T> = T extends unknown ? Omit<T, 'id'> : never;

/** Either end of a worker: both can post and listen. */
export interface SearchWire {
  postMessage(message: unknown, transfer: ArrayBuffer[]): void;
  addEventListener(type: 'message', listener: (event: { readonly data: unknown }) => void): void;
}
