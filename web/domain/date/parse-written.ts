import { borrowSides } from './borrow-sides.ts';
import type { DateProblem, DateReading } from './date-problem.ts';
import { dateProblem } from './date-problem.ts';
import { fillShortYear, monthLeadsYear } from './fill-short-year.ts';
import { formatYears } from './format-years.ts';
import type { ReachTable } from './reach.ts';
import { usualReach } from './reach.ts';
import { spanOfYears } from './span-of-years.ts';
import type { JoinSign } from './split-sides.ts';
import { splitSides } from './split-sides.ts';
import { centuryName, nearestSuggestions, reversedSuggestions } from './suggest-dates.ts';
import type { WrittenSide } from './written-side.ts';
import { readWrittenSide } from './written-side.ts';
import { dateTokens } from './written-tokens.ts';
import type { DateToken } from './written-tokens.ts';
import type { Years } from './written-years.ts';
import { yearsOfSide } from './written-years.ts';

/** UTF-16 units. Our choice: no date is longer, and what is longer is not looked at. */
export const longestDate = 200;

/** "C14": the 14th century, or about the year 14? */
const centuryOrCirca = /(?<![a-z])c(\d{1,2})(?!\d)/i;

type Bound = Extract<DateToken, { readonly kind: 'bound' }>['bound'];

/** The sides of a date with their years, first to last, in order. */
interface Run {
  readonly sides: readonly WrittenSide[];
  readonly years: readonly Years[];
  readonly signs: readonly JoinSign[];
}

type Failure = { readonly problem: DateProblem };

/** "27 BC–14": the second year may be of either era, if both run forward. */
function eraLeftOpen(sides: readonly WrittenSide[], years: readonly Years[]): Failure | undefined {
  const [first, last] = [sides[0], sides.at(-1)];
  const [firstYears, lastYears] = [years[0], years.at(-1)];
  if (!first || !last || !firstYears || !lastYears || last.era || last.minus || !(first.era === 'bce' || first.minus)) return undefined;
  const before = yearsOfSide({ ...last, era: 'bce' }).years;
  if (!before || before.from <= firstYears.from) return undefined;
  const { from } = firstYears;
  return dateProblem('date-ambiguous', [formatYears({ from, to: before.to }), formatYears({ from, to: lastYears.to })]);
}

/** "–1200", "1200–": a side with nothing on it. */
function sideMissing(first: readonly DateToken[], last: readonly DateToken[]): Failure | undefined {
  if ((first.length === 0) === (last.length === 0)) return undefined;
  const side = readWrittenSide(first.length > 0 ? first : last);
  const years = side && yearsOfSide(side).years;
  if (!years) return undefined;
  return first.length === 0
    ? dateProblem('date-ambiguous', [formatYears({ from: null, to: years.to }), formatYears({ from: -years.to, to: -years.to })])
    : dateProblem('date-ambiguous', [formatYears({ from: years.from, to: null }), formatYears(years)]);
}

/** At most one dash or "to", and beside it at most one slash on either hand: "1606/7–1610/11". */
const isOneRun = (signs: readonly JoinSign[]): boolean => /^s?(?:ds?)?$/.test(signs.map((sign) => (sign === 'slash' ? 's' : 'd')).join(''));

function readRun(tokens: readonly DateToken[], lead: Bound | undefined, unreadable: Failure): Run | Failure {
  const split = splitSides(tokens);
  if (!isOneRun(split.signs)) return unreadable;
  const said = split.sides.map(readWrittenSide);
  if (!said.every((side) => side !== undefined)) {
    return (split.sides.length === 2 && sideMissing(split.sides[0] ?? [], split.sides[1] ?? [])) || unreadable;
  }
  const sides: WrittenSide[] = [];
  const years: Years[] = [];
  for (const [at, side] of borrowSides(said).entries()) {
    const left = sides[at - 1];
    const sign = split.signs[at - 1] ?? 'dash';
    const ownEra = said[at - 1]?.era !== undefined && said[at - 1]?.eraLeads === false;
    const monthLeads = left && monthLeadsYear(left, side);
    if (monthLeads) return { problem: monthLeads };
    const filled = left ? fillShortYear(left, side, sign, ownEra) : { side };
    if (filled.problem) return filled;
    const read = yearsOfSide(filled.side);
    // The whole text knows more than the side alone of what may have been meant.
    if (read.problem) return read.problem.code === 'date-unreadable' ? unreadable : read;
    const before = years.at(-1);
    sides.push(filled.side);
    years.push(read.years);
    if (before && before.from > read.years.to) return dateProblem('date-reversed', reversedSuggestions(before.from, read.years.to));
    if (before && sign === 'and' && lead !== 'between' && before.to + 1 !== read.years.from) return unreadable;
  }
  return eraLeftOpen(sides, years) ?? { sides, years, signs: split.signs };
}

