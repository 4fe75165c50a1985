import { afterEach, describe, expect, test, vi } from 'vitest';
import { dayInPrint, dayWords } from '../../web/notebook/words/day-words.ts';

afterEach(() => vi.restoreAllMocks());

/** What a reader in a place sees: the runtime's own language is fixed when it starts, so it is named for the test. */
function asReadIn(locale: string): void {
  const own = Date.prototype.toLocaleDateString;
  vi.spyOn(Date.prototype, 'toLocaleDateString').mockImplementation(function (this: Date, asked, options) {
    return own.call(this, asked ?? locale, options);
  });
}

describe('a day in words', () => {
  // Unicode CLDR, dateFormats medium: en-GB "d MMM y", de "dd.MM.y", sv "d MMM y".
  test.each([
    ['en-GB', '1 May 2026'],
    ['de', '01.05.2026'],
    ['sv', '1 maj 2026'],
  ])('for a reader in %s: %s', (locale, written) => {
    asReadIn(locale);
    expect(dayWords('2026-05-01')).toBe(written);
  });

  test('in print the same for every printer, and never a day off', () => {
    asReadIn('de');
    expect(dayInPrint('2026-01-01')).toBe('1 January 2026');
    expect(dayInPrint('2025-12-31')).toBe('31 December 2025');
  });

  test.each(['2025', '2025-05', 'spring 2025', '2025-02-30', ''])('%o is no day and stays as it is', (text) => {
    expect([dayWords(text), dayInPrint(text)]).toEqual([text, text]);
  });
});
