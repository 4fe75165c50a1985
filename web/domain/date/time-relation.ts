import type { Bound, DateSpan, YearSpan } from './date-span.ts';
import { coreOf, outerOf } from './date-span.ts';

/** How a claim's time stands to the asked years. `later`: the claim lies later than they do. */
export type TimeWord = 'throughout' | 'part' | 'perhaps' | 'later' | 'earlier';

/** The word, and the years between them when they do not meet (0 when they do). */
export interface TimeRelation {
  readonly relation: TimeWord;
  readonly gapYears: number;
}

/** Open sides as numbers that compare: no year lies before an open start or after an open end. */
const reaching = ({ from, to }: YearSpan): readonly [from: number, to: number] => [openStart(from), openEnd(to)];
const openStart = (bound: Bound): number => bound ?? -Infinity;
const openEnd = (bound: Bound): number => bound ?? Infinity;

/**
 * Time of a claim seen from the asked years; the first word that applies. A claim whose core is empty (its latest start
 * lies after its earliest end) is at best `perhaps`.
 *
 * @param claim what the evidence says.
 * @param asked the core of what was asked for.
 * @returns the word; gap in whole years, from the nearest asked year to the nearest outer year.
 * @error none.
 */
export function timeRelation(claim: DateSpan, asked: YearSpan): TimeRelation {
  const [askedFrom, askedTo] = reaching(asked);
  const [coreFrom, coreTo] = reaching(coreOf(claim));
  const [outerFrom, outerTo] = reaching(outerOf(claim));
  if (coreFrom <= coreTo) {
    if (coreFrom <= askedFrom && askedTo <= coreTo) return { relation: 'throughout', gapYears: 0 };
    if (coreFrom <= askedTo && askedFrom <= coreTo) return { relation: 'part', gapYears: 0 };
  }
  if (outerFrom > askedTo) return { relation: 'later', gapYears: outerFrom - askedTo };
  if (outerTo < askedFrom) return { relation: 'earlier', gapYears: askedFrom - outerTo };
  return { relation: 'perhaps', gapYears: 0 };
}
