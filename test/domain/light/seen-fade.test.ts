import { describe, expect, test } from 'vitest';
import { leftToFade } from '../../../web/domain/light/seen-fade.ts';

// Worked by hand: first fade at D × 1.7 / s; left = that − D. Grade 4 is nominally 1.7 (EN 20105-A02:1994).
describe('leftToFade', () => {
  test('half the first step after 100 000 lx·h leaves as much again, though its class would give 2.9 million', () => {
    expect(leftToFade({ deltaEF: 0.85, luxHours: 100_000 }, 3e6)).toEqual({ luxHours: 100_000, because: 'faster' });
  });

  test('1.36 after 80 000 lx·h: the first fade at 100 000, so 20 000 left', () => {
    const found = leftToFade({ deltaEF: 1.36, luxHours: 80_000 }, 3e6);
    expect(found?.luxHours).toBeCloseTo(20_000, 6);
    expect(found?.because).toBe('faster');
  });

  test('grade 4 is the first fade: nothing is left', () => {
    expect(leftToFade({ deltaEF: 1.7, luxHours: 100_000 }, 3e6)).toEqual({ luxHours: 0, because: 'shown' });
    expect(leftToFade({ deltaEF: 5, luxHours: 0 }, undefined)).toEqual({ luxHours: 0, because: 'shown' });
  });

  test('less than its class foretells never puts the day off', () => {
    expect(leftToFade({ deltaEF: 0.5, luxHours: 250_000 }, 300_000)).toEqual({ luxHours: 50_000, because: 'as-published' });
  });

  test('grade 5 is no change seen, and more light than the class allows leaves none', () => {
    expect(leftToFade({ deltaEF: 0.39, luxHours: 1000 }, 300_000)).toEqual({ luxHours: 299_000, because: 'as-published' });
    expect(leftToFade({ deltaEF: 0, luxHours: 400_000 }, 300_000)).toEqual({ luxHours: 0, because: 'as-published' });
  });

  test('of an unknown class only a change that was seen says something', () => {
    expect(leftToFade({ deltaEF: 0.85, luxHours: 40_000 }, undefined)).toEqual({ luxHours: 40_000, because: 'faster' });
    expect(leftToFade({ deltaEF: 0.2, luxHours: 40_000 }, undefined)).toBeUndefined();
  });
});
