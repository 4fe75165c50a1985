import { describe, expect, test } from 'vitest';
import * as foreign from '../../web/notebook/references/foreign-items.ts';
import { readBibliography, shortEntry, webAddress } from '../../web/notebook/bibliography.ts';

const csl = (...entries: readonly unknown[]) => [{ path: 'bibliography.json', text: JSON.stringify(entries) }];

describe('readBibliography', () => {
  test('reads author, year, title and place of CSL-JSON', () => {
    const entry = {
      id: 'munro-2007',
      author: [{ family: 'Munro', given: 'John H.' }],
      issued: { 'date-parts': [[2007, 3]] },
      title: 'The anti-red shift',
      'container-title': 'Medieval Clothing and Textiles',
      volume: 3,
      DOI: '10.1017/abc',
    };
    expect(readBibliography(csl(entry)).get('munro-2007')).toEqual({
      key: 'munro-2007',
      author: 'Munro',
      year: '2007',
      title: 'The anti-red shift',
      within: 'Medieval Clothing and Textiles 3',
      address: 'https://doi.org/10.1017/abc',
    });
  });

  test('names up to three authors, of more the first', () => {
    const people = (...names: readonly string[]) => names.map((family) => ({ family }));
    const read = readBibliography(csl({ id: 'a', author: people('A', 'B', 'C') }, { id: 'b', author: people('A', 'B', 'C', 'D') }));
    expect(read.get('a')?.author).toBe('A, B and C');
    expect(read.get('b')?.author).toBe('A and others');
  });

  test('reads fields of BibTeX in braces, quotes and bare', () => {
    const text =
      '@book{cardon-2007,\n  author = {Cardon, Dominique},\n title = "Natural {D}yes",\n year = 2007,\n}\n@misc{next, title={Next}}';
    const read = readBibliography([{ path: 'more.bib', text }], foreign);
    expect(read.get('cardon-2007')).toMatchObject({ author: 'Cardon', title: 'Natural Dyes', year: '2007' });
    expect(read.get('next')).toMatchObject({ title: 'Next', author: '' });
  });

  test('broken files and strange entries give what can be read', () => {
    expect(readBibliography([{ path: 'bibliography.json', text: '[{' }]).size).toBe(0);
    expect([...readBibliography(csl(null, 3, {}, { id: 'x', author: 'nobody', issued: 5, URL: 'javascript:alert(1)' })).values()]).toEqual([
      { key: 'x', author: '', year: '', title: '', within: '' },
    ]);
  });
});

describe('webAddress', () => {
  test.each(['https://example.org/a?b=1#c', 'http://example.org'])('%s may be linked to', (address) => {
    expect(webAddress(address)).toBe(address);
  });

  test.each([
    'javascript:alert(1)',
    'data:text/html,x',
    'https://',
    'ftp://example.org',
    ' https://example.org',
    'https://a b',
    '//example.org',
  ])('%s may not', (address) => {
    expect(webAddress(address)).toBeUndefined();
  });
});

describe('shortEntry', () => {
  test('leaves out what is not known', () => {
    const entry = { key: 'k', author: '', year: '1890', title: 'T', within: '' };
    expect(shortEntry(entry)).toBe('1890, T');
  });
});
