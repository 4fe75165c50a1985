import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { labTriple } from '../../domain/colour/parse-lab-text.ts';
import { parseAmount, parseFibreGrams } from '../../domain/note/amount.ts';
import type { NoteKind, Role } from '../../domain/note/note.ts';
import type { PlainValue } from '../../domain/note/yaml-text.ts';
import { temperaturesIn, timesIn } from '../../domain/pot/step-figures.ts';
import { readHardness } from '../../domain/pot/water-hardness.ts';
import { type Gathered, nothingGathered } from './gathered.ts';
import { type Columns, unitOfHeading } from './match-columns.ts';
import { asText, NewNotes } from './new-notes.ts';
import { TRIAL_COLUMNS, type TrialColumn } from './table-columns.ts';
import { partsOf, readTable, type ReadTable, type TableRow } from './read-table.ts';

/** A table of trials read in, with the columns as they were matched. */
export interface GatheredTrials extends Gathered {
  readonly headings: readonly string[];
  readonly columns: Columns<TrialColumn>;
}

type Row = TableRow<TrialColumn>;
type Pairs = Readonly<Record<string, PlainValue>>;

/**
 * Trials out of a CSV table with headings; lines with one `pot` are skeins of one pot, every other line is a pot of its own.
 *
 * A bare number takes the unit its heading gives in brackets, and no other: without one it is kept as it stands, and told.
 *
 * @param chosen columns somebody matched by hand, -1 for none; they go before those found by their headings.
 */
export function readTrials(base: EvidenceBase, text: string, chosen: Columns<TrialColumn> = {}): GatheredTrials {
  const read = readTable(text, namesFor(text), chosen);
  if (typeof read === 'string') return { ...nothingGathered(read), headings: [], columns: {} };
  const { headings, columns } = read;
  if ((['pot', 'title', 'recipe', 'dye'] as const).every((column) => (columns[column] ?? -1) < 0))
    return { ...nothingGathered('column-missing', 'recipe', headings), headings, columns };
  const trials = new TrialRows(base, read);
  for (const heading of read.unmatched) trials.notes.tell(read.headRow, 'column-unmatched', heading);
  const pots = new Map<string, Row[]>();
  for (const line of read.rows) {
    const key = line.cell('pot') === '' ? `row ${line.row}` : `pot ${line.cell('pot')}`;
    pots.set(key, [...(pots.get(key) ?? []), line]);
  }
  if (read.isCut) trials.notes.tell(0, 'rows-left-out', 'more than the first');
  for (const pot of pots.values()) trials.take(pot);
  const { rows, messages, notes } = trials.notes;
  return { rows: [...rows].sort((a, b) => a.row - b.row), messages, notes, headings, columns };
}

/** Beside a lightness, bare `a` and `b` are the other two of a colour; alone they may be anything. */
const namesFor = (text: string): Readonly<Record<TrialColumn, readonly string[]>> =>
  /(?:^|[,;\t|"])\s{0,9}(?:CIE)?\s{0,9}L\*?\s{0,9}(?:[,;\t|"]|$)/im.test(text.slice(0, text.search(/[\r\n]|$/)))
    ? { ...TRIAL_COLUMNS, 'a*': [...TRIAL_COLUMNS['a*'], 'a'], 'b*': [...TRIAL_COLUMNS['b*'], 'b'] }
    : TRIAL_COLUMNS;

/** What went in, with its amount behind it. */
const WITH_AMOUNT = /^(.*?\p{L}[^\d]*?)[\s,:]+(\d[^\p{L}%]*(?:%.*|[\p{L}].*)?)$/u;
/** Signs of a name with its amount behind it; what is longer is a name (our choice). */
const LONGEST_WITH_AMOUNT = 200;

/** Turns the lines of a table into trials, one pot at a time. */
class TrialRows {
  readonly notes: NewNotes;
  readonly #units: ReadonlyMap<TrialColumn, string>;
  readonly #codes: Set<string>;

