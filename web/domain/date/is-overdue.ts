import type { DateSpan } from './date-span.ts';

/**
 * Whether a day to come back by is past.
 *
 * @param written the date as it stands in the note: its months and days count here, elsewhere only years do.
 * @param span how it was read; absent where it could not be.
 * @param today `YYYY-MM-DD`.
 * @returns false for what cannot be read, and for the day itself.
 */
export function isOverdue(written: string, span: DateSpan | undefined, today: string): boolean {
  const day = /^\s*(\d{4}(?:-\d{2}){0,2})\s*$/.exec(written)?.[1];
  if (day !== undefined) return day < today.slice(0, day.length);
  const last = span?.latestEnd;
  return last !== undefined && last !== null && last < Number(today.slice(0, 4));
}
