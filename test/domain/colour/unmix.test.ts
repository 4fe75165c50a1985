import { describe, expect, test } from 'vitest';
import { overDye } from '../../../web/domain/colour/kubelka-munk.ts';
import { nonNegativeLeastSquares } from '../../../web/domain/colour/non-negative-least-squares.ts';
import { unmix } from '../../../web/domain/colour/unmix.ts';
import { referenceTable } from '../../helpers/reference-table.ts';
import { inventedSample } from '../../helpers/spectral-samples.ts';
import { fc, runs } from '../../helpers/property.ts';

const ground = inventedSample('W0');

describe('unmix', () => {
  test('takes G1 apart as the reference says', () => {
    const row = referenceTable('km-worked-examples.csv').find(({ kind }) => kind === 'unmix');
    const [c1, c2] = [...(row?.['expected'] ?? '').matchAll(/c\d=([\d.]+)/g)].map((found) => Number(found[1]));
    const { depths, deltaE00 } = unmix(inventedSample('G1'), ground, [inventedSample('Y2'), inventedSample('B2')]);
    expect(Math.abs((depths[0] ?? NaN) - (c1 ?? NaN))).toBeLessThan(0.005);
    expect(Math.abs((depths[1] ?? NaN) - (c2 ?? NaN))).toBeLessThan(0.005);
    expect(deltaE00).toBeLessThan(0.5);
  });

  test('says so when a dye is missing from the list', () => {
    expect(unmix(inventedSample('G1'), ground, [inventedSample('Y2')]).deltaE00).toBeGreaterThan(10);
    expect(unmix(ground, ground, [inventedSample('Y2')]).depths).toEqual([0]);
  });

  test('finds again what was mixed', () => {
    const dyes = ['Y2', 'B2', 'R1'].map(inventedSample);
    const depth = fc.integer({ min: 0, max: 300 }).map((n) => n / 100);
    fc.assert(
      fc.property(fc.tuple(depth, depth, depth), (depths) => {
        const mixed = overDye(
          ground,
          dyes.map((dyed, i) => ({ dyed, ground, depth: depths[i] ?? 0 })),
        );
        unmix(mixed, ground, dyes).depths.forEach((found, i) => expect(found).toBeCloseTo(depths[i] ?? NaN, 5));
      }),
    );
  });
});

describe('nonNegativeLeastSquares', () => {
  test('no other choice of non-negative numbers fits better', () => {
    const number = fc.integer({ min: -50, max: 50 });
    const column = fc.array(number, { minLength: 5, maxLength: 5 });
    const misfit = (columns: readonly (readonly number[])[], b: readonly number[], x: readonly number[]): number =>
      b.reduce((sum, value, i) => sum + (value - columns.reduce((s, c, j) => s + (c[i] ?? 0) * (x[j] ?? 0), 0)) ** 2, 0);
    fc.assert(
      fc.property(fc.array(column, { minLength: 1, maxLength: 4 }), column, (columns, b) => {
        const x = nonNegativeLeastSquares(columns, b);
        const best = misfit(columns, b, x);
        for (const value of x) expect(value).toBeGreaterThanOrEqual(0);
        // A convex problem: when no single step helps, nothing does.
        for (let j = 0; j < x.length; j++)
          for (const step of [-0.01, 0.01]) {
            const moved = x.map((value, k) => (k === j ? Math.max(0, value + step) : value));
            expect(misfit(columns, b, moved)).toBeGreaterThan(best - 1e-6 * (1 + best));
          }
      }),
      runs(300),
    );
  });
});
