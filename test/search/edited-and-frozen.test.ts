import MiniSearch, { type Query } from 'minisearch';
import { describe, expect, test } from 'vitest';
import { madeNotes } from '../../scripts/bench/made/made-notes.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { IndexBuilder } from '../../web/search/frozen/index-builder.ts';
import { type NoteDocument, noteDocument } from '../../web/search/note-documents.ts';
import { NoteSearch } from '../../web/search/note-search.ts';
import { EXACT_OPTIONS, INDEX_OPTIONS, NEAR_OPTIONS, termOf, wordsOf } from '../../web/search/search-options.ts';
import { fc } from '../helpers/property.ts';

/** A notebook that is edited, and the search over it; the library over all that is there is the oracle. */
class Tried {
  search = new NoteSearch();
  readonly notes = new Map<string, NoteDocument>();
  #version = 0;
  #kept: ArrayBuffer | undefined;

  put(document: NoteDocument): void {
    this.notes.set(document.file, { ...document, version: (this.#version += 1) });
    this.search.put(document);
  }

  remove(file: string): void {
    this.notes.delete(file);
    this.search.remove(file);
  }

  /** Freezes while something is edited meanwhile. */
  freeze(meanwhile: readonly NoteDocument[], gone: readonly string[], keep: boolean): void {
    const builder = new IndexBuilder();
    for (const document of this.notes.values()) builder.add(document);
    for (const document of meanwhile) this.put(document);
    for (const file of gone) this.remove(file);
    const bytes = builder.freeze();
    if (keep) this.#kept = bytes.slice(0);
    expect(this.search.adopt(bytes, [...meanwhile.map(({ file }) => file), ...gone])).toBe(true);
  }

  /** A new session: what was kept, and of the notes only what that lacks. */
  restart(): void {
    this.search = new NoteSearch();
    const stamps = [...this.notes.values()].map(({ file, version }) => [file, version] as const);
    const lacking = this.#kept ? this.search.open(this.#kept.slice(0), stamps) : [...this.notes.keys()];
    for (const file of lacking ?? []) this.search.put(this.notes.get(file) ?? expect.fail(file));
  }

  expectRight(...texts: readonly string[]): void {
    expect(this.search.size).toBe(this.notes.size);
    const oracle = new MiniSearch<NoteDocument>(INDEX_OPTIONS);
    oracle.addAll([...this.notes.values()]);
    for (const text of texts) this.#expectAnswer(text, oracle);
  }

  #expectAnswer(text: string, oracle: MiniSearch<NoteDocument>): void {
    const found = this.search.query(text);
    for (const near of [false, true]) {
      const mine = found.filter((note) => note.near === near);
      expect(mine.every(({ score }, at) => score <= (mine[at - 1]?.score ?? Infinity))).toBe(true);
      expect(
        inOrder(mine.map(({ file, score, why }) => ({ file, score, terms: why.map(({ term, fields }) => [term, fields] as const) }))),
      ).toEqual(inOrder(expectedOf(oracle, text, near)));
    }
  }
}

function expectedOf(oracle: MiniSearch<NoteDocument>, text: string, near: boolean): readonly Answer[] {
  const typed = [...new Set(wordsOf(text).map(termOf))];
  const exact = oracle.search({ combineWith: 'AND', queries: typed }, EXACT_OPTIONS);
  const known = new Set(exact.map((result) => result['file'] as string));
  const found = near
    ? oracle
        .search({ combineWith: 'AND', queries: typed.map(nearly) }, NEAR_OPTIONS)
        .filter((result) => !known.has(result['file'] as string))
    : exact;
  return found.map((result) => ({ file: result['file'] as string, score: result.score, terms: Object.entries(result.match) }));
}

interface Answer {
  readonly file: string;
  readonly score: number;
  readonly terms: readonly (readonly [term: string, fields: readonly string[]])[];
}

/** Nine digits of a score: sums in another order differ in their last ones. Equal ones by file. */
const inOrder = (answers: readonly Answer[]) =>
  answers
    .map(({ file, score, terms }) => ({
      file,
      score: score.toPrecision(9),
      terms: terms.map(([term, fields]) => `${term}: ${[...fields].sort().join(' ')}`).sort(),
    }))
    .sort((a, b) => Number(b.score) - Number(a.score) || (a.file < b.file ? -1 : 1));

/** A word with every pair of neighbours swapped, as words of their own. */
function nearly(term: string): Query {
  const swaps = Array.from({ length: term.length - 1 }, (_, at) => term.slice(0, at) + term[at + 1] + term[at] + term.slice(at + 2));
  const others = [...new Set(swaps)].filter((swap) => swap !== term);
  return term.length < 5 || others.length === 0
    ? term
    : { combineWith: 'OR', queries: [term, { combineWith: 'OR', queries: others, fuzzy: false, prefix: false }] };
}

const word = fc.stringMatching(/^[abé]{1,6}$/);
const text = fc.array(word, { maxLength: 10 }).map((words) => words.join(' '));
const document = fc
  .record({ nth: fc.nat(11), body: text, title: text, tags: text, names: text, words: text })
  .map(({ nth, ...fields }): NoteDocument => ({ ...fields, file: `n${nth}.md`, id: `n${nth}`, kind: 'plain', sources: '' }));
const file = fc.nat(11).map((nth) => `n${nth}.md`);
const step = fc.oneof(
  { weight: 5, arbitrary: document.map((one) => ({ is: 'put' as const, one })) },
  { weight: 2, arbitrary: file.map((one) => ({ is: 'remove' as const, one })) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.array(document, { maxLength: 2 }), fc.array(file, { maxLength: 1 }), fc.boolean())
      .map(([meanwhile, gone, keep]) => ({ is: 'freeze' as const, meanwhile, gone, keep })),
  },
  { weight: 1, arbitrary: fc.constant({ is: 'restart' as const }) },
);

describe('what was edited beside what was frozen', () => {
  test('answers as one index over the notes as they are, whatever was written, removed, frozen and opened again', () => {
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 4, maxLength: 30 }),
        fc.array(fc.array(word, { minLength: 1, maxLength: 2 }), { minLength: 3, maxLength: 6 }),
        (steps, queries) => {
          const tried = new Tried();
          for (const one of steps) {
            if (one.is === 'put') tried.put(one.one);
            else if (one.is === 'remove') tried.remove(one.one);
            else if (one.is === 'freeze') tried.freeze(one.meanwhile, one.gone, one.keep);
            else tried.restart();
          }
          // A word that is another with two letters swapped is counted by each of the two.
          const apart = queries.filter((words) => new Set(words.map((one) => [...termOf(one)].sort().join(''))).size === words.length);
          tried.expectRight(...apart.map((words) => words.join(' ')));
        },
      ),
      { numRuns: 150, seed: 4 },
    );
  });

  test('an edited note stands where it would if the index were made anew', () => {
    const documents = Array.from(madeNotes(40), ({ path, text: source }) => noteDocument(parseNote(path, source).value));
    const tried = new Tried();
    for (const one of documents) tried.put(one);
    tried.freeze([], [], true);
    tried.restart();
    for (const one of documents.slice(20, 26)) tried.put({ ...one, body: `${one.body} madder and alum on wool` });
    for (const { file: gone } of documents.slice(30, 33)) tried.remove(gone);
    expect(tried.search.editedCount).toBe(6);
    tried.expectRight('madder', 'ma', 'alum wool', 'maddar', 'krpap', 'woll mader');
  });
});
