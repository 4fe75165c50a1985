import { describe, expect, test } from 'vitest';
import type { ChartBand, ChartRow } from '../../../web/elements/availability-chart/chart-row.ts';
import {
  betweenEnds,
  CLOSEST_YEARS,
  including,
  scaleOf,
  ticksOf,
  yearsOf,
  zoomed,
} from '../../../web/elements/availability-chart/chart-scale.ts';
import { yearAfterKey } from '../../../web/elements/availability-chart/year-after-key.ts';
import { fc } from '../../helpers/property.ts';

const band = (outerFrom: number | null, from: number | null, to: number | null, outerTo: number | null): ChartBand => ({
  outerFrom,
  from,
  to,
  outerTo,
  style: 'local',
  label: 'a note',
  claimKey: 'k',
  soft: false,
});
const row = (...bands: readonly ChartBand[]): ChartRow => ({ id: 'woad', title: 'Woad', bands });

const whole = { from: 600, to: 1800 };
const views = fc
  .tuple(fc.integer({ min: 600, max: 1780 }), fc.integer({ min: 20, max: 1200 }))
  .map(([from, span]) => ({ from: Math.min(from, 1800 - span), to: Math.min(from, 1800 - span) + span }));

describe('scaleOf', () => {
  test('a place read back is the year that was put there', () => {
    fc.assert(
      fc.property(views, fc.integer({ min: 200, max: 2000 }), fc.integer({ min: 600, max: 1800 }), (view, width, year) => {
        const scale = scaleOf(view, width);
        return scale.year(scale.x(year)) === year;
      }),
    );
  });
});

describe('yearsOf', () => {
  test('holds every known year, the asked one, and leaves open ends alone', () => {
    const years = yearsOf([row(band(800, 850, null, null)), row(band(null, null, 1100, 1203))], 1370);
    expect(years.from).toBeLessThan(800);
    expect(years.to).toBeGreaterThan(1370);
    expect(years.to - years.from).toBeLessThan(900);
  });

  test('without claims there are still years around the asked one', () => {
    const years = yearsOf([], 950);
    expect(years.from).toBeLessThan(950);
    expect(years.to).toBeGreaterThan(950);
  });
});

describe('ticksOf', () => {
  test('round years inside the view, never closer than a label needs', () => {
    fc.assert(
      fc.property(views, fc.integer({ min: 220, max: 1400 }), (view, width) => {
        const ticks = ticksOf(view, width);
        const { x } = scaleOf(view, width);
        const apart = ticks.slice(1).every((tick, i) => x(tick) - x(ticks[i] ?? tick) >= 60);
        return ticks.length > 0 && apart && ticks.every((tick) => tick >= view.from && tick <= view.to);
      }),
    );
  });

  test.each([
    [{ from: 600, to: 1800 }, 800, [600, 800, 1000, 1200, 1400, 1600, 1800]],
    [{ from: 1360, to: 1390 }, 400, [1360, 1370, 1380, 1390]],
  ])('%o over %d pixels', (view, width, ticks) => {
    expect(ticksOf(view, width)).toEqual(ticks);
  });
});

describe('zoomed', () => {
  test('stays within what there is, and not closer than can be seen', () => {
    fc.assert(
      fc.property(views, fc.integer({ min: 600, max: 1800 }), fc.double({ min: 0.2, max: 5, noNaN: true }), (view, year, factor) => {
        const next = zoomed(view, whole, year, factor);
        return next.from >= whole.from && next.to <= whole.to && next.to - next.from >= CLOSEST_YEARS - 1;
      }),
    );
  });

  test('the asked year stays in view', () => {
    const next = zoomed(whole, whole, 1370, 0.5);
    expect(next.to - next.from).toBe(600);
    expect(1370 > next.from && 1370 < next.to).toBe(true);
  });
});

describe('including', () => {
  test('moves the view and keeps its size', () => {
    expect(including({ from: 900, to: 1000 }, whole, 950)).toEqual({ from: 900, to: 1000 });
    const moved = including({ from: 900, to: 1000 }, whole, 1200);
    expect(moved.to - moved.from).toBe(100);
    expect(moved.from < 1200 && moved.to > 1200).toBe(true);
  });
});

describe('betweenEnds', () => {
  test('takes the ends in either order and keeps the least that can be seen', () => {
    expect(betweenEnds(1400, 1200, whole)).toEqual({ from: 1200, to: 1400 });
    expect(betweenEnds(1300, 1301, whole).to - betweenEnds(1300, 1301, whole).from).toBe(CLOSEST_YEARS);
  });
});

describe('yearAfterKey', () => {
  test.each([
    ['ArrowRight', false, 1371],
    ['ArrowLeft', true, 1360],
    ['PageUp', false, 1420],
    ['PageDown', false, 1320],
    ['Home', false, 600],
    ['End', false, 1800],
    ['a', false, undefined],
  ])('%s (shift %s) from 1370 leads to %s', (key, shift, year) => {
    expect(yearAfterKey(key, shift, 1370, whole)).toBe(year);
  });

  test('stops at the ends', () => {
    expect(yearAfterKey('ArrowRight', false, 1800, whole)).toBe(1800);
    expect(yearAfterKey('PageDown', false, 610, whole)).toBe(600);
  });
});
