import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import type { Illuminant, Observer } from '../../../web/domain/colour/conditions.ts';
import { LONGEST_SPECTRAL_TEXT, readSpectralFile } from '../../../web/domain/colour/read-spectral-file.ts';
import { findSample } from '../../../web/domain/colour/spectral-file.ts';
import type { SpectralSample } from '../../../web/domain/colour/spectral-file.ts';
import { writeCgats } from '../../../web/domain/colour/write-cgats.ts';
import { writeSpectrumCsv } from '../../../web/domain/colour/write-spectrum-csv.ts';
import { spectrumToLab } from '../../../web/domain/colour/xyz-lab.ts';
import { numbers, referenceTable, referenceText } from '../../helpers/reference-table.ts';
import { fc, runs } from '../../helpers/property.ts';

type Triple = [number, number, number];
const FILES = ['a-cgats17-spectral_nm-fraction-crlf.txt', 'b-iso28178-percent-with-lab.txt', 'c-cgats17-nm-decimal-comma.txt'];
const sampleText = (file: string): string => referenceText(`iso28178-samples/${file}`);
const codes = (text: string): string[] => readSpectralFile(text).findings.map(({ code }) => code);

describe('readSpectralFile: three dialects', () => {
  const expected = referenceTable('iso28178-samples/expected.csv');
  test('the reference has 36 rows', () => expect(expected).toHaveLength(36));

  test.each(FILES)('%s reads without findings', (file) => {
    const { samples, findings } = readSpectralFile(sampleText(file));
    expect(findings).toEqual([]);
    expect(samples).toHaveLength(4);
    for (const { spectrum } of samples) expect([spectrum.startNm, spectrum.stepNm, spectrum.values.length]).toEqual([380, 10, 36]);
  });

  test.each(expected.map((row) => [`${row['sample']} under ${row['illuminant']}/${row['observer']}`, row] as const))('%s', (_, row) => {
    const { samples } = readSpectralFile(sampleText(row['file'] ?? ''));
    const sample = samples.find(({ id, name }) => id === row['sample'] || name?.startsWith(`${row['sample']} `));
    expect(sample).toBeDefined();
    if (!sample) return;
    const [l, a, b] = spectrumToLab(sample.spectrum, row['illuminant'] as Illuminant, Number(row['observer']) as Observer).lab;
    const own = numbers(row, 'own_L', 'own_a', 'own_b') as Triple;
    own.forEach((value, i) => expect(Math.abs(([l, a, b][i] ?? NaN) - value)).toBeLessThan(0.15));
    expect(ciede2000([l, a, b], own)).toBeLessThan(0.05);
    expect(ciede2000([l, a, b], numbers(row, 'argyll_L', 'argyll_a', 'argyll_b') as Triple)).toBeLessThan(0.1);
  });

  test('keeps the conditions the file states, and nothing it does not', () => {
    const [a, b] = FILES.map((file) => readSpectralFile(sampleText(file)));
    expect(b?.under).toMatchObject({
      illuminant: 'D65',
      observer: 10,
      instrument: 'none (invented); d/8 SCI as if',
      created: '2025-11-25T12:00:00Z',
    });
    expect(a?.under).toMatchObject({ condition: 'M0' });
    expect(a?.under).not.toHaveProperty('illuminant');
    expect(a?.under).not.toHaveProperty('observer');
    expect([a?.scale, b?.scale]).toEqual(['fraction', 'percent']);
  });

  test('keeps the Lab columns, and says when they do not belong to the curve', () => {
    const text = sampleText(FILES[1] ?? '');
    expect(readSpectralFile(text).samples[0]?.lab).toEqual([73.25, -19.27, -2.53]);
    expect(readSpectralFile(text.replace('73.25', '63.25')).findings).toMatchObject([
      { code: 'lab-disagrees', severity: 'warning', line: 21, about: ['B1', expect.any(String)] },
    ]);
  });

  test('every spectral file of the demonstration reads without findings', () => {
    const folder = new URL('../../../corpus-demo/spectra/', import.meta.url);
    const files = readdirSync(folder).filter((name) => /\.(txt|csv)$/.test(name));
    expect(files.length).toBeGreaterThan(0);
    for (const file of files) {
      const { samples, findings } = readSpectralFile(readFileSync(new URL(file, folder), 'utf8'));
      expect([file, findings]).toEqual([file, []]);
      expect(samples.length).toBeGreaterThan(0);
    }
  });
});

