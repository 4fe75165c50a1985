import Papa from 'papaparse';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { CHECKED, type NoteKind, TESTED } from '../../domain/note/note.ts';
import type { PlainValue } from '../../domain/note/yaml-text.ts';
import { fold } from '../../domain/text/fold.ts';
import { type Gathered, MOST_CHARACTERS, MOST_ROWS, nothingGathered } from './gathered.ts';
import { type Columns, matchColumns } from './match-columns.ts';
import { asText, NewNotes } from './new-notes.ts';

/** What a list of textiles can hold, and the headings each goes by. */
export const TEXTILE_COLUMNS = {
  title: ['name', 'textile', 'object', 'find'],
  id: ['note', 'inventory number', 'number', 'no', 'code'],
  region: ['place', 'found', 'find place', 'findspot', 'site'],
  'made-at': ['made in', 'made', 'origin', 'provenance'],
  when: ['date', 'dating', 'period', 'years'],
  context: ['find context', 'grave', 'collection'],
  wearer: ['for whom', 'rank'],
  where: ['thread', 'part', 'system', 'sample', 'position'],
  fibre: ['fiber', 'material', 'yarn'],
  dyes: ['dye', 'dyestuff', 'dyestuffs', 'identification', 'source of dye'],
  markers: ['compounds', 'compound', 'components', 'chromophores', 'detected'],
  tested: ['analysis', 'analysed', 'test'],
  'colour-now': ['colour', 'color', 'colour now', 'visible colour'],
  source: ['reference', 'publication', 'citation'],
  checked: ['how checked', 'read'],
  note: ['remark', 'remarks', 'notes', 'comment'],
} as const satisfies Readonly<Record<string, readonly string[]>>;
export type TextileColumn = keyof typeof TEXTILE_COLUMNS;
/** A table of textiles read in, with the columns as they were matched. */
export interface GatheredTextiles extends Gathered {
  readonly headings: readonly string[];
  readonly columns: Columns<TextileColumn>;
}

/** A line of the table; its number is the file's own line where no cell holds a line break. */
interface TableRow {
  readonly row: number;
  readonly cell: (column: TextileColumn) => string;
}

/**
 * Textiles out of a CSV table with headings; lines with one `id`, or else one title, place and date, are threads of one textile.
 *
 * @param chosen columns somebody matched by hand, -1 for none; they go before those found by their headings.
 */
