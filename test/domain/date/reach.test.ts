import { describe, expect, test } from 'vitest';
import { halfReachAt, reachAt } from '../../../web/domain/date/reach.ts';

describe('reachAt', () => {
  test.each([
    [-5000, 100],
    [0, 100],
    [500, 100],
    [501, 50],
    [1500, 50],
    [1501, 25],
    [1700, 25],
    [1701, 10],
    [2020, 10],
  ])('reaches from %i over %i years', (year, years) => {
    expect(reachAt(year)).toBe(years);
  });

  test('follows a table of the notebook’s own', () => {
    const table = { steps: [{ upTo: 1000, years: 41 }], after: 7 };
    expect([reachAt(1000, table), reachAt(1001, table)]).toEqual([41, 7]);
    expect([halfReachAt(1000, table), halfReachAt(1001, table)]).toEqual([20, 3]);
  });

  test('rounds half a reach down', () => {
    expect(halfReachAt(1600)).toBe(12);
  });
});
