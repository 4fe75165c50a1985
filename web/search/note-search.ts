import MiniSearch, { type Query, type SearchResult } from 'minisearch';
import type { NoteKind } from '../domain/note/note.ts';
import type { NoteDocument } from './note-documents.ts';
import {
  EXACT_OPTIONS,
  FUZZY_FROM,
  INDEX_OPTIONS,
  NEAR_OPTIONS,
  SEARCH_FIELDS,
  SEARCH_VERSION,
  type SearchField,
  termOf,
  wordsOf,
} from './search-options.ts';

/** Why a note was found: a word of the query, the word of the note that answers it, and where that stands. */
export interface FoundBecause {
  readonly typed: string;
  readonly term: string;
  /** `whole`: the word itself; `beginning`: it begins with it; `near`: one letter differs. */
  readonly how: 'whole' | 'beginning' | 'near';
  readonly fields: readonly SearchField[];
}

/** A note that answers a query. */
export interface FoundNote {
  readonly file: string;
  readonly id: string;
  readonly kind: NoteKind;
  readonly title: string;
  readonly score: number;
  /** Found only by a near spelling: to be shown apart. */
  readonly near: boolean;
  readonly why: readonly FoundBecause[];
  /** Folded words of the note to be marked. */
  readonly marks: readonly string[];
}

/** An index put into text, with the version of its making. */
export interface SavedIndex {
  readonly version: number;
  readonly index: string;
}

/** Full text over notes, kept up note by note. A cache: everything in it can be built again from the notes. */
export class NoteSearch {
  #index = new MiniSearch<NoteDocument>(INDEX_OPTIONS);

  get size(): number {
    return this.#index.documentCount;
  }

  /** Adds a note or puts it in the place of the one of the same file. */
  put(document: NoteDocument): void {
    if (this.#index.has(document.file)) this.#index.replace(document);
    else this.#index.add(document);
  }

  /** Takes the note of a file out; nothing happens where there is none. */
  remove(file: string): void {
    if (this.#index.has(file)) this.#index.discard(file);
  }

  clear(): void {
    this.#index = new MiniSearch<NoteDocument>(INDEX_OPTIONS);
  }

  /**
   * The notes that hold every word of a query: as a whole word or as a beginning, best first; then, apart, those that
   * hold them only in a near spelling (one letter more, less or other, or two swapped).
   *
   * @param most how many notes of either sort to give.
   */
  query(text: string, most = Infinity): readonly FoundNote[] {
    const typed = [...new Set(wordsOf(text).map(termOf))].filter((term) => term !== '');
    if (typed.length === 0) return [];
    const exact = this.#index.search({ combineWith: 'AND', queries: typed }, EXACT_OPTIONS);
    const known = new Set(exact.map(fileOf));
    const near = typed.some((term) => term.length >= FUZZY_FROM)
      ? this.#index.search(nearQuery(typed), NEAR_OPTIONS).filter((result) => !known.has(fileOf(result)))
      : [];
    return [
      ...exact.slice(0, most).map((result) => foundNote(result, typed, false)),
      ...near.slice(0, most).map((result) => foundNote(result, typed, true)),
    ];
  }

  save(): SavedIndex {
    return { version: SEARCH_VERSION, index: JSON.stringify(this.#index) };
  }

  /** An index as it was saved; undefined where it was made in another way or cannot be read, and must be built anew. */
  static restore({ version, index }: SavedIndex): NoteSearch | undefined {
    if (version !== SEARCH_VERSION) return undefined;
    try {
      const search = new NoteSearch();
      search.#index = MiniSearch.loadJSON<NoteDocument>(index, INDEX_OPTIONS);
      return search;
    } catch {
      // A cache that was cut short is no cache.
      return undefined;
    }
  }
}

/** Every word in a near spelling, or with two neighbouring letters swapped, which the index counts as two slips. */
function nearQuery(typed: readonly string[]): Query {
  return {
    combineWith: 'AND',
    queries: typed.map((term): Query => {
      const swaps = term.length < FUZZY_FROM ? [] : swapsOf(term);
      return swaps.length === 0
        ? term
        : { combineWith: 'OR', queries: [term, { combineWith: 'OR', queries: swaps, fuzzy: false, prefix: false }] };
    }),
  };
}

function swapsOf(term: string): string[] {
  const letters = Array.from(term);
  const swaps = new Set<string>();
  for (let i = 0; i + 1 < letters.length; i++) {
    const a = letters[i];
    const b = letters[i + 1];
    if (a !== b && a !== undefined && b !== undefined) swaps.add([...letters.slice(0, i), b, a, ...letters.slice(i + 2)].join(''));
  }
  return [...swaps];
}

const fileOf = (result: SearchResult): string => result['file'] as string;

function foundNote(result: SearchResult, typed: readonly string[], near: boolean): FoundNote {
  const why = Object.entries(result.match).map(([term, fields]): FoundBecause => {
    const whole = typed.find((word) => word === term);
    const beginning = whole ?? typed.filter((word) => term.startsWith(word)).sort((a, b) => b.length - a.length)[0];
    const how = whole !== undefined ? 'whole' : beginning !== undefined ? 'beginning' : 'near';
    const closest =
      beginning ??
      typed
        .filter((word) => word.length >= FUZZY_FROM && Math.abs(word.length - term.length) <= 1)
        .sort((a, b) => shared(b, term) - shared(a, term))[0];
    const own = new Set(fields);
    return { typed: closest ?? term, term, how, fields: SEARCH_FIELDS.filter((field) => own.has(field)) };
  });
  const rank = { whole: 0, beginning: 1, near: 2 };
  why.sort((a, b) => rank[a.how] - rank[b.how] || (a.term < b.term ? -1 : 1));
  return {
    file: fileOf(result),
    id: result.id as string,
    kind: result['kind'] as NoteKind,
    title: result['title'] as string,
    score: result.score,
    near,
    why,
    marks: why.map(({ term }) => term),
  };
}

/** Letters two words have in common, counted once each: enough to tell which typed word a near spelling answers. */
function shared(a: string, b: string): number {
  const left = Array.from(b);
  let count = 0;
  for (const letter of a) {
    const at = left.indexOf(letter);
    if (at < 0) continue;
    left.splice(at, 1);
    count += 1;
  }
  return count;
}
