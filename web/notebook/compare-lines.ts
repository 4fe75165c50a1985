/** A line of two texts laid side by side. */
export interface ComparedLine {
  readonly is: 'same' | 'gone' | 'new';
  /** The line without its ending. */
  readonly text: string;
  /** Its number in the earlier and in the later text, from 1; absent where it is not there. */
  readonly before?: number;
  readonly after?: number;
}

/** Lines in between that are compared one by one (our choice: beyond it the work grows too long to wait for). */
const MOST_CELLS = 4_000_000;

/**
 * What became of each line between two texts: the fewest lines gone and new.
 *
 * @returns in reading order, those gone before those new. Very long stretches without a common line are all gone and all new.
 */
export function compareLines(earlier: string, later: string): readonly ComparedLine[] {
  const a = linesOf(earlier);
  const b = linesOf(later);
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head += 1;
  let tail = 0;
  while (tail < a.length - head && tail < b.length - head && a[a.length - 1 - tail] === b[b.length - 1 - tail]) tail += 1;
  const same = (at: number, shift: number): ComparedLine => ({ is: 'same', text: a[at] ?? '', before: at + 1, after: at + 1 + shift });
  const before = a.slice(0, head).map((_, at) => same(at, 0));
  const after = a.slice(a.length - tail).map((_, at) => same(a.length - tail + at, b.length - a.length));
  return [...before, ...between(a.slice(head, a.length - tail), b.slice(head, b.length - tail), head), ...after];
}

const linesOf = (text: string): readonly string[] => text.split(/\r\n|\n|\r/);

/** Longest common subsequence by the usual table. */
function between(a: readonly string[], b: readonly string[], shift: number): readonly ComparedLine[] {
  const gone = (at: number): ComparedLine => ({ is: 'gone', text: a[at] ?? '', before: shift + at + 1 });
  const fresh = (at: number): ComparedLine => ({ is: 'new', text: b[at] ?? '', after: shift + at + 1 });
  if (a.length * b.length > MOST_CELLS) return [...a.map((_, at) => gone(at)), ...b.map((_, at) => fresh(at))];
  const width = b.length + 1;
  const longest = new Uint32Array((a.length + 1) * width);
  const cell = (i: number, j: number): number => longest[i * width + j] ?? 0;
  for (let i = a.length - 1; i >= 0; i -= 1)
    for (let j = b.length - 1; j >= 0; j -= 1)
      longest[i * width + j] = a[i] === b[j] ? cell(i + 1, j + 1) + 1 : Math.max(cell(i + 1, j), cell(i, j + 1));
  const lines: ComparedLine[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) {
      lines.push({ is: 'same', text: a[i] ?? '', before: shift + i + 1, after: shift + j + 1 });
      i += 1;
      j += 1;
    } else if (j >= b.length || (i < a.length && cell(i + 1, j) >= cell(i, j + 1))) {
      lines.push(gone(i));
      i += 1;
    } else {
      lines.push(fresh(j));
      j += 1;
    }
  }
  return lines;
}
