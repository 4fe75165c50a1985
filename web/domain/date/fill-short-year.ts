import type { DateProblem } from './date-problem.ts';
import { dateProblem } from './date-problem.ts';
import { formatYears } from './format-years.ts';
import { filledYear } from './filled-year.ts';
import type { JoinSign } from './split-sides.ts';
import type { WrittenSide } from './written-side.ts';

type Filled = { readonly side: WrittenSide; readonly problem?: undefined } | { readonly side?: undefined; readonly problem: DateProblem };

const hasFigures = (side: WrittenSide): boolean => (side.kind === 'year' || side.kind === 'decade') && !side.minus;
const bceYears = (high: number, low: number): string => formatYears({ from: 1 - high, to: 1 - low });

/** "10/1405" and "10-1405": a month and its year, or years 10 to 1405? */
export function monthLeadsYear(left: WrittenSide, right: WrittenSide): DateProblem | undefined {
  const isOpen = left.kind === 'year' && right.kind === 'year' && !left.minus && !left.era && !right.era && right.month === undefined;
  const month = Number(left.digits);
  if (!isOpen || month < 1 || month > 12 || right.digits?.length !== 4 || Number(right.digits) <= month) return undefined;
  return { code: 'date-ambiguous', suggestions: [`${right.digits}-${`${month}`.padStart(2, '0')}`, `AD ${month}–${right.digits}`] };
}

/**
 * The second figure of a run, filled up from the first where it is shortened: 1405–10, 1606/7, 1190/85 BCE.
 *
 * Of our era only the filled reading can run forward, so it is taken. Before our era "870–50 BC" could be both 850 and
 * 50: a slash (years of one reckoning beside each other) takes the filled reading, a dash leaves it open.
 *
 * @param left, right once eras are borrowed. `ownEra`: the left side said BCE itself, so nothing is shortened after it.
 * @returns the right side, its figures full.
 * @error a run that cannot go forward, or can be read twice: a problem.
 */
export function fillShortYear(left: WrittenSide, right: WrittenSide, sign: JoinSign, ownEra: boolean): Filled {
  const [full, short] = [left.digits ?? '', right.digits ?? ''];
  const bce = left.era === 'bce';
  const isShort = hasFigures(left) && hasFigures(right) && short.length < full.length && bce === (right.era === 'bce');
  if (!isShort || (bce && ownEra)) return { side: right };
  const first = Number(full);
  const said = Number(short);
  const filled = filledYear(full, short);
  const asFilled: WrittenSide = { ...right, digits: `${filled}`.padStart(full.length, '0') };
  if (bce) {
    if (filled >= first) return { side: right };
    if (sign === 'slash' || said === 0) return { side: asFilled };
    return dateProblem('date-ambiguous', [bceYears(first, filled), `${bceYears(first, first)}–${bceYears(said, said)}`]);
  }
  if (said > first) return { side: right };
  if (filled > first) return { side: asFilled };
  const later = filled + 10 ** short.length;
  if (filled === first || filled === 0)
    return dateProblem('date-reversed', [formatYears({ from: first, to: first }), formatYears({ from: first, to: later })]);
  return dateProblem('date-reversed', [formatYears({ from: filled, to: first }), formatYears({ from: first, to: later })]);
}
