import { describe, expect, test } from 'vitest';
import { parseAmount, parseFibreGrams } from '../../../web/domain/note/amount.ts';

describe('parseAmount', () => {
  test.each<[string, { value?: number; upTo?: number; unit?: string }]>([
    ['15 %', { value: 15, unit: '%' }],
    ['15% WOF', { value: 15, unit: '%' }],
    ['15 % o.w.f.', { value: 15, unit: '%' }],
    ['3–5 g/L', { value: 3, upTo: 5, unit: 'g/L' }],
    ['3 - 5 g/l', { value: 3, upTo: 5, unit: 'g/L' }],
    ['3 to 5 g per litre', { value: 3, upTo: 5, unit: 'g/L' }],
    ['2 oz', { value: 2, unit: 'oz' }],
    ['1/2 lb', { value: 0.5, unit: 'lb' }],
    ['1 1/2 lb', { value: 1.5, unit: 'lb' }],
    ['½ lb', { value: 0.5, unit: 'lb' }],
    ['1½ lb', { value: 1.5, unit: 'lb' }],
    ['0,5 kg', { value: 0.5, unit: 'kg' }],
    ['1:4', { value: 0.25, unit: 'ratio' }],
    ['30:1', { value: 30, unit: 'ratio' }],
    ['30–40 : 1', { value: 30, upTo: 40, unit: 'ratio' }],
    ['7', { value: 7 }],
    ['2 Lot', { value: 2, unit: 'Lot' }],
    ['a handful', {}],
    ['about 15 %', {}],
    ['c. 15 %', {}],
    ['5–3 g/L', {}],
    ['1,000 g', {}],
    ['-5 %', {}],
    ['1/0 lb', {}],
    ['1:0', {}],
    [`${'9'.repeat(400)}1/2 lb`, {}],
    [`1:0.${'0'.repeat(320)}1`, {}],
    ['2 oz or 3 oz', {}],
    ['2 oz to 10 lb', {}],
    ['', {}],
  ])('%j', (text, expected) => {
    expect(parseAmount(text)).toEqual({ text, ...expected });
  });
});

test('an amount over many lines or blanks ends, and is left as it is written', () => {
  const blanks = ' '.repeat(100_000);
  for (const text of [`1${blanks}a\nb`, `${'1'.repeat(100_000)}\nb`, `1 -${blanks}2${blanks}:\nb`])
    expect(parseAmount(text)).toEqual({ text });
  expect(parseAmount(`15${blanks}g`)).toMatchObject({ value: 15, unit: 'g' });
  expect(parseAmount('15\ng')).toMatchObject({ value: 15, unit: 'g' });
});

describe('parseFibreGrams', () => {
  // One pound is 453.59237 g exactly (International Yard and Pound agreement, 1959).
  test.each<[string, number | string]>([
    ['50 g', 50],
    ['0.5 kg', 500],
    ['2 oz', 56.69904625],
    ['1 lb', 453.59237],
    ['100 kg', 100_000],
    ['101 kg', 'out-of-range'],
    ['-5 g', 'out-of-range'],
    ['−5 g', 'out-of-range'],
    ['0 g', 'out-of-range'],
    ['50', 'unreadable'],
    ['40–50 g', 'unreadable'],
    ['one skein', 'unreadable'],
    ['5 constructor', 'unreadable'],
  ])('%j', (text, expected) => {
    expect(parseFibreGrams(text)).toBe(expected);
  });
});
