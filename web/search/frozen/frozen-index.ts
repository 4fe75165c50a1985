import type { NoteKind } from '../../domain/note/note.ts';
import { AT_LEAST, often, rarity } from '../bm25.ts';
import { BM25, BOOST, SEARCH_FIELDS, type SearchField } from '../search-options.ts';
import { BODY_FIELD, FIELD_COUNT, kindNumber, kindOfNumber } from './index-fields.ts';
import { type IndexParts, partsOf } from './index-layout.ts';
import { eachMatchingTerm, type WantedWord } from './matching-terms.ts';
import type { EndsTable } from './near-terms.ts';
import { BY_FIELD, fieldsOf, PostingsReader } from './postings.ts';
import { stemOf } from '../../domain/note/stem-of.ts';
import { TermDictionary } from './term-dictionary.ts';

/** A note of the index, as it was taken in. */
export interface FrozenNote {
  readonly file: string;
  readonly id: string;
  readonly kind: NoteKind;
  readonly title: string;
}

/** Notes that lie outside an index and are ranked together with its own: what is counted over both. */
export interface NotesBeside {
  readonly noteCount: number;
  /** How long their fields are together. */
  readonly lengthSums: ArrayLike<number>;
  /** In how many of them a term stands, field by field; undefined where in none. */
  heldBy(term: string): ArrayLike<number> | undefined;
}

/** A note that answers, by its number. */
export interface Ranked {
  readonly note: number;
  readonly score: number;
}

/** Words of a note that answer a query, and the fields they stand in. */
export type MatchedFields = Readonly<Record<string, readonly SearchField[]>>;

const BOOSTS = SEARCH_FIELDS.map((field) => BOOST[field]);
const NAMES = new TextDecoder();

/** Of what is kept of a note while a query runs, the bits of its last spelling, and one more spelling above them. */
const SPELLING_BITS = 16;
const ONE_MORE = 1 << SPELLING_BITS;
const SPELLING = ONE_MORE - 1;

/**
 * Full text of notes that do not change, read from the bytes it is stored as. Only lengths and starts are unpacked beforehand: a
 * query reads the dictionary's blocks and the notes of its terms. It ranks as minisearch does under `EXACT_OPTIONS`, by BM25+ field by field.
 */
export class FrozenIndex {
  readonly #parts: IndexParts;
  readonly #dictionary: TermDictionary;
  readonly #postings: PostingsReader;
  readonly #scores: Float64Array;
  /** The last spelling that a note was found by, counted through the query from 1, and above it by how many it was found. */
  readonly #foundBy: Int32Array;
  readonly #touched: Uint32Array;
  readonly #removed: Uint8Array;
  /** What the term at hand counts in each field. */
  readonly #factors = new Float64Array(FIELD_COUNT);
  readonly #ends: EndsTable;
  /** How long each field is on the average, at the query at hand. */
  readonly #averages = new Float64Array(FIELD_COUNT);
  /** How much the length of a note's body weighs against a word's standing there often, as long as the average is the same. */
  readonly #bodyWeights: Float64Array;
  /** How long the fields of the notes it answers with are together. */
  readonly #lengthSums: Float64Array;
  /** In how many notes the term at hand stands, field by field, here and beside. */
  readonly #held = new Float64Array(FIELD_COUNT);
  #beside: NotesBeside | undefined;
  #touchedCount = 0;
  #removedCount = 0;

  private constructor(parts: IndexParts) {
    const { noteCount } = parts;
    this.#parts = parts;
    this.#dictionary = new TermDictionary(parts.termCount, parts.blockBytes, parts.blockBits, parts.terms);
    this.#postings = new PostingsReader(parts.postings, noteCount);
    this.#ends = { starts: parts.endStarts, gaps: parts.endGaps };
    this.#scores = new Float64Array(noteCount);
    this.#foundBy = new Int32Array(noteCount);
    this.#bodyWeights = new Float64Array(noteCount);
    this.#touched = new Uint32Array(noteCount + 1);
    this.#removed = new Uint8Array(noteCount);
    // Lengths are whole numbers, and so are their sums.
    this.#lengthSums = parts.averages.map((average) => Math.round(average * noteCount));
  }

  /** @returns undefined where the bytes are no index of this version, or not whole: it must be made anew. */
  static open(buffer: ArrayBuffer): FrozenIndex | undefined {
    const parts = partsOf(buffer);
    return parts && new FrozenIndex(parts);
  }

  /** How many notes it answers with. */
  get size(): number {
    return this.#parts.noteCount - this.#removedCount;
  }

  /** How many notes it was made of. */
  get noteCount(): number {
    return this.#parts.noteCount;
  }

