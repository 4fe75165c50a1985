import { describe, expect, test } from 'vitest';
import { asLab10 } from '../../../web/domain/colour/lab.ts';
import { mcdm, meanLab10 } from '../../../web/domain/colour/mean-colour.ts';
import { DEFAULT_SPREAD, learnedSpread, simulateSpread } from '../../../web/domain/colour/spread.ts';
import type { Random } from '../../../web/domain/colour/spread.ts';
import { inventedSample } from '../../helpers/spectral-samples.ts';

/** Numbers 0–1 that are the same in every run (Park & Miller's generator). */
function fixedRandom(seed: number): Random {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
/** A pair of greys `d` apart in L*: ΔE00 grows with d. */
const pair = (d: number) => ({ predicted: asLab10([50, 0, 0]), dyed: asLab10([50 + d, 0, 0]) });
const radius = (d: number): number => learnedSpread(new Array(5).fill(pair(d))).deltaE00;

describe('learnedSpread', () => {
  test('is the default until there are five pairs', () => {
    expect(learnedSpread([])).toEqual(DEFAULT_SPREAD);
    expect(learnedSpread([1, 2, 3, 4].map(pair))).toEqual(DEFAULT_SPREAD);
    expect(learnedSpread([1, 2, 3, 4, 9].map(pair))).toMatchObject({ from: 'own-pairs', count: 5 });
  });

  test('holds four in five', () => {
    expect(learnedSpread([5, 1, 4, 2, 3].map(pair)).deltaE00).toBe(radius(5));
    expect(learnedSpread([1, 2, 3, 4, 5, 6, 7, 8, 9].map(pair)).deltaE00).toBe(radius(8));
    expect(learnedSpread(Array.from({ length: 99 }, (_, i) => pair((i + 1) / 10))).deltaE00).toBe(radius(8));
  });
});

describe('simulateSpread', () => {
  const ground = inventedSample('W0');
  const dyes = ['Y2', 'B2'].map((name) => ({ dyed: inventedSample(name), ground }));

  test('is the same for the same chance, and about the same for another', () => {
    const one = simulateSpread(ground, dyes, fixedRandom(7));
    expect(simulateSpread(ground, dyes, fixedRandom(7))).toEqual(one);
    expect(Math.abs(simulateSpread(ground, dyes, fixedRandom(99)).deltaE00 - one.deltaE00)).toBeLessThan(1);
    expect(one.deltaE00).toBeGreaterThan(1);
    expect(one.deltaE00).toBeLessThan(8);
    expect(one).toMatchObject({ from: 'simulated', count: 200 });
    expect(one.colours).toHaveLength(200);
  });

  test('grows with the variation of the pot, and is nothing without', () => {
    const at = (depth: number): number => simulateSpread(ground, dyes, fixedRandom(7), 200, { depth, groundKs: 0 }).deltaE00;
    expect(at(0)).toBeCloseTo(0, 6);
    expect(at(0.1)).toBeLessThan(at(0.3));
  });
});

describe('mcdm', () => {
  test('is the mean difference from the mean', () => {
    const labs = [49, 51].map((l) => asLab10([l, 10, 10]));
    expect(meanLab10(labs)).toEqual([50, 10, 10]);
    // At L* 50 the lightness weight is 1, so each lies 1 away, up to the mean's own place.
    expect(mcdm(labs)).toBeCloseTo(1, 2);
    expect(mcdm(labs.slice(0, 1))).toBeUndefined();
    expect(meanLab10([])).toBeUndefined();
  });
});
