/**
 * Width of a text in sizes of type, without a browser to measure it: classes of letters of a reading serif, on the wide side,
 * so that a line that is reckoned to fit does.
 *
 * @source widths of Times, Georgia and Literata compared by eye; our own classes.
 */
export function widthOf(text: string): number {
  let sum = 0;
  for (const letter of text) sum += NARROW.test(letter) ? 0.3 : WIDE.test(letter) ? 0.9 : LARGE.test(letter) ? 0.7 : 0.53;
  return sum;
}

const NARROW = /[iljtfrI.,:;!'’‘|()[\]\s]/;
const WIDE = /[mwMW—%@]/;
const LARGE = /[\p{Lu}&]/u;

/** A text in lines that are at most so wide, in sizes of type; a word that is longer has a line of its own. */
export function textLines(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((one) => one !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}
