/** A list of whole numbers below 2³² that grows as it is filled. */
export class GrowingList {
  #values = new Uint32Array(256);
  #length = 0;

  get length(): number {
    return this.#length;
  }

  push(value: number): void {
    if (this.#length === this.#values.length) {
      const larger = new Uint32Array(2 * this.#values.length);
      larger.set(this.#values);
      this.#values = larger;
    }
    this.#values[this.#length++] = value;
  }

  at(index: number): number {
    return this.#values[index] ?? 0;
  }

  set(index: number, value: number): void {
    this.#values[index] = value;
  }

  /** Adds 1 to the value at a place. */
  increase(index: number): void {
    this.#values[index] = this.at(index) + 1;
  }

  /** Forgets what it holds and keeps its room. */
  clear(): void {
    this.#length = 0;
  }

  /** What it holds, not copied: to be read before the next `push`. */
  view(): Uint32Array {
    return this.#values.subarray(0, this.#length);
  }
}
