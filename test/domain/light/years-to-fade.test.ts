import { describe, expect, test } from 'vitest';
import { fadesOfDose, yearsToFade } from '../../../web/domain/light/years-to-fade.ts';

const museum = { lux: 50, hoursPerDay: 8, daysPerYear: 375, uv: 'removed' } as const;

describe('yearsToFade', () => {
  test('class 3, 50 lx, 3000 h, no ultraviolet: 20 years, and 6.7 to 67 when grades spread by a class', () => {
    const found = yearsToFade({ from: 3, to: 3 }, museum);
    expect(found?.years).toEqual({ from: 20, to: 20 });
    expect(found?.spread.from).toBeCloseTo(6.67, 2);
    expect(found?.spread.to).toBeCloseTo(66.7, 1);
  });

  test('class 3-4 is a range: 20 to 67 years', () => {
    const found = yearsToFade({ from: 3, to: 4 }, museum);
    expect(found?.years.from).toBe(20);
    expect(found?.years.to).toBeCloseTo(66.7, 1);
  });

  test('class 1 with ultraviolet, 150 lx, 8 h on 300 days: 0.61 years', () => {
    const found = yearsToFade({ from: 1, to: 1 }, { lux: 150, hoursPerDay: 8, daysPerYear: 300, uv: 'rich' });
    expect(found?.years.from).toBeCloseTo(0.611, 3);
  });

  test('carries its caveats, reciprocity and spread among them', () => {
    expect(yearsToFade({ from: 3, to: 3 }, museum)?.caveats).toEqual(
      expect.arrayContaining(['reciprocity', 'spread-of-grades', 'table-from-memory']),
    );
  });

  test('no light, no years', () => {
    expect(yearsToFade({ from: 3, to: 3 }, { ...museum, lux: 0 })).toBeUndefined();
  });
});

describe('fadesOfDose', () => {
  test('1.5 Mlx·h on a sunny sill is about one first fade of class 3', () => {
    expect(fadesOfDose(1.5e6, { from: 3, to: 4 }, 'rich')).toEqual({ from: 1.5 / 3.5, to: 1 });
  });
});
