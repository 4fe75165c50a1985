import { describe, expect, test } from 'vitest';
import type { Illuminant, Observer } from '../../../web/domain/colour/conditions.ts';
import { A, D50, D65, FL11, FL2, LED_B3 } from '../../../web/domain/colour/tables/illuminants.ts';
import { CIE_1931_2, CIE_1964_10 } from '../../../web/domain/colour/tables/observers.ts';
import { whitePoint } from '../../../web/domain/colour/spectrum-to-xyz.ts';
import { referenceTable } from '../../helpers/reference-table.ts';

describe('colour tables', () => {
  test.each([
    ['cie-1931-2deg-5nm.csv', CIE_1931_2],
    ['cie-1964-10deg-5nm.csv', CIE_1964_10],
  ])('observer equals %s', (file, table) => {
    const rows = referenceTable(file);
    expect(rows).toHaveLength(81);
    rows.forEach((row, i) =>
      expect([380 + 5 * i, table.x[i], table.y[i], table.z[i]]).toEqual([row['wavelength_nm'], row['x'], row['y'], row['z']].map(Number)),
    );
  });

  test.each([
    ['d65', D65],
    ['a', A],
    ['d50', D50],
    ['led-b3', LED_B3],
    ['fl2', FL2],
    ['fl11', FL11],
  ])('illuminant %s equals its reference table', (name, table) => {
    const rows = referenceTable(`illuminant-${name}-5nm.csv`);
    expect(Array.from(table)).toEqual(rows.map((row) => Number(row['s'])));
    expect(table).toHaveLength(81);
  });
});

describe('whitePoint', () => {
  // Published CIE whites, two decimals: CIE 15:2018 tables, as listed in test/reference/LICENCES-colour.md.
  test.each<[Illuminant, Observer, number, number]>([
    ['D65', 2, 95.04, 108.88],
    ['D65', 10, 94.81, 107.32],
    ['D50', 2, 96.42, 82.51],
    ['A', 2, 109.85, 35.58],
    ['A', 10, 111.14, 35.2],
  ])('%s, %i degrees', (illuminant, observer, x, z) => {
    const white = whitePoint(illuminant, observer);
    expect(white[1]).toBeCloseTo(100, 9);
    expect(Math.abs(white[0] - x)).toBeLessThan(0.0051);
    expect(Math.abs(white[2] - z)).toBeLessThan(0.0051);
  });

  test.each<[Illuminant, number, number]>([
    ['LED-B3', 0.3756, 0.3723],
    ['FL2', 0.3721, 0.3751],
    ['FL11', 0.3805, 0.3769],
  ])('%s has the published chromaticity', (illuminant, x, y) => {
    const white = whitePoint(illuminant, 2);
    const total = white[0] + white[1] + white[2];
    expect(Math.abs(white[0] / total - x)).toBeLessThan(0.00012);
    expect(Math.abs(white[1] / total - y)).toBeLessThan(0.00012);
  });
});
