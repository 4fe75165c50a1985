import type { YearSpan } from './date-span.ts';
import { filledYear } from './filled-year.ts';

/** A year as people say it: -1200 is "1201 BCE", years of our era stand plain. */
export const formatYear = (year: number): string => (year > 0 ? `${year}` : `${1 - year} BCE`);

/** Five digits and more are read only with their era. */
const closing = (year: number): string => (year > 9999 ? `${year} CE` : formatYear(year));

/**
 * A run of years as people say it: "1325–1375", "100–68 BCE", "27 BCE–14 CE", "until 999", "from 1001".
 *
 * @param years astronomical, inclusive, `null` when open.
 * @returns words that `parseDate` reads back as the same years; "any time" is for people alone.
 * @error none.
 */
export function formatYears({ from, to }: YearSpan): string {
  if (from === null) return to === null ? 'any time' : `until ${closing(to)}`;
  if (to === null) return `from ${closing(from)}`;
  if (from === to) return closing(from);
  if (to <= 0) {
    // "870–50 BCE" could be 870–850: say the era twice where the second year could be a shortened one.
    const couldBeShort = `${1 - to}`.length < `${1 - from}`.length && filledYear(`${1 - from}`, `${1 - to}`) < 1 - from;
    return `${couldBeShort ? formatYear(from) : 1 - from}–${formatYear(to)}`;
  }
  // "10–1405" looks like a month and its year.
  if (from > 0 && from <= 12 && to >= 1000) return `${from}–${to} CE`;
  return from <= 0 ? `${formatYear(from)}–${to} CE` : `${from}–${closing(to)}`;
}

/** A year as EDTF writes it: four digits, a minus before our era, `Y` when four do not hold it. */
export const edtfYear = (year: number): string => {
  const digits = `${Math.abs(year)}`;
  const sign = year < 0 ? '-' : '';
  return digits.length > 4 ? `Y${sign}${digits}` : sign + digits.padStart(4, '0');
};
