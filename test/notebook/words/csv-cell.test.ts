import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { chartCsv } from '../../../web/notebook/chart-csv.ts';
import { readTable } from '../../../web/notebook/import/read-table.ts';
import type { WhoHadWhatView } from '../../../web/notebook/views/who-had-what-view.ts';
import { csvCell } from '../../../web/notebook/words/csv-cell.ts';
import { fc } from '../../helpers/property.ts';

/** The words of a cell as a reader of comma-separated values has them. */
const cellOf = (written: string): string | undefined => Papa.parse<string[]>(written, { delimiter: ',' }).data[0]?.[0];

/** The words our own reader has, of a table with that cell in it. */
function readBack(text: string): string | undefined {
  const table = readTable(`pot,remark\r\n"1",${csvCell(text)}\r\n`, { pot: [], remark: [] }, {});
  return typeof table === 'string' ? undefined : table.rows[0]?.cell('remark');
}

describe('a cell of comma-separated values', () => {
  // OWASP, "CSV Injection" (owasp.org/www-community/attacks/CSV_Injection): cells that begin so are run as formulas.
  test.each(['=1+1', '+1', '-1+1', '-x', '@SUM(A1)', '\t=1', '\r=1', '\n=1', ' =1', '＝1', '＋1', '－1', '＠1', '-0499/0020', '+5'])(
    '%j is made text',
    (text) => expect(cellOf(csvCell(text))).toBe(`'${text}`),
  );
  test.each(['-5', '-0.25', '12', '-0499', 'madder = red', 'x@y', '2-3', "'tis", '', '..'])('%j stays as it is', (text) =>
    expect(cellOf(csvCell(text))).toBe(text),
  );
  test.each(["'=1", "''=1", "' -x", "'-5", '-5', '=1', "'tis", '=a\r\nb', '"=1"', "'\na", "''\t5"])(
    '%j is read back as the same words',
    (text) => expect(readBack(text)).toBe(text),
  );
  test('whatever the words, none begins as a formula, and they are read back', () => {
    const words = fc.string({ unit: fc.constantFrom("'", '=', '-', '+', '@', '\t', '\r', '\n', ' ', '"', ',', '5', '.', 'a') });
    fc.assert(
      fc.property(words, (text) => {
        expect(cellOf(csvCell(text))).toMatch(/^(?:[^=+\-@\t\r\n]|-\d+(?:\.\d+)?$|$)/);
        if (text.trim() === text) expect(readBack(text)).toBe(text);
      }),
    );
  });
});

test('a chart as comma-separated values: names and claims cannot run, years before our era are numbers', () => {
  const band = { style: 'local', outerFrom: -600, from: -500, to: -20, outerTo: null, soft: false, label: '@SUM(1)', claimKey: '-x#0' };
  const text = chartCsv({ rows: [{ title: '=HYPERLINK("x")', bands: [band] }] } as unknown as WhoHadWhatView);
  expect(Papa.parse<string[]>(text).data[1]).toEqual([
    '\'=HYPERLINK("x")',
    'local',
    '-600',
    '-500',
    '-20',
    '',
    'hard',
    "'@SUM(1)",
    "'-x#0",
  ]);
});

test.each([
  ['tabs in cells under commas', 'pot,remark\n1,"a\tb\tc\td"\n2,"e\tf\tg\th"\n', 'a\tb\tc\td'],
  ['commas in cells under semicolons', 'pot;remark\n1;a, b, c, d\n2;e, f, g, h\n', 'a, b, c, d'],
  ['an empty line and an empty first heading', '\n\tpot\tremark\nx\t1\ta, b\n', 'a, b'],
])('the headings say what parts the cells: %s', (_, text, remark) => {
  const table = readTable(text, { pot: [], remark: [] }, {});
  expect(typeof table === 'string' ? table : table.rows[0]?.cell('remark')).toBe(remark);
});
