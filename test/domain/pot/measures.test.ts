import { describe, expect, test } from 'vitest';
import { convertMeasure, inMeasure, MEASURES, measureOf, possibleMeasures } from '../../../web/domain/pot/measures.ts';
import { referenceTable } from '../../helpers/reference-table.ts';
import { fc } from '../../helpers/property.ts';

const rows = referenceTable('historic-measures.csv');

describe('convertMeasure', () => {
  // Source: test/reference/historic-measures.csv, each row with its own.
  test.each(
    rows.map((row) => [Number(row['amount']), row['name'] ?? '', Number(row['value']), row['unit'], Number(row['tolerance'])] as const),
  )('%d %s is %d %s', (amount, name, value, unit, tolerance) => {
    const found = convertMeasure(amount, name);
    expect(found?.unit).toBe(unit);
    expect(Math.abs((found?.value ?? NaN) - value)).toBeLessThanOrEqual(tolerance + 1e-9);
    expect(found?.source).not.toBe('');
  });
  test('goes there and back for every measure', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.keys(MEASURES)), fc.double({ min: 0.01, max: 10_000, noNaN: true }), (name, value) => {
        const there = convertMeasure(value, name);
        const back = there && inMeasure(there.value, there.unit === 'g' ? 'g' : 'ml', name);
        expect(Math.abs((back?.value ?? NaN) / value - 1)).toBeLessThan(1e-9);
      }),
    );
  });
  test('never turns a weight into a volume', () => expect(inMeasure(100, 'g', 'pint')).toBeUndefined());
  test.each(['quintal', 'centner', 'handful', 'mina', 'constructor', ''])('leaves “%s” unconverted', (unit) => {
    expect(convertMeasure(1, unit)).toBeUndefined();
    expect(possibleMeasures(unit)).toEqual([]);
  });
});

describe('possibleMeasures', () => {
  test('asks which pound, of 12 ounces or of 16', () => {
    const pounds = possibleMeasures('lbs');
    expect(pounds[0]?.name).toBe('lb');
    expect(new Set(pounds.map(({ ounces }) => ounces))).toContain(12);
    expect(new Set(pounds.map(({ ounces }) => ounces))).toContain(16);
    expect(possibleMeasures('libbre').map(({ name }) => name)).toContain('libbra sottile');
  });
  test('does not convert a libbra before a town is chosen', () => expect(measureOf('libbra')).toBeUndefined());
  test('has nothing to ask where the name says it', () => {
    expect(possibleMeasures('lb troy').map(({ name }) => name)).toEqual(['lb troy']);
    expect(possibleMeasures('grams').map(({ name }) => name)).toEqual(['g']);
  });
});

describe('pounds and ounces', () => {
  // 12 ounces to the Troy and Tower pounds and the Italian libbre, 16 to the avoirdupois, Cologne and Paris pounds.
  test.each([
    ['lb troy', 'oz troy', 12],
    ['libbra sottile', 'oncia sottile', 12],
    ['libbra grossa', 'oncia grossa', 12],
    ['lb', 'oz', 16],
    ['cologne pound', 'cologne ounce', 16],
    ['livre poids de marc', 'once poids de marc', 16],
  ])('%s', (pound, ounce, count) => {
    const [one, other] = [measureOf(pound), measureOf(ounce)];
    expect((one?.factor ?? NaN) / (other?.factor ?? NaN)).toBeCloseTo(count, 9);
    expect(one?.ounces).toBe(count);
  });
  // 1 pint imperial for a wine pint is 20 % more, seen from the wine pint: 568 to 473.
  test('which gallon matters by a fifth', () =>
    expect((measureOf('gallon')?.factor ?? 0) / (measureOf('wine gallon')?.factor ?? 1)).toBeCloseTo(1.201, 3));
});
