import { describe, expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import * as foreign from '../../../web/notebook/references/foreign-items.ts';
import { readReferences } from '../../../web/notebook/references/read-references.ts';
import { DEMO_FOLDER } from '../../helpers/demo-notebook.ts';

const keys = (path: string, text: string) => readReferences(path, text, foreign).map(({ key }) => key);

describe('readReferences', () => {
  test('every entry of the demonstration is read from CSL-JSON', () => {
    const text = readFileSync(`${DEMO_FOLDER}/bibliography.json`, 'utf8');
    const count = (JSON.parse(text) as readonly unknown[]).length;
    expect(readReferences('bibliography.json', text, foreign)).toHaveLength(count);
  });

  test('BibTeX: abbreviations joined, TeX letters, corporate names, page dashes', () => {
    const text = `@string{bw = "Brill"}
@comment{made by hand}
@book{cardon-2007, author = {Cardon, Dominique and M{\\"u}ller, J{\\o}rgen and {{Big Museum}}}, title = "Natural {D}yes",
  publisher = bw # " Press", address = {Leiden}, year = 2007, doi = {10.1/x}, pages = {1--20}, edition = {2} }`;
    expect(readReferences('x/more.BIB', text, foreign)).toEqual([
      {
        key: 'cardon-2007',
        type: 'book',
        authors: [
          { family: 'Cardon', given: 'Dominique' },
          { family: 'Müller', given: 'Jørgen' },
          { family: 'Big Museum', given: '' },
        ],
        editors: [],
        year: '2007',
        title: 'Natural Dyes',
        container: '',
        volume: '',
        issue: '',
        pages: '1–20',
        edition: '2',
        publisher: 'Brill Press',
        place: 'Leiden',
        doi: '10.1/x',
        url: '',
        note: '',
      },
    ]);
  });

  test('a broken BibTeX entry leaves the others, with the abbreviations', () => {
    const text =
      '@string{j = {Dyes}}\n@article{a, title={A}, journal=j, year=1999}\n@article{broken, title = {x\n@online{b, title={B}, date={2019-03}}';
    expect(readReferences('a.bib', text, foreign).map(({ key, container, year }) => [key, container, year])).toEqual([
      ['a', 'Dyes', '1999'],
      ['b', '', '2019'],
    ]);
  });

  // The entry printed with the RIS format's description on Wikipedia, with an ID added to the second.
  const SHANNON = `TY  - JOUR
AU  - Shannon, Claude E.
PY  - 1948/07//
TI  - A Mathematical Theory of Communication
T2  - Bell System Technical Journal
SP  - 379
EP  - 423
VL  - 27
ER  - `;

  test('RIS: the published example; named by author and year where it has no ID', () => {
    expect(readReferences('a.ris', SHANNON, foreign)).toMatchObject([
      {
        key: 'shannon-1948',
        type: 'article-journal',
        authors: [{ family: 'Shannon', given: 'Claude E.' }],
        year: '1948',
        title: 'A Mathematical Theory of Communication',
        container: 'Bell System Technical Journal',
        pages: '379–423',
        volume: '27',
      },
    ]);
    expect(keys('a.ris', SHANNON.replace('AU  -', 'ID  - sh48\nAU  -'))).toEqual(['sh48']);
  });

  test('RIS: several entries, CRLF, a byte order mark, older tags, and words before the first', () => {
    const text = `\uFEFFProvider: somebody\r\nAB  - stray\r\n${SHANNON.replaceAll('\n', '\r\n')}\r\n\r\nTY  - BOOK\r\nID  - b\r\nA1  - Doe, Jane\r\nY1  - 2001///\r\nT1  - Madder\r\nPB  - Press\r\nCY  - York\r\nER  - \r\n`;
    expect(readReferences('a.ris', text, foreign)).toMatchObject([
      { key: 'shannon-1948' },
      {
        key: 'b',
        type: 'book',
        year: '2001',
        title: 'Madder',
        publisher: 'Press',
        place: 'York',
        authors: [{ family: 'Doe', given: 'Jane' }],
      },
    ]);
  });

  test.each([
    ['bibliography.json', '[{'],
    ['bibliography.json', '{"items": 3}'],
    ['a.bib', '@{'],
    ['a.bib', 'no entries here'],
    ['a.ris', 'AU  - nobody\nER  - '],
    ['a.ris', 'TY  - JOUR\nER  - '],
    ['a.ris', ''],
  ])('%s with %j holds nothing', (path, text) => {
    expect(readReferences(path, text, foreign)).toEqual([]);
  });
});
