import { formatSpan, toEdtf } from '../../web/domain/date/format-date.ts';
import { parseDate } from '../../web/domain/date/parse-date.ts';
import { type Command, readArgs } from './command.ts';

/** `tenterground date "WORDS" [--json]`: how a date is read. */
export const date: Command = (args) => {
  const read = readArgs(protectNegative(args), { json: { type: 'boolean' } });
  if (!read) return Promise.resolve(2);
  const words = read.words.join(' ');
  if (words.trim() === '') {
    console.error('Give the date in quotes: tenterground date "late 9th century"');
    return Promise.resolve(2);
  }
  const { span, problem } = parseDate(words);
  if (!span) {
    console.error(`The date "${words}" cannot be read. Write for example: ${(problem?.suggestions ?? []).join(' or ')}.`);
    return Promise.resolve(2);
  }
  const { earliestStart, latestStart, earliestEnd, latestEnd } = span;
  if (read.values['json'] === true)
    console.log(JSON.stringify({ earliestStart, latestStart, earliestEnd, latestEnd, edtf: toEdtf(span) }, undefined, 2));
  else console.log(`${words}: ${formatSpan(span)} (EDTF ${toEdtf(span)})`);
  return Promise.resolve(0);
};

/** A date such as -1200 is a word, not an option. */
const protectNegative = (args: readonly string[]): readonly string[] =>
  args.some((arg) => /^-\d/.test(arg))
    ? [...args.filter((arg) => arg === '--json'), '--', ...args.filter((arg) => arg !== '--json')]
    : args;
