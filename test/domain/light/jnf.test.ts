import { describe, expect, test } from 'vitest';
import { JNF_MEGALUX_HOURS, JNF_SOURCE, jnfLuxHours } from '../../../web/domain/light/jnf.ts';

/** Michalski (CCI) / CIE 157:2004, from memory: class, Mlx·h with ultraviolet, without. */
const TABLE = [
  [1, 0.22, 0.3],
  [2, 0.6, 1],
  [3, 1.5, 3],
  [4, 3.5, 10],
  [5, 8, 30],
  [6, 20, 100],
  [7, 50, 300],
  [8, 120, 1000],
] as const;

describe('jnfLuxHours', () => {
  test.each(TABLE)('class %i: %f with ultraviolet, %f without', (blueWool, rich, removed) => {
    expect(jnfLuxHours(blueWool, 'rich')).toBeCloseTo(rich * 1e6, 3);
    expect(jnfLuxHours(blueWool, 'removed')).toBeCloseTo(removed * 1e6, 3);
  });

  test('says that the table is from memory', () => {
    expect(JNF_SOURCE.checked).toBe('from-memory');
  });

  // CCI's text: a factor of two to three a class; without ultraviolet about three.
  test('each class needs two to three and a half times the dose of the one before', () => {
    for (const uv of ['rich', 'removed'] as const)
      for (let at = 1; at < 8; at += 1) {
        const ratio = (JNF_MEGALUX_HOURS[uv][at] ?? 0) / (JNF_MEGALUX_HOURS[uv][at - 1] ?? 1);
        expect(ratio).toBeGreaterThan(2);
        expect(ratio).toBeLessThan(3.5);
      }
  });

  // CCI's rounded times at 50 lx × 3000 h, from memory: high 1.5–20 y, medium 20–700 y, low 300–7000 y.
  test.each([
    [1, 'rich', 1.5],
    [3, 'removed', 20],
    [4, 'rich', 23],
    [6, 'removed', 667],
    [7, 'rich', 333],
    [8, 'removed', 6667],
  ] as const)('class %i, ultraviolet %s: %f years at 50 lx for 3000 h', (blueWool, uv, years) => {
    expect(jnfLuxHours(blueWool, uv) / 150_000).toBeGreaterThan(years * 0.97);
    expect(jnfLuxHours(blueWool, uv) / 150_000).toBeLessThan(years * 1.03);
  });

  // Worked from the table, from memory: with ultraviolet a fade comes so many times sooner.
  test.each([
    [1, 1.4],
    [2, 1.7],
    [3, 2],
    [4, 2.9],
    [5, 3.8],
    [6, 5],
    [7, 6],
    [8, 8.3],
  ])('class %i: ultraviolet makes it %f times as fast', (blueWool, ratio) => {
    expect(jnfLuxHours(blueWool, 'removed') / jnfLuxHours(blueWool, 'rich')).toBeCloseTo(ratio, 1);
  });

  // CCI: ultraviolet has less than half a share, or just half, in the fading of sensitive colours.
  test.each([1, 2, 3])('class %i: the share of ultraviolet is between a quarter and a half', (blueWool) => {
    const share = 1 - jnfLuxHours(blueWool, 'rich') / jnfLuxHours(blueWool, 'removed');
    expect(share).toBeGreaterThan(0.25);
    expect(share).toBeLessThanOrEqual(0.5);
  });

  test('goes on one step beyond either end', () => {
    expect(jnfLuxHours(0, 'removed')).toBeCloseTo(0.09e6, 0);
    expect(jnfLuxHours(9, 'rich')).toBeCloseTo(288e6, 0);
  });
});
