import type { NoteDocument } from '../note-documents.ts';
import { SEARCH_FIELDS, termOf } from '../search-options.ts';
import { BitWriter } from './bit-writer.ts';
import { GrowingBytes } from './growing-bytes.ts';
import { GrowingList } from './growing-list.ts';
import { BODY_FIELD, FIELD_COUNT, kindNumber } from './index-fields.ts';
import { packIndex } from './index-layout.ts';
import { tableOfEnds } from './near-terms.ts';
import { BY_FIELD, MOST_NOTES, writePostings } from './postings.ts';
import { stemOf } from '../../domain/note/stem-of.ts';
import { TermDictionaryWriter } from './term-dictionary.ts';
import { RECORD, WordRecords } from './word-records.ts';

/** A length is kept in two bytes. */
const LONGEST = 65535;

/** Takes notes in and makes a frozen index of them, which `FrozenIndex` reads. */
export class IndexBuilder {
  readonly #words: WordRecords = new WordRecords((word, record) => this.#learn(word, record));
  /** Records of terms, as they are met. */
  readonly #terms = new GrowingList();
  /** Terms of every note, note after note, with their counts as `writePostings` takes them. */
  readonly #postingTerms = new GrowingList();
  readonly #postingCounts = new GrowingList();
  readonly #postingStarts = new GrowingList();
  readonly #byField = new GrowingList();
  readonly #lengths = new GrowingList();
  readonly #kinds = new GrowingBytes();
  readonly #nameStarts = new GrowingList();
  readonly #versions = new GrowingList();
  readonly #names = new GrowingBytes();
  readonly #encoder = new TextEncoder();

  get size(): number {
    return this.#postingStarts.length;
  }

  /** Takes a note in; each file at most once. */
  add(document: NoteDocument): void {
    if (this.size >= MOST_NOTES) throw new Error(`An index holds ${MOST_NOTES} notes at most.`);
    const seenIn = this.size * FIELD_COUNT + 1;
    this.#postingStarts.push(this.#postingTerms.length);
    for (const [field, name] of SEARCH_FIELDS.entries()) this.#addField(document[name], field, seenIn + field);
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
    const terms = Array.from(this.#terms.view(), (record) => this.#words.wordOf(record)).sort();
    const { starts, postings: held } = this.#postingsByTerm(terms);
    const postings = new BitWriter();
    const dictionary = new TermDictionaryWriter();
    for (const [nth, term] of terms.entries()) {
      const one = held.subarray(2 * (starts[nth] ?? 0), 2 * (starts[nth + 1] ?? 0));
      const start = postings.length;
      writePostings(postings, noteCount, one, this.#byField);
      const fieldCounts = this.#fieldCounts(one);
      dictionary.push(term, { start, count: one.length / 2, ...(fieldCounts && { fieldCounts }) }, postings.length - start);
    }
    const ends = tableOfEnds(terms);
    const { blockBytes, blockBits, bytes } = dictionary.finish();
    return packIndex({
      noteCount,
      termCount: terms.length,
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
  #addField(text: string, field: number, seenIn: number): void {
    const words = this.#words.read(text);
    const firstPosting = this.#postingStarts.at(this.size - 1) + 1;
    let length = 0;
    const { values } = this.#words;
    for (let at = 0; at < words.length; at += 1) {
      const word = words[at] ?? 0;
      if (values[word + RECORD.seenIn] !== seenIn) {
        values[word + RECORD.seenIn] = seenIn;
        length += 1;
      }
      const term = values[word + RECORD.term] ?? 0;
      if (term > 0) this.#count(values, term, field, firstPosting);
    }
    this.#lengths.push(Math.min(length, LONGEST));
  }

  #count(values: Int32Array, term: number, field: number, firstPosting: number): void {
    const last = values[term + RECORD.lastPosting] ?? 0;
    if (last < firstPosting) {
      this.#postingTerms.push(term);
      this.#postingCounts.push(field === BODY_FIELD ? 1 : this.#countsByField(0, field));
      values[term + RECORD.lastPosting] = this.#postingTerms.length;
      const noteCount = values[term + RECORD.noteCount] ?? 0;
      values[term + RECORD.noteCount] = noteCount + 1;
      if (noteCount === 0) this.#terms.push(term);
      return;
    }
    const count = this.#postingCounts.at(last - 1);
    if (count >= BY_FIELD) this.#byField.increase(count - BY_FIELD + field);
    else if (field === BODY_FIELD) this.#postingCounts.set(last - 1, count + 1);
    else this.#postingCounts.set(last - 1, this.#countsByField(count, field));
  }

  /** Begins a count by field, of so many in the body and one in another. */
  #countsByField(inBody: number, field: number): number {
    const start = this.#byField.length;
    for (let one = 0; one < FIELD_COUNT; one += 1) this.#byField.push(one === BODY_FIELD ? inBody : Number(one === field));
    return BY_FIELD + start;
  }

  #learn(word: string, record: number): void {
    const term = termOf(word);
    const own = term === '' ? 0 : term === word ? record : this.#words.recordOf(term);
    this.#words.values[record + RECORD.term] = own;
  }

  /** Every term's notes, each with its count behind it, in order; the nth term's begin where `starts` says. */
  #postingsByTerm(terms: readonly string[]): { readonly starts: Uint32Array; readonly postings: Uint32Array } {
    const starts = new Uint32Array(terms.length + 1);
    // Where a term's next note goes stands for the time being in the place of its last posting, and below those to come.
    for (const [nth, term] of terms.entries()) {
      const record = this.#words.recordOf(term);
      this.#words.values[record + RECORD.lastPosting] = starts[nth] ?? 0;
      starts[nth + 1] = (starts[nth] ?? 0) + (this.#words.values[record + RECORD.noteCount] ?? 0);
    }
    const { values } = this.#words;
    const records = this.#postingTerms.view();
    const counts = this.#postingCounts.view();
    const postings = new Uint32Array(2 * records.length);
    for (let note = 0; note < this.size; note += 1) {
      const end = note + 1 < this.size ? this.#postingStarts.at(note + 1) : records.length;
      for (let at = this.#postingStarts.at(note); at < end; at += 1) {
        const next = (records[at] ?? 0) + RECORD.lastPosting;
        const to = values[next] ?? 0;
        values[next] = to + 1;
        postings[2 * to] = note;
        postings[2 * to + 1] = counts[at] ?? 0;
      }
    }
    return { starts, postings };
  }

  /** In how many notes a term stands in each field; undefined where it stands in bodies alone. */
  #fieldCounts(postings: Uint32Array): readonly number[] | undefined {
    const sums = new Array<number>(FIELD_COUNT).fill(0);
    let inBodiesAlone = 0;
    for (let at = 1; at < postings.length; at += 2) {
      const count = postings[at] ?? 0;
      if (count < BY_FIELD) inBodiesAlone += 1;
      else
        for (let field = 0; field < FIELD_COUNT; field += 1)
          if (this.#byField.at(count - BY_FIELD + field) > 0) sums[field] = (sums[field] ?? 0) + 1;
    }
    if (2 * inBodiesAlone === postings.length) return undefined;
    sums[BODY_FIELD] = (sums[BODY_FIELD] ?? 0) + inBodiesAlone;
    return sums;
  }

  #averages(): Float64Array {
    const averages = new Float64Array(FIELD_COUNT);
    for (const [at, length] of this.#lengths.view().entries()) averages[at % FIELD_COUNT] = (averages[at % FIELD_COUNT] ?? 0) + length;
    return averages.map((sum) => sum / Math.max(1, this.size));
  }
}
