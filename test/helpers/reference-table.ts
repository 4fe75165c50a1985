import { readFileSync } from 'node:fs';

/** A row of a reference table, by column name. */
export type ReferenceRow = Readonly<Record<string, string>>;

/**
 * Rows of a CSV under test/reference/: `#` lines are comments, the first other line names the columns.
 *
 * @param file path below test/reference/.
 */
export function referenceTable(file: string): readonly ReferenceRow[] {
  const lines = referenceText(file)
    .split(/\r?\n/)
    .filter((line) => line !== '' && !line.startsWith('#'));
  const [header = [], ...rows] = lines.map(cells);
  return rows.map((row) => Object.fromEntries(header.map((name, i) => [name, row[i] ?? ''])));
}

/** A file under test/reference/ as text. */
export const referenceText = (file: string): string => readFileSync(new URL(`../reference/${file}`, import.meta.url), 'utf8');

/** The numbers of some columns of a row. */
export const numbers = (row: ReferenceRow, ...columns: readonly string[]): number[] => columns.map((column) => Number(row[column]));

function cells(line: string): string[] {
  return [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map((found) => (found[1] ?? '').replace(/^"|"$/g, '').replaceAll('""', '"'));
}
