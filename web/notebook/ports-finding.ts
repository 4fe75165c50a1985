import type { Version } from '../domain/ports.ts';
import type { FoundView } from './views/found-view.ts';

/** A note's file, and under which version the store keeps it just as it is at hand; undefined where nobody knows. */
export type NoteStamp = readonly [file: string, version: Version | undefined];

/** What is wanted, as it was typed and chosen: ids, titles or names, and dates as people write them. */
export interface TypedFinding {
  readonly words: string;
  readonly kind?: string;
  readonly region?: string;
  readonly when?: string;
  readonly fibre?: string;
  readonly mordant?: string;
  readonly standing?: string;
}

/** A note that the full text knows to answer, as the index tells it. */
export interface TextHit {
  readonly file: string;
  /** Only in a near spelling. */
  readonly near: boolean;
  readonly why: readonly {
    readonly typed: string;
    readonly term: string;
    readonly how: 'whole' | 'beginning' | 'near';
    readonly fields: readonly string[];
  }[];
  /** Folded words of the note to be marked. */
  readonly marks: readonly string[];
}

/** How far the index has come: notes in it, of how many. */
export interface FindingProgress {
  readonly done: number;
  readonly of: number;
}

/** Finds notes as one types. */
export interface Finder {
  /**
   * @param progress told while the notes are first taken in.
   * @returns undefined where a later wish came meanwhile: the latest wins.
   */
  find(typed: TypedFinding, progress?: (progress: FindingProgress) => void): Promise<FoundView | undefined>;
}
