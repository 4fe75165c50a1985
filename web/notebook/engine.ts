import type { Version } from '../domain/ports.ts';
import type { RecipeEntry, RecipeView } from './views/recipe-view.ts';
import type { periodView } from './views/period-view.ts';
import type { ScaleChoices } from '../domain/pot/understand-amount.ts';
import type { TypedDyeDay } from './dye-day-address.ts';
import type { DyeDayView } from './views/dye-day-view.ts';
import type { TrialComparisonView } from './views/trial-comparison-view.ts';
import type { TrialView } from './views/trial-view.ts';
import type { TrialsView } from './views/trials-view.ts';
import type { Audience } from '../domain/pot/never-dosed.ts';
import type { Moment } from '../domain/pot/pot-log.ts';
import type { PotEntry, WithEntry } from './pot-entry.ts';
import type { PotNote } from './pot-notes.ts';
import type { CodeView, PotLine, PotView, TagView } from './views/pot-view.ts';
import type { CaptionDraft } from './words/draft-caption.ts';
import type { DisplayEdit, DisplayEdited, TypedCaption } from './display-edit.ts';
import type { CaptionDeskView } from './views/caption-desk-view.ts';
import type { DisplayView } from './views/display-view.ts';
import type { DossierView } from './views/dossier-view.ts';
import type { PublishedView } from './views/published-view.ts';
import type { DueItem } from './views/due-list-view.ts';
import type { EvidenceSheetView } from './views/evidence-sheet-view.ts';
import type { LightPlanView, TypedLight } from './views/light-plan-view.ts';
import type { TypedLightDose } from './views/after-light-view.ts';
import type { AsFoundView } from './views/as-found-view.ts';
import type { LookingView } from './views/looking-view.ts';
import type { CompareOrProblems } from './views/compare-view.ts';
import type { SampleLine } from './views/sample-lines.ts';
import type { TableOrProblems, TypedTable } from './views/table-view.ts';
import type { TypedChart } from './typed-chart.ts';
import type { WhoHadWhatView } from './views/who-had-what-view.ts';
import type { ListedClaim } from './views/dyestuff-view.ts';
import type { AnswerOrProblems } from './views/answer-view.ts';
import type { ChoicesView } from './views/choices-view.ts';
import type { FileFinding, NotebookFile } from './notebook.ts';
import type { NoteText } from './note-text.ts';
import type { TypedQuestion } from './pose-question.ts';
import type { DyestuffEntry, DyestuffView } from './views/dyestuff-view.ts';
import type { KeptPaletteView } from './views/kept-palette-view.ts';
import type { NamedNoteView } from './views/naming-view.ts';
import type { NoteView } from './views/note-view.ts';
import type { DrawerBy, DrawerCard, DrawerNote } from './views/drawer-view.ts';
import type { NoteDocument } from '../domain/note/note-document.ts';
import type { NoteStamp, TextHit, TypedFinding } from './ports-finding.ts';
import type { FoundView } from './views/found-view.ts';
import type { ProblemView } from './views/problem-view.ts';
import type { WritingChoices } from './views/writing-choices.ts';
import type { DataFile, DataForm } from './export/data-out.ts';
import type { GatherChoice, GatherUpload } from './import/gather-upload.ts';
import type { GatheredView } from './views/gathered-view.ts';
import type { DraftNote } from './lab-note.ts';
import type { TypedLab } from './typed-lab.ts';
import type { ReachMapOrProblems, TypedReach } from './views/reach-map-view.ts';
import type { LabOrProblems } from './views/lab-view.ts';
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
  /** Takes these files for the whole notebook. */
  open(files: readonly NotebookFile[]): Promise<NotebookSize>;
  /** Reads files in beside those that are there. */
  put(files: readonly NotebookFile[]): Promise<void>;
  /**
   * Puts in notes as they were read before, those whose version is still the one the store has. What needs their texts waits
   * for `endTexts`.
   *
   * @param packets from `readings`.
   * @param versions of the files as they are kept now, by path.
   * @returns the files of the notes put in.
   */
  putReadings(packets: readonly Uint8Array[], versions: ReadonlyMap<string, Version>): Promise<readonly string[]>;
  /** Brings the texts of such notes; those of notes that were written or removed since are passed over. */
  putTexts(files: readonly NotebookFile[]): Promise<void>;
  /**
   * Says that no more texts come.
   *
   * @param all false where the store failed; what needs a text that did not come then fails too.
   */
  endTexts(all: boolean): Promise<void>;
  /** What reading the notes gave, packed up, of those whose version is known. */
  readings(): Promise<readonly Uint8Array[]>;
  /** What is wrong in the notes of these files, alone and between notes. */
  findings(paths: readonly string[]): Promise<readonly FileFinding[]>;
  /** Names files that are part of the notebook although their bytes stay in the store. */
  mention(paths: readonly string[]): Promise<void>;
  remove(paths: readonly string[]): Promise<void>;
  /** Every file whose bytes are here, as it came, in order of path. */
  files(): Promise<readonly NotebookFile[]>;
  size(): Promise<NotebookSize>;
  choices(): Promise<ChoicesView>;
  answer(question: TypedQuestion): Promise<AnswerOrProblems>;
  palette(palette: TypedPalette): Promise<PaletteOrProblems>;
  /** Everything behind one cloth of a palette, as an answer; undefined when it is not of this notebook. */
  behindCloth(palette: TypedPalette, cloth: string): Promise<AnswerView | undefined>;
  whoHadWhat(chart: TypedChart): Promise<WhoHadWhatView | undefined>;
  /** The claim behind a band of a chart. */
  claimBehind(key: string): Promise<(ListedClaim & { readonly material: string }) | undefined>;
  /** Lays another notebook beside this one, to be compared with; it takes the place of the one before and is kept nowhere. */
  layBeside(files: readonly NotebookFile[]): Promise<NotebookSize>;
  compare(before: TypedPalette, now: TypedPalette): Promise<CompareOrProblems>;
  /** The palette of the notebook laid beside against this one's; undefined where none is. */
  compareNotebooks(palette: TypedPalette): Promise<CompareOrProblems | undefined>;
  judgeTable(table: TypedTable): Promise<TableOrProblems>;
  /** Every dyed sample as a line of such a table. */
  sampleLines(): Promise<readonly SampleLine[]>;
  keptPalettes(): Promise<readonly { readonly id: string; readonly title: string }[]>;
  /** A kept palette, judged again; undefined when there is none of that id. */
  keptPalette(id: string): Promise<KeptPaletteView | undefined>;
  recipes(): Promise<readonly RecipeEntry[]>;
  /** One recipe worked out for a mass of fibre in grams; undefined when there is none of that id. */
  recipe(id: string, fibreGrams: number, audience?: Audience, choices?: ScaleChoices): Promise<RecipeView | undefined>;
  /** Which claims make a recipe right for a place and time; undefined when there is none of that id. */
  periodOf(recipe: string, typed: { readonly region: string; readonly when: string }): Promise<ReturnType<typeof periodView>>;
  /** A day at the pots, planned. */
  dyeDay(day: TypedDyeDay): Promise<DyeDayView>;
  /** The trials of the notebook; of one recipe or material where its id is given. */
  trials(of?: string): Promise<TrialsView>;
  /** Everything on one trial; undefined when there is none of that id. */
  trial(id: string): Promise<TrialView | undefined>;
  /** What differed between trials. */
  compareTrials(ids: readonly string[]): Promise<TrialComparisonView>;
  /** The pots of a day as notes to be saved, every skein with its code. @param now by the reader's own clock. */
  potNotes(day: TypedDyeDay, now: Moment): Promise<readonly PotNote[]>;
  /** Pots whose skeins have codes, the newest first. */
  pots(): Promise<readonly PotLine[]>;
  /** One pot, for logging; undefined when there is none of that id. */
  pot(id: string): Promise<PotView | undefined>;
  /** A trial's text with one more entry, to be saved; undefined when there is none of that id. */
  potEntry(
    id: string,
    entry: PotEntry,
    at: Moment,
    now: Moment,
  ): Promise<(WithEntry & { readonly path: string; readonly before: string }) | undefined>;
  tags(trials: readonly string[]): Promise<readonly TagView[]>;
  /** Where a code leads, as typed or scanned. */
  code(typed: string): Promise<CodeView>;
  dyestuffs(): Promise<readonly DyestuffEntry[]>;
  /** Everything on one dyestuff; undefined when there is none of that id. */
  dyestuff(id: string): Promise<DyestuffView | undefined>;
  /** Where a dyestuff is named. */
  namings(id: string): Promise<readonly NamedNoteView[]>;
  /** A note for reading; undefined when there is none of that id. */
  note(id: string): Promise<NoteView | undefined>;
  /** The bytes of a file that is no note: a photo, a spectrum. */
  attachment(path: string): Promise<Uint8Array | undefined>;
  /** A note's whole file, for writing; undefined when there is none of that id. */
  noteText(id: string): Promise<NoteText | undefined>;
  /** What would be found wrong in a note if its text were this. */
  checkText(path: string, text: string): Promise<readonly ProblemView[]>;
  /** What a form can complete from. */
  writingChoices(): Promise<WritingChoices>;
  /** Every note as the full-text index takes it; of files that are gone nothing. All of them when no paths are given. */
  documents(paths?: readonly string[]): Promise<readonly NoteDocument[]>;
  /** Every note's file and its version, in order of path. */
  noteStamps(): Promise<readonly NoteStamp[]>;
  /** The notes that answer a sentence, out of what the full text found. */
  found(typed: TypedFinding, hits: readonly TextHit[]): Promise<FoundView>;
  /** The guide cards of the drawer, sorted by kind, dyestuff, place or date. */
  drawer(by: DrawerBy): Promise<readonly DrawerCard[]>;
  /** The notes behind one of them. */
  drawerNotes(by: DrawerBy, key: string): Promise<readonly DrawerNote[]>;
  /** What somebody else's file would bring in; nothing is written by it. */
  gather(upload: GatherUpload, choice?: GatherChoice): Promise<GatheredView>;
  /** The notebook's data in one of the forms others can read. */
  dataOut(form: DataForm): Promise<DataFile>;
  /** Where a source reached at a date. */
  reachMap(reach: TypedReach): Promise<ReachMapOrProblems>;
  /** What a laboratory's report may mean. */
  laboratory(report: TypedLab): Promise<LabOrProblems>;
  /** The report as a textile note to be saved, with the dyes its reader takes it for; undefined when it cannot be understood. */
  labDraft(report: TypedLab, dyes: readonly string[]): Promise<DraftNote | undefined>;
  /** What a colour as found may have been, each possibility asked; `recipes` where the reader names the dyeings. */
  asFound(question: TypedQuestion, recipes?: readonly string[]): Promise<AsFoundView | undefined>;
  /** Cloths side by side under three lights, and after a dose of light where one is given. */
  looking(ids: readonly string[], dose?: TypedLightDose): Promise<LookingView>;
  /** How a date reads, in words; undefined when it cannot be read. */
  readDate(text: string): Promise<string | undefined>;
  displays(): Promise<readonly { readonly id: string; readonly title: string }[]>;
  /** A display, laid out and weighed; undefined when there is none of that id. */
  display(id: string): Promise<DisplayView | undefined>;
  /** A first caption for one colour of a display. */
  captionDraft(id: string, what: string): Promise<CaptionDraft | undefined>;
  /** A display of a palette, to be saved as a note. */
  displayDraft(palette: string): Promise<DraftNote | undefined>;
  /** A display's note with an edit made in it, to be saved; undefined when there is none of that id. */
  displayEdit(id: string, edit: DisplayEdit): Promise<DisplayEdited | undefined>;
  /** A caption weighed while it is written; `nth` counts the display's captions. */
  captionDesk(id: string, what: string, nth: number | undefined, typed: TypedCaption): Promise<CaptionDeskView | undefined>;
  /** Everything behind one colour of a display. */
  evidenceSheet(id: string, what: string): Promise<EvidenceSheetView | undefined>;
  dossier(id: string): Promise<DossierView | undefined>;
  /** @param now UTC, ISO 8601. */
  lightPlan(id: string, typed: TypedLight, now: string): Promise<LightPlanView | undefined>;
  /** What of a display would be published, and what stays. @param now UTC, ISO 8601. */
  published(id: string, now: string): Promise<PublishedView | undefined>;
  /** What is due over all displays and notes. @param now UTC, ISO 8601. */
  dueList(now: string): Promise<readonly DueItem[]>;
}

