import { describe, expect, test } from 'vitest';
import { resample, spragueAt } from '../../../web/domain/colour/sprague.ts';
import { fc } from '../../helpers/property.ts';

describe('spragueAt', () => {
  const coefficients = (count: number): fc.Arbitrary<number[]> =>
    fc.array(fc.integer({ min: -100, max: 100 }), { minLength: count, maxLength: count });
  const polynomial = (c: readonly number[], x: number): number => c.reduce((sum, k, power) => sum + (k / 100) * (x / 10) ** power, 0);
  const sampled = (c: readonly number[]) => ({ startNm: 400, stepNm: 10, values: Array.from({ length: 11 }, (_, i) => polynomial(c, i)) });

  test('gives back a polynomial of the fourth degree away from the ends', () => {
    fc.assert(
      fc.property(coefficients(5), fc.integer({ min: 20, max: 80 }), (c, at) => {
        expect(spragueAt(sampled(c), 400 + at)).toBeCloseTo(polynomial(c, at / 10), 9);
      }),
    );
  });

  test('gives back a straight line everywhere', () => {
    fc.assert(
      fc.property(coefficients(2), fc.integer({ min: 0, max: 100 }), (c, at) => {
        expect(spragueAt(sampled(c), 400 + at)).toBeCloseTo(polynomial(c, at / 10), 9);
      }),
    );
  });

  test('holds the end values', () => {
    const spectrum = { startNm: 400, stepNm: 10, values: [0.1, 0.2, 0.4, 0.5, 0.3, 0.2, 0.6] };
    expect(spragueAt(spectrum, 380)).toBe(0.1);
    expect(spragueAt(spectrum, 780)).toBe(0.6);
    expect(spragueAt(spectrum, 420)).toBe(0.4);
  });

  test('joins fewer than six values by straight lines', () => {
    expect(spragueAt({ startNm: 400, stepNm: 100, values: [0.2, 0.4] }, 450)).toBeCloseTo(0.3, 12);
  });
});

describe('resample', () => {
  test('stays within 0–1 beside a steep edge', () => {
    const edge = { startNm: 400, stepNm: 20, values: [0, 0, 0, 0, 1, 1, 1, 1] };
    const fine = resample(edge, { startNm: 380, stepNm: 5, count: 81 });
    expect(Math.min(...fine.values)).toBe(0);
    expect(Math.max(...fine.values)).toBe(1);
    expect(fine.values).toHaveLength(81);
  });
});
