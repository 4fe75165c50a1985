import { formatYear, formatYears } from '../../domain/date/format-years.ts';
import { originWords, standingWords } from '../../notebook/words/verdict-words.ts';
import { bandMarks, endsOf, type BandMark } from './band-shape.ts';
import type { BandStyle, ChartBand, ChartRow } from './chart-row.ts';
import { scaleOf, ticksOf, type Years } from './chart-scale.ts';

/** What each way of drawing says. */
export const bandWords = {
  local: originWords.local,
  imported: originWords.imported,
  'cloth-only': originWords['cloth-only'],
  find: originWords['on-cloth'],
  absent: standingWords.absent,
} as const satisfies Record<BandStyle, string>;

/** Heights in pixels: of a lane of bands, and of the room above and under a row's lanes. */
const LANE = 18;
const ROOM = 10;
/** Two bands closer than this would read as one. */
const APART = 4;
const LEAST_ROW = 46;
/** Half of what a year's words take. */
const EDGE_ROOM = 18;

/** A claim drawn. */
export interface DrawnBand {
  readonly claimKey: string;
  /** What a pointer resting on it reads: what the claim says and when. */
  readonly words: string;
  readonly marks: readonly BandMark[];
  /** What a finger may touch, in pixels. */
  readonly touch: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

/** A row drawn; `y` and `height` in pixels from the chart's top. */
export interface DrawnRow {
  readonly row: ChartRow;
  readonly y: number;
  readonly height: number;
  readonly bands: readonly DrawnBand[];
}

/** The chart drawn. */
export interface ChartView {
  readonly rows: readonly DrawnRow[];
  readonly height: number;
  /** Round years; without words where they would hang over the edge. */
  readonly ticks: readonly { readonly x: number; readonly words: string | undefined }[];
  /** Where the thread hangs, in pixels; undefined when its year is out of view. */
  readonly thread: number | undefined;
}

/**
 * Everything to draw for the years in view.
 *
 * @param width of the plot, in pixels.
 */
export function chartView(rows: readonly ChartRow[], years: Years, year: number, width: number): ChartView {
  const scale = scaleOf(years, width);
  let y = 0;
  const drawn = rows.map((row) => {
    const lanes = lanesOf(row.bands.map((band) => endsOf(band, scale, width)));
    const count = Math.max(1, ...lanes.map((lane) => lane + 1));
    const height = Math.max(LEAST_ROW, count * LANE + 2 * ROOM);
    const first = y + height / 2 - ((count - 1) * LANE) / 2;
    const bands = row.bands.flatMap((band, i): DrawnBand[] => {
      const ends = endsOf(band, scale, width);
      if (ends.outerTo < 0 || ends.outerFrom > width) return [];
      const middle = first + (lanes[i] ?? 0) * LANE;
      const [left, right] = [Math.max(0, ends.outerFrom - 8), Math.min(width, ends.outerTo + 8)];
      const touch = { x: left, y: middle - LANE / 2, width: Math.max(0, right - left), height: LANE };
      return [
        { claimKey: band.claimKey, words: `${row.title}: ${band.label}, ${whenWords(band)}`, marks: bandMarks(band, ends, middle), touch },
      ];
    });
    const placed = { row, y, height, bands };
    y += height;
    return placed;
  });
  const thread = scale.x(year + 0.5);
  return {
    rows: drawn,
    height: y,
    ticks: ticksOf(years, width).map((tick) => {
      const x = scale.x(tick);
      return { x, words: x < EDGE_ROOM || x > width - EDGE_ROOM ? undefined : formatYear(tick) };
    }),
    thread: thread >= 0 && thread <= width ? thread : undefined,
  };
}

/** A lane for each band, so that none lies on another; the first free one. */
export function lanesOf(ends: readonly { readonly outerFrom: number; readonly outerTo: number }[]): readonly number[] {
  const taken: (readonly [from: number, to: number])[][] = [];
  return ends.map(({ outerFrom, outerTo }) => {
    const free = taken.findIndex((lane) => lane.every(([from, to]) => outerFrom > to + APART || outerTo < from - APART));
    const lane = free === -1 ? taken.length : free;
    (taken[lane] ??= []).push([outerFrom, outerTo]);
    return lane;
  });
}

/** When a claim holds, in words; what is only possible is said beside it. */
export function whenWords({ from, to, outerFrom, outerTo }: ChartBand): string {
  const perhaps = formatYears({ from: outerFrom, to: outerTo });
  if (from !== null && to !== null && from > to) return `perhaps ${perhaps}`;
  const sure = formatYears({ from, to });
  return sure === perhaps ? sure : `${sure}, perhaps ${perhaps}`;
}
