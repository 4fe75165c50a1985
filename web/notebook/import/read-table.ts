import Papa from 'papaparse';
import { wordsOfCell } from '../words/csv-cell.ts';
import { type GatherCode, MOST_CHARACTERS, MOST_ROWS } from './gathered.ts';
import { type Columns, matchColumns } from './match-columns.ts';

/** A line of a table; its number is the file's own line where no cell holds a line break. */
export interface TableRow<C extends string> {
  readonly row: number;
  readonly cell: (column: C) => string;
  /** All of it, for saying which line is meant. */
  readonly whole: string;
}

/** A table with its columns matched. */
export interface ReadTable<C extends string> {
  readonly headings: readonly string[];
  /** The line the headings stand in. */
  readonly headRow: number;
  readonly columns: Columns<C>;
  /** Headings nobody wanted, those matched by hand left out. */
  readonly unmatched: readonly string[];
  readonly rows: readonly TableRow<C>[];
  readonly isCut: boolean;
}

const DELIMITERS = [',', ';', '\t', '|'] as const;
/** Lines at the beginning among which headings are looked for (our choice). */
const BLANK_LINES = 100;

/**
 * A CSV table with headings.
 *
 * @param names the headings each column goes by.
 * @param chosen columns somebody matched by hand, -1 for none; they go before those found by their headings.
 * @returns why nothing was read, where the table is too large or has no lines.
 */
export function readTable<C extends string>(
  text: string,
  names: Readonly<Record<C, readonly string[]>>,
  chosen: Columns<C>,
): ReadTable<C> | GatherCode {
  if (text.length > MOST_CHARACTERS) return 'too-large';
  const table = text.replace(/^\uFEFF/, '');
  const { data } = Papa.parse<string[]>(table, { delimiter: delimiterOf(table), preview: MOST_ROWS + 2 });
  const rows = data
    .map((cells, at) => ({ cells: cells.map(wordsOfCell), row: at + 1 }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const [head, ...lines] = rows;
  if (!head || lines.length === 0) return 'nothing-inside';
  const { columns: found, unmatched } = matchColumns<C>(head.cells, names);
  const columns: Columns<C> = { ...found, ...chosen };
  const byHand = new Set(Object.values<number | undefined>(chosen).flatMap((at) => head.cells[at ?? -1] ?? []));
  return {
    headings: head.cells,
    headRow: head.row,
    columns,
    unmatched: unmatched.filter((heading) => !byHand.has(heading)),
    rows: lines
      .slice(0, MOST_ROWS)
      .map(({ cells, row }) => ({ row, cell: (column) => cells[columns[column] ?? -1] ?? '', whole: cells.join(' ') })),
    isCut: lines.length > MOST_ROWS,
  };
}

/** What parts the headings into the most: cells below them may hold any of these signs. */
function delimiterOf(table: string): string {
  const headings = table.split(/[\r\n]/, BLANK_LINES).find((line) => line.trim() !== '') ?? '';
  const parts = DELIMITERS.map((delimiter) => ({ delimiter, count: Papa.parse<string[]>(headings, { delimiter }).data[0]?.length ?? 0 }));
  return parts.reduce((best, one) => (one.count > best.count ? one : best)).delimiter;
}

/** Several values in one cell: parted by `;`, `+`, or a comma with a space behind it. */
export const partsOf = (text: string): readonly string[] =>
  text
    .split(/[;+]|,\s/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
