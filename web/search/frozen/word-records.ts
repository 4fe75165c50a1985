import { wordsOf } from '../search-options.ts';
import { GrowingList } from './growing-list.ts';
import { askSignKind, BELONGS, SEPARATES, signKinds } from './word-signs.ts';

/**
 * What a record holds behind its word's length: all in one place, because the time of making an index goes into fetching
 * memory. Units of the word follow, two in a number.
 */
export const RECORD = {
  length: 0,
  /** The last field of a note that the word was seen in. */
  seenIn: 1,
  /** The record of the word's term, often itself; 0 where it has none. */
  term: 2,
  /** As a term: the place of its last note among the postings, from 1, and how many notes hold it. */
  lastPosting: 3,
  noteCount: 4,
  units: 5,
} as const;

const FIRST_HASH = 0x811c_9dc5 | 0;
/** A hash with one more unit, as Fowler, Noll and Vo's FNV-1a mixes in a byte. */
const mixed = (hash: number, unit: number): number => Math.imul(hash ^ unit, 0x0100_0193);

/** Records of words, found by their letters. A record is known by where it begins; none begins at 0. */
export class WordRecords {
  /** All records, one behind the other. */
  values = new Int32Array(1 << 14);
  /** Places by hash: the hash, and the record, 0 where there is none. */
  #table = new Int32Array(2 * 4096);
  readonly #read = new GrowingList();
  readonly #onNew: (word: string, record: number) => void;
  #length = 1;
  #size = 0;

  /** @param onNew told every new word; it may ask for others. */
  constructor(onNew: (word: string, record: number) => void) {
    this.#onNew = onNew;
  }

  /** The records of the words of a text as they stand: to be used before the next text is read. */
  read(text: string): Uint32Array {
    this.#read.clear();
    const end = text.length;
    const kinds = signKinds;
    for (let at = 0; at < end; at += 1) {
      let unit = text.charCodeAt(at);
      let kind = kinds[unit] || askSignKind(unit);
      if (kind === SEPARATES) continue;
      const start = at;
      let hash = FIRST_HASH;
      let seen = 0;
      do {
        hash = mixed(hash, unit);
        seen |= kind;
        at += 1;
        if (at === end) break;
        unit = text.charCodeAt(at);
        kind = kinds[unit] || askSignKind(unit);
      } while (kind !== SEPARATES);
      if (seen === BELONGS) this.#read.push(this.#recordAt(text, start, at, hash));
      else for (const word of wordsOf(text.slice(start, at))) this.#read.push(this.recordOf(word));
    }
    return this.#read.view();
  }

  /** The record of a word. */
  recordOf(word: string): number {
    let hash = FIRST_HASH;
    for (let at = 0; at < word.length; at += 1) hash = mixed(hash, word.charCodeAt(at));
    return this.#recordAt(word, 0, word.length, hash);
  }

  /** The word of a record. */
  wordOf(record: number): string {
    const { values } = this;
    let word = '';
    for (let at = 0; at < (values[record + RECORD.length] ?? 0); at += 1)
      word += String.fromCharCode(((values[record + RECORD.units + (at >> 1)] ?? 0) >>> (16 * (at & 1))) & 0xffff);
    return word;
  }

  /** The record of the word that stands in a text from one place to another. */
  #recordAt(text: string, start: number, end: number, hash: number): number {
    const table = this.#table;
    const last = table.length / 2 - 1;
    for (let place = (hash ^ (hash >>> 15)) & last; ; place = (place + 1) & last) {
      const record = table[2 * place + 1] ?? 0;
      if (record === 0) return this.#learn(text.slice(start, end), hash, place);
      if (table[2 * place] === hash && this.#isWord(record, text, start, end)) return record;
    }
  }

  #isWord(record: number, text: string, start: number, end: number): boolean {
    const values = this.values;
    if (values[record + RECORD.length] !== end - start) return false;
    let at = start;
    let pair = record + RECORD.units;
    for (; at + 1 < end; at += 2) if (values[pair++] !== (text.charCodeAt(at) | (text.charCodeAt(at + 1) << 16))) return false;
    return at === end || values[pair] === text.charCodeAt(at);
  }

  #learn(word: string, hash: number, place: number): number {
    const record = this.#length;
    this.#length += RECORD.units + Math.ceil(word.length / 2);
    if (this.#length > this.values.length) {
      const larger = new Int32Array(2 * this.#length);
      larger.set(this.values);
      this.values = larger;
    }
    this.values[record + RECORD.length] = word.length;
    for (let at = 0; at < word.length; at += 1) {
      const pair = record + RECORD.units + (at >> 1);
      this.values[pair] = (this.values[pair] ?? 0) | (word.charCodeAt(at) << (16 * (at & 1)));
    }
    this.#table[2 * place] = hash;
    this.#table[2 * place + 1] = record;
    this.#size += 1;
    if (4 * this.#size > this.#table.length) this.#widen();
    this.#onNew(word, record);
    return record;
  }

  /** A table of twice as many places, so that at most half are taken. */
  #widen(): void {
    const narrow = this.#table;
    const wide = new Int32Array(2 * narrow.length);
    const last = wide.length / 2 - 1;
    for (let at = 0; at < narrow.length; at += 2) {
      const [hash = 0, record = 0] = [narrow[at], narrow[at + 1]];
      if (record === 0) continue;
      let place = (hash ^ (hash >>> 15)) & last;
      while (wide[2 * place + 1] !== 0) place = (place + 1) & last;
      wide[2 * place] = hash;
      wide[2 * place + 1] = record;
    }
    this.#table = wide;
  }
}
