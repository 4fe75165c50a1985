import type { DateProblem } from './date-problem.ts';
import { dateProblem } from './date-problem.ts';
import { formatYears } from './format-years.ts';
import { centuryName, nearestSuggestions, roundSuggestions } from './suggest-dates.ts';
import type { Share, WrittenSide } from './written-side.ts';

/** Whole years, both ends in it, never open. */
export interface Years {
  readonly from: number;
  readonly to: number;
}

type YearsReading = { readonly years: Years; readonly problem?: undefined } | { readonly years?: undefined; readonly problem: DateProblem };

/** Beyond this a double no longer counts single years. */
const mostDigits = 15;
const daysOfMonths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Years of the era from one number to a larger one, running forward. */
const inEra = (low: number, high: number, bce: boolean): Years => (bce ? { from: 1 - high, to: 1 - low } : { from: low, to: high });

/** A part of a stretch: thirds of a century are its years 01–33, 34–67, 68–00. */
function shareOf({ from, to }: Years, { index, of }: Share): Years {
  const years = to - from + 1;
  return { from: from + Math.round((years * (index - 1)) / of), to: from + Math.round((years * index) / of) - 1 };
}

const none = (side: WrittenSide, code: DateProblem['code']): YearsReading => {
  const era = side.era ?? '';
  return dateProblem(code, nearestSuggestions(`${side.digits ?? side.n ?? ''} ${era === 'bce' ? 'bc' : ''}`));
};

function plainYear(side: WrittenSide, digits: string): YearsReading {
  const year = Number(digits);
  if (year === 0 || digits.length > mostDigits) return none(side, 'date-impossible');
  if (side.minus) {
    if (!side.era) return { years: { from: -year, to: -year } };
    return dateProblem('date-ambiguous', [formatYears({ from: 1 - year, to: 1 - year }), formatYears({ from: -year, to: -year })]);
  }
  const bce = side.era === 'bce';
  // Five digits without an era may as well be a slip or a run-together date.
  if (!side.era && String(year).length > 4) return none(side, 'date-unreadable');
  // Late in the year, in its decade or in its century?
  if (side.share) {
    const isRound = year % 100 === 0 && year <= 9900;
    const decadeStart = Math.floor(year / 10) * 10;
    const wider = isRound
      ? `late ${centuryName(year / 100 + (bce ? 0 : 1))}${bce ? ' BCE' : ''}`
      : formatYears(inEra(Math.max(1, decadeStart), decadeStart + 9, bce));
    return dateProblem('date-ambiguous', [formatYears(inEra(year, year, bce)), wider]);
  }
  if (side.day !== undefined && (side.day < 1 || side.day > (daysOfMonths[(side.month ?? 1) - 1] ?? 31)))
    return none(side, 'date-impossible');
  if (side.day === 29 && side.month === 2 && year % 4 !== 0 && !bce) return none(side, 'date-impossible');
  // "October 12" is more likely a day than a year.
  if (side.month !== undefined && digits.length < 3 && !side.era) return none(side, 'date-unreadable');
  return { years: inEra(year, year, bce) };
}

function decade(side: WrittenSide, digits: string): YearsReading {
  const year = Number(digits);
  const bce = side.era === 'bce';
  if (digits.length > mostDigits || year === 0) return none(side, 'date-impossible');
  if (year % 10 !== 0 || (!side.era && digits.length > 4)) return none(side, 'date-unreadable');
  // Century or decade?
  if (year % 100 === 0) return dateProblem('date-ambiguous', roundSuggestions(year, bce));
  // The eighties of which century?
  if (digits.length < 3 && !side.era) return dateProblem('date-ambiguous', [formatYears({ from: year, to: year + 9 }), `${1900 + year}s`]);
  const years = inEra(year, year + 9, bce);
  if (!side.share) return { years };
  return side.share.of === 4 ? none(side, 'date-unreadable') : { years: shareOf(years, side.share) };
}

/**
 * The years one side names, once it has borrowed what it leaves out.
 *
 * @returns astronomical years; a century is 01 to 00 and holds throughout. Before our era time still runs forward.
 * @error year 0, a day no month has, "1200s": a problem with two suggestions.
 */
export function yearsOfSide(side: WrittenSide): YearsReading {
  if (side.kind === 'year' && side.digits !== undefined) return plainYear(side, side.digits);
  if (side.kind === 'decade' && side.digits !== undefined) return decade(side, side.digits);
  if (side.kind !== 'ordinal' || side.n === undefined || side.unitYears === undefined) return none(side, 'date-unreadable');
  const { n, unitYears, share } = side;
  if (n === 0 || n > 9999) return none(side, 'date-impossible');
  const years = inEra((n - 1) * unitYears + 1, n * unitYears, side.era === 'bce');
  return { years: share ? shareOf(years, share) : years };
}
