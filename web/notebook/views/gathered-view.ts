import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { GATHER_TABLES, type GatherForm } from '../import/gather.ts';
import { type GatherChoice, type GatheredUpload, gatherUpload, type GatherUpload } from '../import/gather-upload.ts';
import { type PreviewRow, type RowMessage, STOPS } from '../import/gathered.ts';
import type { DraftNote } from '../lab-note.ts';
import { counted } from '../words/counted.ts';
import { gatheredSentence } from '../words/gathered-words.ts';

/** A row before it is taken, and what is to be known of it. */
export interface GatheredRowView {
  readonly row: number;
  readonly title: string;
  readonly cells: PreviewRow['cells'];
  /** "new: textiles/sock.md", "new, under another number: …", "passed over". */
  readonly fate: string;
  readonly passed: boolean;
  readonly says: readonly string[];
}

/** A column the form can hold, and where it was found; -1 for nowhere. */
export interface ColumnView {
  readonly name: string;
  readonly label: string;
  readonly at: number;
}

/** A file before it is taken. */
export interface GatheredView {
  /** As what it was read; absent where it was not recognised. */
  readonly form?: GatherForm;
  /** What is to be known of the file as a whole. */
  readonly says: readonly string[];
  /** "12 notes are new. 2 rows are passed over." */
  readonly sentences: readonly string[];
  readonly rows: readonly GatheredRowView[];
  /** Rows beyond those laid out. */
  readonly moreRows: number;
  readonly notes: readonly DraftNote[];
  readonly table?: { readonly headings: readonly string[]; readonly columns: readonly ColumnView[] };
}

/** Rows laid out; those with something to say go before those without. Our choice: nobody looks through more at once. */
const MOST_SHOWN = 150;

/** What a chosen file would bring in, in words; nothing is written by it. */
export function gatheredView(base: EvidenceBase, upload: GatherUpload, choice: GatherChoice = {}): GatheredView {
  const gathered = gatherUpload(base, upload, choice);
  const { form, rows, messages, notes } = gathered;
  const byRow = byRowOf(messages);
  const inside = new Set(rows.map(({ row }) => row));
  const shown = chosenRows(rows, byRow);
  return {
    ...(form && { form }),
    says: messages.filter(({ row }) => !inside.has(row)).map(gatheredSentence),
    sentences: sentencesOf(gathered),
    rows: shown.map((row) => rowView(row, byRow.get(row.row) ?? [])),
    moreRows: rows.length - shown.length,
    notes,
    ...tableOf(gathered),
  };
}

const byRowOf = (messages: readonly RowMessage[]): ReadonlyMap<number, readonly RowMessage[]> => {
  const rows = new Map<number, RowMessage[]>();
  for (const message of messages) rows.set(message.row, [...(rows.get(message.row) ?? []), message]);
  return rows;
};

/** In the order of the file; where there are too many, those without a message give way first. */
function chosenRows(rows: readonly PreviewRow[], byRow: ReadonlyMap<number, readonly RowMessage[]>): readonly PreviewRow[] {
  if (rows.length <= MOST_SHOWN) return rows;
  const told = rows.filter(({ row }) => byRow.has(row)).slice(0, MOST_SHOWN);
  const rest = rows.filter(({ row }) => !byRow.has(row)).slice(0, MOST_SHOWN - told.length);
  return [...told, ...rest].sort((a, b) => a.row - b.row);
}

function rowView({ row, title, cells, path }: PreviewRow, messages: readonly RowMessage[]): GatheredRowView {
  const isNumbered = messages.some(({ code }) => code === 'id-taken');
  return {
    row,
    title,
    cells: cells.filter(({ text }) => text !== ''),
    fate: path === undefined ? 'passed over' : `${isNumbered ? 'new, under a number' : 'new'}: ${path}`,
    passed: path === undefined,
    says: messages.map(gatheredSentence),
  };
}

function sentencesOf({ form, rows, messages, notes }: GatheredUpload): readonly string[] {
  if (!form) return [];
  const passed = rows.filter(({ path }) => path === undefined).length;
  const numbered = messages.filter(({ code }) => code === 'id-taken').length;
  const told = new Set(messages.filter(({ code, row }) => row > 0 && !STOPS.has(code)).map(({ row }) => row)).size;
  return [
    notes.length === 0 ? 'Nothing new would come in.' : `${counted(notes.length, 'note')} would be new.`,
    ...(numbered > 0
      ? [`${counted(numbered, 'note')} of them would get a number, because the name is taken. Nothing is overwritten.`]
      : []),
    ...(passed > 0 ? [`${counted(passed, 'row')} ${passed === 1 ? 'is' : 'are'} passed over, with the reason.`] : []),
    ...(told > 0 ? [`${counted(told, 'row')} ${told === 1 ? 'has' : 'have'} something to know.`] : []),
  ];
}

function tableOf({ form, headings, columns }: GatheredUpload): Pick<GatheredView, 'table'> {
  const names = form && GATHER_TABLES[form];
  if (!names || !headings || headings.length === 0) return {};
  return {
    table: { headings, columns: Object.keys(names).map((name) => ({ name, label: name.replaceAll('-', ' '), at: columns?.[name] ?? -1 })) },
  };
}
