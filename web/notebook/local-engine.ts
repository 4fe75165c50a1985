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
import type { PotEntry } from './pot-entry.ts';
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
import { parseDate } from '../domain/date/parse-date.ts';
import { formatSpan } from '../domain/date/format-date.ts';
import { type AnswerOrProblems, answerView } from './views/answer-view.ts';
import type { ChoicesView } from './views/choices-view.ts';
import { type FileFinding, type NotebookFile, Notebook } from './notebook.ts';
import type { TypedQuestion } from './pose-question.ts';
import type { DyestuffEntry, DyestuffView } from './views/dyestuff-view.ts';
import type { KeptPaletteView } from './views/kept-palette-view.ts';
import type { NamedNoteView } from './views/naming-view.ts';
import type { Version } from '../domain/ports.ts';
import { type NoteText, noteText } from './note-text.ts';
import type { ProblemView } from './views/problem-view.ts';
import type { WritingChoices } from './views/writing-choices.ts';
import type { DrawerBy, DrawerCard, DrawerNote } from './views/drawer-view.ts';
import type { NoteDocument } from '../domain/note/note-document.ts';
import type { NoteStamp, TextHit, TypedFinding } from './ports-finding.ts';
import type { FoundView } from './views/found-view.ts';
import type { NoteView } from './views/note-view.ts';
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
import type { Engine, NotebookSize } from './engine.ts';

/** The engine in this very thread. What a first answer does not need is loaded when it is first asked for. */
export class LocalEngine implements Engine {
  #notebook = new Notebook();
  #beside?: Notebook;
  #texts?: AwaitedTexts;

  /** Asks a part of the program that is on its way, once the notebook can be read whole. */
  async #ask<P, A>(part: Promise<P>, ask: (part: P, notebook: Notebook) => A): Promise<A> {
    const loaded = await part;
    return ask(loaded, await this.#whole());
  }

  /** Asks what never looks into a note's text: a test holds these to it. */
  async #askAtOnce<P, A>(part: Promise<P>, ask: (part: P, notebook: Notebook) => A): Promise<A> {
    const loaded = await part;
    await this.#notebook.ready();
    return ask(loaded, this.#notebook);
  }

