import type { Options, SearchOptions } from 'minisearch';
import { fold } from '../domain/text/fold.ts';
import type { NoteDocument } from './note-documents.ts';

/** Where a word may stand, most telling first. */
export const SEARCH_FIELDS = ['id', 'title', 'names', 'tags', 'sources', 'words', 'body'] as const;
export type SearchField = (typeof SEARCH_FIELDS)[number];

/** Grows with every change to the options below, to `fold` or to what a document holds: an older index is built anew. */
export const SEARCH_VERSION = 1;

/** Letters from which on one slip of the pen is forgiven. */
export const FUZZY_FROM = 5;

/** Letters, marks and digits; an apostrophe inside belongs to the word and is left out. */
const WORD = /[\p{L}\p{M}\p{Nd}\u00AD]+(?:['’‘][\p{L}\p{M}\p{Nd}]+)*/gu;

/** The words of a text as they stand. */
export const wordsOf = (text: string): string[] => text.match(WORD) ?? [];

/** A word as the index knows it: case and accents folded. */
export const termOf = (word: string): string => fold(word.replace(/['’‘\u00AD\u02B0-\u02FF]/g, ''));

/** How the index is made. */
export const INDEX_OPTIONS: Options<NoteDocument> = {
  idField: 'file',
  fields: [...SEARCH_FIELDS],
  // A stored field takes the place of the result's own `id`, so the file is stored as well.
  storeFields: ['file', 'id', 'kind', 'title'],
  tokenize: wordsOf,
  processTerm: (word) => termOf(word) || null,
};

/** Whole words and beginnings of words, all of them in one note. */
export const EXACT_OPTIONS: SearchOptions = {
  combineWith: 'AND',
  prefix: (term) => term.length > 1,
  boost: { id: 4, title: 4, names: 3, tags: 2, sources: 1.5, words: 1, body: 1 },
  weights: { prefix: 0.5, fuzzy: 0.3 },
};

/** As above, with one letter too many, too few or wrong in words of five letters or more. */
export const NEAR_OPTIONS: SearchOptions = { ...EXACT_OPTIONS, fuzzy: (term) => (term.length >= FUZZY_FROM ? 1 : false) };
