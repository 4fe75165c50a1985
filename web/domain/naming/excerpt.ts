/** A stretch of text around something found, on one line. */
export interface Excerpt {
  readonly before: string;
  readonly found: string;
  readonly after: string;
}

/** Characters shown on either side (our choice: a line in a terminal, two on a phone). */
const WIDTH = 60;

/** The words around a range, cut at word ends, an ellipsis where something was cut; Markdown's marks left out. */
export function excerptOf(text: string, start: number, end: number): Excerpt {
  const from = Math.max(0, start - WIDTH * 2);
  // A paragraph, a heading or a row ends what belongs together.
  const left = plain(
    text
      .slice(from, start)
      .split(/\n[ \t>]*\r?\n/)
      .at(-1) ?? '',
  );
  const right = plain(text.slice(end, end + WIDTH * 2).split(/\r?\n[ \t>]*\r?\n/)[0] ?? '');
  const cutLeft = left.length > WIDTH;
  const cutRight = right.length > WIDTH;
  return {
    before: (cutLeft ? `…${left.slice(-WIDTH).replace(/^\S*\s/, '')}` : left).trimStart(),
    found: text.slice(start, end).replace(/\s+/g, ' '),
    after: (cutRight ? `${right.slice(0, WIDTH).replace(/\s\S*$/, '')}…` : right).trimEnd(),
  };
}

const plain = (text: string): string =>
  text
    .replace(/\]\([^)\s]*\)?/g, '')
    .replace(/(^|\n)[ \t]*(?:---|#{1,6}|>|[-+*]|\d+[.)])(?=\s)/g, '$1')
    .replace(/[*_`[\]]/g, '')
    .replace(/\s+/g, ' ');