describe('readSpectralFile: names of bands', () => {
  const table = (fields: readonly string[], ...rows: readonly string[]): string =>
    ['CGATS.17', 'BEGIN_DATA_FORMAT', fields.join(' '), 'END_DATA_FORMAT', 'BEGIN_DATA', ...rows, 'END_DATA'].join('\n');

  test.each([
    'SPECTRAL_NM400',
    'SPECTRAL_NM_400',
    'SPECTRAL_400',
    'SPEC_400',
    'NM400',
    'nm400',
    '400_NM',
    '400nm',
    'R_400nm',
    'R400',
    '400',
  ])('%s', (field) => {
    const fields = [400, 420, 440].map((nm) => field.replace('400', String(nm)));
    const { samples, findings } = readSpectralFile(table(['SAMPLE_ID', ...fields], 'a 0.1 0.2 0.3'));
    expect(findings).toEqual([]);
    expect(samples).toEqual([{ id: 'a', spectrum: { startNm: 400, stepNm: 20, values: [0.1, 0.2, 0.3] } }]);
  });

  test.each<[string, string, readonly string[], readonly string[]]>([
    ['out of order', 'wavelengths-unordered', ['NM400', 'NM420', 'NM410'], ['a 0.1 0.2 0.3']],
    ['the same twice', 'wavelengths-unordered', ['NM400', 'NM400', 'NM410'], ['a 0.1 0.2 0.3']],
    ['uneven', 'wavelengths-uneven', ['NM400', 'NM410', 'NM430'], ['a 0.1 0.2 0.3']],
    ['two families', 'families-mixed', ['NM400', 'NM410', 'SPECTRAL_NM400', 'SPECTRAL_NM410'], ['a 0.1 0.2 0.3 0.4']],
    ['no bands', 'wavelengths-missing', ['LAB_L', 'LAB_A', 'LAB_B'], ['a 50 10 10']],
  ])('%s: no sample is taken', (_, code, fields, rows) => {
    const file = readSpectralFile(table(['SAMPLE_ID', ...fields], ...rows));
    expect(file.samples).toEqual([]);
    expect(file.findings).toMatchObject([{ code, severity: 'error', line: 2 }]);
  });

  test.each<[string, string, string]>([
    ['short', 'row-short', 'b 0.1 0.2'],
    ['long', 'row-long', 'b 0.1 0.2 0.3 0.4'],
    ['not a number', 'value-not-a-number', 'b 0.1 x 0.3'],
    ['below zero', 'value-below-zero', 'b 0.1 -0.05 0.3'],
    ['fluorescent', 'value-fluorescent', 'b 0.1 1.3 0.3'],
    ['the same id', 'sample-twice', 'a 0.1 0.2 0.3'],
  ])('a %s row is left out and the others stay', (_, code, row) => {
    const file = readSpectralFile(table(['SAMPLE_ID', 'NM400', 'NM410', 'NM420'], 'a 0.1 0.2 0.3', row, 'c 0.4 0.5 0.6'));
    expect(file.samples.map(({ id }) => id)).toEqual(['a', 'c']);
    expect(file.findings).toMatchObject([{ code, severity: 'error', line: 7 }]);
  });

  test('noise around zero and a little above one is brought inside 0–1', () => {
    const file = readSpectralFile(table(['SAMPLE_ID', 'NM400', 'NM410'], 'a -0.01 1.1'));
    expect(file.samples[0]?.spectrum.values).toEqual([0, 1]);
    expect(file.findings).toMatchObject([{ code: 'value-above-one', severity: 'warning', about: ['a', '410', '1.1'] }]);
  });

  test('the scale is settled for the whole file, and can be overruled', () => {
    const black = table(['SAMPLE_ID', 'NM400', 'NM410'], 'a 1.2 1.4', 'b 1.1 1.3');
    expect(readSpectralFile(black).findings.map(({ code }) => code)).toEqual(['value-fluorescent', 'value-fluorescent']);
    const overruled = readSpectralFile(black, { scale: 'percent' });
    overruled.samples.forEach(({ spectrum }, i) => expect(spectrum.values[0]).toBeCloseTo([0.012, 0.011][i] ?? NaN, 12));
    expect(overruled.samples).toHaveLength(2);
    const doubtful = readSpectralFile(table(['SAMPLE_ID', 'NM400', 'NM410'], 'a 1.2 2.4'));
    expect(doubtful).toMatchObject({ scale: 'percent', findings: [{ code: 'scale-doubtful', severity: 'warning', about: ['2.4'] }] });
  });

  test('counts that do not agree are said', () => {
    const text = table(['SAMPLE_ID', 'NM400', 'NM410'], 'a 0.1 0.2').replace(
      'BEGIN_DATA_FORMAT',
      'NUMBER_OF_FIELDS 4\nNUMBER_OF_SETS 2\nBEGIN_DATA_FORMAT',
    );
    expect(codes(text)).toEqual(['field-count-differs', 'set-count-differs']);
    expect(readSpectralFile(text).samples).toHaveLength(1);
  });

  test('rows wrapped over several lines are put together again', () => {
    const text = table(['SAMPLE_ID', 'NM400', 'NM410', 'NM420'], 'a 0.1', '0.2 0.3', 'b 0.4 0.5', '0.6').replace(
      'BEGIN_DATA\n',
      'NUMBER_OF_SETS 2\nBEGIN_DATA\n',
    );
    expect(readSpectralFile(text)).toMatchObject({
      findings: [],
      samples: [{ id: 'a' }, { id: 'b', spectrum: { values: [0.4, 0.5, 0.6] } }],
    });
  });

  test('a table without bands beside a spectral one is passed over', () => {
    const text = `${table(['SAMPLE_ID', 'LAB_L'], 'x 50')}\n${table(['SAMPLE_ID', 'NM400', 'NM410'], 'a 0.1 0.2')}`;
    expect(readSpectralFile(text)).toMatchObject({ findings: [], samples: [{ id: 'a' }] });
  });
});

