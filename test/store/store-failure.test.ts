import { describe, expect, test } from 'vitest';
import { failureOf } from '../../web/store/store-failure.ts';

describe('failureOf', () => {
  test.each([
    ['QuotaExceededError', 'quota'],
    ['VersionError', 'newer-version'],
    ['InvalidStateError', 'closed'],
    ['UnknownError', 'unavailable'],
    ['SecurityError', 'unavailable'],
    ['constructor', 'unavailable'],
  ])('%s leaves the store %s', (name, failure) => {
    expect(failureOf(new DOMException('', name))).toBe(failure);
  });

  test('anything that is no error leaves it unavailable', () => {
    expect(failureOf(undefined)).toBe('unavailable');
    expect(failureOf('QuotaExceededError')).toBe('unavailable');
  });
});
