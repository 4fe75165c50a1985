import type { DateSpan } from './date-span.ts';

/** Why a date was not read. */
export type DateProblemCode = 'date-unreadable' | 'date-ambiguous' | 'date-reversed' | 'date-impossible';

/** A date that was not read, and two texts that would be. */
export interface DateProblem {
  readonly code: DateProblemCode;
  readonly suggestions: readonly [string, string];
}

/** Either a span or a problem, never both and never neither. */
export type DateReading =
  { readonly span: DateSpan; readonly problem?: undefined } | { readonly span?: undefined; readonly problem: DateProblem };

/** A problem in one line. */
export const dateProblem = (code: DateProblemCode, suggestions: readonly [string, string]): { readonly problem: DateProblem } => ({
  problem: { code, suggestions },
});
