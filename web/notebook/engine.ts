import { parseDate } from '../domain/date/parse-date.ts';
import { formatSpan } from '../domain/date/format-date.ts';
import { type AnswerOrProblems, answerView } from './views/answer-view.ts';
import { type ChoicesView, choicesView } from './views/choices-view.ts';
import { Notebook, type NotebookFile } from './notebook.ts';
import type { TypedQuestion } from './pose-question.ts';
import { type DyestuffEntry, dyestuffIndex, type DyestuffView, dyestuffView } from './views/dyestuff-view.ts';
import { type NamedNoteView, namingView } from './views/naming-view.ts';
import { behindCloth } from './views/behind-cloth.ts';
import type { TypedPalette } from './typed-palette.ts';
import { type PaletteOrProblems, paletteView } from './views/palette-view.ts';
import type { AnswerView } from './views/answer-view.ts';

/** How many files a notebook has, by what they are. */
export interface NotebookSize {
  readonly notes: number;
  readonly others: number;
}

/** What a page can ask of an opened notebook: plain values in, plain values out, wherever the notebook is kept. */
export interface Engine {
  open(files: readonly NotebookFile[]): Promise<NotebookSize>;
  choices(): Promise<ChoicesView>;
  answer(question: TypedQuestion): Promise<AnswerOrProblems>;
  palette(palette: TypedPalette): Promise<PaletteOrProblems>;
  /** Everything behind one cloth of a palette, as an answer; undefined when it is not of this notebook. */
  behindCloth(palette: TypedPalette, cloth: string): Promise<AnswerView | undefined>;
  dyestuffs(): Promise<readonly DyestuffEntry[]>;
  /** Everything on one dyestuff; undefined when there is none of that id. */
  dyestuff(id: string): Promise<DyestuffView | undefined>;
  /** Where a dyestuff is named. */
  namings(id: string): Promise<readonly NamedNoteView[]>;
  /** How a date reads, in words; undefined when it cannot be read. */
  readDate(text: string): Promise<string | undefined>;
}

/** Every method of the engine, for whoever passes calls on. */
export const ENGINE_METHODS = Object.keys({
  open: true,
  choices: true,
  answer: true,
  palette: true,
  behindCloth: true,
  dyestuffs: true,
  dyestuff: true,
  namings: true,
  readDate: true,
} satisfies Record<keyof Engine, true>) as readonly (keyof Engine)[];

/** The engine in this very thread. */
export class LocalEngine implements Engine {
  #notebook = new Notebook();

  open(files: readonly NotebookFile[]): Promise<NotebookSize> {
    this.#notebook = new Notebook();
    this.#notebook.putAll(files);
    const notes = [...this.#notebook.base.notes()].length;
    return Promise.resolve({ notes, others: files.length - notes });
  }

  choices(): Promise<ChoicesView> {
    return Promise.resolve(choicesView(this.#notebook));
  }

  answer(question: TypedQuestion): Promise<AnswerOrProblems> {
    return Promise.resolve(answerView(this.#notebook, question));
  }

  palette(palette: TypedPalette): Promise<PaletteOrProblems> {
    return Promise.resolve(paletteView(this.#notebook, palette));
  }

  behindCloth(palette: TypedPalette, cloth: string): Promise<AnswerView | undefined> {
    return Promise.resolve(behindCloth(this.#notebook, palette, cloth));
  }

  dyestuffs(): Promise<readonly DyestuffEntry[]> {
    return Promise.resolve(dyestuffIndex(this.#notebook));
  }

  dyestuff(id: string): Promise<DyestuffView | undefined> {
    return Promise.resolve(dyestuffView(this.#notebook, id));
  }

  namings(id: string): Promise<readonly NamedNoteView[]> {
    return Promise.resolve(namingView(this.#notebook, id));
  }

  readDate(text: string): Promise<string | undefined> {
    const span = this.#notebook.base.spanOfText(text) ?? parseDate(text).span;
    return Promise.resolve(span && formatSpan(span));
  }
}
