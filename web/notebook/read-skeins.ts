import Papa from 'papaparse';
import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import type { NoteKind } from '../domain/note/note.ts';
import type { Skein } from '../domain/verdict/judge-skein.ts';
import { fold } from '../domain/text/fold.ts';

/** A skein as somebody listed it. */
export interface ListedSkein {
  /** 1-based line of the list. */
  readonly line: number;
  readonly skein: Skein;
  readonly colour?: string;
  /** Words the notebook does not know, with the nearest it does; and what is missing. */
  readonly problems: readonly string[];
}

const COLUMNS = ['name', 'dyestuffs', 'mordant', 'fibre', 'colour'] as const;
type Column = (typeof COLUMNS)[number];
/** A line of a list, cell by cell. */
export type SkeinCells = Readonly<Record<Column, string>>;
const HEADINGS: Readonly<Record<Column, readonly string[]>> = {
  name: ['name', 'skein', 'sample', 'label', 'code'],
  dyestuffs: ['dyestuffs', 'dyestuff', 'dyes', 'dye', 'source', 'plant'],
  mordant: ['mordant', 'mordants', 'helpers', 'mordants and helpers'],
  fibre: ['fibre', 'fiber', 'yarn', 'cloth', 'on'],
  colour: ['colour', 'color', 'hex', 'lab'],
};

/** What may divide the cells of a list. */
const DELIMITERS = ['\t', ';', ',', '|'];

/** No list of skeins on one table is longer. Our choice. */
const MOST_LINES = 2000;

/**
 * Reads a list of skeins: lines or CSV with the columns name, dyestuffs, mordant, fibre, colour, with or without a heading.
 * Several dyestuffs are joined by `+`, `&`, `/` or "and". "none" and an empty cell say nothing.
 */
export function readSkeins(base: EvidenceBase, text: string): readonly ListedSkein[] {
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), {
    delimitersToGuess: DELIMITERS,
    skipEmptyLines: false,
    preview: MOST_LINES,
  });
  const rows = data
    .map((cells, at) => ({ cells: cells.map((cell) => cell.trim()), line: at + 1 }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const first = rows[0];
  const heading = first && headingOf(first.cells);
  const order: readonly (Column | undefined)[] = heading ?? COLUMNS;
  return rows.slice(heading ? 1 : 0).map(({ cells, line }) => readRow(base, line, (column) => cells[order.indexOf(column)] ?? ''));
}

/** A list with one skein more, in the list's own columns and with what divides its cells. */
export function withSkein(list: string, cells: SkeinCells): string {
  const { data, meta } = Papa.parse<string[]>(list.trim(), { delimitersToGuess: DELIMITERS });
  const order = headingOf(data[0] ?? []) ?? COLUMNS;
  const delimiter = list.trim() === '' ? ';' : meta.delimiter;
  const line = Papa.unparse([order.map((column) => (column ? cells[column] : ''))], { delimiter });
  return list.trim() === '' ? line : `${list.trimEnd()}\n${line}`;
}

function headingOf(cells: readonly string[]): readonly (Column | undefined)[] | undefined {
  const columns = cells.map((cell) => COLUMNS.find((column) => HEADINGS[column].includes(fold(cell))));
  return columns.includes('dyestuffs') ? columns : undefined;
}

function readRow(base: EvidenceBase, line: number, cell: (column: Column) => string): ListedSkein {
  const problems: string[] = [];
  const known = (text: string, kinds: readonly NoteKind[], what: string): string => {
    const found = base.find(text, kinds);
    if (found.is === 'one') return found.id;
    if (found.is === 'several') problems.push(`“${text}” is the name of ${found.ids.join(' and ')}: write which.`);
    else problems.push(`No ${what} is called “${text}”.${found.nearest.length > 0 ? ` The nearest: ${found.nearest.join(', ')}.` : ''}`);
    return text;
  };
  const dyes = partsOf(cell('dyestuffs')).map((text) => known(text, ['dyestuff'], 'dyestuff'));
  if (dyes.length === 0) problems.push('No dyestuff is named.');
  const helpers = partsOf(cell('mordant')).map((text) => {
    // Galls and sumac are dyestuffs that mordant, too.
    const id = known(text, ['mordant', 'assistant', 'process', 'dyestuff'], 'mordant or helper');
    const kind = base.note(id)?.record.kind;
    return { id, role: kind === 'assistant' || kind === 'process' ? kind : ('mordant' as const) };
  });
  const fibre = cell('fibre') === '' ? undefined : known(cell('fibre'), ['fibre'], 'fibre');
  return {
    line,
    skein: { name: cell('name') || `Line ${line}`, dyes, helpers, ...(fibre === undefined ? {} : { fibre }) },
    ...(cell('colour') === '' ? {} : { colour: cell('colour') }),
    problems,
  };
}

const partsOf = (text: string): readonly string[] =>
  text
    .split(/[+&/]|\s(?:and|over|then)\s/i)
    .map((part) => part.trim())
    .filter((part) => part !== '' && !['none', 'no', '-', '–', 'without'].includes(fold(part)));
