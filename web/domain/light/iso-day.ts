/** A calendar day, `2026-05-01`: no hour, no place. */
export type IsoDay = string & { readonly __brand: 'IsoDay' };

const DAY_MS = 86_400_000;

/**
 * Reads a day.
 *
 * @returns undefined for what is no real day, such as 30 February.
 */
export function isoDay(text: string): IsoDay | undefined {
  const found = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text.trim());
  if (!found) return undefined;
  const ms = Date.UTC(Number(found[1]), Number(found[2]) - 1, Number(found[3]));
  const day = dayOf(ms);
  return day === found[0] ? day : undefined;
}

const dayOf = (ms: number): IsoDay => new Date(ms).toISOString().slice(0, 10) as IsoDay;
const msOf = (day: IsoDay): number => Date.parse(`${day}T00:00:00Z`);

/**
 * A day so many days on; part days are dropped.
 *
 * @returns undefined past the year 9999, which the form cannot hold.
 */
export function addDays(day: IsoDay, days: number): IsoDay | undefined {
  const ms = msOf(day) + Math.floor(days) * DAY_MS;
  return ms <= Date.UTC(9999, 11, 31) && ms >= Date.UTC(1000, 0, 1) ? dayOf(ms) : undefined;
}

/** Days from one day to another, negative when the other is earlier. */
export const daysBetween = (from: IsoDay, to: IsoDay): number => Math.round((msOf(to) - msOf(from)) / DAY_MS);
