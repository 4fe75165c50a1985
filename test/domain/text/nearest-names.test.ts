import { describe, expect, test } from 'vitest';
import { editDistance, nearestNames } from '../../../web/domain/text/nearest-names.ts';
import { fc } from '../../helpers/property.ts';

describe('nearestNames', () => {
  test('puts a shared beginning first, then the fewest slips', () => {
    expect(nearestNames('mad', ['weld', 'madder', 'wad'])).toEqual(['madder', 'wad']);
    expect(nearestNames('engalnd', ['england', 'finland', 'ireland'])[0]).toBe('england');
  });

  test('folds case and accents and gives each name once', () => {
    expect(nearestNames('KØBENHAVN', ['kobenhavn', 'kobenhavn', 'york'])).toEqual(['kobenhavn']);
  });

  test('gives nothing where nothing is near', () => {
    expect(nearestNames('quercitron', ['alum', 'tin'])).toEqual([]);
  });

  test('never misses a name within two slips, whatever the others are', () => {
    const name = fc.stringMatching(/^[a-z]{3,12}$/);
    fc.assert(
      fc.property(name, fc.array(name, { maxLength: 8 }), fc.nat(11), (wanted, others, at) => {
        const slip = wanted.slice(0, at % wanted.length) + wanted.slice((at % wanted.length) + 1);
        const given = nearestNames(slip, [...others, wanted], 20);
        expect(given).toContain(wanted);
      }),
    );
  });
});

describe('editDistance', () => {
  test.each([
    ['', 'abc', 3],
    ['weld', 'weld', 0],
    ['weld', 'wled', 1],
    ['woad', 'wood', 1],
    ['madder', 'mader', 1],
  ])('%s to %s is %i', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
  });
});
