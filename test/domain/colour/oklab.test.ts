import { converter } from 'culori';
import { describe, expect, test } from 'vitest';
import { numbers, referenceTable } from '../../helpers/reference-table.ts';

// Colours are sorted and mapped into the screen's gamut in Oklab; the library that does it must be right.
describe('culori oklab', () => {
  const rows = referenceTable('oklab-reference.csv');
  test('the reference has 13 rows', () => expect(rows).toHaveLength(13));
  test.each(rows.map((row) => [`${row['kind']} ${row['name']} ${row['X']}`, row] as const))('%s', (_, row) => {
    const [x, y, z] = numbers(row, 'X', 'Y', 'Z') as [number, number, number];
    const found = converter('oklab')({ mode: 'xyz65', x, y, z });
    const slack = row['kind'] === 'published' ? 0.0015 : 0.0003;
    [found.l, found.a, found.b].forEach((value, i) => expect(Math.abs(value - Number(row[['L', 'a', 'b'][i] ?? '']))).toBeLessThan(slack));
  });
});
