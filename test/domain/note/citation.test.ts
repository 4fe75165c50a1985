import { describe, expect, test } from 'vitest';
import { parseCitation, printCitation } from '../../../web/domain/note/citation.ts';

describe('parseCitation', () => {
  test.each<[string, { key: string; locator?: string } | undefined]>([
    ['cardon2007', { key: 'cardon2007' }],
    ['cardon2007, p. 3', { key: 'cardon2007', locator: 'p. 3' }],
    ['  rosetti1548 ,fol. 2, v ', { key: 'rosetti1548', locator: 'fol. 2, v' }],
    ['cardon2007,', { key: 'cardon2007' }],
    [', p. 3', undefined],
    ['', undefined],
  ])('%j', (text, expected) => {
    expect(parseCitation(text)).toEqual(expected);
  });

  test('carries its place along, and is printed as it was read', () => {
    expect(parseCitation('k, p. 1', [4, 11])).toEqual({ key: 'k', locator: 'p. 1', range: [4, 11] });
    expect(printCitation({ key: 'k', locator: 'p. 1' })).toBe('k, p. 1');
    expect(printCitation({ key: 'k' })).toBe('k');
  });
});
