import type { ChartRow } from './chart-row.ts';

/** Years in view, first to last. */
export interface Years {
  readonly from: number;
  readonly to: number;
}

/** No closer than this: a year would be wider than what is known. Our choice. */
export const CLOSEST_YEARS = 20;
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000] as const;

/** Where a year stands, in pixels from the left, and back. */
export interface Scale {
  readonly x: (year: number) => number;
  readonly year: (x: number) => number;
}

/** A straight scale of years over a width in pixels. */
export function scaleOf({ from, to }: Years, width: number): Scale {
  const perYear = width / Math.max(1, to - from);
  return { x: (year) => (year - from) * perYear, year: (x) => Math.round(from + x / perYear) };
}

/** All the years of some rows and the asked one, rounded outwards to whole steps, with a little room. */
export function yearsOf(rows: readonly ChartRow[], year: number): Years {
  const known = rows.flatMap(({ bands }) =>
    bands.flatMap(({ from, to, outerFrom, outerTo }) => [from, to, outerFrom, outerTo].filter((bound) => bound !== null)),
  );
  // Not spread into Math.min: a notebook may hold more claims than a call takes arguments.
  const first = known.reduce((least, bound) => Math.min(least, bound), year);
  const last = known.reduce((most, bound) => Math.max(most, bound), year);
  const room = Math.max(CLOSEST_YEARS, (last - first) * 0.04);
  const step = stepFor(last - first + 2 * room, 12);
  return { from: Math.floor((first - room) / step) * step, to: Math.ceil((last + room) / step) * step };
}

/** Round years to write under the chart, none nearer than a label needs. */
export function ticksOf({ from, to }: Years, width: number): readonly number[] {
  const step = stepFor(to - from, Math.max(2, width / 72));
  const first = Math.ceil(from / step) * step;
  // 0 is the year 1 BCE, which nobody calls round: it is written where it falls.
  return Array.from({ length: Math.max(0, Math.floor((to - first) / step) + 1) }, (_, i) => first + i * step);
}

/**
 * Years in view after coming closer (factor below 1) or going back (above 1), the given year staying where it is.
 *
 * @param whole what there is to see at most.
 */
export function zoomed(view: Years, whole: Years, year: number, factor: number): Years {
  const span = Math.min(whole.to - whole.from, Math.max(CLOSEST_YEARS, (view.to - view.from) * factor));
  const share = (Math.min(view.to, Math.max(view.from, year)) - view.from) / Math.max(1, view.to - view.from);
  return within({ from: Math.round(year - share * span), to: Math.round(year - share * span + span) }, whole);
}

/** Years in view moved, not resized, until the given year is among them. */
export function including(view: Years, whole: Years, year: number): Years {
  if (year >= view.from && year <= view.to) return view;
  const span = view.to - view.from;
  const from = year < view.from ? year - Math.round(span * 0.1) : year + Math.round(span * 0.1) - span;
  return within({ from, to: from + span }, whole);
}

/** The years between two dragged ends, in whichever order, not closer than can be seen. */
export function betweenEnds(one: number, other: number, whole: Years): Years {
  const [from, to] = [Math.min(one, other), Math.max(one, other)];
  const missing = Math.max(0, CLOSEST_YEARS - (to - from));
  return within({ from: from - Math.floor(missing / 2), to: to + Math.ceil(missing / 2) }, whole);
}

function within({ from, to }: Years, whole: Years): Years {
  const span = Math.min(to - from, whole.to - whole.from);
  const start = Math.min(Math.max(from, whole.from), whole.to - span);
  return { from: start, to: start + span };
}

const stepFor = (span: number, most: number): number => STEPS.find((step) => span / step <= most) ?? STEPS[STEPS.length - 1] ?? 1;
