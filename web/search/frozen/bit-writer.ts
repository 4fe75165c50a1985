import { GrowingList } from './growing-list.ts';

/** Writes numbers of any width one after the other into words of 32 bits, the highest bit first. */
export class BitWriter {
  readonly #words = new GrowingList();
  #word = 0;
  #free = 32;

  /** How many bits were written. */
  get length(): number {
    return 32 * this.#words.length + 32 - this.#free;
  }

  /** @param width 1–32 */
  put(value: number, width: number): void {
    if (width < this.#free) {
      this.#free -= width;
      this.#word |= value << this.#free;
      return;
    }
    const over = width - this.#free;
    this.#words.push((this.#word | (value >>> over)) >>> 0);
    this.#free = 32 - over;
    this.#word = over === 0 ? 0 : value << this.#free;
  }

  /** A number from 1 to 65535 in the shorter the smaller: as many noughts as it has further digits, then its digits (Elias’s γ). */
  putSmall(value: number): void {
    this.put(value, 2 * (31 - Math.clz32(value)) + 1);
  }

  /** The words, and one more so that two can always be read at once. */
  finish(): Uint32Array {
    this.#words.push(this.#word >>> 0);
    this.#words.push(0);
    return this.#words.view();
  }
}
