import type { Bound, DateSpan, YearSpan } from './date-span.ts';
import { coreOf, outerOf } from './date-span.ts';
import { edtfYear, formatYears } from './format-years.ts';
import { parseEdtf } from './parse-edtf.ts';

export { formatYear, formatYears } from './format-years.ts';

const isEmpty = ({ from, to }: YearSpan): boolean => from !== null && to !== null && from > to;
const isSame = (a: YearSpan, b: YearSpan): boolean => a.from === b.from && a.to === b.to;

/** A span in plain words, the doubt first: "1325–1375, core 1350"; "1201–1300" when there is none. */
export function formatSpan(span: DateSpan): string {
  const core = coreOf(span);
  const outer = outerOf(span);
  if (isSame(core, outer)) return formatYears(core);
  return `${formatYears(outer)}, ${isEmpty(core) ? 'no core' : `core ${formatYears(core)}`}`;
}

const edtfSide = (core: Bound, outer: Bound): string => (core === null ? '..' : edtfYear(core) + (core === outer ? '' : '~'));

/**
 * A span as EDTF of level 0 or 1. What was typed stands when it already is EDTF with this core; else the core is
 * written out, with `~` on a side whose outer bound lies further out.
 *
 * @returns EDTF that `parseDate` reads back with the same core. An empty core cannot be said so: then the outer bounds stand.
 * @error none.
 * @source Library of Congress, EDTF specification (4 February 2019); ISO 8601-2:2019.
 */
export function toEdtf(span: DateSpan): string {
  const typed = parseEdtf(span.text.trim())?.span;
  if (typed && isSame(coreOf(typed), coreOf(span))) return typed.text;
  const { from, to } = isEmpty(coreOf(span)) ? outerOf(span) : coreOf(span);
  const start = edtfSide(from, span.earliestStart);
  const end = edtfSide(to, span.latestEnd);
  return start === end && from !== null ? start : `${start}/${end}`;
}
