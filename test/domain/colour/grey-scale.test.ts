import { describe, expect, test } from 'vitest';
import { greyScaleChange } from '../../../web/domain/colour/grey-scale.ts';
import { asLab10 } from '../../../web/domain/colour/lab.ts';
import { deltaE00 } from '../../../web/domain/colour/delta-e.ts';
import { numbers, referenceTable } from '../../helpers/reference-table.ts';

type Triple = [number, number, number];
const rows = referenceTable('greyscale-iso105a05.csv');

describe('greyScaleChange', () => {
  test('the reference has 20 pairs', () => expect(rows).toHaveLength(20));

  test.each(rows.map((row) => [row['id'] ?? '', row] as const))('%s', (_, row) => {
    const original = asLab10(numbers(row, 'L_O', 'a_O', 'b_O') as Triple);
    const treated = asLab10(numbers(row, 'L_T', 'a_T', 'b_T') as Triple);
    const change = greyScaleChange(original, treated);
    expect(Math.abs(change.deltaEF - Number(row['dE_F']))).toBeLessThan(0.01);
    expect(Math.abs(change.grade - Number(row['GSc']))).toBeLessThan(0.01);
    expect(change.step).toBe(row['grade']);
    expect(Math.abs(deltaE00(original, treated) - Number(row['de00'] ?? row['dE00']))).toBeLessThan(0.001);
  });

  // Nominal differences and tolerances of the grey scale, EN 20105-A02:1994 = ISO 105-A02 (open sample). Its pairs are neutral, and of
  // neutral pairs the method takes the difference in lightness alone. Grade 5 has a tolerance upwards only.
  test.each([
    ['5', 0, 0, 0.2],
    ['4-5', 0.8, 0.2, 0.2],
    ['4', 1.7, 0.3, 0.3],
    ['3-4', 2.5, 0.35, 0.35],
    ['3', 3.4, 0.4, 0.4],
    ['2-3', 4.8, 0.5, 0.5],
    ['2', 6.8, 0.6, 0.6],
    ['1-2', 9.6, 0.7, 0.7],
    ['1', 13.6, 1, 1],
  ])('a grey pair of grade %s is graded so over its whole tolerance', (step, nominal, under, over) => {
    for (const lighter of [nominal - under, nominal, nominal + over]) {
      const change = greyScaleChange(asLab10([40, 0, 0]), asLab10([40 + lighter, 0, 0]));
      expect(change.deltaEF).toBeCloseTo(lighter, 9);
      expect(change.step).toBe(step);
    }
  });

  // ISO 105-A05, from memory and found alike in public code: limits between steps are the means of the nominal differences of A02.
  test.each([
    [0.4, '5', '4-5'],
    [1.25, '4-5', '4'],
    [2.1, '4', '3-4'],
    [2.95, '3-4', '3'],
    [4.1, '3', '2-3'],
    [5.8, '2-3', '2'],
    [8.2, '2', '1-2'],
    [11.6, '1-2', '1'],
  ])('at %f the grade goes from %s to %s', (limit, under, from) => {
    expect(greyScaleChange(asLab10([40, 0, 0]), asLab10([40 + limit - 0.01, 0, 0])).step).toBe(under);
    expect(greyScaleChange(asLab10([40, 0, 0]), asLab10([40 + limit, 0, 0])).step).toBe(from);
  });

  // Decimal grade as AATCC EP7 has it, from memory: 5 − ΔE_F/1.7 up to 3.4, 5 − log₂(ΔE_F/0.85) above; both give 3 at 3.4.
  test.each([
    [0, 5],
    [1.7, 4],
    [3.4, 3],
    [6.8, 2],
    [13.6, 1],
  ])('a difference of %f is the decimal grade %f', (lighter, grade) => {
    expect(greyScaleChange(asLab10([40, 0, 0]), asLab10([40 + lighter, 0, 0])).grade).toBeCloseTo(grade, 9);
  });

  test('0.40 is not 0.39999: a limit belongs to the lower grade', () => {
    expect(greyScaleChange(asLab10([50, 0, 0]), asLab10([50.4, 0, 0])).step).toBe('4-5');
    expect(greyScaleChange(asLab10([50, 0, 0]), asLab10([50.39, 0, 0])).step).toBe('5');
  });
});
