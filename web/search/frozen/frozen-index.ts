import type { NoteKind } from '../../domain/note/note.ts';
import { BM25, BOOST, SEARCH_FIELDS, type SearchField } from '../search-options.ts';
import { BODY_FIELD, FIELD_COUNT, kindNumber, kindOfNumber } from './index-fields.ts';
import { type IndexParts, partsOf } from './index-layout.ts';
import { type MatchingTerm, matchingTerms, type WantedWord } from './matching-terms.ts';
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

/** A note that answers, by its number. */
export interface Ranked {
  readonly note: number;
  readonly score: number;
}

/** Words of a note that answer a query, and the fields they stand in. */
export type MatchedFields = Readonly<Record<string, readonly SearchField[]>>;

/**
 * Full text of notes that do not change, read from the bytes it is stored as. Nothing is taken apart beforehand: a query reads the
 * dictionary's blocks and the notes of its terms. It ranks as minisearch does under `EXACT_OPTIONS`, by BM25+ field by field.
 */
export class FrozenIndex {
  readonly #parts: IndexParts;
  readonly #dictionary: TermDictionary;
  readonly #postings: PostingsReader;
  /** What a word that stands once in a note's body counts there, before its rarity. */
  readonly #onceInBody: Float64Array;
  readonly #scores: Float64Array;
  /** The last spelling that a note was found by, counted through the query from 1. */
  readonly #lastSpelling: Uint16Array;
  /** How many spellings a note was found by. */
  readonly #spellings: Uint16Array;
  readonly #touched: Uint32Array;
  readonly #removed: Uint8Array;
  #touchedCount = 0;
  #removedCount = 0;

