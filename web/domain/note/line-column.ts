import type { TextRange } from '../diagnostic.ts';

/** A place in a file as editors show it: both 1-based; columns count UTF-16 code units. */
export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/**
 * Where each line of a text begins. LF, CRLF and a lone CR end a line.
 *
 * @returns offsets in UTF-16 code units, ascending; the first is 0, or 1 where a byte order mark stands before the first line.
 */
export function lineStarts(text: string): readonly number[] {
  const starts = [text.startsWith('\uFEFF') ? 1 : 0];
  const ends = /\r\n?|\n/g;
  while (ends.test(text)) starts.push(ends.lastIndex);
  return starts;
}

/**
 * The line and column of an offset.
 *
 * @param starts from `lineStarts` of the same text.
 * @param offset UTF-16 code units; before the text counts as its first place.
 */
export function lineColumn(starts: readonly number[], offset: number): LineColumn {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: Math.max(0, offset - (starts[low] ?? 0)) + 1 };
}

/** The line and column where a range begins. */
export const startOf = (text: string, range: TextRange): LineColumn => lineColumn(lineStarts(text), range[0]);

/** The offset of a line and column; beyond the last line or before the first counts as that line. */
export function offsetAt(starts: readonly number[], { line, column }: LineColumn): number {
  const start = starts[Math.min(Math.max(line, 1), starts.length) - 1] ?? 0;
  return start + Math.max(0, column - 1);
}
