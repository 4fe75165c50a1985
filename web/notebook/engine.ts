import type { CompareOrProblems } from './views/compare-view.ts';
import type { TableOrProblems, TypedTable } from './views/table-view.ts';
import type { TypedChart } from './typed-chart.ts';
import type { WhoHadWhatView } from './views/who-had-what-view.ts';
import type { ListedClaim } from './views/dyestuff-view.ts';
import type { AnswerOrProblems } from './views/answer-view.ts';
import type { ChoicesView } from './views/choices-view.ts';
import type { NotebookFile } from './notebook.ts';
import type { TypedQuestion } from './pose-question.ts';
import type { DyestuffEntry, DyestuffView } from './views/dyestuff-view.ts';
import type { KeptPaletteView } from './views/kept-palette-view.ts';
import type { NamedNoteView } from './views/naming-view.ts';
import type { NoteView } from './views/note-view.ts';
import type { TypedPalette } from './typed-palette.ts';
import type { PaletteOrProblems } from './views/palette-view.ts';
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
  whoHadWhat(chart: TypedChart): Promise<WhoHadWhatView | undefined>;
  /** The claim behind a band of a chart. */
  claimBehind(key: string): Promise<(ListedClaim & { readonly material: string }) | undefined>;
  compare(before: TypedPalette, now: TypedPalette): Promise<CompareOrProblems>;
  judgeTable(table: TypedTable): Promise<TableOrProblems>;
  keptPalettes(): Promise<readonly { readonly id: string; readonly title: string }[]>;
  /** A kept palette, judged again; undefined when there is none of that id. */
  keptPalette(id: string): Promise<KeptPaletteView | undefined>;
  dyestuffs(): Promise<readonly DyestuffEntry[]>;
  /** Everything on one dyestuff; undefined when there is none of that id. */
  dyestuff(id: string): Promise<DyestuffView | undefined>;
  /** Where a dyestuff is named. */
  namings(id: string): Promise<readonly NamedNoteView[]>;
  /** A note for reading; undefined when there is none of that id. */
  note(id: string): Promise<NoteView | undefined>;
  /** The bytes of a file that is no note: a photo, a spectrum. */
  attachment(path: string): Promise<Uint8Array | undefined>;
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
  whoHadWhat: true,
  claimBehind: true,
  compare: true,
  judgeTable: true,
  keptPalettes: true,
  keptPalette: true,
  dyestuffs: true,
  dyestuff: true,
  namings: true,
  note: true,
  attachment: true,
  readDate: true,
} satisfies Record<keyof Engine, true>) as readonly (keyof Engine)[];
