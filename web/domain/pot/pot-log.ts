import { temperaturesIn } from './step-figures.ts';

/** A minute at the pot, by the clock on the wall there. */
export interface Moment {
  /** `2026-11-28`. */
  readonly day: string;
  /** `11:40`. */
  readonly clock: string;
}

/** A line of a trial's log. */
export interface LogLine {
  /** Absent where the line names no time. */
  readonly at?: Moment;
  readonly words: string;
  /** When it was written down, where that was later. */
  readonly writtenAt?: Moment;
  /** Where the clock had been set back: what it had shown for the entry before. */
  readonly clockWas?: Moment;
}

/** Written down this many minutes after it happened, an entry says so. Our choice: as long as wet hands take. */
const LATE_MINUTES = 5;
/** Within this many degrees of its highest a bath counts as held there. Our choice. */
const HELD_WITHIN = 3;

/** Minutes from one moment to another. */
export const minutesFrom = (from: Moment, to: Moment): number => minutesOf(to) - minutesOf(from);

/** Reckoned as if every day had 24 hours: a clock changed in the night would shift it by one. */
const minutesOf = ({ day, clock }: Moment): number => Date.parse(`${day}T${clock}Z`) / 60_000;

/**
 * A line for a trial's log: `11:40 72 °C`; on another day than the trial's with its date; later written down, it says when.
 *
 * @param trialDay the trial's own date.
 * @param before when the entry before was written: an earlier one than that shows that the clock was set back, and says so.
 */
export function logLine(words: string, at: Moment, writtenAt: Moment, trialDay: string | undefined, before?: Moment): string {
  const told = ({ day, clock }: Moment, beside: string | undefined) => (day === beside ? clock : `${day} ${clock}`);
  const late = minutesFrom(at, writtenAt) >= LATE_MINUTES;
  const said = words.replace(/\s+/g, ' ').trim();
  const back = before && minutesFrom(before, writtenAt) < 0 ? ` (clock set back from ${told(before, at.day)})` : '';
  return `${told(at, trialDay)} ${said}${back}${late ? ` (written down ${told(writtenAt, at.day)})` : ''}`;
}

/** Reads a line of a log; every line is one, also without a time. */
export function readLogLine(text: string, trialDay: string | undefined): LogLine {
  const [, day, clock, rest = ''] = /^(?:(\d{4}-\d{2}-\d{2}) )?(\d{1,2}:\d{2}) ([\s\S]*)$/.exec(text.trim()) ?? [];
  const on = day ?? trialDay;
  if (clock === undefined || on === undefined) return { words: text.trim() };
  const at = { day: on, clock: clock.padStart(5, '0') };
  const [told, writtenAt] = remarkAt('written down', rest, on);
  const [words, clockWas] = remarkAt('clock set back from', told, on);
  return { at, words, ...(writtenAt && { writtenAt }), ...(clockWas && { clockWas }) };
}

/** A remark with a time at the end of a line, and the words before it. */
function remarkAt(remark: string, text: string, day: string): readonly [words: string, at?: Moment] {
  const at = text.lastIndexOf(` (${remark} `);
  const [, otherDay = day, clock] = /^(?:(\d{4}-\d{2}-\d{2}) )?(\d{2}:\d{2})\)$/.exec(text.slice(at + remark.length + 3)) ?? [];
  return at < 0 || clock === undefined ? [text] : [text.slice(0, at), { day: otherDay, clock }];
}

/** When a log was last written in; undefined where no line tells a time. */
export function lastWritten(lines: readonly LogLine[]): Moment | undefined {
  const last = lines.findLast(({ at }) => at !== undefined);
  return last?.writtenAt ?? last?.at;
}

/** Lines of two logs of one pot as one: each line once, in the order of their times; lines without a time stay behind the one before. */
export function togetherLogged(mine: readonly string[], theirs: readonly string[], trialDay: string | undefined): readonly string[] {
  const keyed = (lines: readonly string[]) => {
    let last = -Infinity;
    return lines.map((text) => {
      const { at } = readLogLine(text, trialDay);
      last = at ? minutesOf(at) : last;
      return { text, minutes: last };
    });
  };
  const left = [...theirs];
  for (const line of mine) {
    const at = left.indexOf(line);
    if (at >= 0) left.splice(at, 1);
  }
  const more = keyed(theirs).filter(({ text }) => {
    const at = left.indexOf(text);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
  // A stable sort: what was written in one minute stays in the order of writing.
  return [...keyed(mine), ...more].sort((a, b) => (a.minutes === b.minutes ? 0 : a.minutes - b.minutes)).map(({ text }) => text);
}

/** A timer that was set at the pot. */
export interface PotTimer {
  readonly at: Moment;
  readonly minutes: number;
  readonly what: string;
}

/** The timers a log tells of: `11:40 timer 60 min: hold`. */
export const timersIn = (lines: readonly LogLine[]): readonly PotTimer[] =>
  lines.flatMap(({ at, words }) => {
    const [, minutes, what = ''] = /^timer (\d+) min(?:: (.*))?$/.exec(words) ?? [];
    return at && minutes !== undefined ? [{ at, minutes: Number(minutes), what }] : [];
  });

/** Minutes until a timer ends; below nothing once it has. */
export const minutesLeft = ({ at, minutes }: PotTimer, now: Moment): number => minutes - minutesFrom(at, now);

/** Since when the bath has been about as hot as it got, after the fibre last went in; undefined where no temperature was logged. */
export function heldSince(lines: readonly LogLine[]): Moment | undefined {
  const begin = lines.findLastIndex(({ words }) => /^in\b/.test(words));
  const hot = lines.slice(Math.max(0, begin)).flatMap(({ at, words }) => {
    const degrees = temperaturesIn(words)[0]?.toCelsius;
    return at && degrees !== undefined ? [{ at, degrees }] : [];
  });
  const top = Math.max(...hot.map(({ degrees }) => degrees));
  return hot.find(({ degrees }) => degrees >= top - HELD_WITHIN)?.at;
}
