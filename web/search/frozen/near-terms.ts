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

/** A table of ends, of terms in order. */
export function tableOfEnds(terms: readonly string[]): { readonly starts: Uint32Array; readonly terms: Uint32Array } {
  const places = 1 << Math.max(4, 31 - Math.clz32(Math.max(1, terms.length >>> 3)));
  const placeOf = (term: string): number =>
    term.length < SHORTEST_NEAR ? -1 : endPlace(term.slice(-endLength(term.length)), term.length, places);
  const starts = new Uint32Array(places + 1);
  const placed = Int32Array.from(terms, placeOf);
  for (const place of placed) if (place >= 0) starts[place + 1] = (starts[place + 1] ?? 0) + 1;
  for (let place = 0; place < places; place += 1) starts[place + 1] = (starts[place + 1] ?? 0) + (starts[place] ?? 0);
  const next = starts.slice();
  const sorted = new Uint32Array(starts[places] ?? 0);
  for (const [nth, place] of placed.entries()) {
    if (place < 0) continue;
    const at = next[place] ?? 0;
    next[place] = at + 1;
    sorted[at] = nth;
  }
  return { starts, terms: sorted };
}