  /** The notebook with every text in it. */
  async #whole(): Promise<Notebook> {
    let texts: AwaitedTexts | undefined;
    // Another notebook may be opened meanwhile.
    while (texts !== this.#texts) {
      texts = this.#texts;
      await texts?.come;
    }
    await this.#notebook.ready();
    return this.#notebook;
  }

  open(files: readonly NotebookFile[]): Promise<NotebookSize> {
    this.#notebook = new Notebook();
    this.#texts?.end(true);
    this.#texts = undefined;
    this.#notebook.putAll(files);
    return this.size();
  }

  async putReadings(packets: readonly Uint8Array[], versions: ReadonlyMap<string, Version>): Promise<readonly string[]> {
    const notebook = this.#notebook;
    const { unpackReadings } = await import('./kept-readings.ts');
    for (const packet of packets) {
      for (const reading of unpackReadings(packet)) {
        const { file } = reading.note;
        // What is there already was read from the store, and may be newer.
        if (versions.get(file) === reading.version && !notebook.base.noteIn(file)) notebook.putReading(reading);
      }
    }
    const awaited = notebook.awaited();
    if (awaited.length > 0 && notebook === this.#notebook) this.#texts ??= new AwaitedTexts();
    return awaited;
  }

  putTexts(files: readonly NotebookFile[]): Promise<void> {
    for (const file of files) this.#notebook.putText(file);
    return Promise.resolve();
  }

  endTexts(all: boolean): Promise<void> {
    const left = this.#notebook.awaited();
    // The store has all it has brought: what did not come was removed meanwhile.
    if (all) for (const path of left) this.#notebook.remove(path);
    this.#texts?.end(all || left.length === 0);
    return Promise.resolve();
  }

  readings(): Promise<readonly Uint8Array[]> {
    return this.#ask(import('./kept-readings.ts'), ({ packReadings }, notebook) => packReadings(notebook.readings()));
  }

  put(files: readonly NotebookFile[]): Promise<void> {
    this.#notebook.putAll(files);
    return Promise.resolve();
  }

  findings(paths: readonly string[]): Promise<readonly FileFinding[]> {
    return this.#ask(import('./check-notebook.ts'), ({ findingsInFiles }, notebook) => findingsInFiles(notebook, paths));
  }

  mention(paths: readonly string[]): Promise<void> {
    for (const path of paths) this.#notebook.mention(path);
    return Promise.resolve();
  }

  remove(paths: readonly string[]): Promise<void> {
    for (const path of paths) this.#notebook.remove(path);
    return Promise.resolve();
  }

  async files(): Promise<readonly NotebookFile[]> {
    // Where texts cannot be had, what is at hand is all there is.
    await this.#whole().catch(() => undefined);
    return this.#notebook.files();
  }

  size(): Promise<NotebookSize> {
    return Promise.resolve(this.#notebook.size());
  }

  async choices(): Promise<ChoicesView> {
    const { choicesView } = await import('./views/choices-view.ts');
    return choicesView(this.#notebook);
  }

  async answer(question: TypedQuestion): Promise<AnswerOrProblems> {
    await this.#notebook.ready();
    return answerView(this.#notebook, question);
  }

  palette(palette: TypedPalette): Promise<PaletteOrProblems> {
    return this.#askAtOnce(import('./views/palette-view.ts'), ({ paletteView }, notebook) => paletteView(notebook, palette));
  }

  behindCloth(palette: TypedPalette, cloth: string): Promise<AnswerView | undefined> {
    return this.#askAtOnce(import('./views/behind-cloth.ts'), ({ behindCloth }, notebook) => behindCloth(notebook, palette, cloth));
  }

  whoHadWhat(chart: TypedChart): Promise<WhoHadWhatView | undefined> {
    return this.#ask(import('./views/who-had-what-view.ts'), ({ whoHadWhat }, notebook) => whoHadWhat(notebook, chart));
  }

  claimBehind(key: string): Promise<(ListedClaim & { readonly material: string }) | undefined> {
    return this.#ask(import('./views/who-had-what-view.ts'), ({ claimBehind }, notebook) => claimBehind(notebook, key));
  }

  layBeside(files: readonly NotebookFile[]): Promise<NotebookSize> {
    this.#beside = new Notebook();
    this.#beside.putAll(files);
    return Promise.resolve(this.#beside.size());
  }

  compare(before: TypedPalette, now: TypedPalette): Promise<CompareOrProblems> {
    return this.#ask(import('./views/compare-view.ts'), ({ compareView }, notebook) => compareView(notebook, before, now));
  }

  compareNotebooks(palette: TypedPalette): Promise<CompareOrProblems | undefined> {
    return this.#ask(
      import('./views/compare-view.ts'),
      ({ compareView }, notebook) => this.#beside && compareView(notebook, palette, palette, this.#beside),
    );
  }

  judgeTable(table: TypedTable): Promise<TableOrProblems> {
    return this.#ask(import('./views/table-view.ts'), ({ tableView }, notebook) => tableView(notebook, table));
  }

  sampleLines(): Promise<readonly SampleLine[]> {
    return this.#ask(import('./views/sample-lines.ts'), ({ sampleLines }, notebook) => sampleLines(notebook));
  }

  keptPalettes(): Promise<readonly { readonly id: string; readonly title: string }[]> {
    return this.#askAtOnce(import('./views/kept-palette-view.ts'), ({ keptPalettes }, notebook) => keptPalettes(notebook));
  }

  keptPalette(id: string): Promise<KeptPaletteView | undefined> {
    return this.#ask(import('./views/kept-palette-view.ts'), ({ keptPaletteView }, notebook) => keptPaletteView(notebook, id));
  }

  recipes(): Promise<readonly RecipeEntry[]> {
    return this.#ask(import('./views/recipe-view.ts'), ({ recipeIndex }, notebook) => recipeIndex(notebook));
  }

  recipe(id: string, fibreGrams: number, audience?: Audience, choices?: ScaleChoices): Promise<RecipeView | undefined> {
    return this.#ask(import('./views/recipe-view.ts'), ({ recipeView }, notebook) =>
      recipeView(notebook, id, fibreGrams, audience, choices),
    );
  }

  periodOf(recipe: string, typed: { readonly region: string; readonly when: string }): Promise<ReturnType<typeof periodView>> {
    return this.#ask(import('./views/period-view.ts'), ({ periodView: view }, notebook) => view(notebook, recipe, typed));
  }

  dyeDay(day: TypedDyeDay): Promise<DyeDayView> {
    return this.#ask(import('./views/dye-day-view.ts'), ({ dyeDayView }, notebook) => dyeDayView(notebook, day));
  }

  trials(of = ''): Promise<TrialsView> {
    return this.#ask(import('./views/trials-view.ts'), ({ trialsView }, notebook) => trialsView(notebook, of));
  }

  trial(id: string): Promise<TrialView | undefined> {
    return this.#ask(import('./views/trial-view.ts'), ({ trialView }, notebook) => trialView(notebook, id));
  }

  compareTrials(ids: readonly string[]): Promise<TrialComparisonView> {
    return this.#ask(import('./views/trial-comparison-view.ts'), ({ trialComparisonView }, notebook) => trialComparisonView(notebook, ids));
  }

  potNotes(day: TypedDyeDay, now: Moment): Promise<readonly PotNote[]> {
    return this.#ask(import('./pot-notes.ts'), ({ potNotes }, notebook) => potNotes(notebook, day, now));
  }

  pots(): Promise<readonly PotLine[]> {
    return this.#ask(import('./views/pot-view.ts'), ({ potList }, notebook) => potList(notebook));
  }

  pot(id: string): Promise<PotView | undefined> {
    return this.#ask(import('./views/pot-view.ts'), ({ potView }, notebook) => potView(notebook, id));
  }

  potEntry(id: string, entry: PotEntry, at: Moment, now: Moment): ReturnType<Engine['potEntry']> {
    return this.#ask(import('./pot-entry.ts'), ({ withEntry }, notebook) => {
      const note = notebook.base.note(id);
      return note && { path: note.file, before: note.source, ...withEntry(note.file, note.source, entry, at, now) };
    });
  }

  tags(trials: readonly string[]): Promise<readonly TagView[]> {
    return this.#ask(import('./views/pot-view.ts'), ({ tagViews }, notebook) => tagViews(notebook, trials));
  }

  code(typed: string): Promise<CodeView> {
    return this.#ask(import('./views/pot-view.ts'), ({ codeView }, notebook) => codeView(notebook, typed));
  }

  dyestuffs(): Promise<readonly DyestuffEntry[]> {
    return this.#ask(import('./views/dyestuff-view.ts'), ({ dyestuffIndex }, notebook) => dyestuffIndex(notebook));
  }

  dyestuff(id: string): Promise<DyestuffView | undefined> {
    return this.#ask(import('./views/dyestuff-view.ts'), ({ dyestuffView }, notebook) => dyestuffView(notebook, id));
  }

  namings(id: string): Promise<readonly NamedNoteView[]> {
    return this.#ask(import('./views/naming-view.ts'), ({ namingView }, notebook) => namingView(notebook, id));
  }

  note(id: string): Promise<NoteView | undefined> {
    return this.#ask(import('./views/note-view.ts'), ({ noteView }, notebook) => noteView(notebook, id));
  }

  attachment(path: string): Promise<Uint8Array | undefined> {
    return Promise.resolve(this.#notebook.attachment(path));
  }

  async noteText(id: string): Promise<NoteText | undefined> {
    return noteText(await this.#whole(), id);
  }

  checkText(path: string, text: string): Promise<readonly ProblemView[]> {
    return this.#ask(import('./views/text-problems.ts'), ({ textProblems }, notebook) => textProblems(notebook, path, text));
  }

  writingChoices(): Promise<WritingChoices> {
    return this.#ask(import('./views/writing-choices.ts'), ({ writingChoices }, notebook) => writingChoices(notebook));
  }

  async documents(paths?: readonly string[]): Promise<readonly NoteDocument[]> {
    const { noteDocument } = await import('../domain/note/note-document.ts');
    const notebook = await this.#whole();
    const { base } = notebook;
    const notes = paths ? paths.flatMap((path) => base.noteIn(path) ?? []) : [...base.notes()];
    return notes.map((note) => noteDocument(note, notebook.versionOf(note.file)));
  }

  noteStamps(): Promise<readonly NoteStamp[]> {
    const stamps = [...this.#notebook.base.notes()].map(({ file }): NoteStamp => [file, this.#notebook.versionOf(file)]);
    return Promise.resolve(stamps.sort(([a], [b]) => (a < b ? -1 : 1)));
  }

  found(typed: TypedFinding, hits: readonly TextHit[]): Promise<FoundView> {
    return this.#ask(import('./views/found-view.ts'), ({ foundView }, notebook) => foundView(notebook, typed, hits));
  }

  drawer(by: DrawerBy): Promise<readonly DrawerCard[]> {
    return this.#ask(import('./views/drawer-view.ts'), ({ drawerView }, notebook) => drawerView(notebook, by));
  }

  drawerNotes(by: DrawerBy, key: string): Promise<readonly DrawerNote[]> {
    return this.#ask(import('./views/drawer-view.ts'), ({ drawerNotes }, notebook) => drawerNotes(notebook, by, key));
  }

  gather(upload: GatherUpload, choice?: GatherChoice): Promise<GatheredView> {
    return this.#ask(import('./views/gathered-view.ts'), ({ gatheredView }, { base }) => gatheredView(base, upload, choice));
  }

  dataOut(form: DataForm): Promise<DataFile> {
    return this.#ask(import('./export/data-out.ts'), ({ dataOut }, { base }) => dataOut(base, form));
  }

  reachMap(reach: TypedReach): Promise<ReachMapOrProblems> {
    return this.#ask(import('./views/reach-map-view.ts'), ({ reachMapView }, notebook) => reachMapView(notebook, reach));
  }

  laboratory(report: TypedLab): Promise<LabOrProblems> {
    return this.#ask(import('./views/lab-view.ts'), ({ labView }, notebook) => labView(notebook, report));
  }

  labDraft(report: TypedLab, dyes: readonly string[]): Promise<DraftNote | undefined> {
    return this.#ask(import('./views/lab-view.ts'), ({ labDraft }, notebook) => labDraft(notebook, report, dyes));
  }

  asFound(question: TypedQuestion, recipes?: readonly string[]): Promise<AsFoundView | undefined> {
    return this.#ask(import('./views/as-found-view.ts'), ({ asFoundView }, notebook) => asFoundView(notebook, question, recipes));
  }

  looking(ids: readonly string[], dose?: TypedLightDose): Promise<LookingView> {
    return this.#ask(import('./views/looking-view.ts'), ({ lookingView }, notebook) => lookingView(notebook, ids, dose));
  }

  readDate(text: string): Promise<string | undefined> {
    const span = this.#notebook.base.spanOfText(text) ?? parseDate(text).span;
    return Promise.resolve(span && formatSpan(span));
  }

  displays(): Promise<readonly { readonly id: string; readonly title: string }[]> {
    return this.#ask(import('./shown-colours.ts'), ({ displayNotes }, notebook) => displayNotes(notebook));
  }

  display(id: string): Promise<DisplayView | undefined> {
    return this.#ask(import('./views/display-view.ts'), ({ displayView }, notebook) => displayView(notebook, id));
  }

  captionDraft(id: string, what: string): Promise<CaptionDraft | undefined> {
    return this.#ask(import('./views/display-view.ts'), ({ captionDraft }, notebook) => captionDraft(notebook, id, what));
  }

  displayDraft(palette: string): Promise<DraftNote | undefined> {
    return this.#ask(import('./display-note.ts'), ({ displayNote }, { base }) => displayNote(base, palette));
  }

  displayEdit(id: string, edit: DisplayEdit): Promise<DisplayEdited | undefined> {
    return this.#ask(import('./edit-display.ts'), ({ editDisplay }, notebook) => editDisplay(notebook, id, edit));
  }

  captionDesk(id: string, what: string, nth: number | undefined, typed: TypedCaption): Promise<CaptionDeskView | undefined> {
    return this.#ask(import('./views/caption-desk-view.ts'), ({ captionDeskView }, notebook) =>
      captionDeskView(notebook, id, what, nth, typed),
    );
  }

  evidenceSheet(id: string, what: string): Promise<EvidenceSheetView | undefined> {
    return this.#ask(import('./views/evidence-sheet-view.ts'), ({ evidenceSheetView }, notebook) => evidenceSheetView(notebook, id, what));
  }

  dossier(id: string): Promise<DossierView | undefined> {
    return this.#ask(import('./views/dossier-view.ts'), ({ dossierView }, notebook) => dossierView(notebook, id));
  }

  lightPlan(id: string, typed: TypedLight, now: string): Promise<LightPlanView | undefined> {
    return this.#ask(import('./views/light-plan-view.ts'), ({ lightPlanView }, notebook) => lightPlanView(notebook, id, typed, now));
  }

  published(id: string, now: string): Promise<PublishedView | undefined> {
    return this.#ask(import('./views/published-view.ts'), ({ publishedView }, notebook) => publishedView(notebook, id, now));
  }

  dueList(now: string): Promise<readonly DueItem[]> {
    return this.#ask(import('./views/due-list-view.ts'), ({ dueListView }, notebook) => dueListView(notebook, now));
  }
}

/** Texts that are on their way. */
class AwaitedTexts {
  readonly come: Promise<void>;
  #settle: (all: boolean) => void = () => undefined;

  constructor() {
    this.come = new Promise<void>((resolve, reject) => {
      this.#settle = (all) => (all ? resolve() : reject(new Error('the notes could not be read from the store')));
    });
    // Nobody may be waiting when they fail; who asks later is told.
    this.come.catch(() => undefined);
  }

  end(all: boolean): void {
    this.#settle(all);
  }
}
