import type { DraftNote } from '../lab-note.ts';

/** Row or file gives nothing. */
const STOPPING = [
  // the file as a whole: nothing was read
  'not-utf8',
  'not-recognised',
  'is-a-zip',
  'is-a-spreadsheet',
  'is-a-note',
  'not-json',
  'not-this-kind',
  'too-large',
  'nothing-inside',
  // a row that gives no note
  'no-name',
  'row-broken',
  'twice',
  'same-already',
] as const;

/** A row gives a note, with something to know. */
const TELLING = [
  'id-taken',
  'no-date',
  'date-widened',
  'date-unreadable',
  'place-unknown',
  'place-ambiguous',
  'no-point',
  'point-from-shape',
  'point-impossible',
  'column-unmatched',
  'column-missing',
  'word-unknown',
  'rows-left-out',
  'no-recipe',
  'amount-unreadable',
  'amount-absurd',
  'amounts-differ',
  'unit-missing',
  'number-impossible',
  'several-dyes',
  'colour-unreadable',
  'conditions-missing',
  'code-taken',
] as const;

/** What can be said about a row of somebody else's file. Codes are API; words are in `words/gathered-words.ts`. */
export const GATHER_CODES = [...STOPPING, ...TELLING] as const;
export type GatherCode = (typeof GATHER_CODES)[number];

/** Codes that stop a row, or the whole file. */
export const STOPS: ReadonlySet<GatherCode> = new Set<GatherCode>(STOPPING);

/** A finding about one row; row 0 is the file itself. */
export interface RowMessage {
  readonly row: number;
  readonly code: GatherCode;
  /** What it is about, as it stands in the file. */
  readonly about: string;
  /** The nearest known words, or what was done instead. */
  readonly instead: readonly string[];
}

/** A row before it is taken: what would become of it. */
export interface PreviewRow {
  readonly row: number;
  readonly title: string;
  readonly cells: readonly { readonly label: string; readonly text: string }[];
  /** The note it becomes; absent where none is made. */
  readonly path?: string;
}

/** What a file would bring in: nothing is written by reading it. */
export interface Gathered {
  readonly rows: readonly PreviewRow[];
  readonly messages: readonly RowMessage[];
  readonly notes: readonly DraftNote[];
}

/** Files longer than this are refused before they are read. Our choice: the whole PeriodO data set is about a fifth of it. */
export const MOST_CHARACTERS = 60_000_000;
/** More rows than this are left out, and said to be. Our choice: nobody looks through more at once. */
export const MOST_ROWS = 5000;

/** A file that gives nothing, and why. */
export const nothingGathered = (code: GatherCode, about = '', instead: readonly string[] = []): Gathered => ({
  rows: [],
  messages: [{ row: 0, code, about, instead }],
  notes: [],
});

/** Parses a JSON file, or says why not. */
export function readJson(text: string): { readonly value: unknown } | { readonly gathered: Gathered } {
  if (text.length > MOST_CHARACTERS) return { gathered: nothingGathered('too-large') };
  try {
    return { value: JSON.parse(text.replace(/^\uFEFF/, '')) as unknown };
  } catch (fault) {
    return { gathered: nothingGathered('not-json', fault instanceof Error ? fault.message : '') };
  }
}

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
export const listOf = (value: unknown): readonly unknown[] =>
  Array.isArray(value) ? value : value === undefined || value === null ? [] : [value];
export const textOf = (value: unknown): string =>
  typeof value === 'string' ? value.replace(/\s+/g, ' ').trim() : typeof value === 'number' ? String(value) : '';
