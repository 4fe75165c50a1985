import { isoDay } from '../../domain/light/iso-day.ts';

/** A calendar day, `2026-05-01`, as whoever reads the page writes one; anything else as it stands. */
export const dayWords = (day: string): string => dayIn(day, undefined, 'medium');

/** A calendar day on what the public is given: in English, the month as a word, the same whoever prints it. */
export const dayInPrint = (day: string): string => dayIn(day, 'en-GB', 'long');

function dayIn(text: string, locale: string | undefined, dateStyle: 'medium' | 'long'): string {
  const day = isoDay(text);
  return day ? new Date(`${day}T00:00:00Z`).toLocaleDateString(locale, { dateStyle, timeZone: 'UTC' }) : text;
}
