/** A stretch of text around something found, on one line. */
export interface Excerpt {
  readonly before: string;
  readonly found: string;
  readonly after: string;
}

/** Characters shown on either side (our choice: a line in a terminal, two on a phone). */
const WIDTH = 60;

/** An empty line, or the mark of the next item of a list, ends what belongs together. */
const BETWEEN = /\r?\n(?:[ \t>]*\r?\n|[ \t>]*(?:[-+*]|\d{1,9}[.)])[ \t]+)/;

/** The words around a range, cut at word ends, an ellipsis where something was cut; the marks of Markdown and YAML left out. */
export function excerptOf(text: string, start: number, end: number): Excerpt {
  const from = Math.max(0, start - WIDTH * 2);
  const inTarget = isInLinkTarget(text, start);
  const before = plain(`\n${text.slice(from, start).split(BETWEEN).at(-1) ?? ''}`).trimStart();
  const after = text.slice(end, end + WIDTH * 2).split(BETWEEN)[0] ?? '';
  const left = inTarget ? `${before} (` : before;
  const right = plain(inTarget ? `)${after.replace(/^[^)\s]*\)?/, '')}` : after);
  const cutLeft = left.length > WIDTH;
  const cutRight = right.length > WIDTH;
  return {
    before: cutLeft ? `…${left.slice(-WIDTH).replace(/^\S*\s/, '')}` : left,
    found: text.slice(start, end).replace(/\s+/g, ' '),
    after: (cutRight ? `${right.slice(0, WIDTH).replace(/\s\S*$/, '')}…` : right).trimEnd(),
  };
}

/** Whether a place lies where a link leads, not in what stands to be read. */
export function isInLinkTarget(text: string, at: number): boolean {
  const before = text.slice(Math.max(0, at - WIDTH * 2), at);
  const opens = before.lastIndexOf('](');
  return opens >= 0 && !/[)\s]/.test(before.slice(opens + 2));
}

const plain = (text: string): string =>
  text
    .replace(/\]\([^)\s]*\)?/g, '')
    .replace(/\n[ \t]*(?:---|#{1,6}|>|[-+*]|\d+[.)])(?=\s)/g, '\n')
    .replace(/[*_`[\]{}]/g, '')
    .replace(/\s+/g, ' ');
