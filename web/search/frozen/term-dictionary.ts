import { FIELD_COUNT } from './index-fields.ts';
import { GrowingBytes } from './growing-bytes.ts';
import { GrowingList } from './growing-list.ts';
import { HALF_BYTE, pushTerm, termBytes, termOfBytes } from './term-bytes.ts';

/** Terms that share a place in the table of beginnings: one is looked for by halving, the rest by walking. */
const IN_BLOCK = 24;

/** What is written of a term beside its letters. */
interface TermEntry {
  /** Bit where its notes begin. */
  readonly start: number;
  /** How many notes hold it. */
  readonly count: number;
  /** How many hold it in each field; absent where it stands in bodies alone. */
  readonly fieldCounts?: readonly number[];
}

/** Terms in order, as they are written. */
export class TermDictionaryWriter {
  readonly #bytes = new GrowingBytes();
  readonly #blockBytes = new GrowingList();
  readonly #blockBits = new GrowingList();
  #before: Uint8Array = new Uint8Array(0);
  #termCount = 0;

  /** @param bits how many bits its notes take. */
  push(term: string, { start, count, fieldCounts }: TermEntry, bits: number): void {
    if (this.#termCount % IN_BLOCK === 0) {
      this.#blockBytes.push(this.#bytes.length);
      this.#blockBits.push(start);
      this.#before = new Uint8Array(0);
    }
    this.#termCount += 1;
    const bytes = termBytes(term);
    pushTerm(this.#bytes, bytes, this.#before);
    this.#before = bytes;
    this.#bytes.pushNumber(2 * count + (fieldCounts ? 1 : 0));
    for (const one of fieldCounts ?? []) this.#bytes.pushNumber(one);
    this.#bytes.pushNumber(bits);
  }

  finish(): { readonly blockBytes: Uint32Array; readonly blockBits: Uint32Array; readonly bytes: Uint8Array } {
    return { blockBytes: this.#blockBytes.view(), blockBits: this.#blockBits.view(), bytes: this.#bytes.view() };
  }
}

/** Terms read from where they lie. It stands at one term at a time, and what it says is of that one. */
export class TermDictionary {
  /** In how many notes the term stands in each field; to be read only where it is not `inBodiesAlone`. */
  readonly fieldCounts = new Uint32Array(FIELD_COUNT);
  readonly #blockBytes: Uint32Array;
  readonly #blockBits: Uint32Array;
  readonly #bytes: Uint8Array;
  readonly #termCount: number;
  #nth = -1;
  #place = 0;
  #term = new Uint8Array(64);
  #length = 0;
  #start = 0;
  #bits = 0;
  #count = 0;
  #inBodiesAlone = true;

  constructor(termCount: number, blockBytes: Uint32Array, blockBits: Uint32Array, bytes: Uint8Array) {
    this.#termCount = termCount;
    this.#blockBytes = blockBytes;
    this.#blockBits = blockBits;
    this.#bytes = bytes;
  }

  /** Which term it stands at. */
  get nth(): number {
    return this.#nth;
  }

  get term(): string {
    return termOfBytes(this.#term, this.#length);
  }

  /** Its length in UTF-16 units. */
  get termLength(): number {
    let length = 0;
    for (let at = 0; at < this.#length; at += 1) if (((this.#term[at] ?? 0) & 0xc0) !== 0x80) length += 1;
    return length;
  }

  /** Bit where its notes begin. */
  get start(): number {
    return this.#start;
  }

  /** How many notes hold it. */
  get count(): number {
    return this.#count;
  }

  get inBodiesAlone(): boolean {
    return this.#inBodiesAlone;
  }

  /** Stands at every term with a beginning in turn; whoever visits leaves it there. */
  eachBeginningWith(beginning: string, visit: () => void): void {
    const wanted = termBytes(beginning);
    for (let more = this.#seek(wanted); more && this.#startsWith(wanted); more = this.#next()) visit();
  }

  /** Goes to exactly this term; false where there is none. */
  goToTerm(term: string): boolean {
    const wanted = termBytes(term);
    return this.#seek(wanted) && this.#length === wanted.length && this.#startsWith(wanted);
  }

  /** Goes to the nth term. */
  goTo(nth: number): void {
    this.#goToBlock(Math.floor(nth / IN_BLOCK));
    while (this.#nth < nth) this.#next();
  }

  /** What the nth term begins with for certain: what the heads of its block and of the next one share, since all between share it. */
  beginningOf(nth: number): string {
    const block = Math.floor(nth / IN_BLOCK);
    if (block + 1 >= this.#blockBytes.length) return '';
    const bytes = this.#bytes;
    const [head, length] = this.#headOf(block);
    const [next, nextLength] = this.#headOf(block + 1);
    let shared = 0;
    while (shared < length && shared < nextLength && bytes[head + shared] === bytes[next + shared]) shared += 1;
    // Not within a letter of several bytes.
    while (shared > 0 && shared < nextLength && ((bytes[next + shared] ?? 0) & 0xc0) === 0x80) shared -= 1;
    return termOfBytes(bytes, head + shared, head);
  }

  /** Where the first term of a block lies, and how many bytes it has: it shares none with a term before it. It stays where it stands. */
  #headOf(block: number): readonly [place: number, length: number] {
    const stands = this.#place;
    this.#place = (this.#blockBytes[block] ?? 0) + 1;
    const length = this.#rest((this.#bytes[this.#place - 1] ?? 0) & HALF_BYTE);
    const head = this.#place;
    this.#place = stands;
    return [head, length];
  }

  /** Goes to the first term that is not before the wanted one; false where all are. */
  #seek(wanted: Uint8Array): boolean {
    if (this.#termCount === 0) return false;
    let low = 0;
    let high = this.#blockBytes.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >>> 1;
      this.#goToBlock(middle);
      if (this.#compare(wanted) <= 0) low = middle;
      else high = middle - 1;
    }
    this.#goToBlock(low);
    while (this.#compare(wanted) < 0) if (!this.#next()) return false;
    return true;
  }

  #goToBlock(block: number): void {
    this.#nth = block * IN_BLOCK - 1;
    this.#place = this.#blockBytes[block] ?? 0;
    this.#start = this.#blockBits[block] ?? 0;
    this.#bits = 0;
    this.#next();
  }

  #next(): boolean {
    if (this.#nth + 1 >= this.#termCount) return false;
    this.#nth += 1;
    this.#start += this.#bits;
    const halves = this.#bytes[this.#place++] ?? 0;
    const shared = this.#rest(halves >>> 4);
    const added = this.#rest(halves & HALF_BYTE);
    if (shared + added > this.#term.length) {
      const larger = new Uint8Array(2 * (shared + added));
      larger.set(this.#term);
      this.#term = larger;
    }
    for (let at = 0; at < added; at += 1) this.#term[shared + at] = this.#bytes[this.#place + at] ?? 0;
    this.#place += added;
    this.#length = shared + added;
    const count = this.#number();
    this.#count = count >>> 1;
    this.#inBodiesAlone = (count & 1) === 0;
    if (!this.#inBodiesAlone) for (let field = 0; field < FIELD_COUNT; field += 1) this.fieldCounts[field] = this.#number();
    this.#bits = this.#number();
    return true;
  }

  #rest(half: number): number {
    return half < HALF_BYTE ? half : half + this.#number();
  }

  #number(): number {
    const first = this.#bytes[this.#place++] ?? 0;
    if (first < 0x80) return first;
    let value = first & 0x7f;
    for (let shift = 0x80; ; shift *= 0x80) {
      const byte = this.#bytes[this.#place++] ?? 0;
      value += (byte & 0x7f) * shift;
      if (byte < 0x80) return value;
    }
  }

  /** Below nought where the term it stands at comes before the wanted one. */
  #compare(wanted: Uint8Array): number {
    const both = Math.min(wanted.length, this.#length);
    for (let at = 0; at < both; at += 1) {
      const difference = (this.#term[at] ?? 0) - (wanted[at] ?? 0);
      if (difference !== 0) return difference;
    }
    return this.#length - wanted.length;
  }

  #startsWith(wanted: Uint8Array): boolean {
    if (this.#length < wanted.length) return false;
    for (let at = 0; at < wanted.length; at += 1) if (this.#term[at] !== wanted[at]) return false;
    return true;
  }
}
