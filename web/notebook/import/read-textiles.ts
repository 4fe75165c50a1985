import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { CHECKED, TESTED } from '../../domain/note/note.ts';
import type { PlainValue } from '../../domain/note/yaml-text.ts';
import { fold } from '../../domain/text/fold.ts';
import { type Gathered, nothingGathered } from './gathered.ts';
import type { Columns } from './match-columns.ts';
import { asText, NewNotes } from './new-notes.ts';
import { TEXTILE_COLUMNS, type TextileColumn } from './table-columns.ts';
import { partsOf, readTable, type TableRow } from './read-table.ts';

/** A table of textiles read in, with the columns as they were matched. */
export interface GatheredTextiles extends Gathered {
  readonly headings: readonly string[];
  readonly columns: Columns<TextileColumn>;
}

/**
 * Textiles out of a CSV table with headings; lines with one `id`, or else one title, place and date, are threads of one textile.
 *
 * @param chosen columns somebody matched by hand, -1 for none; they go before those found by their headings.
 */
export function readTextiles(base: EvidenceBase, text: string, chosen: Columns<TextileColumn> = {}): GatheredTextiles {
  const empty = { headings: [], columns: {} };
  const read = readTable(text, TEXTILE_COLUMNS, chosen);
  if (typeof read === 'string') return { ...nothingGathered(read), ...empty };
  const { headings, columns } = read;
  if ((columns.title ?? -1) < 0) return { ...nothingGathered('column-missing', 'title', headings), headings, columns };
  const notes = new NewNotes(base, 'textiles');
  for (const heading of read.unmatched) notes.tell(read.headRow, 'column-unmatched', heading);
  const tables = new Map<string, TableRow<TextileColumn>[]>();
  for (const line of read.rows) {
    const { row, cell, whole } = line;
    if (cell('title') === '') {
      notes.tell(row, 'no-name', whole);
      notes.pass(row, '');
      continue;
    }
    const key = cell('id') === '' ? ['title', cell('title'), cell('region'), cell('when')].join('\n') : `id\n${cell('id')}`;
    tables.set(key, [...(tables.get(key) ?? []), line]);
  }
  if (read.isCut) notes.tell(0, 'rows-left-out', 'more than the first');
  for (const table of tables.values()) readTextile(base, notes, table);
  return {
    rows: [...notes.rows].sort((a, b) => a.row - b.row),
    messages: notes.messages,
    notes: notes.notes,
    headings,
    columns,
  };
}

function readTextile(base: EvidenceBase, notes: NewNotes, table: readonly TableRow<TextileColumn>[]): void {
  const [first] = table;
  if (!first) return;
  const { row, cell } = first;
  const text = (column: TextileColumn) => table.map((one) => one.cell(column)).find((one) => one !== '') ?? '';
  const place = (column: 'region' | 'made-at') =>
    text(column) === '' ? {} : { [column]: notes.region(row, text(column)) ?? text(column) };
  const when = text('when');
  if (when === '') notes.tell(row, 'no-date', cell('title'));
  else if (!base.spanOfText(when)) notes.tell(row, 'date-unreadable', when);
  const wearer = partsOf(text('wearer')).map((one) => notes.known(row, one, ['wearer']));
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
    threads: table.map((one) => threadOf(notes, one)),
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

function threadOf(notes: NewNotes, { row, cell }: TableRow<TextileColumn>): PlainValue {
  const dyes = partsOf(cell('dyes')).map((one) => notes.known(row, one, ['dyestuff']));
  const fibre = cell('fibre') === '' ? undefined : notes.known(row, cell('fibre'), ['fibre']);
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
