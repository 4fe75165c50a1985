import type { DateSpan } from '../../domain/date/date-span.ts';

/** A value of JSON. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** xsd:gYear of an astronomical year: the same count, `-0499` is 500 BCE. At least four digits. */
export const gYear = (year: number): string => `${year < 0 ? '-' : ''}${String(Math.abs(year)).padStart(4, '0')}`;

/**
 * Four bounds as a CIDOC-CRM time-span: P82a/P82b are the outer bounds, P81a/P81b the core. An open bound is left out.
 * Where start and end overlap so that no year is certain, P81a lies after P81b; readers of the notebook's own file know that.
 */
export function timeSpanNode(span: DateSpan, written: string): Json {
  const bound = (key: string, year: number | null) => (year === null ? {} : { [key]: gYear(year) });
  return {
    '@type': 'E52_Time-Span',
    label: written,
    ...bound('P82a_begin_of_the_begin', span.earliestStart),
    ...bound('P81a_end_of_the_begin', span.latestStart),
    ...bound('P81b_begin_of_the_end', span.earliestEnd),
    ...bound('P82b_end_of_the_end', span.latestEnd),
  };
}
