/** One note edited: until it is found, its claims are read and its verdict stands (G2), whatever the size of the notebook. */
import { noteDocument } from '../../web/domain/note/note-document.ts';
import { Notebook } from '../../web/notebook/notebook.ts';
import { answerView } from '../../web/notebook/views/answer-view.ts';
import { NoteSearch } from '../../web/search/note-search.ts';
import { alternate } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { type MadeNote, madeNotes } from './made/made-notes.ts';
import { type Figure, report, timedFigure } from './report.ts';

/** Edits in a repetition. */
const EDITS = 10;
const encoder = new TextEncoder();

/** Notes that hold claims, and the search over them; bodies are left out, since an edit reads only its own. */
class Edited {
  readonly name: string;
  readonly #notebook = new Notebook();
  readonly #search: NoteSearch;
  readonly #dyestuff: MadeNote;
  #nth = 0;

  constructor(name: string, count: number) {
    this.name = name;
    let dyestuff: MadeNote | undefined;
    for (const made of madeNotes(count, { short: true })) {
      this.#notebook.put({ path: made.path, bytes: encoder.encode(made.text) });
      if (dyestuff === undefined && made.path.startsWith('dyestuffs/')) dyestuff = made;
    }
    this.#search = NoteSearch.of(Array.from(this.#notebook.base.notes(), (note) => noteDocument(note)));
    if (!dyestuff) throw new Error('no dyestuff among the notes');
    this.#dyestuff = dyestuff;
  }

  /** Edits one dyestuff, finds it by its new word and asks for it where its new claim speaks. */
  readonly run = (): void => {
    for (let edit = 0; edit < EDITS; edit += 1) {
      const word = `newly${String.fromCharCode(97 + (this.#nth % 26))}${(this.#nth += 1)}`;
      const { path, text } = this.#dyestuff;
      const claim = `\n  - { region: world, when: 1900–1950, status: grown, known-by: text, source: "${word}" }`;
      this.#put(
        path,
        text.replace('\navailability:', (key) => key + claim),
      );
      const [found] = this.#search.query(word);
      if (found?.file !== path) throw new Error(`${word} is not found`);
      const reply = answerView(this.#notebook, { dye: found.id, region: 'world', when: '1920' });
      if (!('answer' in reply) || reply.answer.speaksFor.length === 0) throw new Error(`${word} has no say`);
    }
  };

  #put(path: string, text: string): void {
    const note = this.#notebook.put({ path, bytes: encoder.encode(text) });
    if (note) this.#search.put(noteDocument(note));
  }
}

const { sizes, repetitions } = benchOptions();
const small = new Edited('the same at 1k', 1000);
const figures: Figure[] = [];
for (const [at, count] of sizes) {
  if (count === 1000) continue;
  const [mine, theirs] = await alternate([new Edited('edit', count), small], repetitions);
  if (mine && theirs) figures.push(timedFigure({ goal: 'G2', what: `${EDITS} edits, found and judged`, at, wanted: 1.5 }, mine, theirs));
}
report('g2-edit', 'A note edited, found and judged (milliseconds of processor time)', figures);