export function readTextiles(base: EvidenceBase, text: string, chosen: Columns<TextileColumn> = {}): GatheredTextiles {
  const empty = { headings: [], columns: {} };
  if (text.length > MOST_CHARACTERS) return { ...nothingGathered('too-large'), ...empty };
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { delimitersToGuess: [',', ';', '\t', '|'], preview: MOST_ROWS + 2 });
  const rows = data
    .map((cells, at) => ({ cells: cells.map(plainCell), row: at + 1 }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const [head, ...lines] = rows;
  if (!head || lines.length === 0) return { ...nothingGathered('nothing-inside'), ...empty };
  const { columns: found, unmatched } = matchColumns<TextileColumn>(head.cells, TEXTILE_COLUMNS);
  const columns = { ...found, ...chosen };
  if ((columns.title ?? -1) < 0) {
    return { ...nothingGathered('column-missing', 'title', head.cells), headings: head.cells, columns };
  }
  const notes = new NewNotes(base, 'textiles');
  const byHand = new Set(Object.values(chosen).flatMap((at) => head.cells[at] ?? []));
  for (const heading of unmatched) if (!byHand.has(heading)) notes.tell(head.row, 'column-unmatched', heading);
  const tables = new Map<string, TableRow[]>();
  for (const { cells, row } of lines.slice(0, MOST_ROWS)) {
    const cell = (column: TextileColumn) => cells[columns[column] ?? -1] ?? '';
    if (cell('title') === '') {
      notes.tell(row, 'no-name', cells.join(' '));
      notes.pass(row, '');
      continue;
    }
    const key = cell('id') === '' ? ['title', cell('title'), cell('region'), cell('when')].join('\n') : `id\n${cell('id')}`;
    tables.set(key, [...(tables.get(key) ?? []), { row, cell }]);
  }
  if (lines.length > MOST_ROWS) notes.tell(0, 'rows-left-out', 'more than the first');
  for (const table of tables.values()) readTextile(base, notes, table);
  return {
    rows: [...notes.rows].sort((a, b) => a.row - b.row),
    messages: notes.messages,
    notes: notes.notes,
    headings: head.cells,
    columns,
  };
}

/** A cell without the apostrophe that keeps a spreadsheet from running it. */
const plainCell = (cell: string): string => cell.trim().replace(/^'(?=[=+\-@\t\r])/, '');

function readTextile(base: EvidenceBase, notes: NewNotes, table: readonly TableRow[]): void {
  const [first] = table;
  if (!first) return;
  const { row, cell } = first;
  const text = (column: TextileColumn) => table.map((one) => one.cell(column)).find((one) => one !== '') ?? '';
  const place = (column: 'region' | 'made-at') =>
    text(column) === '' ? {} : { [column]: notes.region(row, text(column)) ?? text(column) };
  const when = text('when');
  if (when === '') notes.tell(row, 'no-date', cell('title'));
  else if (!base.spanOfText(when)) notes.tell(row, 'date-unreadable', when);
  const wearer = partsOf(text('wearer')).map((one) => known(base, notes, row, one, ['wearer']));
  const checked = CHECKED.find((one) => fold(one) === fold(text('checked')));
  if (text('checked') !== '' && !checked) notes.tell(row, 'word-unknown', text('checked'), CHECKED);
  const front: Record<string, PlainValue> = {
    kind: 'textile',
    title: cell('title'),
    ...place('region'),
    ...place('made-at'),
    ...(when === '' ? {} : { when }),
    ...(text('context') === '' ? {} : { context: text('context') }),
    ...(wearer.length > 0 ? { wearer } : {}),
    threads: table.map((one) => threadOf(base, notes, one)),
    ...(text('source') === '' ? {} : { source: text('source') }),
    ...(checked ? { checked } : {}),
  };
  const remarks = [...new Set(table.map((one) => one.cell('note')).filter((one) => one !== ''))].map(asText).join('\n\n');
  const cells = (['region', 'when', 'dyes', 'markers'] as const).map((column) => ({
    label: column,
    text: [...new Set(table.map((one) => one.cell(column)).filter((one) => one !== ''))].join('; '),
  }));
  notes.add(row, cell('title'), front, remarks, [...cells, { label: 'threads', text: String(table.length) }], cell('id'));
  for (const { row: other, cell: its } of table.slice(1)) {
    const path = notes.rows.at(-1)?.path;
    notes.rows.push({
      row: other,
      title: its('title'),
      cells: [{ label: 'thread of', text: cell('title') }],
      ...(path !== undefined && { path }),
    });
  }
}

function threadOf(base: EvidenceBase, notes: NewNotes, { row, cell }: TableRow): PlainValue {
  const dyes = partsOf(cell('dyes')).map((one) => known(base, notes, row, one, ['dyestuff']));
  const fibre = cell('fibre') === '' ? undefined : known(base, notes, row, cell('fibre'), ['fibre']);
  const markers = partsOf(cell('markers'));
  const tested = TESTED.find((one) => fold(one).replace(/-/g, ' ') === fold(cell('tested')).replace(/-/g, ' '));
  if (cell('tested') !== '' && !tested) notes.tell(row, 'word-unknown', cell('tested'), TESTED);
  return {
    ...(cell('where') === '' ? {} : { where: cell('where') }),
    ...(fibre === undefined ? {} : { fibre }),
    ...(dyes.length > 0 ? { dyes } : {}),
    ...(markers.length > 0 ? { markers } : {}),
    ...(cell('colour-now') === '' ? {} : { 'colour-now': cell('colour-now') }),
    tested: tested ?? (dyes.length > 0 || markers.length > 0 ? 'found' : 'no'),
  };
}

/** The id words mean; words nobody knows are kept as they are, and told. */
function known(base: EvidenceBase, notes: NewNotes, row: number, text: string, kinds: readonly NoteKind[]): string {
  const found = base.find(text, kinds);
  if (found.is === 'one') return found.id;
  notes.tell(row, 'word-unknown', text, found.is === 'several' ? found.ids : found.nearest);
  return text;
}

const partsOf = (text: string): readonly string[] =>
  text
    .split(/\s*(?:[;+]|,\s)\s*/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
