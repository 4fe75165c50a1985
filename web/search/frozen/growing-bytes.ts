/** Bytes that grow as they are written, with whole numbers in seven bits a byte, the lowest first. */
export class GrowingBytes {
  #bytes = new Uint8Array(1024);
  #length = 0;

  get length(): number {
    return this.#length;
  }

  push(byte: number): void {
    if (this.#length === this.#bytes.length) this.#grow(1);
    this.#bytes[this.#length++] = byte;
  }

  pushAll(bytes: Uint8Array): void {
    if (this.#length + bytes.length > this.#bytes.length) this.#grow(bytes.length);
    this.#bytes.set(bytes, this.#length);
    this.#length += bytes.length;
  }

  pushNumber(value: number): void {
    let rest = value;
    for (; rest >= 0x80; rest = Math.floor(rest / 0x80)) this.push((rest & 0x7f) | 0x80);
    this.push(rest);
  }

  view(): Uint8Array {
    return this.#bytes.subarray(0, this.#length);
  }

  #grow(by: number): void {
    const larger = new Uint8Array(2 * this.#bytes.length + by);
    larger.set(this.#bytes);
    this.#bytes = larger;
  }
}
