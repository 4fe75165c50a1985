import type { DateReading } from './date-problem.ts';
import { parseEdtf } from './parse-edtf.ts';
import { longestDate, parseWritten } from './parse-written.ts';
import type { ReachTable } from './reach.ts';
import { usualReach } from './reach.ts';

export type { DateProblem, DateProblemCode, DateReading } from './date-problem.ts';

/**
 * Reads a date: as EDTF if it is EDTF, else as people write dates.
 *
 * `1405-10` is therefore October 1405, and `1405-21` some spring (only the year counts). Where the hyphen cannot be
 * EDTF (`1405-13`: there is no month 13) and the shortened second year lies later, it is a run, 1405–1413; where it
 * does not (`1985-13`), a month there is not.
 *
 * @param text as typed; space around it does not count.
 * @param options.reach how far "circa" goes; the usual reach when left out.
 * @returns four bounds in astronomical years with the text as typed, or a problem with two texts that can be read.
 * @error what cannot be read is a problem, never a guess and never thrown.
 */
export function parseDate(text: string, options: { readonly reach?: ReachTable } = {}): DateReading {
  const reach = options.reach ?? usualReach;
  // A minus sign and a hyphen that does not break are the hyphen EDTF means; an en dash is not.
  const plain = text.length > longestDate ? '' : text.trim().replace(/[\u2010\u2011\u2212]/g, '-');
  const edtf = parseEdtf(plain, reach);
  const maybeShortYear = edtf?.problem?.code === 'date-impossible' && /^\d{4}-\d\d$/.test(plain);
  const written = edtf && !maybeShortYear ? undefined : parseWritten(text, reach);
  const reading = written?.span ? written : (edtf ?? written ?? parseWritten(text, reach));
  return reading.span ? { span: { ...reading.span, text } } : reading;
}