describe('readSpectralFile: plain tables', () => {
  const wide = 'wavelength_nm,red,blue\n400,0.1,0.4\n410,0.2,0.5\n420,0.3,0.6\n';

  test('a column for each sample', () =>
    expect(readSpectralFile(wide)).toMatchObject({
      findings: [],
      samples: [
        { id: 'red', spectrum: { startNm: 400, stepNm: 10, values: [0.1, 0.2, 0.3] } },
        { id: 'blue', spectrum: { values: [0.4, 0.5, 0.6] } },
      ],
    }));

  test('measured textiles read as they are, but for the fluorescent yellow being checked', () => {
    const { samples, findings } = readSpectralFile(referenceText('spectra/usgs-splib07-textiles.csv'));
    expect(findings).toEqual([]);
    expect(samples).toHaveLength(16);
    expect(findSample(samples, 'nylon fabric gds431 red rpst')?.spectrum).toMatchObject({ startNm: 400, stepNm: 10 });
  });

  test('a row for each sample, semicolons, decimal commas, percent', () =>
    expect(
      readSpectralFile('Sample;Name;400 nm;410 nm\r\nS1;"weld; 1";10,5;20\r\nS2;woad;30;40\r\n'.replaceAll(' nm', 'nm')),
    ).toMatchObject({
      findings: [],
      scale: 'percent',
      samples: [
        { id: 'S1', name: 'weld; 1', spectrum: { startNm: 400, stepNm: 10, values: [0.105, 0.2] } },
        { id: 'S2', name: 'woad' },
      ],
    }));

  test('sample names that are numbers do not turn the table', () =>
    expect(readSpectralFile('nm,400,410\nA,0.1,0.2').samples).toMatchObject([{ id: 'A', spectrum: { startNm: 400 } }]));

  test.each<[string, string, string]>([
    ['unordered rows', 'wavelength_nm,a\n410,0.1\n400,0.2\n', 'wavelengths-unordered'],
    ['an uneven step', 'wavelength_nm,a\n400,0.1\n410,0.2\n430,0.2\n', 'wavelengths-uneven'],
    ['a short row', 'wavelength_nm,a,b\n400,0.1\n410,0.2,0.3\n', 'row-short'],
    ['a long row', 'wavelength_nm,a\n400,0.1,0.4\n410,0.2\n', 'row-long'],
    ['a word', 'wavelength_nm,a\n400,0.1\n410,dark\n', 'value-not-a-number'],
    ['one wavelength', 'wavelength_nm,a\n400,0.1\n', 'wavelengths-missing'],
    ['no table', 'These are reading notes about weld.\nNothing measured.\n', 'spectral-not-a-table'],
    ['a table of something else', 'name,dye\nred,madder\n', 'wavelengths-missing'],
    ['markup', '<?xml version="1.0"?><CxF/>', 'spectral-not-a-table'],
    ['nothing', ' \n\n', 'spectral-empty'],
    ['an image', '\u0000\u0001PNG', 'spectral-binary'],
    ['undecodable bytes', '\uFFFD\uFFFD\u0001\uFFFDab', 'spectral-binary'],
  ])('%s', (_, text, code) => {
    const file = readSpectralFile(text);
    expect(file.samples).toEqual([]);
    expect(file.findings.map((finding) => [finding.code, finding.severity])).toEqual([[code, 'error']]);
  });

  test('a huge file is refused without being read', () => {
    expect(codes('1,'.repeat(LONGEST_SPECTRAL_TEXT / 2 + 1))).toEqual(['spectral-too-large']);
  });

  test('a large but honest file is read whole', () => {
    const rows = Array.from({ length: 5000 }, (_, i) => `S${i} ${'0.5 '.repeat(36)}`);
    const fields = Array.from({ length: 36 }, (_, i) => `NM${380 + 10 * i}`);
    const text = [
      'CGATS.17',
      'BEGIN_DATA_FORMAT',
      `SAMPLE_ID ${fields.join(' ')}`,
      'END_DATA_FORMAT',
      'BEGIN_DATA',
      ...rows,
      'END_DATA',
    ].join('\n');
    expect(readSpectralFile(text).samples).toHaveLength(5000);
  });

  test('one line of a million cells is answered, not a crash', () => {
    const line = '0.5 '.repeat(1_000_000);
    expect(codes(`BEGIN_DATA_FORMAT\n${line}\nEND_DATA_FORMAT\nBEGIN_DATA\n${line}\nEND_DATA`)).toEqual(['wavelengths-missing']);
    const fine = Array.from({ length: 200_000 }, (_, i) => (300 + i / 100).toFixed(2));
    expect(codes(`id,${fine.join(',')}\nA,${fine.map(() => '0.5').join(',')}`)).toEqual([]);
  });

  test('never throws, whatever the text', () => {
    const word = fc.constantFrom(
      'BEGIN_DATA_FORMAT',
      'END_DATA_FORMAT',
      'BEGIN_DATA',
      'END_DATA',
      'SAMPLE_ID',
      'NM400',
      'NM410',
      '0.5',
      '-1',
      '"',
      '"a b"',
      '#',
      ',',
      ';',
      '\n',
      '\t',
      ' ',
      'NUMBER_OF_SETS 2',
      'wavelength',
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 60 }), (words) => {
        for (const { spectrum } of readSpectralFile(words.join(' ')).samples)
          for (const value of spectrum.values) expect(value >= 0 && value <= 1).toBe(true);
      }),
      runs(500),
    );
  });
});

