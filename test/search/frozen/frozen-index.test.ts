import MiniSearch from 'minisearch';
import { describe, expect, test } from 'vitest';
import { madeNotes } from '../../../scripts/bench/made/made-notes.ts';
import { packNotebook } from '../../../scripts/demo-plugin.mjs';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { FrozenIndex, type Ranked } from '../../../web/search/frozen/frozen-index.ts';
import { IndexBuilder } from '../../../web/search/frozen/index-builder.ts';
import type { WantedWord } from '../../../web/search/frozen/matching-terms.ts';
import { type NoteDocument, noteDocument } from '../../../web/search/note-documents.ts';
import { EXACT_OPTIONS, INDEX_OPTIONS, NEAR_OPTIONS, termOf, wordsOf } from '../../../web/search/search-options.ts';
import { fc } from '../../helpers/property.ts';

/** The library is the oracle: same words, same folding, same ranking. */
function both(documents: readonly NoteDocument[]) {
  const builder = new IndexBuilder();
  const oracle = new MiniSearch<NoteDocument>(INDEX_OPTIONS);
  for (const document of documents) {
    builder.add(document);
    oracle.add(document);
  }
  const bytes = builder.freeze();
  const frozen = FrozenIndex.open(bytes);
  if (!frozen) throw new Error('the index does not open');
  return { frozen, oracle, bytes, documents };
}
type Both = ReturnType<typeof both>;

const documentsOf = (files: Iterable<{ readonly path: string; readonly text: string }>) =>
  [...files].map(({ path, text }) => noteDocument(parseNote(path, text).value));
const plain = (file: string, body: string) => noteDocument(parseNote(file, body).value);
const wanted = (term: string, near = false): WantedWord => ({
  term,
  beginning: term.length > 1,
  near: near && term.length >= 5,
  swaps: [],
});

/** By file, the order of equal ones set aside. */
const listed = <T extends { readonly file: string }>(found: readonly T[]) => [...found].sort((a, b) => (a.file < b.file ? -1 : 1));
const ours = ({ frozen }: Both, terms: readonly string[], near: boolean): readonly Ranked[] =>
  frozen.rank(terms.map((term) => wanted(term, near)));
const named = ({ frozen }: Both, ranked: readonly Ranked[]) => ranked.map(({ note, score }) => ({ file: frozen.note(note).file, score }));
const theirs = ({ oracle }: Both, terms: readonly string[], near: boolean) =>
  oracle
    .search({ combineWith: 'AND', queries: [...terms] }, near ? NEAR_OPTIONS : EXACT_OPTIONS)
    .map((result) => ({ file: result['file'] as string, score: result.score, match: result.match }));

function expectSame(pair: Both, terms: readonly string[]): void {
  for (const near of [false, true]) {
    const [mine, oracle] = [ours(pair, terms, near), theirs(pair, terms, near)];
    const says = `${terms.join(' ')}${near ? ' ~' : ''}`;
    const [found, expected] = [listed(named(pair, mine)), listed(oracle)];
    expect(
      found.map(({ file }) => file),
      says,
    ).toEqual(expected.map(({ file }) => file));
    // Sums in another order differ in their last digits.
    const off = found.filter(({ score }, at) => Math.abs(score / (expected[at]?.score ?? 0) - 1) > 1e-9);
    expect(off, says).toEqual([]);
    const why = pair.frozen.why(
      terms.map((term) => wanted(term, near)),
      mine.map(({ note }) => note),
    );
    const matched = new Map(oracle.map(({ file, match }) => [file, match]));
    for (const [at, { note }] of mine.entries()) expect(why[at], says).toEqual(matched.get(pair.frozen.note(note).file));
  }
}

const demonstration = both(documentsOf(packNotebook().files.filter(({ path }) => path.endsWith('.md'))));
const generated = both(documentsOf(madeNotes(60)));

describe('FrozenIndex beside minisearch', () => {
  test.each([
    ['the demonstration', demonstration],
    ['generated notes', generated],
  ])('gives the same notes, scores and reasons over %s', (_, pair) => {
    const words = [
      ...new Set(pair.documents.flatMap(({ body, names, title }) => wordsOf(`${title} ${names} ${body.slice(0, 300)}`)).map(termOf)),
    ];
    const some = words.filter((_, nth) => nth % Math.ceil(words.length / 25) === 0);
    for (const [nth, term] of some.entries()) {
      expectSame(pair, [term]);
      expectSame(pair, [term.slice(0, 2)]);
      expectSame(pair, [term.slice(0, 3), (some[(nth + 7) % some.length] ?? '').slice(0, 2)]);
    }
  });

  test('forgives one slip as the library does, wherever it is', () => {
    const terms = ['madder', 'kermes', 'luteolin', 'greenweed', 'indigo'];
    const letter = fc.constantFrom(...'aeimz');
    let found = 0;
    fc.assert(
      fc.property(fc.constantFrom(...terms), fc.nat(20), fc.nat(2), letter, (term, place, what, other) => {
        const at = place % (term.length + (what === 1 ? 1 : 0));
        const slipped = term.slice(0, at) + (what === 0 ? '' : other) + term.slice(what === 1 ? at : at + 1);
        expectSame(demonstration, [slipped]);
        const near = ours(demonstration, [slipped], true).length;
        found += near - ours(demonstration, [slipped], false).length;
      }),
      { numRuns: 60, seed: 1 },
    );
    expect(found).toBeGreaterThan(100);
  });

  test('holds for any notes and words', () => {
    const word = fc.stringMatching(/^[abé]{1,6}$/);
    const text = fc.array(word, { maxLength: 12 }).map((words) => words.join(' '));
    const document = fc.record({ body: text, title: text, tags: text, names: text, words: text });
    fc.assert(
      fc.property(fc.array(document, { minLength: 1, maxLength: 40 }), fc.array(word, { minLength: 1, maxLength: 3 }), (made, typed) => {
        const pair = both(made.map((one, nth) => ({ ...one, file: `n${nth}.md`, id: `n${nth}`, kind: 'plain', sources: '' })));
        expectSame(pair, [...new Set(typed.map(termOf))]);
      }),
      { numRuns: 150, seed: 2 },
    );
  });
});

