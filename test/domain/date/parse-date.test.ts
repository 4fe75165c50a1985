import { describe, expect, test } from 'vitest';
import { coreOf } from '../../../web/domain/date/date-span.ts';
import { parseDate } from '../../../web/domain/date/parse-date.ts';
import { signsPassed } from '../../helpers/signs-passed.ts';
import { fc, runs } from '../../helpers/property.ts';

/** Pieces dates are made of, so that chance strings reach deep into the grammar. */
const pieces = (
  '0 1 7 12 13 14 31 50 85 100 476 870 950 1200 1350 1405 1475 1606 1985 12XX 201X 1985-04 -37 -1200 Y170000002 13th 1st 2nd third first ' +
  'twenty ninth 1180s 1200s 90s BC AD BCE C.E. b.c. c. ca circa about early mid late half quarter third of the century c cent. millennium ' +
  'before after until from since between and to onwards - – / .. ? ~ % , ( ) pre- October May spring 29 February last end by foo'
).split(' ');
const datelike = fc
  .array(fc.tuple(fc.constantFrom(...pieces), fc.constantFrom('', ' ', ' ', ' ')), { minLength: 1, maxLength: 9 })
  .map((parts) => parts.map(([piece, gap]) => piece + gap).join(''));

describe('parseDate', () => {
  test.each([
    ['1405-10', 1405, 1405],
    ['1405‑10', 1405, 1405],
    ['1405-06', 1405, 1405],
    ['1405-21', 1405, 1405],
    ['1405–10', 1405, 1410],
    ['1405-13', 1405, 1413],
    ['1405 - 10', 1405, 1410],
    ['-1200', -1200, -1200],
    ['−1200', -1200, -1200],
    ['1200 BC', -1199, -1199],
    ['0700', 700, 700],
    ['12XX', 1200, 1299],
    ['13th century', 1201, 1300],
    ['  c. 950 ', 950, 950],
    ['1964/2008', 1964, 2008],
    ['1606/7', 1606, 1607],
    ['1000/..', 1000, null],
    ['/1000', null, 1000],
  ])('tries EDTF first, then what people write: %s', (text, from, to) => {
    const { span } = parseDate(text);
    expect(span && coreOf(span)).toEqual({ from, to });
    expect(span?.text).toBe(text);
  });

  test.each(['1985-00', '1985-20', '1985-04-31', '1985-13-01', '2001-02-29'])('keeps a month or day there is not a problem: %s', (text) => {
    expect(parseDate(text).problem?.code).toBe('date-impossible');
  });

  test('takes the reach it is given', () => {
    const reach = { steps: [{ upTo: 1400, years: 9 }], after: 3 };
    expect(parseDate('c. 1350–c. 1500', { reach }).span).toMatchObject({ earliestStart: 1346, latestEnd: 1501 });
    expect(parseDate('1350~/1500~', { reach }).span).toMatchObject({ earliestStart: 1346, latestEnd: 1501 });
  });

  test('gives a span in order or a problem, and never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.oneof(datelike, fc.string({ unit: 'binary' }), fc.string()), (text) => {
        const { span, problem } = parseDate(text);
        expect((span === undefined) !== (problem === undefined)).toBe(true);
        if (!span) return;
        const low = (year: number | null): number => year ?? -Infinity;
        const high = (year: number | null): number => year ?? Infinity;
        expect(low(span.earliestStart)).toBeLessThanOrEqual(low(span.latestStart));
        expect(high(span.earliestEnd)).toBeLessThanOrEqual(high(span.latestEnd));
        expect(low(span.latestStart)).toBeLessThanOrEqual(high(span.earliestEnd));
        for (const year of [span.earliestStart, span.latestStart, span.earliestEnd, span.latestEnd]) {
          expect(year === null || (Number.isSafeInteger(year) && !Object.is(year, -0))).toBe(true);
        }
      }),
      runs(5000),
    );
  });

  test('suggests two different texts that can be read', () => {
    fc.assert(
      fc.property(fc.oneof(datelike, fc.string()), (text) => {
        const { problem } = parseDate(text);
        if (!problem) return;
        expect(new Set(problem.suggestions).size).toBe(2);
        for (const suggestion of problem.suggestions)
          expect([suggestion, parseDate(suggestion).span !== undefined]).toEqual([suggestion, true]);
      }),
      runs(5000),
    );
  });

  test.each(['1', ' ', 'c. ', '1-', '13th–', 'b.', '(', '1,000,', '?', '/', 'Y1', '-', 'twenty-'])(
    'ends, and its work grows no faster than a text made of %j; beyond the longest date it grows no more',
    (piece) => {
      const signsOf = (length: number) => signsPassed(() => void parseDate(piece.repeat(Math.floor(length / piece.length))));
      const longest = signsOf(200);
      expect(longest).toBeLessThanOrEqual(2.2 * signsOf(100));
      expect(signsOf(10_000)).toBeLessThanOrEqual(longest);
      expect(signsOf(100_000)).toBe(signsOf(10_000));
    },
  );
});
