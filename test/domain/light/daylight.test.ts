import { describe, expect, test } from 'vitest';
import { OUTDOOR_CAVEATS, outdoorDose, SILL_CAVEATS, sillLuxHours, SILLS } from '../../../web/domain/light/daylight.ts';
import { yearlyLuxHours } from '../../../web/domain/light/dose.ts';
import { fadesOfDose } from '../../../web/domain/light/years-to-fade.ts';

describe('sillLuxHours', () => {
  test('north 7.7 and sunny 32 Mlx·h a year', () => {
    expect(sillLuxHours(SILLS.north) / 1e6).toBeCloseTo(7.68, 2);
    expect(sillLuxHours(SILLS.sunny) / 1e6).toBeCloseTo(32, 6);
  });

  test('a clear summer month at a mean of 5 klx for 10 h is 1.5 Mlx·h', () => {
    expect(sillLuxHours({ outdoorLux: 5000, sillFactor: 1, glass: 1, daylightHours: 300 })).toBe(1.5e6);
  });

  // From our judgement of the sill: 1.5 to 3 Mlx·h a clear summer month.
  test('two summer months are 20 to 40 museum years of 3000 h at 50 lx', () => {
    const month = sillLuxHours({ outdoorLux: 5000, sillFactor: 1, glass: 1, daylightHours: 300 });
    const museumYear = yearlyLuxHours({ lux: 50, hoursPerDay: 8, daysPerYear: 375, uv: 'removed' });
    expect([(2 * month) / museumYear, (4 * month) / museumYear]).toEqual([20, 40]);
  });

  test('says that it is an estimate', () => {
    expect(SILL_CAVEATS).toContain('light-estimated');
  });
});

describe('outdoorDose', () => {
  test('a day of eight hours: 40–160 klx·h in shade, 400–800 klx·h in sun', () => {
    expect(outdoorDose('shade')).toEqual({ from: 40_000, to: 160_000 });
    expect(outdoorDose('sun')).toEqual({ from: 400_000, to: 800_000 });
  });

  test('one day in the sun can cost class 1 more than a first fade', () => {
    expect(fadesOfDose(outdoorDose('sun').from, { from: 1, to: 1 }, 'rich').from).toBeGreaterThan(1);
  });

  test('says that there is no glass', () => {
    expect(OUTDOOR_CAVEATS).toContain('no-glass');
  });
});
