import type { Lab, Lab2 } from './lab.ts';
import { cssToLab2 } from './screen.ts';

/** A colour as somebody typed it. */
export type TypedColour =
  | { readonly kind: 'screen'; readonly lab2: Lab2 }
  /** L*, a*, b* without conditions: the caller says under which it takes them. */
  | { readonly kind: 'lab'; readonly lab: Lab };

const NUMBER = '[-+−]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)';
const TRIPLE = new RegExp(`^(?:lab ?:? ?)?(${NUMBER})(?: ?[,;] ?| )(${NUMBER})(?: ?[,;] ?| )(${NUMBER})$`, 'i');
/** Six hex digits without `#` are taken too: a shell eats the sign. Shorter ones would be read out of plain numbers. */
const BARE_HEX = /^[0-9a-f]{6}$/i;
const BARE_DIGITS = /^[0-9a-f]+$/i;
const LONGEST_TEXT = 200;
/** Beyond these no surface colour lies; most likely something else was typed. */
const LARGEST_AB = 200;

/**
 * Reads a CSS colour (hex with `#`, or any CSS Color 4 notation) or `L,a,b`.
 *
 * @returns undefined when it is neither; L* must lie in 0–100.
 */
export function parseColourText(text: string): TypedColour | undefined {
  if (text.length > LONGEST_TEXT) return undefined;
  const typed = text.trim().replace(/\s+/g, ' ');
  const lab = readTriple(typed);
  if (lab)
    return lab[0] >= 0 && lab[0] <= 100 && Math.max(Math.abs(lab[1]), Math.abs(lab[2])) <= LARGEST_AB ? { kind: 'lab', lab } : undefined;
  if (BARE_DIGITS.test(typed) && !BARE_HEX.test(typed)) return undefined;
  const lab2 = cssToLab2(BARE_HEX.test(typed) ? `#${typed}` : typed);
  return lab2 && { kind: 'screen', lab2 };
}

function readTriple(text: string): Lab | undefined {
  const found = TRIPLE.exec(text);
  if (!found) return undefined;
  const number = (part: string | undefined): number => Number((part ?? '').replace('−', '-'));
  return [number(found[1]), number(found[2]), number(found[3])];
}