describe('FrozenIndex', () => {
  test('keeps file, id, kind and title', () => {
    for (const [nth, { file, id, kind, title }] of demonstration.documents.entries())
      expect(demonstration.frozen.note(nth)).toEqual({ file, id, kind, title });
  });

  test('gives the best of many, the first taken in among equals, and those of a kind', () => {
    const terms = [wanted('ma')];
    const all = demonstration.frozen.rank(terms);
    expect(all.length).toBeGreaterThan(40);
    expect(demonstration.frozen.rank(terms, 20)).toEqual(all.slice(0, 20));
    const recipes = all.filter(({ note }) => demonstration.frozen.note(note).kind === 'recipe');
    expect(demonstration.frozen.rank(terms, Infinity, 'recipe')).toEqual(recipes);
  });

  test('leaves out what was removed', () => {
    const { frozen } = both([plain('a.md', 'weld'), plain('b.md', 'weld'), plain('ab.md', 'woad')]);
    expect([frozen.remove('b.md'), frozen.remove('b.md'), frozen.remove('no.md')]).toEqual([true, false, false]);
    expect(frozen.size).toBe(2);
    expect(frozen.rank([wanted('weld')]).map(({ note }) => note)).toEqual([0]);
  });

  test('counts what was removed no more, and what stands beside it', () => {
    const documents = documentsOf(madeNotes(30));
    const { frozen } = both(documents);
    for (const { file } of documents.slice(10, 15)) frozen.remove(file);
    const left = both(documents.filter((_, nth) => nth < 10 || nth > 14));
    const scores = (pair: Pick<Both, 'frozen'>, term: string) => pair.frozen.rank([wanted(term)]).map(({ score }) => score.toFixed(9));
    for (const term of ['ma', 'the', 'wool']) expect(scores({ frozen }, term), term).toEqual(scores(left, term));
    // As many again, none of which holds the word: it is rarer.
    const before = left.frozen.rank([wanted('wool')])[0]?.score ?? 0;
    left.frozen.countBeside({ noteCount: 25, lengthSums: [], heldBy: () => undefined });
    expect(left.frozen.rank([wanted('wool')])[0]?.score).toBeGreaterThan(before);
  });

  test('keeps the version a note was taken in under', () => {
    const { frozen } = both([{ ...plain('a.md', 'weld'), version: 7 }, plain('b.md', 'weld')]);
    expect([frozen.version(0), frozen.version(1)]).toEqual([7, 0]);
  });

  test('is empty where there is nothing, and knows terms in any script and of any length', () => {
    const empty = both([]);
    expect(ours(empty, ['weld'], true)).toEqual([]);
    const long = 'w'.repeat(300);
    const pair = both([plain('a.md', `κρόκος 茜草 𐌰𐌱𐌲 ${long} ${long}x`)]);
    for (const text of ['κρόκος', '茜', '𐌰𐌱', long]) expectSame(pair, [termOf(text)]);
  });

  test('counts a word as often as it stands, in long notes too', () => {
    const pair = both([
      plain('a.md', 'weld '.repeat(70_000)),
      plain('b.md', 'weld weld weld'),
      ...Array.from({ length: 40 }, (_, n) => plain(`n${n}.md`, 'woad')),
    ]);
    expect(ours(pair, ['weld'], false).map(({ note }) => note)).toEqual(
      theirs(pair, ['weld'], false).map(({ file }) => (file === 'a.md' ? 0 : 1)),
    );
  });

  test('writes gaps of every length', () => {
    const documents = Array.from({ length: 5000 }, (_, n) => plain(`n${n}.md`, n % 997 === 5 || n < 60 || n === 4999 ? 'weld' : 'woad'));
    expectSame(both(documents), ['weld']);
  });

  test('is not opened when cut short, changed, or of another version', () => {
    const { bytes } = generated;
    expect(FrozenIndex.open(bytes.slice(0))).toBeDefined();
    expect(FrozenIndex.open(bytes.slice(0, bytes.byteLength - 8))).toBeUndefined();
    expect(FrozenIndex.open(new ArrayBuffer(0))).toBeUndefined();
    fc.assert(
      fc.property(fc.nat(bytes.byteLength - 1), fc.integer({ min: 1, max: 255 }), (at, change) => {
        const other = bytes.slice(0);
        const view = new Uint8Array(other);
        view[at] = (view[at] ?? 0) ^ change;
        return FrozenIndex.open(other) === undefined;
      }),
      { seed: 3 },
    );
  });
});
