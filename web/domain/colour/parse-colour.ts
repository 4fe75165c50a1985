import type { Lab, Lab2 } from './lab.ts';
import { labTriple } from './parse-lab-text.ts';
import { cssToLab2 } from './screen.ts';

/** A colour as somebody typed it. */
export type TypedColour =
  | { readonly kind: 'screen'; readonly lab2: Lab2 }
  /** L*, a*, b* without conditions: the caller says under which it takes them. */
  | { readonly kind: 'lab'; readonly lab: Lab };

/** Six hex digits without `#` are taken too: a shell eats the sign. Shorter ones would be read out of plain numbers. */
const BARE_HEX = /^[0-9a-f]{6}$/i;
const BARE_DIGITS = /^[0-9a-f]+$/i;
const LONGEST_TEXT = 200;

/**
 * Reads a CSS colour (hex with `#`, or any CSS Color 4 notation) or `L,a,b`.
 *
 * @returns undefined when it is neither; L* must lie in 0–100.
 */
export function parseColourText(text: string): TypedColour | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  const typed = text.trim().replace(/\s+/g, ' ');
  const triple = labTriple(typed);
  if (triple) return triple.isPossible ? { kind: 'lab', lab: triple.lab } : undefined;
  if (BARE_DIGITS.test(typed) && !BARE_HEX.test(typed)) return undefined;
  const lab2 = cssToLab2(BARE_HEX.test(typed) ? `#${typed}` : typed);
  return lab2 && { kind: 'screen', lab2 };
}