describe('writeCgats and writeSpectrumCsv', () => {
  const text = fc.stringMatching(/^[ -~äöüß–]{1,20}$/).filter((t) => t.trim() === t);
  const samples = fc.integer({ min: 2, max: 40 }).chain((count) =>
    fc.uniqueArray(
      fc.record({
        id: text,
        name: text,
        values: fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: count, maxLength: count }),
      }),
      { selector: ({ id }) => id, minLength: 1, maxLength: 6 },
    ),
  );
  const build = (raw: readonly { id: string; name: string; values: number[] }[]): SpectralSample[] =>
    raw.map(({ id, name, values }) => ({ id, name, spectrum: { startNm: 380, stepNm: 10, values: values.map((v) => v / 1e6) } }));

  test('what is written in the open format reads back the same', () => {
    fc.assert(
      fc.property(samples, (raw) => {
        const written = writeCgats(build(raw), { illuminant: 'D65', observer: 10, condition: 'M1', originator: 'a "dyer"' });
        expect(written.ok && readSpectralFile(written.value, { scale: 'fraction' })).toEqual({
          samples: build(raw),
          under: { illuminant: 'D65', observer: 10, condition: 'M1', originator: 'a "dyer"' },
          scale: 'fraction',
          findings: [],
        });
      }),
    );
  });

  test('what is written as a table reads back the same', () => {
    fc.assert(
      fc.property(samples, (raw) => {
        const written = writeSpectrumCsv(build(raw));
        expect(written.ok && readSpectralFile(written.value, { scale: 'fraction' })).toMatchObject({
          samples: build(raw).map(({ id, spectrum }) => ({ id, spectrum })),
          findings: [],
        });
      }),
    );
  });

  test('refuses samples on different bands, and none', () => {
    const [a, b] = [10, 20].map((stepNm) => ({ id: `s${stepNm}`, spectrum: { startNm: 400, stepNm, values: [0.1, 0.2] } }));
    expect(a && b && writeCgats([a, b])).toEqual({ ok: false, error: 'bands-differ' });
    expect(a && b && writeSpectrumCsv([a, b])).toEqual({ ok: false, error: 'bands-differ' });
    expect(writeCgats([])).toEqual({ ok: false, error: 'no-samples' });
    expect(writeSpectrumCsv([])).toEqual({ ok: false, error: 'no-samples' });
  });
});
