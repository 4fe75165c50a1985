import { describe, expect, test } from 'vitest';
import type { DateSpan } from '../../../web/domain/date/date-span.ts';
import { coreOf } from '../../../web/domain/date/date-span.ts';
import { formatSpan, formatYear, formatYears, toEdtf } from '../../../web/domain/date/format-date.ts';
import { parseDate } from '../../../web/domain/date/parse-date.ts';
import { fc, runs } from '../../helpers/property.ts';

const spanOf = (text: string): DateSpan => {
  const { span } = parseDate(text);
  if (!span) throw new Error(`not read: ${text}`);
  return span;
};
const year = fc.oneof(fc.integer({ min: -15000, max: 15000 }), fc.integer({ min: -150, max: 150 }));
const bound = fc.option(year, { nil: null });

describe('formatYear', () => {
  test.each([
    [-1200, '1201 BCE'],
    [-1, '2 BCE'],
    [0, '1 BCE'],
    [1, '1'],
    [1350, '1350'],
  ])('%i is %s', (at, words) => {
    expect(formatYear(at)).toBe(words);
  });
});

describe('formatYears', () => {
  test.each([
    [1350, 1350, '1350'],
    [1325, 1375, '1325–1375'],
    [-99, -67, '100–68 BCE'],
    [-869, -49, '870 BCE–50 BCE'],
    [-26, 14, '27 BCE–14 CE'],
    [10, 1405, '10–1405 CE'],
    [null, 999, 'until 999'],
    [-99, null, 'from 100 BCE'],
    [null, null, 'any time'],
  ])('from %s to %s is "%s"', (from, to, words) => {
    expect(formatYears({ from, to })).toBe(words);
  });

  test('is read back as the same years', () => {
    fc.assert(
      fc.property(bound, bound, (a, b) => {
        fc.pre(a !== null || b !== null);
        const [from, to] = a !== null && b !== null && a > b ? [b, a] : [a, b];
        expect(coreOf(spanOf(formatYears({ from, to })))).toEqual({ from, to });
      }),
      runs(2000),
    );
  });
});

describe('formatSpan', () => {
  test.each([
    ['c. 1350', '1325–1375, core 1350'],
    ['13th century', '1201–1300'],
    ['c. 1475–1525', '1450–1537, core 1475–1525'],
    ['until c. 1000', 'until 1025, core until 1000'],
    ['../..', 'any time'],
  ])('%s is "%s"', (text, words) => {
    expect(formatSpan(spanOf(text))).toBe(words);
  });

  test('says when there is no core', () => {
    expect(formatSpan({ earliestStart: 1200, latestStart: 1300, earliestEnd: 1250, latestEnd: 1350, text: '' })).toBe('1200–1350, no core');
  });
});

describe('toEdtf', () => {
  test.each([
    ['c. 1350', '1350~'],
    ['13th century', '1201/1300'],
    ['c. 1475–c. 1525', '1475~/1525~'],
    ['1475–c. 1525', '1475/1525~'],
    ['before 1000', '../0999'],
    ['from c. 1000', '1000~/..'],
    ['1200 BC', '-1199'],
    ['1st century BC', '-0099/0000'],
    ['10001 BC', 'Y-10000'],
    ['1405-10', '1405-10'],
    ['12XX', '12XX'],
    ['1984?', '1984?'],
    ['/1985', '/1985'],
  ])('%s is %s', (text, edtf) => {
    expect(toEdtf(spanOf(text))).toBe(edtf);
  });

  test('is read back with the same core, and outer bounds where reach made them', () => {
    const side = fc.record({ loose: fc.boolean(), year: bound });
    const says = (at: { loose: boolean; year: number }): string =>
      toEdtf({ ...spanOf(formatYears({ from: at.year, to: at.year })), text: '' });
    fc.assert(
      fc.property(side, side, (a, b) => {
        const [from, to] = a.year !== null && b.year !== null && a.year > b.year ? [b, a] : [a, b];
        const text = [from, to]
          .map(({ loose, year: at }) => (at === null ? '..' : says({ loose, year: at }) + (loose ? '~' : '')))
          .join('/');
        const span = { ...spanOf(text), text: 'typed otherwise' };
        expect({ ...spanOf(toEdtf(span)), text: '' }).toEqual({ ...span, text: '' });
      }),
      runs(1000),
    );
  });

  test('falls back to the outer bounds when there is no core', () => {
    expect(toEdtf({ earliestStart: 1200, latestStart: 1300, earliestEnd: 1250, latestEnd: 1350, text: '' })).toBe('1200/1350');
  });
});
