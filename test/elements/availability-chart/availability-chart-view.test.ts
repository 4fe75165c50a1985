import { describe, expect, test } from 'vitest';
import { chartView, lanesOf, whenWords } from '../../../web/elements/availability-chart/availability-chart-view.ts';
import { bandMarks, endsOf } from '../../../web/elements/availability-chart/band-shape.ts';
import type { BandStyle, ChartBand } from '../../../web/elements/availability-chart/chart-row.ts';
import { scaleOf } from '../../../web/elements/availability-chart/chart-scale.ts';

const band = (given: Partial<ChartBand>): ChartBand => ({
  outerFrom: 900,
  from: 950,
  to: 1050,
  outerTo: 1100,
  style: 'local',
  label: 'pods',
  claimKey: 'woad#1',
  soft: false,
  ...given,
});
// One pixel a year.
const years = { from: 800, to: 1200 };
const scale = scaleOf(years, 400);

describe('endsOf', () => {
  test('a year is inclusive, and its doubtful years lie outside the sure ones', () => {
    expect(endsOf(band({}), scale, 400)).toEqual({ outerFrom: 100, from: 150, to: 251, outerTo: 301 });
  });

  test('an open end runs out over the edge', () => {
    const { outerFrom, from, to, outerTo } = endsOf(band({ outerFrom: null, from: null, to: null, outerTo: null }), scale, 400);
    expect([outerFrom < 0, from < 0, to > 400, outerTo > 400]).toEqual([true, true, true, true]);
  });

  test('where no year is sure, the tapers meet in the middle', () => {
    const { outerFrom, from, to, outerTo } = endsOf(band({ from: 1050, to: 950 }), scale, 400);
    expect(from).toBe(to);
    expect(from).toBe((outerFrom + outerTo) / 2);
  });
});

describe('bandMarks', () => {
  const ends = endsOf(band({}), scale, 400);
  const inks = (style: BandStyle, soft = false): string[] => bandMarks(band({ style, soft }), ends, 20).map(({ ink }) => ink);

  test('every style has its own ink, soft evidence a paler one', () => {
    const drawn = (['local', 'imported', 'cloth-only', 'find', 'absent'] as const).map((style) => inks(style).join());
    expect(new Set(drawn).size).toBe(5);
    expect(inks('local', true)).not.toEqual(inks('local'));
    expect(inks('imported', true)).not.toEqual(inks('imported'));
  });

  test('a solid band tapers to a point at its outermost years', () => {
    expect(bandMarks(band({}), ends, 20)[0]?.d).toMatch(/^M100 20L150 15H251L301 20L251 25H150Z$/);
  });

  test('a time shorter than a dot is still a dot', () => {
    const short = endsOf(band({ outerFrom: 1000, from: 1000, to: 1000, outerTo: 1000 }), scale, 400);
    expect(bandMarks(band({ style: 'cloth-only' }), short, 20)[0]?.d).toContain('a');
  });
});

describe('lanesOf', () => {
  test('bands that meet lie in lanes of their own, others share one', () => {
    const at = (outerFrom: number, outerTo: number) => ({ outerFrom, outerTo });
    expect(lanesOf([at(0, 100), at(50, 150), at(200, 300), at(120, 220)])).toEqual([0, 1, 0, 2]);
    expect(lanesOf([at(0, 100), at(110, 150)])).toEqual([0, 0]);
  });
});

describe('chartView', () => {
  const rows = [
    { id: 'woad', title: 'Woad', bands: [band({}), band({ style: 'find', claimKey: 'woad#2' })] },
    { id: 'none', title: 'Safflower', bands: [] },
    { id: 'late', title: 'Cochineal', bands: [band({ outerFrom: 1500, from: 1520, to: 1600, outerTo: 1600 })] },
  ];
  const view = chartView(rows, years, 950, 400);

  test('rows follow one another without a gap, and one without claims keeps its place', () => {
    expect(view.rows.map(({ row }) => row.id)).toEqual(['woad', 'none', 'late']);
    expect(view.rows[1]?.y).toBe(view.rows[0]?.height);
    expect(view.height).toBe(view.rows.reduce((sum, { height }) => sum + height, 0));
  });

  test('what is out of view is not drawn', () => {
    expect(view.rows[0]?.bands.map(({ claimKey }) => claimKey)).toEqual(['woad#1', 'woad#2']);
    expect(view.rows[2]?.bands).toEqual([]);
  });

  test('the thread hangs in the middle of its year, and not when that is out of view', () => {
    expect(view.thread).toBe(150.5);
    expect(chartView(rows, years, 1500, 400).thread).toBeUndefined();
  });
});

describe('whenWords', () => {
  test.each([
    [band({}), ['950', '1050', '900', '1100', 'perhaps']],
    [band({ from: 1050, to: 950 }), ['perhaps', '900', '1100']],
  ])('says the sure years and the doubtful ones', (given, parts) => {
    for (const part of parts) expect(whenWords(given)).toContain(part);
  });

  test('says no doubt where there is none', () => {
    expect(whenWords(band({ outerFrom: 950, outerTo: 1050 }))).not.toContain('perhaps');
  });
});
