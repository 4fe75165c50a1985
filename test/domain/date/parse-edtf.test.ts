// @ts-expect-error the package brings no types; `oracle` below says what is used of it
import edtf from 'edtf';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { coreOf, outerOf } from '../../../web/domain/date/date-span.ts';
import { parseEdtf } from '../../../web/domain/date/parse-edtf.ts';
import { fc, runs } from '../../helpers/property.ts';

interface Example {
  readonly level: number;
  readonly section: string;
  readonly edtf: string;
  readonly from: number | null;
  readonly to: number | null;
}
const { examples } = JSON.parse(readFileSync(new URL('../../reference/edtf-level-0-1.json', import.meta.url), 'utf8')) as {
  readonly examples: readonly Example[];
};

describe('parseEdtf', () => {
  test.each(examples)('reads $edtf (level $level, $section)', ({ edtf: text, from, to }) => {
    const span = parseEdtf(text)?.span;
    expect(span && coreOf(span)).toEqual({ from, to });
  });

  test.each([
    ['1984?', 1979, 1989],
    ['1405-10~', 1380, 1430],
    ['201X%', 2005, 2024],
    ['12XX~', 1175, 1324],
    ['-1200~', -1250, -1150],
    ['1475~/1525~', 1450, 1537],
    ['1475/1525?', 1475, 1537],
    ['1475%/1525', 1450, 1525],
    ['1475~/..', 1450, null],
    ['/1525~', null, 1537],
    ['12XX/1350', 1200, 1350],
    ['2001-21~', 1996, 2006],
  ])('loosens the side its qualifier stands on: %s', (text, from, to) => {
    const span = parseEdtf(text)?.span;
    expect(span && outerOf(span)).toEqual({ from, to });
  });

  test.each([
    ['0000', 0, 0],
    ['-000X', -9, 0],
    ['-00XX', -99, 0],
    ['-12XX', -1299, -1200],
    ['-1200-06/0200-05-02', -1200, 200],
    ['2000-02-29', 2000, 2000],
    ['1985-04-12T24:00:00Z', 1985, 1985],
    ['2001-24', 2001, 2001],
    ['../..', null, null],
  ])('reads the edges: %s', (text, from, to) => {
    const span = parseEdtf(text)?.span;
    expect(span && coreOf(span)).toEqual({ from, to });
    expect(Object.is(span?.earliestEnd, -0)).toBe(false);
  });

  test.each([
    '1985-13',
    '1985-00',
    '1985-25',
    '1985-04-31',
    '1985-04-00',
    '2001-02-29',
    '1900-02-29',
    '1985-21-01',
    '-0000',
    '1985-04-12T25:00:00',
    '1985-04-12T23:60:00',
    '1985-04-12T24:00:01',
    '1985-02-30/1990',
    'Y1700000020000000',
  ])('finds no such day, month or year: %s', (text) => {
    expect(parseEdtf(text)?.problem?.code).toBe('date-impossible');
  });

  test.each(['2008/1964', '2004-08/2004-06', '2004-06-12/2004-06-11', '13XX/12XX'])('finds it reversed: %s', (text) => {
    expect(parseEdtf(text)?.problem?.code).toBe('date-reversed');
  });

  test.each([
    '',
    '500',
    '-44',
    '10000',
    '19850412',
    '1985-4',
    '1985-04-1',
    '1405–10',
    'Y1985',
    'Y00001985',
    'Y-17E7',
    '1XXX',
    '156X-12',
    '2004-XX-12',
    '1950S2',
    '?1984',
    '1984?-06',
    '[1667,1668]',
    '/',
    '../',
    '/..',
    '1964/1970/1980',
    '1964 / 2008',
    '201x',
    '1985-04-12T23:20',
    '1985-04T23:20:30',
  ])('leaves what is not level 0 or 1 to others: %s', (text) => {
    expect(parseEdtf(text)).toBeUndefined();
  });

  // The edtf package is an oracle for part of the ground: it errs on three digits, five digits and years past ±271821,
  // and takes 29 February in any year (the table above has our own cases).
  const pad = (n: number, width = 2): string => `${n}`.padStart(width, '0');
  const year = fc.integer({ min: -9999, max: 9999 }).map((y) => (y < 0 ? `-${pad(-y, 4)}` : pad(y, 4)));
  const part = fc.oneof(
    year,
    fc.tuple(year, fc.integer({ min: 0, max: 14 })).map(([y, m]) => `${y}-${pad(m)}`),
    fc
      .tuple(year, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 32 }))
      .map(([y, m, d]) => `${y}-${pad(m)}-${pad(d)}`)
      .filter((text) => !text.endsWith('-02-29')),
  );
  const oracle = (text: string): readonly [number, number] | undefined => {
    try {
      const read = edtf(text, { level: 1 }) as { readonly min: number; readonly max: number };
      return [new Date(read.min).getUTCFullYear(), new Date(read.max).getUTCFullYear()];
    } catch {
      return undefined;
    }
  };

  test('agrees with the edtf package on dates: which are there, and their years', () => {
    fc.assert(
      fc.property(part, (text) => {
        const span = parseEdtf(text)?.span;
        expect(span && [span.latestStart, span.earliestEnd]).toEqual(oracle(text));
      }),
      runs(600),
    );
  });

  test('agrees with it on unspecified digits', () => {
    const masked = fc.oneof(
      fc.tuple(fc.nat(99), fc.constant('XX')).map(([n, x]) => pad(n) + x),
      fc.tuple(fc.nat(999), fc.constant('X')).map(([n, x]) => pad(n, 3) + x),
    );
    fc.assert(
      fc.property(masked, (text) => {
        const span = parseEdtf(text)?.span;
        expect(span && [span.latestStart, span.earliestEnd]).toEqual(oracle(text));
      }),
    );
  });

  test('agrees with it on intervals that run forward', () => {
    fc.assert(
      fc.property(part, part, (a, b) => {
        const [left, right] = [oracle(a), oracle(b)];
        fc.pre(left !== undefined && right !== undefined && left[1] < right[0]);
        const span = parseEdtf(`${a}/${b}`)?.span;
        expect(span && [span.latestStart, span.earliestEnd]).toEqual(oracle(`${a}/${b}`));
      }),
    );
  });
});
