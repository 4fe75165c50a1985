import type { NoteKind } from '../domain/note/note.ts';
import { EditedNotes } from './edited-notes.ts';
import { FrozenIndex, type FrozenNote, type MatchedFields } from './frozen/frozen-index.ts';
import { IndexBuilder } from './frozen/index-builder.ts';
import type { WantedWord } from './frozen/matching-terms.ts';
import type { NoteDocument } from './note-documents.ts';
import { FUZZY_FROM, PREFIX_FROM, type SearchField, termOf, wordsOf } from './search-options.ts';

/** Why a note was found: a word of the query, the word of the note that answers it, and where that stands. */
export interface FoundBecause {
  readonly typed: string;
  readonly term: string;
  /** `whole`: the word itself; `beginning`: it begins with it; `near`: one letter differs. */
  readonly how: 'whole' | 'beginning' | 'near';
  readonly fields: readonly SearchField[];
}

/** A note that answers a query. */
export interface FoundNote {
  readonly file: string;
  readonly id: string;
  readonly kind: NoteKind;
  readonly title: string;
  readonly score: number;
  /** Found only by a near spelling: to be shown apart. */
  readonly near: boolean;
  readonly why: readonly FoundBecause[];
  /** Folded words of the note to be marked. */
  readonly marks: readonly string[];
}

/** A note's file and the version it is at hand in; undefined where nobody knows. */
export type FileVersion = readonly [file: string, version: number | undefined];

/** A note that answers, before it is said why. */
interface Hit {
  readonly note: FrozenNote;
  readonly score: number;
  /** Its number in the frozen index, or what it answers by. */
  readonly at: number | MatchedFields;
}

/**
 * Full text over notes: an index frozen at some time, and what was edited since, ranked as one. A cache: everything in it can be
 * made again from the notes.
 */
export class NoteSearch {
  #frozen = emptyIndex();
  #edited = new EditedNotes();

  constructor() {
    this.#frozen.countBeside(this.#edited);
  }

  /** A search over these notes. */
  static of(documents: Iterable<NoteDocument>): NoteSearch {
    const builder = new IndexBuilder();
    for (const document of [...documents].sort((a, b) => (a.file < b.file ? -1 : 1))) builder.add(document);
    const search = new NoteSearch();
    search.adopt(builder.freeze(), []);
    return search;
  }

  get size(): number {
    return this.#frozen.rankedCount;
  }

  /** How many notes were edited since the index was frozen. */
  get editedCount(): number {
    return this.#edited.noteCount;
  }

