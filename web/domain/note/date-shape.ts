import { parseDate } from '../date/parse-date.ts';
import type { WrittenDate } from './note.ts';
import { readWords } from './plain-shapes.ts';
import { single, tell } from './shape.ts';
import type { Shape } from './shape.ts';

const shape = (mayBePeriod: boolean): Shape<WrittenDate | undefined> =>
  single('date', (node, key, context) => {
    const text = readWords(node, key, context, 'date');
    if (text === undefined) return undefined;
    const { span, problem } = parseDate(text);
    if (problem && !(mayBePeriod && problem.code === 'date-unreadable')) tell(problem.code, node, [text, ...problem.suggestions], context);
    return { text, range: context.range(node), ...(span === undefined ? {} : { span }) };
  });

/** A date that stands for itself. */
export const date = shape(false);

/** A date, or a period's id or name: words that are no date are told only once all notes are known. */
export const dateOrPeriod = shape(true);
