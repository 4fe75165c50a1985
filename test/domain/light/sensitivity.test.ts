import { describe, expect, test } from 'vitest';
import {
  budgetShare,
  LIGHT_LIMITS,
  LIMITS_SOURCE,
  policyShare,
  SENSITIVITIES,
  sensitivitiesOf,
  sensitivityOf,
} from '../../../web/domain/light/sensitivity.ts';
import { sensitivityWords } from '../../../web/notebook/words/light-words.ts';

describe('sensitivityOf', () => {
  test.each([
    [1, 'high'],
    [3, 'high'],
    [4, 'medium'],
    [6, 'medium'],
    [7, 'low'],
    [8, 'low'],
  ] as const)('class %i is of %s responsivity (CCI table)', (blueWool, name) => {
    expect(sensitivityOf({ from: blueWool, to: blueWool })).toBe(name);
  });

  test('a span takes the more sensitive end and names both', () => {
    expect(sensitivityOf({ from: 3, to: 6 })).toBe('high');
    expect(sensitivitiesOf({ from: 3, to: 6 })).toEqual(['high', 'medium']);
  });
});

// "R1" to "R4" and "R0" to "R3" are both in use, and run both ways: no class is told by number.
test('classes are told by name', () => {
  expect(Object.keys(sensitivityWords)).toEqual([...SENSITIVITIES]);
  expect(Object.values(sensitivityWords).join(' ')).not.toMatch(/\bR\s?\d|\d/);
});

// The technical specification was superseded; figures of the standard after it were not seen.
test('limits are cited by their own names', () => {
  expect(LIMITS_SOURCE).toBe('CIE 157:2004; CEN/TS 16163:2014 (superseded by EN 16163)');
});

describe('budgetShare', () => {
  test('limits by class name', () => {
    expect(LIGHT_LIMITS).toEqual({
      high: { lux: 50, luxHoursPerYear: 15_000 },
      medium: { lux: 50, luxHoursPerYear: 150_000 },
      low: { lux: 200, luxHoursPerYear: 600_000 },
      irresponsive: {},
    });
  });

  test('a board at 200 lx, 6 h, 120 days is 9.6 times the year of the high class', () => {
    const found = budgetShare({ lux: 200, hoursPerDay: 6, daysPerYear: 120, uv: 'removed' }, 'high');
    expect(found).toMatchObject({ luxHoursPerYear: 144_000, tooBright: true, hoursAllowed: 75 });
    expect(found.share).toBeCloseTo(9.6, 10);
  });

  test('high class at 50 lx: 300 hours, about 37 days of eight', () => {
    const { hoursAllowed = 0 } = budgetShare({ lux: 50, hoursPerDay: 8, daysPerYear: 365, uv: 'removed' }, 'high');
    expect(hoursAllowed).toBe(300);
    expect(Math.floor(hoursAllowed / 8)).toBe(37);
  });

  test('medium class at 75 lx: 2000 hours, yet brighter than it should be', () => {
    expect(budgetShare({ lux: 75, hoursPerDay: 8, daysPerYear: 250, uv: 'removed' }, 'medium')).toMatchObject({
      hoursAllowed: 2000,
      tooBright: true,
      share: 1,
    });
  });

  test('what does not answer to light has no limit', () => {
    expect(budgetShare({ lux: 1000, hoursPerDay: 8, daysPerYear: 250, uv: 'rich' }, 'irresponsive')).toEqual({
      luxHoursPerYear: 2_000_000,
      tooBright: false,
    });
  });
});

describe('policyShare', () => {
  test('class 2, one fade in 50 years, 50 lx, 3000 h open: 13.3 % of opening hours', () => {
    expect(policyShare(1e6, 50, 50, 3000)).toBeCloseTo(0.1333, 4);
  });
});
