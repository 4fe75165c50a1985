import type { TextRange } from '../diagnostic.ts';
import type { Citation } from './note.ts';

/**
 * Reads `key, locator`: the first comma parts them, the locator may hold further commas.
 *
 * @param range where the words stand, carried along for later findings.
 * @returns undefined where no key stands before the comma.
 */
export function parseCitation(text: string, range?: TextRange): Citation | undefined {
  const comma = text.indexOf(',');
  const key = (comma < 0 ? text : text.slice(0, comma)).trim();
  const locator = comma < 0 ? '' : text.slice(comma + 1).trim();
  if (key === '') return undefined;
  return { key, ...(locator === '' ? {} : { locator }), ...(range === undefined ? {} : { range }) };
}

/** Writes a citation as `key, locator`. */
export const printCitation = ({ key, locator }: Citation): string => (locator === undefined ? key : `${key}, ${locator}`);
