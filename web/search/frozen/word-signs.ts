import { wordsOf } from '../search-options.ts';

/**
 * What a sign, as one UTF-16 unit, does to the words around it: it separates them, it belongs to one, or that depends on its
 * neighbours. A byte a sign, by the rule of words itself (`wordsOf`), asked when a sign is first met.
 */
export const SEPARATES = 1;
export const BELONGS = 2;
export const DEPENDS = 4;

/** What was asked so far; 0 for all others. To be read in place, as whoever looks at every sign of many texts must. */
export const signKinds = new Uint8Array(0x1_0000);

/** Asks what a unit does, and remembers it. */
export function askSignKind(unit: number): number {
  const sign = String.fromCharCode(unit);
  const isHalfASign = (unit & 0xf800) === 0xd800;
  const kind = isHalfASign ? DEPENDS : wordsOf(sign).length > 0 ? BELONGS : wordsOf(`a${sign}a`).length > 1 ? SEPARATES : DEPENDS;
  signKinds[unit] = kind;
  return kind;
}
