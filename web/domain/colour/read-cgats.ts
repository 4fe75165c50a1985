import { measuredUnder } from './cgats-conditions.ts';
import type { Lab } from './lab.ts';
import { findBands } from './spectral-bands.ts';
import type { ReadSpectralOptions, SpectralCode, SpectralFile, SpectralFinding, SpectralReport } from './spectral-file.ts';
import type { RawSample } from './spectral-samples.ts';
import { readDecimal, settleSamples } from './spectral-samples.ts';

interface Row {
  readonly cells: readonly string[];
  readonly line: number;
}
interface Table {
  readonly fields: string[];
  readonly rows: Row[];
  fieldsLine: number;
  statedFields?: number;
  statedSets?: number;
}

/** A comment, a quoted string with doubled quotes inside, or a bare word. */
const TOKEN = /(?<![^\s])#.*|"((?:[^"]|"")*)"|[^\s"]+/g;

/**
 * Reads spectra in ISO 28178 or CGATS.17 text: keyword lines, then tables of fields and data.
 * Takes the spellings of the field names met in practice, tabs or spaces, decimal point or comma, 0–1 or percent.
 *
 * @param text the whole file, any line ends.
 * @returns every sample that could be read, and a finding for each that could not.
 * @source ISO 28178:2009 and CGATS.17-2009 as described in public; written from examples, the standards' text was not consulted.
 */
export function readCgats(text: string, options: ReadSpectralOptions = {}): SpectralFile {
  const findings: SpectralFinding[] = [];
  const report: SpectralReport = (code, severity, line, ...about) => findings.push({ code, severity, line, about });
  const { header, tables } = readTables(text);
  const under = measuredUnder(header);
  // A file may hold other tables beside the spectral one: that a table has no bands matters only if none has.
  const without: SpectralFinding[] = [];
  const raws: RawSample[] = [];
  let spectral = 0;
  for (const table of tables) {
    const held: SpectralFinding[] = [];
    const bands = findBands(table.fields, table.fieldsLine, (code, severity, line, ...about) => held.push({ code, severity, line, about }));
    if (!bands) {
      const missing: SpectralCode = 'wavelengths-missing';
      (held[0]?.code === missing ? without : findings).push(...held);
      continue;
    }
    spectral += 1;
    if (table.statedFields !== undefined && table.statedFields !== table.fields.length)
      report('field-count-differs', 'warning', table.fieldsLine, String(table.statedFields), String(table.fields.length));
    const rows = unwrapped(table);
    if (table.statedSets !== undefined && table.statedSets !== rows.length)
      report('set-count-differs', 'warning', table.fieldsLine, String(table.statedSets), String(rows.length));
    const at = columnsOf(table.fields);
    rows.forEach((row, index) => {
      const raw = readRow(row, table.fields.length, bands.columns, at, String(index + 1), report);
      if (raw) raws.push({ ...raw, startNm: bands.startNm, stepNm: bands.stepNm });
    });
  }
  if (tables.length === 0) report('spectral-not-a-table', 'error', 1);
  else if (spectral === 0) findings.push(...without.slice(0, 1));
  return { ...settleSamples(raws, under, options, report), under, findings };
}

function readTables(text: string): { readonly header: ReadonlyMap<string, string>; readonly tables: readonly Table[] } {
  const header = new Map<string, string>();
  const tables: Table[] = [];
  let table: Table = { fields: [], rows: [], fieldsLine: 1 };
  let part: 'header' | 'fields' | 'data' = 'header';
  let line = 0;
  for (const source of text.split(/\r\n|\n|\r/)) {
    line += 1;
    const cells = tokens(source);
    const [head] = cells;
    if (head === undefined) continue;
    const keyword = head.toUpperCase();
    if (keyword === 'BEGIN_DATA_FORMAT') {
      part = 'fields';
      table = { ...table, fields: [], rows: [], fieldsLine: line };
      for (const cell of cells.slice(1)) table.fields.push(cell);
    } else if (keyword === 'END_DATA_FORMAT' || keyword === 'END_DATA') {
      if (keyword === 'END_DATA') table = { fields: table.fields, rows: [], fieldsLine: table.fieldsLine };
      part = 'header';
    } else if (keyword === 'BEGIN_DATA') {
      part = 'data';
      tables.push(table);
    } else if (part === 'fields') for (const cell of cells) table.fields.push(cell);
    else if (part === 'data') table.rows.push({ cells, line });
    else if (keyword === 'NUMBER_OF_FIELDS') table.statedFields = Number(cells[1]);
    else if (keyword === 'NUMBER_OF_SETS') table.statedSets = Number(cells[1]);
    else if (keyword !== 'KEYWORD' && !header.has(keyword)) header.set(keyword, cells.slice(1).join(' '));
    else if (keyword === 'WEIGHTING_FUNCTION') header.set(keyword, `${header.get(keyword) ?? ''}; ${cells.slice(1).join(' ')}`);
  }
  return { header, tables };
}

function tokens(source: string): string[] {
  const found: string[] = [];
  for (const [whole, quoted] of source.matchAll(TOKEN))
    if (quoted !== undefined) found.push(quoted.replaceAll('""', '"'));
    else if (!whole.startsWith('#')) found.push(whole);
  return found;
}

/** Rows of data; where lines were wrapped, cut anew by the number of fields, if that comes out even. */
function unwrapped({ fields, rows, statedSets }: Table): readonly Row[] {
  const width = fields.length;
  if (rows.every(({ cells }) => cells.length === width)) return rows;
  const total = rows.reduce((sum, { cells }) => sum + cells.length, 0);
  if (statedSets === undefined || total !== statedSets * width || rows.length === statedSets) return rows;
  const cells = rows.flatMap((row) => row.cells.map((cell) => ({ cell, line: row.line })));
  return Array.from({ length: statedSets }, (_, i) => {
    const own = cells.slice(i * width, (i + 1) * width);
    return { cells: own.map(({ cell }) => cell), line: own[0]?.line ?? 1 };
  });
}

interface Columns {
  readonly id: number;
  readonly name: number;
  readonly lab: readonly number[];
}

function columnsOf(fields: readonly string[]): Columns {
  const plain = fields.map((field) => field.toUpperCase().replaceAll('_', ''));
  return {
    id: plain.indexOf('SAMPLEID'),
    name: plain.indexOf('SAMPLENAME'),
    lab: ['LABL', 'LABA', 'LABB'].map((field) => plain.indexOf(field)),
  };
}

function readRow(
  { cells, line }: Row,
  width: number,
  bands: readonly number[],
  at: Columns,
  fallback: string,
  report: SpectralReport,
): Omit<RawSample, 'startNm' | 'stepNm'> | undefined {
  const name = cells[at.name];
  const id = cells[at.id] ?? name ?? fallback;
  if (cells.length !== width) {
    report(cells.length < width ? 'row-short' : 'row-long', 'error', line, id, String(width), String(cells.length));
    return undefined;
  }
  const values: number[] = [];
  for (const column of bands) {
    const value = readDecimal(cells[column] ?? '');
    if (value === undefined) {
      report('value-not-a-number', 'error', line, id, cells[column] ?? '');
      return undefined;
    }
    values.push(value);
  }
  const lab = at.lab.map((column) => (column < 0 ? undefined : readDecimal(cells[column] ?? '')));
  const whole = lab.every((value) => value !== undefined) ? (lab as unknown as Lab) : undefined;
  return { id, values, line, ...(name ? { name } : {}), ...(whole ? { lab: whole } : {}) };
}
