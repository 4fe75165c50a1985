/**
 * A text as an editor holds it: every line ends with a single LF. What lies between two positions of it is changed in the
 * text itself by `withChanges`, so that the lines nobody touched keep their own endings.
 */
export const withPlainEndings = (text: string): string => text.replace(/\r\n?/g, '\n');

/** A stretch of a plainly ended text that gives way to another; positions in UTF-16 code units of that text. */
export interface PlainChange {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/**
 * Makes changes that were made to the plainly ended text in the text itself.
 *
 * @param changes in ascending order, not overlapping, all counted in the text before any of them.
 * @returns a text whose plain form is the plain form of `text` with these changes. New lines end as the first line does.
 */
export function withChanges(text: string, changes: readonly PlainChange[]): string {
  const ending = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  const parts: string[] = [];
  let plainAt = 0;
  let at = 0;
  /** Moves on to a plain position; never between CR and LF. */
  const advance = (to: number): number => {
    while (plainAt < to && at < text.length) {
      at += text.charCodeAt(at) === 13 && text.charCodeAt(at + 1) === 10 ? 2 : 1;
      plainAt += 1;
    }
    return at;
  };
  let kept = 0;
  for (const { from, to, insert } of changes) {
    const start = advance(from);
    const end = advance(to);
    parts.push(text.slice(kept, start), insert.replace(/\r\n?|\n/g, ending));
    kept = end;
  }
  parts.push(text.slice(kept));
  return mended(parts);
}

/** Joins the parts; where a lone CR comes to stand before an LF, which would make one line of two, it becomes CRLF. */
const mended = (parts: readonly string[]): string =>
  parts.reduce((joined, part) => joined + (joined.endsWith('\r') && part.startsWith('\n') ? '\n' : '') + part, '');

/** The smallest single change that turns one plainly ended text into another; undefined where they are the same. */
export function changeBetween(before: string, after: string): PlainChange | undefined {
  if (before === after) return undefined;
  const most = Math.min(before.length, after.length);
  let from = 0;
  while (from < most && before.charCodeAt(from) === after.charCodeAt(from)) from += 1;
  let tail = 0;
  while (tail < most - from && before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)) tail += 1;
  return { from, to: before.length - tail, insert: after.slice(from, after.length - tail) };
}

/** Where a position of the text lies in its plain form. */
export function plainOffset(text: string, offset: number): number {
  const before = text.slice(0, offset);
  return before.length - (before.match(/\r\n/g)?.length ?? 0) - (before.endsWith('\r') && text[offset] === '\n' ? 1 : 0);
}
