import type { NoteDocument } from '../note-documents.ts';
import { SEARCH_FIELDS, termOf, wordsOf } from '../search-options.ts';
import { BitWriter } from './bit-writer.ts';
import { GrowingBytes } from './growing-bytes.ts';
import { GrowingList } from './growing-list.ts';
import { BODY_FIELD, FIELD_COUNT, kindNumber } from './index-fields.ts';
import { packIndex } from './index-layout.ts';
import { tableOfEnds } from './near-terms.ts';
import { BY_FIELD, MOST_NOTES, writePostings } from './postings.ts';
import { stemOf } from '../../domain/note/stem-of.ts';
import { TermDictionaryWriter } from './term-dictionary.ts';

/** A length is kept in two bytes. */
const LONGEST = 65535;

/** Takes notes in and makes a frozen index of them, which `FrozenIndex` reads. */
export class IndexBuilder {
  /** Every word as it stands in the notes, and its term by number, 0 where it has none. */
  readonly #words = new Map<string, number>();
  readonly #termOfWord = new GrowingList();
  readonly #wordSeenIn = new GrowingList();
  readonly #termNumbers = new Map<string, number>();
  readonly #terms: string[] = [''];
  /** For each term how many notes hold it, and its place among the terms of the note at hand. */
  readonly #noteCounts = new GrowingList();
  readonly #placeInNote = new GrowingList();
  /** Terms of every note, note after note, with their counts as `writePostings` takes them. */
  readonly #postingTerms = new GrowingList();
  readonly #postingCounts = new GrowingList();
  readonly #postingStarts = new GrowingList();
  readonly #byField = new GrowingList();
  readonly #here = new GrowingList();
  readonly #hereCounts = new GrowingList();
  readonly #lengths = new GrowingList();
  readonly #kinds = new GrowingBytes();
  readonly #nameStarts = new GrowingList();
  readonly #versions = new GrowingList();
  readonly #names = new GrowingBytes();
  readonly #encoder = new TextEncoder();

  constructor() {
    this.#noteCounts.push(0);
    this.#placeInNote.push(0);
  }

  get size(): number {
    return this.#postingStarts.length;
  }

