import { readdirSync, readFileSync } from 'node:fs';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import type { Diagnostic } from '../../web/domain/diagnostic.ts';
import type { Note, NoteRecord } from '../../web/domain/note/note.ts';
import type { Spectrum } from '../../web/domain/colour/spectrum.ts';

const DEMO = new URL('../../corpus-demo/', import.meta.url);

/** A note of the demonstration of one kind, with what reading it found. */
export interface DemoNote<K extends NoteRecord['kind']> {
  readonly note: Note;
  readonly record: Extract<NoteRecord, { kind: K }>;
  readonly diagnostics: readonly Diagnostic[];
}

/** The notes of a kind in a folder of the demonstration, in the order of their files. */
export function demoNotes<K extends NoteRecord['kind']>(folder: string, kind: K): readonly DemoNote<K>[] {
  return readdirSync(new URL(`${folder}/`, DEMO))
    .sort()
    .flatMap((name) => {
      const path = `${folder}/${name}`;
      const { value, diagnostics } = parseNote(path, readFileSync(new URL(path, DEMO), 'utf8'));
      return hasKind(value.record, kind) ? [{ note: value, record: value.record, diagnostics }] : [];
    });
}

const hasKind = <K extends NoteRecord['kind']>(record: NoteRecord, kind: K): record is Extract<NoteRecord, { kind: K }> =>
  record.kind === kind;

/** A sample of a spectral file of the demonstration. */
export interface DemoSpectrum {
  readonly spectrum: Spectrum;
  /** The Lab columns of the file, D65/10°, where it has them. */
  readonly lab?: readonly [number, number, number];
}

/** The text of a file of the demonstration. */
export const demoText = (path: string): string => readFileSync(new URL(path, DEMO), 'utf8');

/** Paths of the spectral files. */
export const demoSpectralFiles = (): readonly string[] => readdirSync(new URL('spectra/', DEMO)).map((name) => `spectra/${name}`);

/**
 * The curves of a spectral file by SAMPLE_ID. Kept apart from the program's own reader, so that the two can disagree;
 * it knows no more than the dialects of these files: spaces or tabs, decimal point or comma, 0–1 or percent.
 */
export function demoSpectra(path: string): ReadonlyMap<string, DemoSpectrum> {
  const text = demoText(path);
  const fields = words(between(text, 'BEGIN_DATA_FORMAT', 'END_DATA_FORMAT'));
  const rows = between(text, '\nBEGIN_DATA\n', 'END_DATA')
    .split('\n')
    .map(words)
    .filter((row) => row.length > 0);
  const bands = fields.flatMap((field, column) => {
    const nm = /^(?:SPECTRAL_NM|nm)(\d{3})$/.exec(field)?.[1];
    return nm === undefined ? [] : [{ column, nm: Number(nm) }];
  });
  const number = (row: readonly string[], column: number): number => Number((row[column] ?? '').replace(',', '.'));
  const scale = Math.max(...rows.flatMap((row) => bands.map(({ column }) => number(row, column)))) > 1.5 ? 100 : 1;
  const labAt = fields.indexOf('LAB_L');
  return new Map(
    rows.map((row) => {
      const values = bands.map(({ column }) => number(row, column) / scale);
      const spectrum = { startNm: bands[0]?.nm ?? 0, stepNm: (bands[1]?.nm ?? 0) - (bands[0]?.nm ?? 0), values };
      const lab = labAt < 0 ? {} : { lab: [number(row, labAt), number(row, labAt + 1), number(row, labAt + 2)] as const };
      return [row[0] ?? '', { spectrum, ...lab }];
    }),
  );
}

function between(text: string, open: string, close: string): string {
  const plain = text.replaceAll('\r\n', '\n');
  const start = plain.indexOf(open) + open.length;
  return plain.slice(start, plain.indexOf(close, start));
}

const words = (line: string): readonly string[] => [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((found) => found[1] ?? found[2] ?? '');
