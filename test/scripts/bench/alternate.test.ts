import { describe, expect, test } from 'vitest';
import { alternate, medianRatio } from '../../../scripts/bench/alternate.ts';

describe('alternate', () => {
  test('runs the contenders in turn, and takes the ratio within each turn', async () => {
    let now = 0;
    const order: string[] = [];
    const slower = [9, 4, 10, 6, 8, 100];
    const run = (name: string, takes: () => number) => ({ name, run: () => (order.push(name), (now += takes())) });
    const [a, b] = await alternate([run('a', () => 2), run('b', () => slower.shift() ?? 0)], 5, () => now);
    expect(order.join('')).toBe('ab'.repeat(6));
    // The first turn, 9, only warms up.
    expect([a?.times, b?.times]).toEqual([
      [2, 2, 2, 2, 2],
      [4, 10, 6, 8, 100],
    ]);
    expect(a && b && medianRatio(a, b)).toBe(2 / 8);
  });
});
