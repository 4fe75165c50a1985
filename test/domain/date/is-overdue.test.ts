import { describe, expect, test } from 'vitest';
import { isOverdue } from '../../../web/domain/date/is-overdue.ts';
import { parseDate } from '../../../web/domain/date/parse-date.ts';

describe('isOverdue', () => {
  test.each([
    ['2026-11-25', false],
    ['2026-11-24', true],
    ['2027-01-01', false],
    ['2026-11', false],
    ['2026-10', true],
    ['2026', false],
    ['2025', true],
    ['c. 2020', true],
    ['c. 2022', false],
    ['2010s', true],
    ['2020/..', false],
    ['one day', false],
  ])('%s on 25 November 2026: %s', (written, overdue) => {
    expect(isOverdue(written, parseDate(written).span, '2026-11-25')).toBe(overdue);
  });
});
