import { compareLines } from '../compare-lines.ts';

/** A line of two versions beside each other; a side without the line is undefined. */
export interface VersionLine {
  readonly is: 'same' | 'changed';
  readonly before?: { readonly line: number; readonly text: string };
  readonly after?: { readonly line: number; readonly text: string };
}

/** Two versions side by side: what they share only near what they do not. */
export interface VersionsView {
  readonly parts: readonly (readonly VersionLine[])[];
  /** True where both say the same. */
  readonly same: boolean;
  /** "3 lines gone, 1 new". */
  readonly summary: string;
}

/** Shared lines shown around a change (our choice: enough to know where one is). */
const AROUND = 3;

/** Lays two texts side by side; a line gone and a line new at one place stand in one row. */
export function versionsView(earlier: string, later: string): VersionsView {
  const lines = compareLines(earlier, later);
  const rows: VersionLine[] = [];
  let at = 0;
  while (at < lines.length) {
    const line = lines[at];
    if (!line) break;
    if (line.is === 'same') {
      rows.push({ is: 'same', before: { line: line.before ?? 0, text: line.text }, after: { line: line.after ?? 0, text: line.text } });
      at += 1;
      continue;
    }
    const end = lines.findIndex((one, index) => index >= at && one.is === 'same');
    const run = lines.slice(at, end < 0 ? lines.length : end);
    const gone = run.filter(({ is }) => is === 'gone');
    const fresh = run.filter(({ is }) => is === 'new');
    for (let row = 0; row < Math.max(gone.length, fresh.length); row += 1) {
      const [before, after] = [gone[row], fresh[row]];
      rows.push({
        is: 'changed',
        ...(before && { before: { line: before.before ?? 0, text: before.text } }),
        ...(after && { after: { line: after.after ?? 0, text: after.text } }),
      });
    }
    at += run.length;
  }
  const gone = lines.filter(({ is }) => is === 'gone').length;
  const fresh = lines.filter(({ is }) => is === 'new').length;
  return { parts: partsOf(rows), same: gone + fresh === 0, summary: summaryOf(gone, fresh) };
}

function partsOf(rows: readonly VersionLine[]): readonly (readonly VersionLine[])[] {
  const parts: VersionLine[][] = [];
  let last = -Infinity;
  rows.forEach((row, at) => {
    const isNear = rows.slice(Math.max(0, at - AROUND), at + AROUND + 1).some(({ is }) => is === 'changed');
    if (!isNear) return;
    if (at !== last + 1) parts.push([]);
    parts.at(-1)?.push(row);
    last = at;
  });
  return parts;
}

function summaryOf(gone: number, fresh: number): string {
  if (gone + fresh === 0) return 'Both say the same.';
  const lines = (count: number) => (count === 1 ? '1 line' : `${count} lines`);
  if (fresh === 0) return `${lines(gone)} gone.`;
  return gone === 0 ? `${lines(fresh)} new.` : `${lines(gone)} gone, ${fresh} new.`;
}
