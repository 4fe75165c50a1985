import Color from 'colorjs.io';
import { describe, expect, test } from 'vitest';
import type { Illuminant, Observer } from '../../../web/domain/colour/conditions.ts';
import type { Xyz } from '../../../web/domain/colour/lab.ts';
import { labToLch } from '../../../web/domain/colour/lab.ts';
import { cssToLab2 } from '../../../web/domain/colour/screen.ts';
import { whitePoint } from '../../../web/domain/colour/spectrum-to-xyz.ts';
import { labToXyz, xyzToLab } from '../../../web/domain/colour/xyz-lab.ts';
import { numbers, referenceTable } from '../../helpers/reference-table.ts';
import { fc } from '../../helpers/property.ts';

const rows = referenceTable('cielab-conversions.csv');

describe('xyzToLab', () => {
  const cases = rows.filter((row) => row['section'] === 'xyz_lab');
  test('has reference rows', () => expect(cases).toHaveLength(11));

  test.each(cases.map((row) => [row['input'] ?? '', row] as const))('%s', (input, row) => {
    const [, illuminant, observer, ...xyz] = /^(\w+?)_(\d+) XYZ (\S+) (\S+) (\S+)$/.exec(input) ?? [];
    const white = whitePoint(illuminant as Illuminant, Number(observer) as Observer);
    const lab = xyzToLab(xyz.map(Number) as unknown as Xyz, white);
    const [l, a, b, c, h] = numbers(row, 'L', 'a', 'b', 'C', 'h') as [number, number, number, number, number];
    [l, a, b].forEach((value, i) => expect(Math.abs((lab[i] ?? NaN) - value)).toBeLessThan(0.0003));
    const lch = labToLch(lab);
    expect(Math.abs(lch.c - c)).toBeLessThan(0.0003);
    if (c > 0.1) expect(Math.abs((lch.h ?? NaN) - h)).toBeLessThan(0.06);
  });

  test('comes back from labToXyz', () => {
    const white = whitePoint('D65', 10);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100 }), fc.integer({ min: -80, max: 80 }), fc.integer({ min: -80, max: 80 }), (l, a, b) => {
        const back = xyzToLab(labToXyz([l, a, b], white), white);
        [l, a, b].forEach((value, i) => expect(back[i]).toBeCloseTo(value, 9));
      }),
    );
  });
});

describe('cssToLab2', () => {
  const cases = rows.filter((row) => row['section'] === 'srgb_lab65');
  test('has reference rows', () => expect(cases.length).toBeGreaterThan(10));

  test.each(cases.map((row) => [row['input'] ?? '', row] as const))('%s', (hex, row) => {
    const lab = cssToLab2(hex);
    numbers(row, 'L', 'a', 'b').forEach((value, i) => expect(Math.abs((lab?.[i] ?? NaN) - value)).toBeLessThan(0.001));
  });

  // A second, independent library must see the same colour: it reads CSS Lab on D50, so the two meet in XYZ.
  test.each([
    'lab(40% 45 28)',
    'lch(70% 60 95)',
    'oklch(0.5 0.12 30)',
    'rebeccapurple',
    'hsl(30 60% 40%)',
    'color(display-p3 0.6 0.2 0.1)',
  ])('agrees with colorjs.io: %s', (css) => {
    const [l, a, b] = new Color(css).to('lab-d65').coords as [number, number, number];
    const ours = cssToLab2(css);
    [l, a, b].forEach((value, i) => expect(Math.abs((ours?.[i] ?? NaN) - value)).toBeLessThan(0.02));
  });

  test.each(['', 'madder', '#12', 'rgb(1,2', 'transparent', '#ff000080', 'currentcolor'])('refuses %j', (css) =>
    expect(cssToLab2(css)).toBeUndefined(),
  );
});
