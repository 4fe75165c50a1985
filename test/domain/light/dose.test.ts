import { describe, expect, test } from 'vitest';
import { hoursPerYear, luxFromFootCandles, luxHours, ultravioletMilliwatts, yearlyLuxHours } from '../../../web/domain/light/dose.ts';

describe('luxHours', () => {
  test('50 lx for 10 h is 500 lx·h, as is 250 lx for 2 h (ERCO)', () => {
    expect(luxHours(50, 10)).toBe(500);
    expect(luxHours(250, 2)).toBe(500);
  });
});

describe('luxFromFootCandles', () => {
  test('1 fc is 10.764 lx and 10 fc are 107.6 lx', () => {
    expect(luxFromFootCandles(1)).toBeCloseTo(10.764, 3);
    expect(luxFromFootCandles(10)).toBeCloseTo(107.6, 1);
  });
});

describe('yearlyLuxHours', () => {
  test('a board at 200 lx, 6 h, 120 days has 144 000 lx·h', () => {
    expect(yearlyLuxHours({ lux: 200, hoursPerDay: 6, daysPerYear: 120, uv: 'removed' })).toBe(144_000);
  });

  test('8 h on 365 days are near the usual 3000 h', () => {
    expect(hoursPerYear({ lux: 1, hoursPerDay: 8, daysPerYear: 365, uv: 'removed' })).toBe(2920);
  });
});

describe('ultravioletMilliwatts', () => {
  test('75 µW/lm at 50 lx is 3.75 mW/m²', () => {
    expect(ultravioletMilliwatts(75, 50)).toBe(3.75);
  });
});
