import { describe, expect, test } from 'vitest';
import { addDays, daysBetween, isoDay, type IsoDay } from '../../../web/domain/light/iso-day.ts';
import { rotateBy } from '../../../web/domain/light/rotate-by.ts';
import { samplesForYear, swapTurns } from '../../../web/domain/light/swap-set.ts';

const day = (text: string): IsoDay => {
  const read = isoDay(text);
  if (!read) throw new Error(`no day: ${text}`);
  return read;
};

describe('isoDay', () => {
  test.each(['2025-02-29', '2025-13-01', '2025-1-1', 'soon', '2025-04-31'])('%s is no day', (text) => {
    expect(isoDay(text)).toBeUndefined();
  });

  test('a leap day is one, and days are counted over it', () => {
    expect(addDays(day('2024-02-28'), 2)).toBe('2024-03-01');
    expect(daysBetween(day('2024-02-28'), day('2024-03-01'))).toBe(2);
    expect(addDays(day('9999-12-31'), 1)).toBeUndefined();
  });
});

describe('rotateBy', () => {
  const gallery = { lux: 50, hoursPerDay: 8, daysPerYear: 365, uv: 'removed' } as const;

  test('high class: the year is spent after 37 days of eight hours at 50 lx', () => {
    expect(rotateBy({ from: 3, to: 4 }, gallery, day('2026-04-01'))).toEqual({
      day: '2026-05-08',
      because: 'year-limit',
      luxHours: 15_000,
    });
  });

  test('closed days stretch it', () => {
    expect(rotateBy({ from: 3, to: 4 }, { ...gallery, daysPerYear: 182.5 }, day('2026-04-01'))?.day).toBe('2026-06-14');
  });

  test('medium class within its yearly limit: until the first fade, class 4 after about 68 years', () => {
    const found = rotateBy({ from: 4, to: 6 }, gallery, day('2026-01-01'));
    expect(found?.because).toBe('first-fade');
    expect(found?.day.slice(0, 4)).toBe('2094');
  });

  test('in a sunny window class 1 may fade before the year of its class is spent', () => {
    expect(
      rotateBy({ from: 1, to: 1 }, { lux: 20_000, hoursPerDay: 10, daysPerYear: 365, uv: 'rich' }, day('2026-06-01'), 215_000),
    ).toMatchObject({
      day: '2026-06-01',
      because: 'first-fade',
    });
  });

  test('no light never ends', () => {
    expect(rotateBy({ from: 1, to: 1 }, { ...gallery, lux: 0 }, day('2026-01-01'))).toBeUndefined();
  });
});

describe('swapTurns', () => {
  test('hangs one sample after the other', () => {
    expect(swapTurns(['A-1', 'A-2'], 37, day('2026-04-01'), day('2026-07-01'))).toEqual([
      { code: 'A-1', from: '2026-04-01', until: '2026-05-08' },
      { code: 'A-2', from: '2026-05-08', until: '2026-06-14' },
      { code: 'A-1', from: '2026-06-14', until: '2026-07-21' },
    ]);
  });

  test('no samples, no turns; a turn is at least a day', () => {
    expect(swapTurns([], 37, day('2026-04-01'), day('2026-07-01'))).toEqual([]);
    expect(swapTurns(['A'], 0, day('2026-04-01'), day('2027-12-01'))).toHaveLength(366);
  });

  test('37 days each need 10 samples for a full year', () => {
    expect(samplesForYear(37, 365)).toBe(10);
  });
});
