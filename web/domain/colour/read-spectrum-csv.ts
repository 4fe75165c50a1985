import { evenStep, findBands } from './spectral-bands.ts';
import type { ReadSpectralOptions, SpectralFile, SpectralFinding, SpectralReport } from './spectral-file.ts';
import type { RawSample } from './spectral-samples.ts';
import { readDecimal, settleSamples } from './spectral-samples.ts';

interface Row {
  readonly cells: readonly string[];
  readonly line: number;
}

/** First cell of a table whose rows are wavelengths. */
const WAVELENGTH = /^(?:wavelengths?|lambda|λ|nm)?[\s_([]{0,9}(?:nm)?[\s\])]{0,9}$/i;

/**
 * Reads spectra in a plain table: either a row for each wavelength and a column for each sample,
 * or a row for each sample and a column for each wavelength. Comma, semicolon or tab between cells; decimal comma where the comma
 * is not the separator; lines that begin with `#` are comments.
 *
 * @param text the whole file.
 * @returns every sample that could be read, and a finding for each that could not. Conditions are never stated in such a file.
 */
export function readSpectrumCsv(text: string, options: ReadSpectralOptions = {}): SpectralFile {
  const findings: SpectralFinding[] = [];
  const report: SpectralReport = (code, severity, line, ...about) => findings.push({ code, severity, line, about });
  const rows = tableRows(text);
  const [header, ...body] = rows;
  let raws: readonly RawSample[] = [];
  if (!header || body.length === 0 || header.cells.length < 2) report('spectral-not-a-table', 'error', header?.line ?? 1);
  else if (byWavelength(header, body)) raws = columnsAsSamples(header, body, report);
  else raws = rowsAsSamples(header, body, report);
  return { ...settleSamples(raws, {}, options, report), under: {}, findings };
}

const byWavelength = (header: Row, body: readonly Row[]): boolean =>
  WAVELENGTH.test(header.cells[0] ?? '') &&
  !header.cells.slice(1).every((cell) => /^\d{3,4}$/.test(cell)) &&
  readDecimal(body[0]?.cells[0] ?? '') !== undefined;

function columnsAsSamples(header: Row, body: readonly Row[], report: SpectralReport): readonly RawSample[] {
  const width = header.cells.length;
  const nms: number[] = [];
  for (const { cells, line } of body) {
    const nm = readDecimal((cells[0] ?? '').replace(/nm$/i, '').trimEnd());
    if (nm === undefined || cells.length !== width) {
      report(
        nm === undefined ? 'value-not-a-number' : cells.length < width ? 'row-short' : 'row-long',
        'error',
        line,
        cells[0] ?? '',
        String(width),
        String(cells.length),
      );
      return [];
    }
    nms.push(nm);
  }
  if (nms.length < 2) report('wavelengths-missing', 'error', header.line);
  const stepNm = nms.length < 2 ? undefined : evenStep(nms, header.line, report);
  if (stepNm === undefined) return [];
  return header.cells.slice(1).flatMap((id, column) => {
    const values = body.map(({ cells }) => readDecimal(cells[column + 1] ?? ''));
    const bad = values.indexOf(undefined);
    if (bad < 0) return [{ id: id || String(column + 1), startNm: nms[0] ?? 0, stepNm, values: values as number[], line: header.line }];
    report('value-not-a-number', 'error', body[bad]?.line ?? 1, id, body[bad]?.cells[column + 1] ?? '');
    return [];
  });
}

function rowsAsSamples(header: Row, body: readonly Row[], report: SpectralReport): readonly RawSample[] {
  const bands = findBands(header.cells, header.line, report);
  if (!bands) return [];
  const taken = new Set(bands.columns);
  const texts = header.cells.map((_, column) => column).filter((column) => !taken.has(column));
  const named = (pattern: RegExp): number | undefined => texts.find((column) => pattern.test((header.cells[column] ?? '').trim()));
  const idColumn = named(/^(?:sample[ _]?)?(?:id|code|no\.?)$/i) ?? named(/^(?:sample|name|sample[ _]?name)$/i) ?? texts[0];
  const nameColumn = named(/^(?:sample[ _]?)?(?:name|description|label)$/i);
  return body.flatMap(({ cells, line }, index) => {
    const id = (idColumn === undefined ? undefined : cells[idColumn]) || String(index + 1);
    const width = header.cells.length;
    if (cells.length !== width) {
      report(cells.length < width ? 'row-short' : 'row-long', 'error', line, id, String(width), String(cells.length));
      return [];
    }
    const values = bands.columns.map((column) => readDecimal(cells[column] ?? ''));
    const bad = values.indexOf(undefined);
    if (bad >= 0) {
      report('value-not-a-number', 'error', line, id, cells[bands.columns[bad] ?? -1] ?? '');
      return [];
    }
    const name = nameColumn === undefined || nameColumn === idColumn ? undefined : cells[nameColumn];
    return [{ id, ...(name ? { name } : {}), startNm: bands.startNm, stepNm: bands.stepNm, values: values as number[], line }];
  });
}

function tableRows(text: string): readonly Row[] {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .map((source, index) => ({ source, line: index + 1 }))
    .filter(({ source }) => source.trim() !== '' && !source.trimStart().startsWith('#'));
  const separator = separatorOf(lines[0]?.source ?? '');
  return lines.map(({ source, line }) => ({ cells: splitCells(source, separator), line }));
}

/** The separator of a table: tab, else semicolon, else comma, by what the header holds. */
function separatorOf(header: string): string {
  const bare = header.replace(/"[^"]*"/g, '');
  return bare.includes('\t') ? '\t' : bare.includes(';') ? ';' : ',';
}

/** Cells of a line; a cell in quotes may hold the separator and doubled quotes. */
function splitCells(line: string, separator: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const sign = line.charAt(i);
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (line.charAt(i + 1) === '"') {
        cell += '"';
        i += 1;
      } else quoted = false;
    } else if (sign === '"' && cell.trim() === '') {
      quoted = true;
      cell = '';
    } else if (sign === separator) {
      cells.push(cell.trim());
      cell = '';
    } else cell += sign;
  }
  cells.push(cell.trim());
  return cells;
}
