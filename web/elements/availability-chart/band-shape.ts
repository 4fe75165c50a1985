import type { ChartBand } from './chart-row.ts';
import type { Scale } from './chart-scale.ts';

/** How a shape is inked. */
export type BandInk = 'solid' | 'pale' | 'line' | 'hatch' | 'dots' | 'knot' | 'thin';

/** One shape of a band, in pixels. */
export interface BandMark {
  readonly d: string;
  readonly ink: BandInk;
}

/** Half the height of a solid band, and of the gap between two lines, in pixels. */
const HALF = 5;
const LINE_HALF = 3;
const DOT = 2.6;
const DOT_PITCH = 8;
const KNOT = 5.5;

/** A band's four ends on the screen: where it may begin and surely holds, and the other way round. */
export interface Ends {
  readonly outerFrom: number;
  readonly from: number;
  readonly to: number;
  readonly outerTo: number;
}

/**
 * Where a band's ends fall, in pixels. An open end runs out over the edge of the view; where no year is sure, the two sure ends meet
 * in the middle of those that may be.
 *
 * @param width of the view, in pixels.
 */
export function endsOf(band: ChartBand, scale: Scale, width: number): Ends {
  const start = (year: number | null): number => (year === null ? -2 * KNOT : scale.x(year));
  // A year is inclusive: its band ends where the next begins.
  const end = (year: number | null): number => (year === null ? width + 2 * KNOT : scale.x(year + 1));
  const [outerFrom, outerTo] = [start(band.outerFrom), end(band.outerTo)];
  const [from, to] = [Math.max(outerFrom, start(band.from)), Math.min(outerTo, end(band.to))];
  if (from <= to) return { outerFrom, from, to, outerTo };
  const middle = (outerFrom + outerTo) / 2;
  return { outerFrom, from: middle, to: middle, outerTo };
}

/** A band's shapes around a height, in pixels: solid, two lines, dots, a knot or hatching; doubtful years taper to a point. */
export function bandMarks(band: ChartBand, ends: Ends, y: number): readonly BandMark[] {
  switch (band.style) {
    case 'local':
      return [{ d: tapered(ends, y, HALF), ink: band.soft ? 'pale' : 'solid' }];
    case 'imported':
      return [{ d: sides(ends, y, LINE_HALF), ink: band.soft ? 'thin' : 'line' }];
    case 'cloth-only':
      return [{ d: dots(ends, y), ink: band.soft ? 'pale' : 'dots' }];
    case 'absent':
      return [{ d: tapered(ends, y, HALF), ink: 'hatch' }];
    case 'find':
      return find(band, ends, y);
  }
}

function tapered({ outerFrom, from, to, outerTo }: Ends, y: number, half: number): string {
  return `M${n(outerFrom)} ${y}L${n(from)} ${y - half}H${n(to)}L${n(outerTo)} ${y}L${n(to)} ${y + half}H${n(from)}Z`;
}

function sides({ outerFrom, from, to, outerTo }: Ends, y: number, half: number): string {
  const side = (at: number): string => `M${n(outerFrom)} ${y}L${n(from)} ${at}H${n(to)}L${n(outerTo)} ${y}`;
  return side(y - half) + side(y + half);
}

/** Dots along the years, smaller towards a doubtful end; one at least, however short the time. */
function dots(ends: Ends, y: number): string {
  const { outerFrom, from, to, outerTo } = ends;
  const count = Math.max(1, Math.round((outerTo - outerFrom) / DOT_PITCH));
  const pitch = (outerTo - outerFrom) / count;
  return Array.from({ length: count }, (_, i) => {
    const x = outerFrom + (i + 0.5) * pitch;
    const sure = x < from ? (x - outerFrom) / Math.max(1, from - outerFrom) : x > to ? (outerTo - x) / Math.max(1, outerTo - to) : 1;
    return circle(x, y, count === 1 ? DOT : Math.max(0.7, DOT * sure));
  }).join('');
}

/** A knot at its date, and a thin thread over the years it may be of. */
function find(band: ChartBand, { outerFrom, from, to, outerTo }: Ends, y: number): readonly BandMark[] {
  const middle = (from + to) / 2;
  return [
    { d: `M${n(outerFrom)} ${y}H${n(outerTo)}`, ink: 'thin' },
    { d: circle(middle, y, KNOT), ink: band.soft ? 'pale' : 'knot' },
    { d: `M${n(middle - 2)} ${y + KNOT - 1}l-3 4.5M${n(middle + 2)} ${y + KNOT - 1}l3 4.5`, ink: 'line' },
  ];
}

const circle = (x: number, y: number, r: number): string =>
  `M${n(x - r)} ${y}a${n(r)} ${n(r)} 0 1 0 ${n(2 * r)} 0a${n(r)} ${n(r)} 0 1 0 ${n(-2 * r)} 0Z`;
const n = (value: number): number => Math.round(value * 10) / 10;