const isLoose = (side: WrittenSide): boolean => side.circa || side.query;

/** The years of a run with its doubt, or undefined when its leading word does not go with it. */
function spanOfRun({ sides, years, signs }: Run, lead: Bound | undefined, reach: ReachTable, text: string): DateReading | undefined {
  const dash = signs.findIndex((sign) => sign !== 'slash');
  const isRun = dash >= 0;
  const cut = isRun ? dash + 1 : sides.length;
  const [from, to] = [years[0]?.from ?? 0, years.at(-1)?.to ?? 0];
  // A circa in front of the whole loosens both ends; after "from" or "between" it belongs to its year.
  const whole = lead === undefined && sides[0]?.circa === true;
  const start = { year: from, loose: whole || sides.slice(0, cut).some(isLoose) };
  const end = { year: to, loose: whole || sides.slice(isRun ? cut : 0).some(isLoose) };
  const open = { year: null, loose: false };
  if (isRun)
    return lead === undefined || lead === 'from' || lead === 'between' ? { span: spanOfYears(start, end, reach, text) } : undefined;
  switch (lead) {
    case 'between':
      return undefined;
    case 'before':
      return { span: spanOfYears(open, { year: from - 1, loose: start.loose, reachYear: from }, reach, text) };
    case 'after':
      return { span: spanOfYears({ year: to + 1, loose: end.loose, reachYear: to }, open, reach, text) };
    case 'until':
      return { span: spanOfYears(open, end, reach, text) };
    case 'from':
    case 'onwards':
      return { span: spanOfYears(start, open, reach, text) };
    case undefined:
      return { span: spanOfYears(start, end, reach, text) };
  }
}

/**
 * Reads a date as people write it in English: "c. 1350", "late 9th century", "870–950", "before 1000", "1606/7",
 * "2nd quarter of the 14th c.", "27 BC–AD 14". Months and days are checked and then only the year counts.
 *
 * @returns four bounds, or a problem with two texts that can be read.
 * @error none thrown; a text longer than `longestDate` is unreadable.
 * @source rules: our own; yardstick: dates of the PeriodO gazetteer (test/reference/periodo-written-dates.csv).
 */
export function parseWritten(text: string, reach: ReachTable = usualReach): DateReading {
  const unreadable = dateProblem('date-unreadable', nearestSuggestions(text.slice(0, longestDate)));
  if (text.length > longestDate) return unreadable;
  const short = centuryOrCirca.exec(text)?.[1];
  if (short && Number(short) > 0) return dateProblem('date-ambiguous', [centuryName(Number(short)), `c. AD ${Number(short)}`]);
  const tokens = dateTokens(text);
  const [head, tail] = [tokens[0], tokens.at(-1)];
  const lead = head?.kind === 'bound' ? head.bound : undefined;
  const trails = tail?.kind === 'bound' && tail.bound === 'onwards' && (lead === undefined || lead === 'from');
  const rest = tokens.slice(lead ? 1 : 0, trails ? -1 : undefined);
  if (rest.length === 0 || lead === 'onwards') return unreadable;
  const run = readRun(rest, lead, unreadable);
  if ('problem' in run) return run;
  return spanOfRun(run, trails ? 'onwards' : lead, reach, text) ?? unreadable;
}
