import type { Result } from '../result.ts';
import { failed, ok } from '../result.ts';
import { sameBands } from './spectrum.ts';
import type { MeasuredUnder, SpectralSample } from './spectral-file.ts';

/** Header keywords in the order they are written. */
const KEYWORDS: readonly (readonly [keyword: string, from: keyof MeasuredUnder])[] = [
  ['ORIGINATOR', 'originator'],
  ['FILE_DESCRIPTOR', 'description'],
  ['CREATED', 'created'],
  ['INSTRUMENTATION', 'instrument'],
  ['MEASUREMENT_GEOMETRY', 'geometry'],
  ['ILLUMINANT', 'illuminant'],
  ['OBSERVER', 'observer'],
];

/**
 * Spectra as ISO 28178 text: tabs between cells, fractions with six decimals. What was not stated is not written.
 *
 * @error `bands-differ` when the samples do not stand on the same wavelengths: write them apart, or resample first.
 */
export function writeCgats(samples: readonly SpectralSample[], under: MeasuredUnder = {}): Result<string, 'bands-differ' | 'no-samples'> {
  const [first] = samples;
  if (!first) return failed('no-samples');
  if (!samples.every(({ spectrum }) => sameBands(spectrum, first.spectrum))) return failed('bands-differ');
  const { startNm, stepNm, values } = first.spectrum;
  const withLab = samples.every(({ lab }) => lab !== undefined);
  const fields = [
    'SAMPLE_ID',
    'SAMPLE_NAME',
    ...values.map((_, i) => `SPECTRAL_NM${startNm + i * stepNm}`),
    ...(withLab ? ['LAB_L', 'LAB_A', 'LAB_B'] : []),
  ];
  const rows = samples.map(({ id, name, spectrum, lab }) =>
    [
      quoted(id),
      quoted(name ?? ''),
      ...spectrum.values.map((r) => r.toFixed(6)),
      ...(withLab && lab ? lab.map((v) => v.toFixed(4)) : []),
    ].join('\t'),
  );
  const header = KEYWORDS.flatMap(([keyword, from]) => (under[from] === undefined ? [] : [`${keyword}\t${quoted(String(under[from]))}`]));
  const condition = under.condition === undefined ? [] : [`MEASUREMENT_SOURCE\t${quoted(`MeasurementCondition=${under.condition}`)}`];
  return ok(
    [
      'ISO28178',
      ...header,
      ...condition,
      `NUMBER_OF_FIELDS\t${fields.length}`,
      'BEGIN_DATA_FORMAT',
      fields.join('\t'),
      'END_DATA_FORMAT',
      `NUMBER_OF_SETS\t${rows.length}`,
      'BEGIN_DATA',
      ...rows,
      'END_DATA',
      '',
    ].join('\n'),
  );
}

/** A string of the format: in quotes, quotes doubled; it cannot hold line ends or other controls, so these become spaces. */
// eslint-disable-next-line no-control-regex -- controls are what is looked for
const quoted = (text: string): string => `"${text.replace(/[\u0000-\u001f\u0085\u2028\u2029]/g, ' ').replaceAll('"', '""')}"`;
