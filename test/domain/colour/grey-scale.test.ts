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

  test('0.40 is not 0.39999: a limit belongs to the lower grade', () => {
    expect(greyScaleChange(asLab10([50, 0, 0]), asLab10([50.4, 0, 0])).step).toBe('4-5');
    expect(greyScaleChange(asLab10([50, 0, 0]), asLab10([50.39, 0, 0])).step).toBe('5');
  });
});