  /** How many notes rarity is counted over: its own and those beside. */
  get rankedCount(): number {
    return this.size + (this.#beside?.noteCount ?? 0);
  }

  /** Counts other notes in from now on, as they are whenever a query comes. */
  countBeside(notes: NotesBeside): void {
    this.#beside = notes;
  }

  /** Leaves a file's note out of every answer and count from now on; false where it holds none. */
  remove(file: string): boolean {
    const note = this.#noteOf(file);
    return note !== undefined && this.removeNote(note);
  }

  /** The same, by its number. */
  removeNote(note: number): boolean {
    if (this.#removed[note] === 1) return false;
    this.#removed[note] = 1;
    this.#removedCount += 1;
    for (let field = 0; field < FIELD_COUNT; field += 1)
      this.#lengthSums[field] = (this.#lengthSums[field] ?? 0) - (this.#parts.lengths[note * FIELD_COUNT + field] ?? 0);
    return true;
  }

  /** The version a note was taken in under; 0 where nobody knows. */
  version(note: number): number {
    return this.#parts.versions[note] ?? 0;
  }

  /** How long a field is on the average, here and beside. */
  averageLength(field: number): number {
    return ((this.#lengthSums[field] ?? 0) + (this.#beside?.lengthSums[field] ?? 0)) / this.rankedCount;
  }

  /** In how many notes a term stands, field by field, here and beside; to be read before the next query. */
  heldBy(term: string): ArrayLike<number> {
    if (this.#dictionary.goToTerm(term)) {
      this.#postings.read(this.#dictionary.start, this.#dictionary.count);
      if (this.#dictionary.inBodiesAlone) this.#held.fill(0);
      this.#countHeld();
      return this.#held;
    }
    this.#held.fill(0);
    this.#held.set(this.#beside?.heldBy(term) ?? []);
    return this.#held;
  }

  note(nth: number): FrozenNote {
    const { names, nameStarts, kinds } = this.#parts;
    const [file = '', id = '', title = ''] = NAMES.decode(names.subarray(nameStarts[nth], nameStarts[nth + 1])).split('\0');
    return { file, id: id === '' ? stemOf(file) : id, kind: kindOfNumber(kinds[nth]), title };
  }

  /** Notes that hold every word, best first; of equal ones the one taken in first. */
  rank(words: readonly WantedWord[], most = Infinity, kind?: NoteKind): readonly Ranked[] {
    this.#weighLengths();
    let lastSpelling = 0;
    let floor = 0;
    for (const word of words) {
      const first = lastSpelling + 1;
      eachMatchingTerm(this.#dictionary, this.#ends, word, (weight, spelling) => this.#addTerm(weight, first + spelling, floor));
      lastSpelling = first + word.swaps.length;
      floor = first;
    }
    const best = this.#best(floor, most, kind);
    this.#forget();
    return best;
  }

  /** For each of some notes, which terms it holds that answer a word, and in which fields. */
  why(words: readonly WantedWord[], notes: readonly number[]): readonly MatchedFields[] {
    const slots = new Map(notes.map((note, slot) => [note, slot]));
    const matched = notes.map((): Record<string, readonly SearchField[]> => ({}));
    const { notes: holders, counts, byField } = this.#postings;
    const dictionary = this.#dictionary;
    const visit = (): void => {
      this.#postings.read(dictionary.start, dictionary.count);
      let term: string | undefined;
      for (let at = 0; at < dictionary.count; at += 1) {
        const one = matched[slots.get(holders[at] ?? 0) ?? -1];
        if (!one) continue;
        const mask = fieldsOf(counts[at] ?? 1, byField);
        one[(term ??= dictionary.term)] = SEARCH_FIELDS.filter((_, field) => mask & (1 << field));
      }
    };
    for (const word of words) eachMatchingTerm(dictionary, this.#ends, word, visit);
    return matched;
  }

  /** Adds what the dictionary's term counts to every note that holds it and was found by the word before. */
  #addTerm(weight: number, spelling: number, floor: number): void {
    const { count: holderCount, start } = this.#dictionary;
    this.#postings.read(start, holderCount);
    const { notes, counts } = this.#postings;
    const scores = this.#scores;
    const foundBy = this.#foundBy;
    const touched = this.#touched;
    const bodyWeights = this.#bodyWeights;
    const inBody = this.#weigh(weight);
    let touchedCount = this.#touchedCount;
    for (let at = 0; at < holderCount; at += 1) {
      const note = notes[at] ?? 0;
      const found = foundBy[note] ?? 0;
      const last = found & SPELLING;
      if (last < floor) continue;
      // Written whether it is new or not: a choice here would be guessed wrongly by the processor too often.
      touched[touchedCount] = note;
      touchedCount += Number(last === 0);
      foundBy[note] = found - last + spelling + Number(last !== spelling) * ONE_MORE;
      const count = counts[at] ?? 0;
      const counted =
        count < BY_FIELD ? inBody * (BM25.d + (count * (BM25.k + 1)) / (count + (bodyWeights[note] ?? 0))) : this.#counted(count, note);
      scores[note] = (scores[note] ?? 0) + counted;
    }
    this.#touchedCount = touchedCount;
  }

  /** Takes the averages as they are now, and weighs the bodies anew where theirs has changed. */
  #weighLengths(): void {
    const before = this.#averages[BODY_FIELD];
    for (let field = 0; field < FIELD_COUNT; field += 1) this.#averages[field] = this.averageLength(field);
    const average = this.#averages[BODY_FIELD] ?? 1;
    if (average === before) return;
    const { lengths } = this.#parts;
    for (let note = 0; note < this.#bodyWeights.length; note += 1)
      this.#bodyWeights[note] = AT_LEAST + (BM25.k * BM25.b * (lengths[note * FIELD_COUNT + BODY_FIELD] ?? 0)) / average;
  }

  /** What a term counts in a note that holds it in several fields. */
  #counted(count: number, note: number): number {
    const factors = this.#factors;
    const { byField } = this.#postings;
    let sum = 0;
    for (let field = 0; field < FIELD_COUNT; field += 1) {
      const times = byField.at(count - BY_FIELD + field);
      if (times > 0)
        sum += (factors[field] ?? 0) * often(times, this.#parts.lengths[note * FIELD_COUNT + field] ?? 0, this.#averages[field] ?? 1);
    }
    return sum;
  }

  /** What the dictionary's term counts in each field: its weight, the field's, and its rarity there. @returns that in the body. */
  #weigh(weight: number): number {
    const factors = this.#factors;
    const noteCount = this.rankedCount;
    this.#countHeld();
    for (let field = this.#dictionary.inBodiesAlone ? BODY_FIELD : 0; field < FIELD_COUNT; field += 1) {
      const held = this.#held[field] ?? 0;
      // A term counts nothing where it does not stand, and its rarity takes time.
      factors[field] = held === 0 ? 0 : weight * (BOOSTS[field] ?? 1) * rarity(held, noteCount);
    }
    return factors[BODY_FIELD] ?? 0;
  }

  /** Counts in how many notes the dictionary's term stands, whose notes have just been read; in the body alone where it stands in none else. */
  #countHeld(): void {
    const { count, fieldCounts, inBodiesAlone } = this.#dictionary;
    const held = this.#held;
    if (inBodiesAlone) held[BODY_FIELD] = count;
    else held.set(fieldCounts);
    if (this.#removedCount > 0) this.#uncountRemoved();
    if (!this.#beside || this.#beside.noteCount === 0) return;
    const beside = this.#beside.heldBy(this.#dictionary.term);
    if (beside) for (let field = 0; field < FIELD_COUNT; field += 1) held[field] = (held[field] ?? 0) + (beside[field] ?? 0);
  }

  #uncountRemoved(): void {
    const { notes, counts, byField } = this.#postings;
    const held = this.#held;
    for (let at = 0; at < this.#dictionary.count; at += 1) {
      if (this.#removed[notes[at] ?? 0] !== 1) continue;
      const mask = fieldsOf(counts[at] ?? 1, byField);
      for (let field = 0; field < FIELD_COUNT; field += 1) if (mask & (1 << field)) held[field] = (held[field] ?? 0) - 1;
    }
  }

  /** The best of the notes found by every word. */
  #best(floor: number, most: number, kind: NoteKind | undefined): readonly Ranked[] {
    const wanted = kind && kindNumber(kind);
    const best: { note: number; score: number }[] = [];
    const worseThan = (a: Ranked, b: Ranked): boolean => a.score < b.score || (a.score === b.score && a.note > b.note);
    const touched = this.#touched;
    const foundBy = this.#foundBy;
    const scores = this.#scores;
    const removed = this.#removed;
    const { kinds } = this.#parts;
    /** What a note must score to be among the best so far. */
    let enough = -1;
    for (let at = 0; at < this.#touchedCount; at += 1) {
      const note = touched[at] ?? 0;
      const found = foundBy[note] ?? 0;
      const score = (scores[note] ?? 0) * (found >> SPELLING_BITS);
      if (score < enough || (found & SPELLING) < floor || removed[note] === 1) continue;
      if (wanted !== undefined && kinds[note] !== wanted) continue;
      best.push({ note, score });
      if (most === Infinity) continue;
      for (let to = best.length - 1; to > 0; to -= 1) {
        const [above, below] = [best[to - 1], best[to]];
        if (!above || !below || !worseThan(above, below)) break;
        best[to - 1] = below;
        best[to] = above;
      }
      if (best.length > most) best.pop();
      if (best.length === most) enough = best[most - 1]?.score ?? enough;
    }
    return most === Infinity ? best.sort((a, b) => b.score - a.score || a.note - b.note) : best;
  }

  #forget(): void {
    for (let at = 0; at < this.#touchedCount; at += 1) {
      const note = this.#touched[at] ?? 0;
      this.#scores[note] = 0;
      this.#foundBy[note] = 0;
    }
    this.#touchedCount = 0;
  }

  #noteOf(file: string): number | undefined {
    const { names, nameStarts, noteCount } = this.#parts;
    const wanted = new TextEncoder().encode(`${file}\0`);
    for (let note = 0; note < noteCount; note += 1) {
      const start = nameStarts[note] ?? 0;
      if (names[start + wanted.length - 1] === 0 && wanted.every((byte, at) => names[start + at] === byte)) return note;
    }
    return undefined;
  }
}