  private constructor(parts: IndexParts) {
    const { noteCount } = parts;
    this.#parts = parts;
    this.#dictionary = new TermDictionary(parts.termCount, parts.blockBytes, parts.blockBits, parts.terms);
    this.#postings = new PostingsReader(parts.postings, noteCount);
    this.#onceInBody = Float64Array.from({ length: noteCount }, (_, note) => this.#often(1, BODY_FIELD, note));
    this.#scores = new Float64Array(noteCount);
    this.#lastSpelling = new Uint16Array(noteCount);
    this.#spellings = new Uint16Array(noteCount);
    this.#touched = new Uint32Array(noteCount);
    this.#removed = new Uint8Array(noteCount);
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

  /** Leaves a file's note out of every answer from now on; false where it holds none. */
  remove(file: string): boolean {
    const note = this.#noteOf(file);
    if (note === undefined || this.#removed[note] === 1) return false;
    this.#removed[note] = 1;
    this.#removedCount += 1;
    return true;
  }

  note(nth: number): FrozenNote {
    const { names, nameStarts, kinds } = this.#parts;
    const [file = '', id = '', title = ''] = new TextDecoder().decode(names.subarray(nameStarts[nth], nameStarts[nth + 1])).split('\0');
    return { file, id: id === '' ? stemOf(file) : id, kind: kindOfNumber(kinds[nth]), title };
  }

  /** The terms that answer each of some words. */
  terms(words: readonly WantedWord[]): readonly (readonly MatchingTerm[])[] {
    const { endStarts, endTerms } = this.#parts;
    return words.map((word) => matchingTerms(this.#dictionary, { starts: endStarts, terms: endTerms }, word));
  }

  /**
   * Notes that hold a term of each word, best first; of equal ones the one taken in first.
   *
   * @param words the terms that answer each word.
   */
  rank(words: readonly (readonly MatchingTerm[])[], most = Infinity, kind?: NoteKind): readonly Ranked[] {
    let spelling = 0;
    let floor = 0;
    for (const terms of words) {
      const first = spelling + 1;
      let before = -1;
      for (const term of terms) {
        if (term.spelling !== before) spelling += 1;
        before = term.spelling;
        this.#addTerm(term, spelling, floor);
      }
      spelling = Math.max(spelling, first);
      floor = first;
    }
    const best = this.#best(floor, most, kind);
    this.#forget();
    return best;
  }

  /** For each of some notes, which terms it holds and in which fields. */
  why(words: readonly (readonly MatchingTerm[])[], notes: readonly number[]): readonly MatchedFields[] {
    const slots = new Map(notes.map((note, slot) => [note, slot]));
    const matched = notes.map((): Record<string, readonly SearchField[]> => ({}));
    const { notes: holders, counts, byField } = this.#postings;
    for (const term of words.flat()) {
      this.#postings.read(term.start, term.count);
      for (let at = 0; at < term.count; at += 1) {
        const slot = slots.get(holders[at] ?? 0);
        if (slot === undefined) continue;
        const mask = fieldsOf(counts[at] ?? 1, byField);
        const one = matched[slot];
        if (one) one[term.term] = SEARCH_FIELDS.filter((_, field) => mask & (1 << field));
      }
    }
    return matched;
  }

  /** Adds what a term counts to every note that holds it and was found by the word before. */
  #addTerm(term: MatchingTerm, spelling: number, floor: number): void {
    this.#postings.read(term.start, term.count);
    const { notes, counts } = this.#postings;
    const scores = this.#scores;
    const lastSpelling = this.#lastSpelling;
    const onceInBody = this.#onceInBody;
    const factors = this.#factors(term);
    const inBody = factors[BODY_FIELD] ?? 0;
    for (let at = 0; at < term.count; at += 1) {
      const note = notes[at] ?? 0;
      const last = lastSpelling[note] ?? 0;
      if (last !== spelling) {
        if (last < floor) continue;
        this.#touch(note, last, spelling);
      }
      const count = counts[at] ?? 0;
      const counted = count === 1 ? inBody * (onceInBody[note] ?? 0) : this.#counted(count, note, factors);
      scores[note] = (scores[note] ?? 0) + counted;
    }
  }

  #touch(note: number, last: number, spelling: number): void {
    if (last === 0) this.#touched[this.#touchedCount++] = note;
    this.#lastSpelling[note] = spelling;
    this.#spellings[note] = (this.#spellings[note] ?? 0) + 1;
  }

  #counted(count: number, note: number, factors: readonly number[]): number {
    if (count < BY_FIELD) return (factors[BODY_FIELD] ?? 0) * this.#often(count, BODY_FIELD, note);
    const { byField } = this.#postings;
    let sum = 0;
    for (let field = 0; field < FIELD_COUNT; field += 1) {
      const times = byField.at(count - BY_FIELD + field);
      if (times > 0) sum += (factors[field] ?? 0) * this.#often(times, field, note);
    }
    return sum;
  }

  /** How much a term's standing in a note so often counts, against the length of the field. */
  #often(times: number, field: number, note: number): number {
    const { k, b, d } = BM25;
    const length = this.#parts.lengths[note * FIELD_COUNT + field] ?? 0;
    return d + (times * (k + 1)) / (times + k * (1 - b + (b * length) / (this.#parts.averages[field] ?? 1)));
  }

  /** What a term counts in each field: its weight, the field's, and its rarity there. */
  #factors({ weight, count, fieldCounts }: MatchingTerm): readonly number[] {
    const { noteCount } = this.#parts;
    const rarity = (held: number): number => Math.log(1 + (noteCount - held + 0.5) / (held + 0.5));
    return SEARCH_FIELDS.map((field, at) => weight * BOOST[field] * rarity(fieldCounts?.[at] ?? count));
  }

  /** The best of the notes found by every word. */
  #best(floor: number, most: number, kind: NoteKind | undefined): readonly Ranked[] {
    const wanted = kind && kindNumber(kind);
    const best: { note: number; score: number }[] = [];
    const worseThan = (a: Ranked, b: Ranked): boolean => a.score < b.score || (a.score === b.score && a.note > b.note);
    for (let at = 0; at < this.#touchedCount; at += 1) {
      const note = this.#touched[at] ?? 0;
      if ((this.#lastSpelling[note] ?? 0) < floor || this.#removed[note] === 1) continue;
      if (wanted !== undefined && this.#parts.kinds[note] !== wanted) continue;
      const score = (this.#scores[note] ?? 0) * (this.#spellings[note] ?? 0);
      const last = best[best.length - 1];
      if (best.length === most && last && score < last.score) continue;
      best.push({ note, score });
      if (most === Infinity) continue;
      for (let to = best.length - 1; to > 0; to -= 1) {
        const [above, below] = [best[to - 1], best[to]];
        if (!above || !below || !worseThan(above, below)) break;
        best[to - 1] = below;
        best[to] = above;
      }
      if (best.length > most) best.pop();
    }
    return most === Infinity ? best.sort((a, b) => b.score - a.score || a.note - b.note) : best;
  }

  #forget(): void {
    for (let at = 0; at < this.#touchedCount; at += 1) {
      const note = this.#touched[at] ?? 0;
      this.#scores[note] = 0;
      this.#lastSpelling[note] = 0;
      this.#spellings[note] = 0;
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
