import { readCgats } from './read-cgats.ts';
import { readSpectrumCsv } from './read-spectrum-csv.ts';
import type { ReadSpectralOptions, SpectralCode, SpectralFile } from './spectral-file.ts';

/** Longest text read, in UTF-16 code units. Our choice: some 60 000 samples, far more than anybody's skeins. */
export const LONGEST_SPECTRAL_TEXT = 20_000_000;

const START_CHECKED = 4000;

/**
 * Reads spectra from a text file: ISO 28178 / CGATS.17 where it announces a data format, else a plain table.
 *
 * @param text the file, decoded.
 * @returns what could be read; a file that is empty, binary or too large gives no samples and one finding.
 */
export function readSpectralFile(text: string, options: ReadSpectralOptions = {}): SpectralFile {
  if (text.length > LONGEST_SPECTRAL_TEXT) return refused('spectral-too-large', String(text.length));
  if (text.trim() === '') return refused('spectral-empty');
  const start = text.slice(0, START_CHECKED);
  if (looksBinary(start)) return refused('spectral-binary');
  if (/^\uFEFF?\s*[<{[]/.test(start)) return refused('spectral-not-a-table');
  return /^[ \t]*BEGIN_DATA_FORMAT\b/im.test(text) ? readCgats(text, options) : readSpectrumCsv(text, options);
}

/** Text has no NUL, and hardly any control or replacement characters. */
function looksBinary(start: string): boolean {
  if (start.includes('\0')) return true;
  let odd = 0;
  for (const sign of start) if (sign === '\uFFFD' || (sign < ' ' && sign !== '\n' && sign !== '\r' && sign !== '\t')) odd += 1;
  return odd > start.length / 20;
}

const refused = (code: SpectralCode, ...about: readonly string[]): SpectralFile => ({
  samples: [],
  under: {},
  scale: 'fraction',
  findings: [{ code, severity: 'error', line: 1, about }],
});
