import { addDays, type IsoDay } from './iso-day.ts';

/** One turn of one sample on the board. */
export interface Turn {
  readonly code: string;
  readonly from: IsoDay;
  /** The day the next one takes its place. */
  readonly until: IsoDay;
}

/**
 * The turns of a swap set: its samples hang one after the other, each for the same number of days.
 *
 * @param codes samples of one colour, the one on the board first; the master sample is never among them.
 * @param daysEach days a sample may hang, at least 1.
 * @param until the last day looked at.
 * @returns turns in order. Where the set is through, the first sample hangs again: the caller says that its dose adds up.
 */
export function swapTurns(codes: readonly string[], daysEach: number, from: IsoDay, until: IsoDay): readonly Turn[] {
  const days = Math.max(1, Math.floor(daysEach));
  const turns: Turn[] = [];
  for (let start: IsoDay | undefined = from, at = 0; start !== undefined && start < until && codes.length > 0 && at < MOST_TURNS; at += 1) {
    const code = codes[at % codes.length];
    const next: IsoDay | undefined = addDays(start, days);
    if (code === undefined || next === undefined) break;
    turns.push({ code, from: start, until: next });
    start = next;
  }
  return turns;
}

/** Turns worked out at most. Our choice: a swap every day for a year. */
const MOST_TURNS = 366;

/** Samples needed so that none hangs longer than it may in a year. */
export const samplesForYear = (daysEach: number, openDaysPerYear: number): number =>
  Math.max(1, Math.ceil(openDaysPerYear / Math.max(1, daysEach)));