/** Every method of the engine, for whoever passes calls on. */
export const ENGINE_METHODS = Object.keys({
  open: true,
  put: true,
  putReadings: true,
  putTexts: true,
  endTexts: true,
  readings: true,
  findings: true,
  mention: true,
  remove: true,
  files: true,
  size: true,
  choices: true,
  answer: true,
  palette: true,
  behindCloth: true,
  whoHadWhat: true,
  claimBehind: true,
  layBeside: true,
  compare: true,
  compareNotebooks: true,
  judgeTable: true,
  sampleLines: true,
  keptPalettes: true,
  keptPalette: true,
  recipes: true,
  recipe: true,
  periodOf: true,
  dyeDay: true,
  trials: true,
  trial: true,
  compareTrials: true,
  potNotes: true,
  pots: true,
  pot: true,
  potEntry: true,
  tags: true,
  code: true,
  dyestuffs: true,
  dyestuff: true,
  namings: true,
  note: true,
  attachment: true,
  noteText: true,
  checkText: true,
  writingChoices: true,
  documents: true,
  noteStamps: true,
  found: true,
  drawer: true,
  drawerNotes: true,
  gather: true,
  dataOut: true,
  reachMap: true,
  laboratory: true,
  labDraft: true,
  asFound: true,
  looking: true,
  readDate: true,
  displays: true,
  display: true,
  captionDraft: true,
  displayDraft: true,
  displayEdit: true,
  captionDesk: true,
  evidenceSheet: true,
  dossier: true,
  lightPlan: true,
  published: true,
  dueList: true,
} satisfies Record<keyof Engine, true>) as readonly (keyof Engine)[];
