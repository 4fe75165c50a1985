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

/** Most words, which nothing but their case is folded of. */
const PLAIN_WORD = /^[a-zA-Z\d]+$/;

/** A word as the index knows it: case and accents folded. */
export const termOf = (word: string): string =>
  PLAIN_WORD.test(word) ? word.toLowerCase() : fold(word.replace(/['’‘\u00AD\u02B0-\u02FF]/g, ''));

/** How the index is made. */
export const INDEX_OPTIONS: Options<NoteDocument> = {
  idField: 'file',
  fields: [...SEARCH_FIELDS],
  // A stored field takes the place of the result's own `id`, so the file is stored as well.
  storeFields: ['file', 'id', 'kind', 'title'],
  tokenize: wordsOf,
  processTerm: (word) => termOf(word) || null,
};

/** How much a word counts by where it stands. */
export const BOOST: Readonly<Record<SearchField, number>> = { id: 4, title: 4, names: 3, tags: 2, sources: 1.5, words: 1, body: 1 };

/** How much a beginning or a near spelling counts beside the word itself, before its length is weighed. */
export const WEIGHTS = { prefix: 0.5, fuzzy: 0.3 } as const;

/**
 * How often a word stands in a note against how long and how rare: k, b and d of BM25+.
 *
 * @source Lv & Zhai 2011, doi:10.1145/2063576.2063584; the figures are minisearch's own.
 */
export const BM25 = { k: 1.2, b: 0.7, d: 0.5 } as const;

/** Letters from which on a word is also looked for as a beginning. */
export const PREFIX_FROM = 2;

/** Whole words and beginnings of words, all of them in one note. */
export const EXACT_OPTIONS: SearchOptions = {
  combineWith: 'AND',
  prefix: (term) => term.length >= PREFIX_FROM,
  boost: BOOST,
  weights: WEIGHTS,
  bm25: BM25,
};

/** As above, with one letter too many, too few or wrong in words of five letters or more. */
export const NEAR_OPTIONS: SearchOptions = { ...EXACT_OPTIONS, fuzzy: (term) => (term.length >= FUZZY_FROM ? 1 : false) };
