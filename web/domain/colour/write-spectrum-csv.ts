import type { Result } from '../result.ts';
import { failed, ok } from '../result.ts';
import { sameBands } from './spectrum.ts';
import type { SpectralSample } from './spectral-file.ts';

/**
 * Spectra as a plain table: a row for each wavelength, a column for each sample, fractions with six decimals.
 *
 * @error `bands-differ` when the samples do not stand on the same wavelengths.
 */
export function writeSpectrumCsv(samples: readonly SpectralSample[]): Result<string, 'bands-differ' | 'no-samples'> {
  const [first] = samples;
  if (!first) return failed('no-samples');
  if (!samples.every(({ spectrum }) => sameBands(spectrum, first.spectrum))) return failed('bands-differ');
  const { startNm, stepNm, values } = first.spectrum;
  const header = ['wavelength_nm', ...samples.map(({ id }) => cell(id))].join(',');
  const rows = values.map((_, i) =>
    [startNm + i * stepNm, ...samples.map(({ spectrum }) => (spectrum.values[i] ?? 0).toFixed(6))].join(','),
  );
  return ok([header, ...rows, ''].join('\n'));
}

/** A cell on one line, always in quotes: an id may hold commas, tabs or semicolons. */
const cell = (text: string): string => `"${text.replace(/[\r\n]+/g, ' ').replaceAll('"', '""')}"`;
