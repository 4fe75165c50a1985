import type { DateReading } from './date-problem.ts';
import { dateProblem } from './date-problem.ts';
import { edtfYear } from './format-years.ts';
import type { ReachTable } from './reach.ts';
import { usualReach } from './reach.ts';
import { spanOfYears } from './span-of-years.ts';
import { reversedSuggestions } from './suggest-dates.ts';

const point = /^(?:(-?)(\d{4}|\d{3}X|\d{2}XX)(?:-(\d\d|XX)(?:-(\d\d|XX))?)?|Y(-?)([1-9]\d{4,}))([?~%]?)$/;
const dateTime = /^(-?\d{4}-\d\d-\d\d)T(\d\d):(\d\d):(\d\d)(?:Z|[+-](\d\d)(?::(\d\d))?)?$/;
/** Beyond this a double no longer counts single years. */
const mostDigits = 15;
const daysOfMonths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** One date: the years it covers, and what puts two dates of one year in order. */
interface Point {
  readonly from: number;
  readonly to: number;
  readonly loose: boolean;
  readonly month?: number;
  readonly day?: number;
}

/** Looks like EDTF and names a month, day or year there is not; the year it does name. */
interface Impossible {
  readonly impossibleIn: number;
}

const open = { year: null, loose: false } as const;
const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const daysIn = (year: number, month: number): number => (month === 2 && isLeap(year) ? 29 : (daysOfMonths[month - 1] ?? 0));
const isMonth = (month: number): boolean => month >= 1 && month <= 12;
const isSeason = (month: number): boolean => month >= 21 && month <= 24;

function readYears(sign: string, digits: string): readonly [from: number, to: number] {
  const low = Number(digits.replaceAll('X', '0'));
  const high = Number(digits.replaceAll('X', '9'));
  // 0 - x, so that no year is ever -0
  return sign ? [0 - high, 0 - low] : [low, high];
}

/** undefined: not EDTF of levels 0 and 1 at all. */
function readPoint(text: string): Point | Impossible | undefined {
  const match = point.exec(text);
  if (!match) return undefined;
  const [, sign = '', digits, month, day, longSign = '', longDigits, mark] = match;
  const loose = mark !== '';
  if (digits === undefined) {
    if (longDigits === undefined || longDigits.length > mostDigits) return { impossibleIn: 9999 };
    const [from, to] = readYears(longSign, longDigits);
    return { from, to, loose };
  }
  const [from, to] = readYears(sign, digits);
  if (sign && digits === '0000') return { impossibleIn: from };
  if (month === undefined) return { from, to, loose };
  // Digits left open further left than the last part are level 2.
  if (from !== to || (month === 'XX' && day !== undefined && day !== 'XX')) return undefined;
  if (month === 'XX') return { from, to, loose };
  const m = Number(month);
  if (!isMonth(m) && !(isSeason(m) && day === undefined)) return { impossibleIn: from };
  if (day === undefined || day === 'XX') return isMonth(m) ? { from, to, loose, month: m } : { from, to, loose };
  const d = Number(day);
  return d >= 1 && d <= daysIn(from, m) ? { from, to, loose, month: m, day: d } : { impossibleIn: from };
}

function readDateTime(text: string): Point | Impossible | undefined {
  const match = dateTime.exec(text);
  if (!match) return undefined;
  const [, date = '', hour, minute, second, shiftHour = '0', shiftMinute = '0'] = match;
  const read = readPoint(date);
  if (!read || 'impossibleIn' in read) return read;
  const [h, m, s] = [Number(hour), Number(minute), Number(second)];
  const isTime = (h <= 23 && m <= 59 && s <= 59) || (h === 24 && m === 0 && s === 0);
  return isTime && Number(shiftHour) <= 23 && Number(shiftMinute) <= 59 ? read : { impossibleIn: read.from };
}

const isReversed = (a: Point, b: Point): boolean => {
  if (a.from !== b.to) return a.from > b.to;
  if (a.month === undefined || b.month === undefined || a.month !== b.month) return (a.month ?? 0) > (b.month ?? 99);
  return (a.day ?? 0) > (b.day ?? 99);
};

const impossible = ({ impossibleIn }: Impossible): DateReading =>
  dateProblem('date-impossible', [edtfYear(impossibleIn), `${edtfYear(impossibleIn)}-12`]);

function readInterval(text: string, left: string, right: string, reach: ReachTable): DateReading | undefined {
  const isOpen = (side: string): boolean => side === '' || side === '..';
  // Unknown on both sides says nothing; open on both is a statement.
  if (isOpen(left) && isOpen(right)) return text === '../..' ? { span: spanOfYears(open, open, reach, text) } : undefined;
  const start = isOpen(left) ? undefined : readPoint(left);
  const end = isOpen(right) ? undefined : readPoint(right);
  if ((!start && !isOpen(left)) || (!end && !isOpen(right))) return undefined;
  if (start && 'impossibleIn' in start) return impossible(start);
  if (end && 'impossibleIn' in end) return impossible(end);
  if (start && end && isReversed(start, end)) return dateProblem('date-reversed', reversedSuggestions(start.from, end.to));
  return {
    span: spanOfYears(
      start ? { year: start.from, loose: start.loose } : open,
      end ? { year: end.to, loose: end.loose } : open,
      reach,
      text,
    ),
  };
}

/**
 * Reads EDTF of levels 0 and 1, complete. Months, days, seasons and times are checked and then only the year counts.
 * An unspecified digit covers all its years throughout (`12XX` is 1200–1299); `?`, `~` and `%` loosen their side.
 *
 * @param text without space around it.
 * @returns undefined when the text is not EDTF of these levels; a problem when it is, but names a day there is not, or runs backwards.
 * @error none thrown.
 * @source Library of Congress, EDTF specification (4 February 2019); ISO 8601-2:2019. Proleptic Gregorian calendar.
 */
export function parseEdtf(text: string, reach: ReachTable = usualReach): DateReading | undefined {
  const parts = text.split('/', 3);
  if (parts.length === 2) return readInterval(text, parts[0] ?? '', parts[1] ?? '', reach);
  if (parts.length > 2) return undefined;
  const read = readPoint(text) ?? readDateTime(text);
  if (!read) return undefined;
  if ('impossibleIn' in read) return impossible(read);
  const { from, to, loose } = read;
  return { span: spanOfYears({ year: from, loose }, { year: to, loose }, reach, text) };
}
