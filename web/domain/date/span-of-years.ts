import type { Bound, DateSpan } from './date-span.ts';
import type { ReachTable } from './reach.ts';
import { halfReachAt } from './reach.ts';

/** One side of a date: its year, and whether a circa or query stands on it. */
export interface SpanSide {
  readonly year: Bound;
  readonly loose: boolean;
  /** The year whose reach counts, where it is not `year` itself ("before c. 1501" ends in 1500, loose as 1501 is). */
  readonly reachYear?: number;
}

const half = (side: SpanSide, reach: ReachTable): number =>
  side.loose && side.year !== null ? halfReachAt(side.reachYear ?? side.year, reach) : 0;

/**
 * A span from its two sides. The core stays what was said; a loose side moves its outer bound out by half the reach.
 *
 * @param start, end astronomical years, `null` when open.
 * @returns four bounds; earliestStart ≤ latestStart and earliestEnd ≤ latestEnd.
 * @error none: the caller has put the sides in order.
 */
export function spanOfYears(start: SpanSide, end: SpanSide, reach: ReachTable, text: string): DateSpan {
  return {
    earliestStart: start.year === null ? null : start.year - half(start, reach),
    latestStart: start.year,
    earliestEnd: end.year,
    latestEnd: end.year === null ? null : end.year + half(end, reach),
    text,
  };
}
