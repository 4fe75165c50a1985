import { BODY_FIELD, FIELD_COUNT } from './index-fields.ts';
import type { BitWriter } from './bit-writer.ts';
import { GrowingList } from './growing-list.ts';

/**
 * The notes a term stands in, in order. Of each the gap to the one before is written, as the number of `2^spread` steps in
 * ones and the rest in `spread` bits (Rice’s code); then one bit where the term stands once and in the body alone, as most
 * do; else how often, in the body or field by field.
 *
 * @source R. F. Rice, JPL Publication 79-22, 1979; P. Elias 1975, doi:10.1109/TIT.1975.1055349.
 */

/** From so many steps on a gap is written plainly. */
const MANY_STEPS = 12;
const PLAIN_WIDTH = 24;
/** So that a gap and the bit behind it always lie in 32 bits. */
const MOST_SPREAD = 18;
/** How many notes an index can hold: what a plain gap can say. */
export const MOST_NOTES = 2 ** PLAIN_WIDTH;
/** Larger counts are written as this. */
const MOST_TIMES = 65535;

/** Marks a count that is a place in a list of counts, field by field. */
export const BY_FIELD = 0x8000_0000;

/** The spread that suits the mean gap; 0.69 is the natural logarithm of 2, as the code's theory has it. */
const spreadOf = (noteCount: number, count: number): number =>
  Math.min(MOST_SPREAD, 31 - Math.clz32(Math.max(1, Math.floor((0.69 * noteCount) / count))));

/**
 * Writes one term's notes.
 *
 * @param postings each note and how often in its body, or `BY_FIELD` and where its counts begin in `byField`.
 */
export function writePostings(out: BitWriter, noteCount: number, postings: Uint32Array, byField: { at(index: number): number }): void {
  const spread = spreadOf(noteCount, postings.length / 2);
  let before = -1;
  for (let at = 0; at < postings.length; at += 2) {
    const note = postings[at] ?? 0;
    const gap = note - before - 1;
    before = note;
    const count = postings[at + 1] ?? 1;
    const steps = gap >>> spread;
    const width = steps + spread + 2;
    if (count === 1 && steps < MANY_STEPS && width <= 32) {
      // As most are: the steps in ones, a nought, the rest, and a nought for the count.
      out.put((((2 ** (steps + 1) - 2) << spread) | (gap & ((1 << spread) - 1))) << 1, width);
      continue;
    }
    writeGap(out, gap, spread);
    if (count === 1) out.put(0, 1);
    else if (count < BY_FIELD) {
      out.put(0b10, 2);
      out.putSmall(Math.min(count, MOST_TIMES) - 1);
    } else writeByField(out, count - BY_FIELD, byField);
  }
}

function writeGap(out: BitWriter, gap: number, spread: number): void {
  const steps = gap >>> spread;
  if (steps >= MANY_STEPS) {
    out.put(2 ** MANY_STEPS - 1, MANY_STEPS);
    out.put(gap, PLAIN_WIDTH);
    return;
  }
  out.put(2 ** (steps + 1) - 2, steps + 1);
  if (spread > 0) out.put(gap & (2 ** spread - 1), spread);
}

function writeByField(out: BitWriter, start: number, byField: { at(index: number): number }): void {
  let mask = 0;
  for (let field = 0; field < FIELD_COUNT; field += 1) if (byField.at(start + field) > 0) mask |= 1 << field;
  out.put(0b11, 2);
  out.put(mask, FIELD_COUNT);
  for (let field = 0; field < FIELD_COUNT; field += 1)
    if (mask & (1 << field)) out.putSmall(Math.min(byField.at(start + field), MOST_TIMES));
}

/** Reads terms' notes, each time into the same room. */
export class PostingsReader {
  /** Notes of the term read last. */
  readonly notes: Uint32Array;
  /** How often each, as `writePostings` takes it. */
  readonly counts: Uint32Array;
  /** Counts field by field of those that need it. */
  readonly byField = new GrowingList();
  readonly #words: Uint32Array;
  readonly #noteCount: number;

  constructor(words: Uint32Array, noteCount: number) {
    this.#words = words;
    this.#noteCount = noteCount;
    this.notes = new Uint32Array(noteCount);
    this.counts = new Uint32Array(noteCount);
  }

  /** @param start bit where the term's notes begin. @param count how many there are. */
  read(start: number, count: number): void {
    const words = this.#words;
    const { notes, counts } = this;
    const spread = spreadOf(this.#noteCount, count);
    this.byField.clear();
    let place = start;
    let note = -1;
    for (let at = 0; at < count; at += 1) {
      // Plain shifts rather than a call: this loop is what a query's time goes into.
      const offset = place & 31;
      let bits = ((words[place >>> 5] ?? 0) << offset) | (((words[(place >>> 5) + 1] ?? 0) >>> 1) >>> (31 - offset));
      const steps = Math.clz32(~bits);
      if (steps < MANY_STEPS) {
        bits <<= steps + 1;
        note += 1 + (steps << spread) + ((bits >>> 1) >>> (31 - spread));
        bits <<= spread;
        place += steps + spread + 2;
      } else {
        note += 1 + (this.#bitsAt(place + MANY_STEPS) >>> (32 - PLAIN_WIDTH));
        place += MANY_STEPS + PLAIN_WIDTH + 1;
        bits = this.#bitsAt(place - 1);
      }
      notes[at] = note;
      if (bits >= 0) counts[at] = 1;
      else place = this.#readCount(place, at);
    }
  }

  /** A count that is not one in the body alone. @returns where the next note begins. */
  #readCount(place: number, at: number): number {
    const bits = this.#bitsAt(place);
    if (bits >= 0) {
      const width = smallWidth(bits << 1);
      this.counts[at] = ((bits << 1) >>> (32 - width)) + 1;
      return place + 1 + width;
    }
    const mask = (bits << 1) >>> (32 - FIELD_COUNT);
    this.counts[at] = BY_FIELD + this.byField.length;
    let next = place + 1 + FIELD_COUNT;
    for (let field = 0; field < FIELD_COUNT; field += 1) {
      const there = mask & (1 << field) ? this.#bitsAt(next) : 0;
      const width = there === 0 ? 0 : smallWidth(there);
      this.byField.push(there === 0 ? 0 : there >>> (32 - width));
      next += width;
    }
    return next;
  }

  #bitsAt(place: number): number {
    const offset = place & 31;
    return ((this.#words[place >>> 5] ?? 0) << offset) | (((this.#words[(place >>> 5) + 1] ?? 0) >>> 1) >>> (31 - offset));
  }
}

/** How many bits a number takes that `putSmall` wrote. */
const smallWidth = (bits: number): number => 2 * Math.clz32(bits) + 1;

/** Fields a count speaks of, as bits. */
export const fieldsOf = (count: number, byField: GrowingList): number => {
  if (count < BY_FIELD) return 1 << BODY_FIELD;
  let mask = 0;
  for (let field = 0; field < FIELD_COUNT; field += 1) if (byField.at(count - BY_FIELD + field) > 0) mask |= 1 << field;
  return mask;
};
