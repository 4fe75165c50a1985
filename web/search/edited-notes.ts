import MiniSearch, { type Query } from 'minisearch';
import { often, rarity } from './bm25.ts';
import type { FrozenNote, MatchedFields, NotesBeside } from './frozen/frozen-index.ts';
import { FIELD_COUNT } from './frozen/index-fields.ts';
import { beginningWeight, nearWeight, type WantedWord } from './frozen/matching-terms.ts';
import { isNear } from './frozen/near-terms.ts';
import type { NoteDocument } from './note-documents.ts';
import { BOOST, EXACT_OPTIONS, INDEX_OPTIONS, NEAR_OPTIONS, SEARCH_FIELDS, type SearchField, termOf, wordsOf } from './search-options.ts';

/** What is counted over all notes, wherever they lie. */
export interface CountedOverAll {
  readonly rankedCount: number;
  averageLength(field: number): number;
  /** In how many notes a term stands, field by field; to be read before it is asked again. */
  heldBy(term: string): ArrayLike<number>;
}

/** An edited note that answers, with the words it answers by. */
export interface RankedEdited {
  readonly note: FrozenNote;
  readonly score: number;
  readonly matched: MatchedFields;
}

/** What ranking needs of a note: how long its fields are, and how often each term stands in each. */
interface CountedNote {
  readonly note: FrozenNote;
  readonly lengths: readonly number[];
  readonly counts: ReadonlyMap<string, readonly number[]>;
}

/**
 * The notes that were edited since the index was frozen. Minisearch finds which of them answer a query and by which words; they are
 * scored by what is counted over all notes, so that an edited note stands where it would if the index were made anew.
 */
export class EditedNotes implements NotesBeside {
  readonly lengthSums = new Float64Array(FIELD_COUNT);
  readonly #index = new MiniSearch<NoteDocument>(INDEX_OPTIONS);
  readonly #notes = new Map<string, CountedNote>();
  readonly #held = new Map<string, number[]>();

  get noteCount(): number {
    return this.#notes.size;
  }

  get files(): readonly string[] {
    return [...this.#notes.keys()];
  }

  heldBy(term: string): readonly number[] | undefined {
    return this.#held.get(term);
  }

  has(file: string): boolean {
    return this.#notes.has(file);
  }

  /** Adds a note or puts it in the place of the one of the same file. */
  put(document: NoteDocument): void {
    this.remove(document.file);
    this.#index.add(document);
    const counted = countedNote(document);
    this.#notes.set(document.file, counted);
    this.#count(counted, 1);
  }

  /** Takes the note of a file out; nothing happens where there is none. */
  remove(file: string): void {
    const counted = this.#notes.get(file);
    if (!counted) return;
    this.#index.discard(file);
    this.#notes.delete(file);
    this.#count(counted, -1);
  }

  /** Notes that hold every word, in no order. */
  rank(words: readonly WantedWord[], overAll: CountedOverAll): readonly RankedEdited[] {
    if (this.#notes.size === 0) return [];
    const factors = new Map<string, readonly number[]>();
    const factorsOf = (term: string): readonly number[] => {
      const known = factors.get(term);
      if (known) return known;
      const held = overAll.heldBy(term);
      const fresh = SEARCH_FIELDS.map((field, nth) => BOOST[field] * rarity(held[nth] ?? 0, overAll.rankedCount));
      factors.set(term, fresh);
      return fresh;
    };
    const options = words.some(({ near }) => near) ? NEAR_OPTIONS : EXACT_OPTIONS;
    return this.#index.search({ combineWith: 'AND', queries: words.map(queryOf) }, options).flatMap(({ match, ...result }) => {
      const counted = this.#notes.get(result['file'] as string);
      if (!counted) return [];
      const matched = Object.fromEntries(Object.entries(match).map(([term, fields]) => [term, inOrder(fields)]));
      const count = (term: string): number => scoreOf(counted, term, factorsOf(term), overAll);
      return [{ note: counted.note, score: scoreOfWords(words, Object.keys(match), count), matched }];
    });
  }

  #count({ lengths, counts }: CountedNote, sign: 1 | -1): void {
    for (const [field, length] of lengths.entries()) this.lengthSums[field] = (this.lengthSums[field] ?? 0) + sign * length;
    for (const [term, times] of counts) {
      const held = this.#held.get(term) ?? new Array<number>(FIELD_COUNT).fill(0);
      for (let field = 0; field < FIELD_COUNT; field += 1) if ((times[field] ?? 0) > 0) held[field] = (held[field] ?? 0) + sign;
      if (held.some((notes) => notes > 0)) this.#held.set(term, held);
      else this.#held.delete(term);
    }
  }
}

function countedNote(document: NoteDocument): CountedNote {
  const { file, id, kind, title } = document;
  const counts = new Map<string, number[]>();
  const lengths = SEARCH_FIELDS.map((field, nth) => {
    const words = wordsOf(document[field]);
    for (const term of words.map(termOf)) {
      if (term === '') continue;
      const times = counts.get(term) ?? new Array<number>(FIELD_COUNT).fill(0);
      times[nth] = (times[nth] ?? 0) + 1;
      counts.set(term, times);
    }
    return new Set(words).size;
  });
  return { note: { file, id, kind, title }, lengths, counts };
}

/** A word as minisearch is asked for it: each of its other spellings is a word of its own. */
const queryOf = ({ term, swaps }: WantedWord): Query =>
  swaps.length === 0
    ? term
    : { combineWith: 'OR', queries: [term, { combineWith: 'OR', queries: [...swaps], fuzzy: false, prefix: false }] };

const inOrder = (fields: readonly string[]): readonly SearchField[] => SEARCH_FIELDS.filter((field) => fields.includes(field));

/** What the terms of a note count for the words they answer, times how many spellings found it, as minisearch has it. */
function scoreOfWords(words: readonly WantedWord[], terms: readonly string[], count: (term: string) => number): number {
  let score = 0;
  let spellings = 0;
  for (const word of words) {
    const answering = terms.filter((term) => weightOf(word, term) > 0);
    const swapped = word.swaps.filter((swap) => terms.includes(swap));
    for (const term of answering) score += weightOf(word, term) * count(term);
    for (const swap of swapped) score += count(swap);
    spellings += Math.min(1, answering.length) + swapped.length;
  }
  return score * spellings;
}

/** How much a term counts beside the word itself; 0 where it does not answer it. */
function weightOf({ term: word, beginning, near }: WantedWord, term: string): number {
  if (term === word) return 1;
  if (beginning && term.startsWith(word)) return beginningWeight(term.length, term.length - word.length);
  return near && isNear(word, term) ? nearWeight(term.length) : 0;
}

function scoreOf({ counts, lengths }: CountedNote, term: string, factors: readonly number[], overAll: CountedOverAll): number {
  let score = 0;
  for (const [field, times] of (counts.get(term) ?? []).entries())
    if (times > 0) score += (factors[field] ?? 0) * often(times, lengths[field] ?? 0, overAll.averageLength(field));
  return score;
}
