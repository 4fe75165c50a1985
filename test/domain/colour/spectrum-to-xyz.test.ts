import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import type { Illuminant } from '../../../web/domain/colour/conditions.ts';
import { ILLUMINANTS } from '../../../web/domain/colour/conditions.ts';
import { spectrumToXyz, whitePoint } from '../../../web/domain/colour/spectrum-to-xyz.ts';
import { spectrumToLab } from '../../../web/domain/colour/xyz-lab.ts';
import { numbers, referenceTable } from '../../helpers/reference-table.ts';
import { flatSpectrum } from '../../helpers/spectral-samples.ts';

const textiles = referenceTable('spectra/usgs-splib07-textiles.csv');
const labs = referenceTable('spectra/expected-lab.csv');

describe('spectrumToXyz', () => {
  test('a perfect white is the white point, on any bands', () => {
    for (const illuminant of ILLUMINANTS) {
      const xyz = spectrumToXyz(flatSpectrum(1), illuminant, 10);
      whitePoint(illuminant, 10).forEach((value, i) => expect(xyz[i]).toBeCloseTo(value, 8));
    }
  });

  test('there are 16 measured samples', () => expect(labs).toHaveLength(16));

  test.each(labs.map((row) => [row['name'] ?? '', row] as const))('measured: %s', (name, row) => {
    const spectrum = { startNm: 400, stepNm: 10, values: textiles.map((line) => Number(line[name])) };
    for (const illuminant of ['D65', 'A'] as const satisfies readonly Illuminant[]) {
      const { lab } = spectrumToLab(spectrum, illuminant, 10);
      const expected = numbers(row, `L_${illuminant}_10`, `a_${illuminant}_10`, `b_${illuminant}_10`) as [number, number, number];
      expected.forEach((value, i) => expect(Math.abs((lab[i] ?? NaN) - value)).toBeLessThan(0.15));
      expect(ciede2000([lab[0], lab[1], lab[2]], expected)).toBeLessThan(0.01);
    }
  });

  test('a spectrum without values is black', () =>
    expect(spectrumToXyz({ startNm: 380, stepNm: 10, values: [] }, 'D65', 2)).toEqual([0, 0, 0]));
});