  constructor(base: EvidenceBase, { headings, columns }: ReadTable<TrialColumn>) {
    this.notes = new NewNotes(base, 'trials');
    this.#units = new Map(
      (Object.entries(columns) as [TrialColumn, number][]).map(([column, at]) => [column, unitOfHeading(headings[at] ?? '')]),
    );
    this.#codes = new Set(base.ofKind('trial').flatMap(({ record }) => record.samples.flatMap(({ code }) => code ?? [])));
  }

  take(pot: readonly Row[]): void {
    const [first] = pot;
    if (!first) return;
    const { row } = first;
    const text = (column: TrialColumn) => pot.map(({ cell }) => cell(column)).find((cell) => cell !== '') ?? '';
    const title = titleOfPot(text);
    if (title === '') {
      this.notes.tell(row, 'no-name', first.whole);
      for (const one of pot) this.notes.pass(one.row, '');
      return;
    }
    if (text('recipe') === '') this.notes.tell(row, 'no-recipe', title);
    const date = text('date');
    if (date === '') this.notes.tell(row, 'no-date', title);
    else if (!this.notes.isDate(date)) this.notes.tell(row, 'date-unreadable', date);
    const skeins = pot.map((one) => this.#skein(one));
    const actual = this.#materials(row, text);
    const several = skeins.filter((one) => Object.keys(one).length > 0);
    const front: Pairs = {
      kind: 'trial',
      title,
      ...(text('recipe') === '' ? {} : { recipe: this.notes.known(row, text('recipe'), ['recipe']) }),
      ...words({ date, by: text('by'), vessel: text('vessel') }),
      ...this.#water(row, text),
      ...lines(
        'lots',
        partsOf(text('lots').replaceAll(', ', ' · ')).map((lot) => lot.replaceAll(' · ', ', ')),
      ),
      ...this.#bath(row, text('bath')),
      ...(actual.length > 0 ? { actual } : {}),
      ...lines('log', this.#log(row, text)),
      ...lines(
        'deviations',
        text('deviations')
          .split(';')
          .map((one) => one.trim())
          .filter((one) => one !== ''),
      ),
      ...(several.length > 1 ? { samples: several } : several[0]),
    };
    const remarks = [...new Set(pot.map(({ cell }) => cell('remark')))].filter((one) => one !== '').map(asText);
    this.notes.add(row, title, front, remarks.join('\n\n'), this.#preview(pot, text), text('pot'));
    const path = this.notes.rows.at(-1)?.path;
    for (const other of pot.slice(1)) {
      const cells = [
        { label: 'skein of', text: title },
        { label: 'code', text: other.cell('code') },
      ];
      this.notes.rows.push({ row: other.row, title: other.cell('code') || title, cells, ...(path !== undefined && { path }) });
    }
  }

  #preview(pot: readonly Row[], text: (column: TrialColumn) => string) {
    return [
      ...(['recipe', 'date', 'dye', 'mordant', 'fibre', 'colour'] as const).map((column) => ({ label: column, text: text(column) })),
      { label: 'skeins', text: String(pot.length) },
    ];
  }

  #water(row: number, text: (column: TrialColumn) => string): Pairs {
    const hardness = this.#withUnit(row, 'hardness', text('hardness'));
    if (hardness !== '' && /^[-−\d]/.test(hardness) && !readHardness(hardness)) this.notes.tell(row, 'amount-unreadable', hardness);
    const pH = text('ph') === '' ? undefined : numberOf(text('ph'));
    if (text('ph') !== '' && (pH === undefined || pH < 0 || pH > 14)) this.notes.tell(row, 'number-impossible', text('ph'), ['pH 0 to 14']);
    const water: Pairs = {
      ...(hardness === '' ? {} : /\d/.test(hardness) ? { hardness } : { note: hardness }),
      ...(text('ph') === '' ? {} : { pH: pH ?? text('ph') }),
    };
    return Object.keys(water).length > 0 ? { water } : {};
  }

  #bath(row: number, text: string): Pairs {
    if (text === '') return {};
    const nth = numberOf(text.replace(/\s{0,9}(?:st|nd|rd|th|\.)(?:\s{0,9}bath)?$/i, ''));
    if (nth !== undefined && Number.isInteger(nth) && nth >= 1 && nth <= 99) return { bath: { nth } };
    this.notes.tell(row, 'number-impossible', text, ['1 to 99']);
    return { bath: { nth: text } };
  }

  /** What went in: the amounts stand in a column of their own, or behind each name. */
  #materials(row: number, text: (column: TrialColumn) => string): readonly PlainValue[] {
    const group = (column: TrialColumn, amounts: TrialColumn | undefined, role: Role, kinds: readonly NoteKind[], more: Pairs = {}) => {
      const names = partsOf(text(column));
      const beside = amounts === undefined ? [] : partsOf(text(amounts));
      if (beside.length > 0 && beside.length !== names.length)
        this.notes.tell(row, 'amounts-differ', text(column), [text(amounts ?? column)]);
      return names.map((written, at): PlainValue => {
        const [, name = written, behind = ''] = (written.length <= LONGEST_WITH_AMOUNT && WITH_AMOUNT.exec(written)) || [];
        const amount = this.#amount(row, amounts ?? column, beside[at] ?? behind);
        return { what: this.notes.known(row, name, kinds), role, ...(amount === '' ? {} : { amount }), ...more };
      });
    };
    const form = text('dye form');
    const meant = text('stands for');
    const own: Pairs = {
      ...(form === '' ? {} : { form }),
      ...(meant === '' ? {} : { 'stands-for': this.notes.known(row, meant, ['dyestuff', 'mordant', 'assistant', 'process']) }),
    };
    const dyes = group('dye', 'dye amount', 'dye', ['dyestuff']);
    if (dyes.length > 1 && Object.keys(own).length > 0)
      this.notes.tell(row, 'several-dyes', [form, meant].filter((one) => one !== '').join(', '));
    return [
      ...group('mordant', 'mordant amount', 'mordant', ['mordant', 'assistant', 'process']),
      ...group('assistant', undefined, 'assistant', ['assistant', 'mordant', 'process']),
      ...dyes.map((one) => (dyes.length === 1 ? { ...(one as Pairs), ...own } : one)),
      ...group('modifier', undefined, 'modifier', ['mordant', 'assistant', 'process']),
    ];
  }

  #amount(row: number, column: TrialColumn, written: string): string {
    if (written === '') return '';
    const wof = /%/.test(this.#units.get(column) ?? '') || /wof/i.test(this.#units.get(column) ?? '');
    const text = /^[-−]?\d[\d.,]*$/.test(written) && wof ? `${written} %` : this.#withUnit(row, column, written);
    const { value, unit } = parseAmount(text);
    if (/^[-−]/.test(text) || value === 0) this.notes.tell(row, 'number-impossible', text, ['more than 0']);
    else if (value === undefined) this.notes.tell(row, 'amount-unreadable', text);
    else if (unit === '%' && value >= 500) this.notes.tell(row, 'amount-absurd', text);
    return text;
  }

  /** A bare number with the unit of its heading; told where it has none. */
  #withUnit(row: number, column: TrialColumn, written: string): string {
    if (!/^[-−]?\d[\d.,]*$/.test(written)) return written;
    const unit = this.#units.get(column) ?? '';
    if (unit !== '') return `${written} ${unit}`;
    this.notes.tell(row, 'unit-missing', written, [column]);
    return written;
  }

  #log(row: number, text: (column: TrialColumn) => string): readonly string[] {
    const heat = this.#withUnit(row, 'temperature', text('temperature'));
    const time = this.#withUnit(row, 'time', text('time'));
    return [
      ...text('log')
        .split(/[;\n]/)
        .map((line) => line.trim()),
      heat === '' ? '' : temperaturesIn(heat).length > 0 ? `reached ${heat}` : `temperature: ${heat}`,
      time === '' ? '' : timesIn(time).length > 0 ? `heat off after ${time}` : `time: ${time}`,
    ].filter((line) => line !== '');
  }

  #skein({ row, cell }: Row): Pairs {
    const code = cell('code');
    if (code !== '' && this.#codes.has(code)) this.notes.tell(row, 'code-taken', code);
    if (code !== '') this.#codes.add(code);
    const mass = cell('fibre mass') === '' ? '' : this.#withUnit(row, 'fibre mass', cell('fibre mass'));
    const grams = mass === '' ? undefined : parseFibreGrams(mass);
    if (grams === 'out-of-range') this.notes.tell(row, 'number-impossible', mass, ['more than 0 g, at most 100 kg']);
    else if (grams === 'unreadable' && !/^[-−]?\d[\d.,]*$/.test(mass)) this.notes.tell(row, 'amount-unreadable', mass);
    return {
      ...words({ code }),
      ...(cell('fibre') === '' ? {} : { fibre: this.notes.known(row, cell('fibre'), ['fibre']) }),
      ...words({ 'fibre-mass': mass, onto: cell('onto') }),
      ...this.#colour(row, cell),
      ...words({ photo: cell('photo') }),
    };
  }

  #colour(row: number, cell: Row['cell']): Pairs {
    const three = [cell('l*'), cell('a*'), cell('b*')];
    const written = three.every((one) => one !== '') ? three.map((one) => one.replace(',', '.')).join(', ') : cell('colour');
    if (written === '') return {};
    const conditions = words({ illuminant: cell('illuminant'), observer: cell('observer'), by: cell('colour by') });
    const bare = /^#?([\da-f]{6}|[\da-f]{3})$/i.exec(written)?.[1];
    if (bare !== undefined) return { colour: { hex: `#${bare}`, ...conditions } };
    const triple = labTriple(written);
    if (!triple?.isPossible) {
      this.notes.tell(row, 'colour-unreadable', written);
      return { colour: { hex: written } };
    }
    if (!('illuminant' in conditions) || !('observer' in conditions)) this.notes.tell(row, 'conditions-missing', written);
    return { colour: { lab: triple.lab, ...conditions } };
  }
}

const words = (texts: Readonly<Record<string, string>>): Pairs =>
  Object.fromEntries(Object.entries(texts).filter(([, text]) => text !== ''));
const lines = (key: string, texts: readonly string[]): Pairs => (texts.length > 0 ? { [key]: texts } : {});

/** What the pot is called: its title, or else what went in, on what and when; '' where the line says none of it. */
function titleOfPot(text: (column: TrialColumn) => string): string {
  if (text('title') !== '') return text('title');
  const what = text('dye') === '' ? text('recipe') : [text('dye'), text('mordant')].filter((one) => one !== '').join(', ');
  if (what === '') return text('pot');
  return [`${what}${text('fibre') === '' ? '' : ` on ${text('fibre')}`}`, text('date')].filter((one) => one !== '').join(', ');
}

/** A number with a decimal point or comma. */
const numberOf = (text: string): number | undefined =>
  /^[-−]?\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace('−', '-').replace(',', '.')) : undefined;
