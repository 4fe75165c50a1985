import type { NoteSides } from './merge-note.ts';

/** Marks of seven signs at the beginning of a line, as version control writes them around what it could not merge. */
const MARK = /^(<{7}|\|{7}|={7}|>{7})(?: [^\r\n]*)?$/;

type Side = 'all' | 'mine' | 'base' | 'theirs';

/**
 * Reads the two texts out of a file in which version control marked what it could not merge, and the common one where it marked
 * that too.
 *
 * @returns undefined where nothing is marked, or the marks do not stand in their order.
 */
export function markedSides(text: string): NoteSides | undefined {
  if (!/^<{7}/m.test(text)) return undefined;
  const sides = { mine: '', base: '', theirs: '' };
  let within: Side = 'all';
  let [found, withBase] = [0, 0];
  for (const line of text.match(/[^\r\n]*(?:\r\n|\n|\r)|[^\r\n]+$/g) ?? []) {
    const mark = MARK.exec(line.replace(/\r?\n$|\r$/, ''))?.[1]?.[0];
    const next: Side | undefined = mark === undefined ? undefined : after(within, mark);
    // A row of equals signs alone may underline a heading.
    if (mark !== undefined && next === undefined && !(mark === '=' && within === 'all')) return undefined;
    if (next !== undefined) {
      if (within === 'all') found += 1;
      if (next === 'base') withBase += 1;
      within = next;
    } else if (within === 'all') {
      sides.mine += line;
      sides.base += line;
      sides.theirs += line;
    } else sides[within] += line;
  }
  if (within !== 'all' || found === 0) return undefined;
  return withBase === found ? sides : { mine: sides.mine, theirs: sides.theirs };
}

function after(within: Side, mark: string): Side | undefined {
  if (mark === '<') return within === 'all' ? 'mine' : undefined;
  if (mark === '|') return within === 'mine' ? 'base' : undefined;
  if (mark === '=') return within === 'mine' || within === 'base' ? 'theirs' : undefined;
  return within === 'theirs' ? 'all' : undefined;
}
