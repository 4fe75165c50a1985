import { GrowingBytes } from './growing-bytes.ts';

/**
 * Terms one letter off: a slip leaves one of two parts of a word as it was. So a near term either begins as the word does, or
 * ends as it does; ends are kept in a table, by their letters and the length of the term.
 */

/** Shorter terms are never near: below five letters no slip is forgiven, and one letter may be missing. */
export const SHORTEST_NEAR = 4;

/** Letters of the end that the table knows a term by: less than half of it, so that the other part is the more telling one. */
export const endLength = (termLength: number): number => Math.max(2, Math.floor((termLength - 1) / 2));

/** The place of an end in a table of so many places, a power of two. */
export function endPlace(end: string, termLength: number, places: number): number {
  let mixed = Math.imul(termLength, 0x9e3779b1);
  for (let at = 0; at < end.length; at += 1) mixed = Math.imul(mixed ^ end.charCodeAt(at), 0x85ebca6b);
  return ((mixed ^ (mixed >>> 15)) >>> 0) & (places - 1);
}

/** Whether two different terms are one letter apart: one more, one less or another. */
export function isNear(a: string, b: string): boolean {
  const [longer, shorter] = a.length >= b.length ? [a, b] : [b, a];
  if (longer.length - shorter.length > 1 || longer === shorter) return false;
  let at = 0;
  while (at < shorter.length && longer[at] === shorter[at]) at += 1;
  return longer.slice(at + 1) === shorter.slice(longer.length === shorter.length ? at + 1 : at);
}

/** False only where no term that begins so is one letter off. */
export function mayBeginNear(word: string, beginning: string): boolean {
  let at = 0;
  while (at < beginning.length && beginning[at] === word[at]) at += 1;
  const rest = beginning.slice(at + 1);
  // Up to the first letter that differs both are one; from there on it is another letter, one more, or one less.
  return (
    at === beginning.length || word.startsWith(rest, at + 1) || word.startsWith(rest, at) || word.startsWith(beginning.slice(at), at + 1)
  );
}

/** Terms by their ends: where the terms of a place begin in `gaps`, and for each the steps from the term before it there. */
export interface EndsTable {
  readonly starts: Uint32Array;
  readonly gaps: Uint8Array;
}

/** A table of ends, of terms in order. */
export function tableOfEnds(terms: readonly string[]): EndsTable {
  const places = 1 << Math.max(4, 31 - Math.clz32(Math.max(1, terms.length >>> 3)));
  const placed = Array.from({ length: places }, (): number[] => []);
  for (const [nth, term] of terms.entries())
    if (term.length >= SHORTEST_NEAR) placed[endPlace(term.slice(-endLength(term.length)), term.length, places)]?.push(nth);
  const gaps = new GrowingBytes();
  const starts = new Uint32Array(places + 1);
  for (const [place, held] of placed.entries()) {
    for (const [at, nth] of held.entries()) gaps.pushNumber(nth - (held[at - 1] ?? 0));
    starts[place + 1] = gaps.length;
  }
  return { starts, gaps: gaps.view() };
}

/** Places in order of the terms that may end so. */
export function termsEndingLike({ starts, gaps }: EndsTable, end: string, termLength: number): readonly number[] {
  const place = endPlace(end, termLength, starts.length - 1);
  const terms: number[] = [];
  let term = 0;
  for (let at = starts[place] ?? 0; at < (starts[place + 1] ?? 0);) {
    let gap = 0;
    for (let shift = 0, more = true; more; shift += 7) {
      const byte = gaps[at++] ?? 0;
      gap |= (byte & 0x7f) << shift;
      more = byte >= 0x80;
    }
    term += gap;
    terms.push(term);
  }
  return terms;
}
