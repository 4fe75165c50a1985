/** An astronomical year: 1 BCE is 0, 2 BCE is -1. `null` is unbounded on that side. */
export type Bound = number | null;

/**
 * A date as a span with doubt on either side. All bounds inclusive, astronomical years.
 * Core = latestStart to earliestEnd; outer = earliestStart to latestEnd.
 */
export interface DateSpan {
  readonly earliestStart: Bound;
  readonly latestStart: Bound;
  readonly earliestEnd: Bound;
  readonly latestEnd: Bound;
  /** What was typed. */
  readonly text: string;
}

/** A plain run of whole years, both ends in it. */
export interface YearSpan {
  readonly from: Bound;
  readonly to: Bound;
}

/** The years a date holds throughout. */
export const coreOf = (span: DateSpan): YearSpan => ({ from: span.latestStart, to: span.earliestEnd });

/** The years a date may touch. */
export const outerOf = (span: DateSpan): YearSpan => ({ from: span.earliestStart, to: span.latestEnd });