  /** Takes a note in; each file at most once. */
  add(document: NoteDocument): void {
    if (this.size >= MOST_NOTES) throw new Error(`An index holds ${MOST_NOTES} notes at most.`);
    for (let field = 0; field < FIELD_COUNT; field += 1) this.#addField(document[SEARCH_FIELDS[field] ?? 'body'], field);
    this.#postingStarts.push(this.#postingTerms.length);
    for (let place = 0; place < this.#here.length; place += 1) this.#addPosting(this.#here.at(place), place);
    this.#here.clear();
    this.#hereCounts.clear();
    this.#kinds.push(kindNumber(document.kind));
    this.#nameStarts.push(this.#names.length);
    this.#versions.push(document.version ?? 0);
    const id = document.id === stemOf(document.file) ? '' : document.id;
    this.#names.pushAll(this.#encoder.encode(`${document.file}\0${id}\0${document.title}`));
  }

  /** The index of what was taken in. */
  freeze(): ArrayBuffer {
    const noteCount = this.size;
    // Without a comparison of our own, strings are sorted by their units, as the dictionary wants them.
    const order = this.#terms
      .slice(1)
      .sort()
      .map((term) => ({ term, number: this.#termNumbers.get(term) ?? 0 }));
    const { starts, notes, counts } = this.#postingsByTerm();
    const postings = new BitWriter();
    const dictionary = new TermDictionaryWriter();
    for (const { term, number } of order) {
      const [from, to] = [starts[number - 1] ?? 0, starts[number] ?? 0];
      const start = postings.length;
      const held = counts.subarray(from, to);
      writePostings(postings, noteCount, notes.subarray(from, to), held, this.#byField);
      const fieldCounts = this.#fieldCounts(held);
      dictionary.push(term, { start, count: to - from, ...(fieldCounts && { fieldCounts }) }, postings.length - start);
    }
    const ends = tableOfEnds(order.map(({ term }) => term));
    const { blockBytes, blockBits, bytes } = dictionary.finish();
    return packIndex({
      noteCount,
      termCount: order.length,
      averages: this.#averages(),
      blockBytes,
      blockBits,
      endStarts: ends.starts,
      endGaps: ends.gaps,
      nameStarts: Uint32Array.from([...this.#nameStarts.view(), this.#names.length]),
      versions: this.#versions.view(),
      postings: postings.finish(),
      lengths: Uint16Array.from(this.#lengths.view()),
      kinds: this.#kinds.view(),
      terms: bytes,
      names: this.#names.view(),
    });
  }

  /** Counts the words of one field; its length is how many different words it has. */
  #addField(text: string, field: number): void {
    const seen = this.size * FIELD_COUNT + field + 1;
    let length = 0;
    for (const word of wordsOf(text)) {
      const number = this.#words.get(word) ?? this.#learn(word);
      if (this.#wordSeenIn.at(number) !== seen) {
        this.#wordSeenIn.set(number, seen);
        length += 1;
      }
      const term = this.#termOfWord.at(number);
      if (term > 0) this.#count(term, field);
    }
    this.#lengths.push(Math.min(length, LONGEST));
  }

  #count(term: number, field: number): void {
    let place = this.#placeInNote.at(term);
    if (this.#here.length <= place || this.#here.at(place) !== term) {
      place = this.#here.length;
      this.#here.push(term);
      this.#placeInNote.set(term, place);
      for (let one = 0; one < FIELD_COUNT; one += 1) this.#hereCounts.push(0);
    }
    const at = place * FIELD_COUNT + field;
    this.#hereCounts.set(at, this.#hereCounts.at(at) + 1);
  }

  #learn(word: string): number {
    const number = this.#words.size;
    this.#words.set(word, number);
    this.#wordSeenIn.push(0);
    const term = termOf(word);
    this.#termOfWord.push(term === '' ? 0 : (this.#termNumbers.get(term) ?? this.#learnTerm(term)));
    return number;
  }

  #learnTerm(term: string): number {
    const number = this.#terms.length;
    this.#terms.push(term);
    this.#termNumbers.set(term, number);
    this.#noteCounts.push(0);
    this.#placeInNote.push(0);
    return number;
  }

  #addPosting(term: number, place: number): void {
    this.#noteCounts.set(term, this.#noteCounts.at(term) + 1);
    this.#postingTerms.push(term);
    const start = place * FIELD_COUNT;
    let elsewhere = 0;
    for (let field = 0; field < FIELD_COUNT; field += 1) if (field !== BODY_FIELD) elsewhere += this.#hereCounts.at(start + field);
    if (elsewhere === 0) {
      this.#postingCounts.push(this.#hereCounts.at(start + BODY_FIELD));
      return;
    }
    this.#postingCounts.push(BY_FIELD + this.#byField.length);
    for (let field = 0; field < FIELD_COUNT; field += 1) this.#byField.push(this.#hereCounts.at(start + field));
  }

  /** Every term's notes and counts together, in order of note; the nth term's end where `starts` says. */
  #postingsByTerm(): { readonly starts: Uint32Array; readonly notes: Uint32Array; readonly counts: Uint32Array } {
    const all = this.#postingTerms.view();
    const allCounts = this.#postingCounts.view();
    const starts = new Uint32Array(this.#terms.length + 1);
    for (let term = 1; term < this.#terms.length; term += 1) starts[term] = (starts[term - 1] ?? 0) + this.#noteCounts.at(term);
    const next = new Uint32Array(starts.length);
    next.set(starts.subarray(0, -1), 1);
    const notes = new Uint32Array(all.length);
    const counts = new Uint32Array(all.length);
    for (let note = 0; note < this.size; note += 1) {
      const end = note + 1 < this.size ? this.#postingStarts.at(note + 1) : all.length;
      for (let at = this.#postingStarts.at(note); at < end; at += 1) {
        const term = all[at] ?? 0;
        const to = next[term] ?? 0;
        next[term] = to + 1;
        notes[to] = note;
        counts[to] = allCounts[at] ?? 0;
      }
    }
    return { starts, notes, counts };
  }

  /** In how many notes a term stands in each field; undefined where it stands in bodies alone. */
  #fieldCounts(counts: Uint32Array): readonly number[] | undefined {
    if (counts.every((count) => count < BY_FIELD)) return undefined;
    const sums = new Array<number>(FIELD_COUNT).fill(0);
    for (const count of counts)
      for (let field = 0; field < FIELD_COUNT; field += 1)
        if (count < BY_FIELD ? field === BODY_FIELD : this.#byField.at(count - BY_FIELD + field) > 0) sums[field] = (sums[field] ?? 0) + 1;
    return sums;
  }

  #averages(): Float64Array {
    const averages = new Float64Array(FIELD_COUNT);
    for (const [at, length] of this.#lengths.view().entries()) averages[at % FIELD_COUNT] = (averages[at % FIELD_COUNT] ?? 0) + length;
    return averages.map((sum) => sum / Math.max(1, this.size));
  }
}
