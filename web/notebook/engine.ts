import { parseDate } from '../domain/date/parse-date.ts';
import { formatSpan } from '../domain/date/format-date.ts';
import { type AnswerOrProblems, answerView } from './views/answer-view.ts';
import { type ChoicesView, choicesView } from './views/choices-view.ts';
import { Notebook, type NotebookFile } from './notebook.ts';
import type { TypedQuestion } from './pose-question.ts';

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
  /** How a date reads, in words; undefined when it cannot be read. */
  readDate(text: string): Promise<string | undefined>;
}

/** Every method of the engine, for whoever passes calls on. */
export const ENGINE_METHODS = Object.keys({
  open: true,
  choices: true,
  answer: true,
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

  readDate(text: string): Promise<string | undefined> {
    const span = this.#notebook.base.spanOfText(text) ?? parseDate(text).span;
    return Promise.resolve(span && formatSpan(span));
  }
}
