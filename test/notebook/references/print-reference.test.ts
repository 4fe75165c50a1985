import { describe, expect, test } from 'vitest';
import { byAuthor, printCitation, printReference, type ReferenceStyle } from '../../../web/notebook/references/print-reference.ts';
import { type Reference, referenceOfCsl } from '../../../web/notebook/references/reference.ts';

function reference(more: Readonly<Record<string, unknown>>): Reference {
  const read = referenceOfCsl({ id: 'k', ...more });
  if (!read) throw new Error('no reference');
  return read;
}
const text = (one: Reference, style: ReferenceStyle, locator?: string) =>
  printReference(one, style, locator)
    .map((run) => (run.italic ? `_${run.text}_` : run.text))
    .join('');

const book = reference({
  type: 'book',
  title: 'Natural Dyes',
  author: [{ family: 'Cardon', given: 'Dominique' }],
  issued: { 'date-parts': [[2007]] },
  publisher: 'Archetype',
  'publisher-place': 'London',
  edition: '2',
});
const article = reference({
  title: 'The anti-red shift',
  author: [
    { family: 'Munro', given: 'John H.' },
    { family: 'Doe', given: 'J.' },
  ],
  issued: { 'date-parts': [[2007, 3]] },
  'container-title': 'Medieval Clothing and Textiles',
  volume: 3,
  issue: '1',
  page: '53-95',
  DOI: 'https://doi.org/10.1/abc',
});

describe('printReference', () => {
  test('a book', () => {
    expect(text(book, 'note', 'p. 12')).toBe('Dominique Cardon, _Natural Dyes_, 2nd edn, London: Archetype, 2007, p. 12.');
    expect(text(book, 'author-date')).toBe('Cardon, Dominique (2007), _Natural Dyes_, 2nd edn, London: Archetype.');
  });

  test('an article, its DOI an address', () => {
    expect(text(article, 'note')).toBe(
      'John H. Munro and J. Doe, “The anti-red shift”, _Medieval Clothing and Textiles_ 3 (1), 2007, pp. 53–95, doi:10.1/abc',
    );
    expect(text(article, 'author-date')).toBe(
      'Munro, John H. and J. Doe (2007), “The anti-red shift”, _Medieval Clothing and Textiles_ 3 (1), pp. 53–95, doi:10.1/abc',
    );
    expect(printReference(article, 'note').at(-1)).toEqual({ text: 'doi:10.1/abc', address: 'https://doi.org/10.1/abc' });
  });

  test('a book stays a book, with what it is said to be in behind it', () => {
    const odd = reference({ type: 'book', title: 'Indigo', 'container-title': 'Archetype, London', issued: { 'date-parts': [[1998]] } });
    expect(text(odd, 'note')).toBe('_Indigo_, Archetype, London, 1998.');
  });

  test('an edited volume says so; no year is undated', () => {
    const edited = reference({ title: 'Dyes', editor: [{ literal: 'The Guild' }] });
    expect(text(edited, 'author-date')).toBe('The Guild (ed.) (undated), _Dyes_.');
  });

  test('what nobody signed goes by its title, else by its key', () => {
    expect(text(reference({ title: 'Ordinance', issued: { literal: '1429' } }), 'author-date')).toBe('_Ordinance_ (1429).');
    expect(text(reference({}), 'author-date')).toBe('k (undated).');
  });

  test('an address that is none is not printed as one', () => {
    expect(printReference(reference({ title: 'X', URL: 'javascript:alert(1)' }), 'note').some(({ address }) => address)).toBe(false);
  });

  test('of more than six writers the first is named', () => {
    const author = Array.from({ length: 7 }, (_, at) => ({ family: `F${at}` }));
    expect(text(reference({ title: 'X', author }), 'note')).toMatch(/^F0 and others, /);
  });
});

describe('printCitation', () => {
  test('names, year, page', () => {
    expect(printCitation(article, 'p. 53')).toBe('Munro and Doe 2007, p. 53');
    expect(printCitation(reference({ title: 'Ordinance' }))).toBe('Ordinance undated');
  });
});

describe('byAuthor', () => {
  test('orders by author, year, title', () => {
    const [older] = [reference({ title: 'A', author: [{ family: 'Cardon' }], issued: { 'date-parts': [[1990]] } })];
    expect([article, book, older].sort(byAuthor)).toEqual([older, book, article]);
  });
});