  /** Adds a note or puts it in the place of the one of the same file. */
  put(document: NoteDocument): void {
    if (!this.#edited.has(document.file)) this.#frozen.remove(document.file);
    this.#edited.put(document);
  }

  /** Takes the note of a file out; nothing happens where there is none. */
  remove(file: string): void {
    this.#edited.remove(file);
    this.#frozen.remove(file);
  }

  clear(): void {
    this.#join(emptyIndex(), new EditedNotes());
  }

  /**
   * Takes an index that was kept for all there is: what it holds in another version than the notebook, or the notebook no more, is
   * left out.
   *
   * @returns the files it lacks; undefined where the bytes are no index, and nothing was changed.
   */
  open(bytes: ArrayBuffer, notebook: readonly FileVersion[]): readonly string[] | undefined {
    const frozen = FrozenIndex.open(bytes);
    if (!frozen) return undefined;
    const lacking = new Map(notebook);
    for (let note = 0; note < frozen.noteCount; note += 1) {
      const { file } = frozen.note(note);
      const isSame = frozen.version(note) > 0 && lacking.get(file) === frozen.version(note);
      if (isSame) lacking.delete(file);
      else frozen.removeNote(note);
    }
    this.#join(frozen, new EditedNotes());
    return [...lacking.keys()];
  }

  /**
   * Takes an index just made of the notes at hand in the place of the one before it.
   *
   * @param since files that were put or removed since its making began.
   * @returns false where the bytes are no index, and nothing was changed.
   */
  adopt(bytes: ArrayBuffer, since: readonly string[]): boolean {
    const frozen = FrozenIndex.open(bytes);
    if (!frozen) return false;
    for (const file of since) frozen.remove(file);
    const newer = new Set(since);
    for (const file of this.#edited.files) if (!newer.has(file)) this.#edited.remove(file);
    this.#join(frozen, this.#edited.noteCount === 0 ? new EditedNotes() : this.#edited);
    return true;
  }

  /**
   * The notes that hold every word of a query: as a whole word or as a beginning, best first; then, apart, those that
   * hold them only in a near spelling (one letter more, less or other, or two swapped).
   *
   * @param most how many notes of either sort to give.
   */
  query(text: string, most = Infinity): readonly FoundNote[] {
    const typed = [...new Set(wordsOf(text).map(termOf))].filter((term) => term !== '');
    if (typed.length === 0) return [];
    const mayBeNear = typed.some((term) => term.length >= FUZZY_FROM);
    const words = typed.map(exactly);
    const exact = this.#ranked(words, mayBeNear ? Infinity : most);
    const found = this.#found(exact.slice(0, most), words, typed, false);
    if (!mayBeNear) return found;
    const known = new Set(exact.map(({ note }) => note.file));
    const nearly = typed.map(nearWord);
    const near = this.#ranked(nearly, Infinity).filter(({ note }) => !known.has(note.file));
    return [...found, ...this.#found(near.slice(0, most), nearly, typed, true)];
  }

  #join(frozen: FrozenIndex, edited: EditedNotes): void {
    this.#frozen = frozen;
    this.#edited = edited;
    frozen.countBeside(edited);
  }

  /** The best of both parts, equal ones in order of file. */
  #ranked(words: readonly WantedWord[], most: number): readonly Hit[] {
    const frozen = this.#frozen.rank(words, most).map(({ note, score }): Hit => ({ note: this.#frozen.note(note), score, at: note }));
    const edited = this.#edited.rank(words, this.#frozen).map(({ note, score, matched }): Hit => ({ note, score, at: matched }));
    if (edited.length === 0) return frozen;
    return [...frozen, ...edited].sort((a, b) => b.score - a.score || (a.note.file < b.note.file ? -1 : 1));
  }

  #found(hits: readonly Hit[], words: readonly WantedWord[], typed: readonly string[], near: boolean): readonly FoundNote[] {
    const numbers = hits.flatMap(({ at }) => (typeof at === 'number' ? at : []));
    const why = this.#frozen.why(words, numbers);
    const matched = new Map(numbers.map((number, nth) => [number, why[nth] ?? {}]));
    return hits.map((hit) => foundNote(hit, typeof hit.at === 'number' ? (matched.get(hit.at) ?? {}) : hit.at, typed, near));
  }
}

function emptyIndex(): FrozenIndex {
  const empty = FrozenIndex.open(new IndexBuilder().freeze());
  if (!empty) throw new Error('An empty index does not open.');
  return empty;
}

const exactly = (term: string): WantedWord => ({ term, beginning: term.length >= PREFIX_FROM, near: false, swaps: [] });

/** A word in a near spelling, or with two neighbouring letters swapped, which an index counts as two slips. */
const nearWord = (term: string): WantedWord =>
  term.length < FUZZY_FROM ? exactly(term) : { ...exactly(term), near: true, swaps: swapsOf(term) };

function swapsOf(term: string): string[] {
  const letters = Array.from(term);
  const swaps = new Set<string>();
  for (let i = 0; i + 1 < letters.length; i++) {
    const a = letters[i];
    const b = letters[i + 1];
    if (a !== b && a !== undefined && b !== undefined) swaps.add([...letters.slice(0, i), b, a, ...letters.slice(i + 2)].join(''));
  }
  return [...swaps];
}

function foundNote({ note, score }: Hit, matched: MatchedFields, typed: readonly string[], near: boolean): FoundNote {
  const why = Object.entries(matched).map(([term, fields]): FoundBecause => {
    const whole = typed.find((word) => word === term);
    const beginning = whole ?? typed.filter((word) => term.startsWith(word)).sort((a, b) => b.length - a.length)[0];
    const how = whole !== undefined ? 'whole' : beginning !== undefined ? 'beginning' : 'near';
    const closest =
      beginning ??
      typed
        .filter((word) => word.length >= FUZZY_FROM && Math.abs(word.length - term.length) <= 1)
        .sort((a, b) => shared(b, term) - shared(a, term))[0];
    return { typed: closest ?? term, term, how, fields };
  });
  const rank = { whole: 0, beginning: 1, near: 2 };
  why.sort((a, b) => rank[a.how] - rank[b.how] || (a.term < b.term ? -1 : 1));
  return {
    ...note,
    score,
    near,
    why,
    marks: why.map(({ term }) => term),
  };
}

/** Letters two words have in common, counted once each: enough to tell which typed word a near spelling answers. */
function shared(a: string, b: string): number {
  const left = Array.from(b);
  let count = 0;
  for (const letter of a) {
    const at = left.indexOf(letter);
    if (at < 0) continue;
    left.splice(at, 1);
    count += 1;
  }
  return count;
}
