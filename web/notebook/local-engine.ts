import { type RecipeEntry, recipeIndex, type RecipeView, recipeView } from './views/recipe-view.ts';
import type { CaptionDraft } from './words/draft-caption.ts';
import { displayNotes } from './shown-colours.ts';
import type { DisplayEdit, DisplayEdited, TypedCaption } from './display-edit.ts';
import { displayNote } from './display-note.ts';
import { editDisplay } from './edit-display.ts';
import { type CaptionDeskView, captionDeskView } from './views/caption-desk-view.ts';
import { captionDraft, type DisplayView, displayView } from './views/display-view.ts';
import { type DossierView, dossierView } from './views/dossier-view.ts';
import { type DueItem, dueListView } from './views/due-list-view.ts';
import { type EvidenceSheetView, evidenceSheetView } from './views/evidence-sheet-view.ts';
import { type LightPlanView, lightPlanView, type TypedLight } from './views/light-plan-view.ts';
import type { TypedLightDose } from './views/after-light-view.ts';
import { type AsFoundView, asFoundView } from './views/as-found-view.ts';
import { type LookingView, lookingView } from './views/looking-view.ts';
import { type CompareOrProblems, compareView } from './views/compare-view.ts';
import { type TableOrProblems, tableView, type TypedTable } from './views/table-view.ts';
import type { TypedChart } from './typed-chart.ts';
import { claimBehind, whoHadWhat, type WhoHadWhatView } from './views/who-had-what-view.ts';
import type { ListedClaim } from './views/dyestuff-view.ts';
import { parseDate } from '../domain/date/parse-date.ts';
import { formatSpan } from '../domain/date/format-date.ts';
import { type AnswerOrProblems, answerView } from './views/answer-view.ts';
import { type ChoicesView, choicesView } from './views/choices-view.ts';
import { type FileFinding, type NotebookFile, Notebook } from './notebook.ts';
import type { TypedQuestion } from './pose-question.ts';
import { type DyestuffEntry, type DyestuffView, dyestuffIndex, dyestuffView } from './views/dyestuff-view.ts';
import { type KeptPaletteView, keptPalettes, keptPaletteView } from './views/kept-palette-view.ts';
import { type NamedNoteView, namingView } from './views/naming-view.ts';
import { type NoteText, noteText } from './note-text.ts';
import { type ProblemView, problemViews } from './views/problem-view.ts';
import { type WritingChoices, writingChoices } from './views/writing-choices.ts';
import { type DrawerBy, type DrawerCard, type DrawerNote, drawerNotes, drawerView } from './views/drawer-view.ts';
import { type NoteDocument, noteDocument } from '../domain/note/note-document.ts';
import type { TextHit, TypedFinding } from './ports-finding.ts';
import { type FoundView, foundView } from './views/found-view.ts';
import { type NoteView, noteView } from './views/note-view.ts';
import { behindCloth } from './views/behind-cloth.ts';
import { type DataFile, type DataForm, dataOut } from './export/data-out.ts';
import type { GatherChoice, GatherUpload } from './import/gather-upload.ts';
import { type GatheredView, gatheredView } from './views/gathered-view.ts';
import { type DraftNote, labNote } from './lab-note.ts';
import type { TypedLab } from './typed-lab.ts';
import { type ReachMapOrProblems, reachMapView, type TypedReach } from './views/reach-map-view.ts';
import { type LabOrProblems, labView } from './views/lab-view.ts';
import type { TypedPalette } from './typed-palette.ts';
import { type PaletteOrProblems, paletteView } from './views/palette-view.ts';
import type { AnswerView } from './views/answer-view.ts';
import type { Engine, NotebookSize } from './engine.ts';

/** The engine in this very thread. */
export class LocalEngine implements Engine {
  #notebook = new Notebook();

  open(files: readonly NotebookFile[]): Promise<NotebookSize> {
    this.#notebook = new Notebook();
    this.#notebook.putAll(files);
    return this.size();
  }

  put(files: readonly NotebookFile[]): Promise<readonly FileFinding[]> {
    const findings = files.flatMap((file) => {
      const note = this.#notebook.put(file);
      return note ? this.#notebook.findingsIn(note) : [];
    });
    return Promise.resolve(findings);
  }

  mention(paths: readonly string[]): Promise<void> {
    for (const path of paths) this.#notebook.mention(path);
    return Promise.resolve();
  }

  remove(paths: readonly string[]): Promise<void> {
    for (const path of paths) this.#notebook.remove(path);
    return Promise.resolve();
  }

  files(): Promise<readonly NotebookFile[]> {
    return Promise.resolve(this.#notebook.files());
  }

  size(): Promise<NotebookSize> {
    return Promise.resolve(this.#notebook.size());
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

  whoHadWhat(chart: TypedChart): Promise<WhoHadWhatView | undefined> {
    return Promise.resolve(whoHadWhat(this.#notebook, chart));
  }

  claimBehind(key: string): Promise<(ListedClaim & { readonly material: string }) | undefined> {
    return Promise.resolve(claimBehind(this.#notebook, key));
  }

  compare(before: TypedPalette, now: TypedPalette): Promise<CompareOrProblems> {
    return Promise.resolve(compareView(this.#notebook, before, now));
  }

  judgeTable(table: TypedTable): Promise<TableOrProblems> {
    return Promise.resolve(tableView(this.#notebook, table));
  }

  keptPalettes(): Promise<readonly { readonly id: string; readonly title: string }[]> {
    return Promise.resolve(keptPalettes(this.#notebook));
  }

  keptPalette(id: string): Promise<KeptPaletteView | undefined> {
    return Promise.resolve(keptPaletteView(this.#notebook, id));
  }

  recipes(): Promise<readonly RecipeEntry[]> {
    return Promise.resolve(recipeIndex(this.#notebook));
  }

  recipe(id: string, fibreGrams: number): Promise<RecipeView | undefined> {
    return Promise.resolve(recipeView(this.#notebook, id, fibreGrams));
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

  note(id: string): Promise<NoteView | undefined> {
    return Promise.resolve(noteView(this.#notebook, id));
  }

  attachment(path: string): Promise<Uint8Array | undefined> {
    return Promise.resolve(this.#notebook.attachment(path));
  }

  noteText(id: string): Promise<NoteText | undefined> {
    return Promise.resolve(noteText(this.#notebook, id));
  }

  checkText(path: string, text: string): Promise<readonly ProblemView[]> {
    return Promise.resolve(problemViews(text, this.#notebook.findingsOfText(path, text)));
  }

  writingChoices(): Promise<WritingChoices> {
    return Promise.resolve(writingChoices(this.#notebook));
  }

  documents(paths?: readonly string[]): Promise<readonly NoteDocument[]> {
    const { base } = this.#notebook;
    const notes = paths ? paths.flatMap((path) => base.noteIn(path) ?? []) : [...base.notes()];
    return Promise.resolve(notes.map(noteDocument));
  }

  notePaths(): Promise<readonly string[]> {
    return Promise.resolve([...this.#notebook.base.notes()].map(({ file }) => file));
  }

  found(typed: TypedFinding, hits: readonly TextHit[]): Promise<FoundView> {
    return Promise.resolve(foundView(this.#notebook, typed, hits));
  }

  drawer(by: DrawerBy): Promise<readonly DrawerCard[]> {
    return Promise.resolve(drawerView(this.#notebook, by));
  }

  drawerNotes(by: DrawerBy, key: string): Promise<readonly DrawerNote[]> {
    return Promise.resolve(drawerNotes(this.#notebook, by, key));
  }

  gather(upload: GatherUpload, choice?: GatherChoice): Promise<GatheredView> {
    return Promise.resolve(gatheredView(this.#notebook.base, upload, choice));
  }

  dataOut(form: DataForm): Promise<DataFile> {
    return Promise.resolve(dataOut(this.#notebook.base, form));
  }

  reachMap(reach: TypedReach): Promise<ReachMapOrProblems> {
    return Promise.resolve(reachMapView(this.#notebook, reach));
  }

  laboratory(report: TypedLab): Promise<LabOrProblems> {
    return Promise.resolve(labView(this.#notebook, report));
  }

  labDraft(report: TypedLab, dyes: readonly string[]): Promise<DraftNote | undefined> {
    const view = labView(this.#notebook, report);
    return Promise.resolve('lab' in view ? labNote(this.#notebook.base, report, view.lab, dyes) : undefined);
  }

  asFound(question: TypedQuestion, recipes?: readonly string[]): Promise<AsFoundView | undefined> {
    return Promise.resolve(asFoundView(this.#notebook, question, recipes));
  }

  looking(ids: readonly string[], dose?: TypedLightDose): Promise<LookingView> {
    return Promise.resolve(lookingView(this.#notebook, ids, dose));
  }

  readDate(text: string): Promise<string | undefined> {
    const span = this.#notebook.base.spanOfText(text) ?? parseDate(text).span;
    return Promise.resolve(span && formatSpan(span));
  }

  displays(): Promise<readonly { readonly id: string; readonly title: string }[]> {
    return Promise.resolve(displayNotes(this.#notebook));
  }

  display(id: string): Promise<DisplayView | undefined> {
    return Promise.resolve(displayView(this.#notebook, id));
  }

  captionDraft(id: string, what: string): Promise<CaptionDraft | undefined> {
    return Promise.resolve(captionDraft(this.#notebook, id, what));
  }

  displayDraft(palette: string): Promise<DraftNote | undefined> {
    return Promise.resolve(displayNote(this.#notebook.base, palette));
  }

  displayEdit(id: string, edit: DisplayEdit): Promise<DisplayEdited | undefined> {
    return Promise.resolve(editDisplay(this.#notebook, id, edit));
  }

  captionDesk(id: string, what: string, nth: number | undefined, typed: TypedCaption): Promise<CaptionDeskView | undefined> {
    return Promise.resolve(captionDeskView(this.#notebook, id, what, nth, typed));
  }

  evidenceSheet(id: string, what: string): Promise<EvidenceSheetView | undefined> {
    return Promise.resolve(evidenceSheetView(this.#notebook, id, what));
  }

  dossier(id: string): Promise<DossierView | undefined> {
    return Promise.resolve(dossierView(this.#notebook, id));
  }

  lightPlan(id: string, typed: TypedLight, now: string): Promise<LightPlanView | undefined> {
    return Promise.resolve(lightPlanView(this.#notebook, id, typed, now));
  }

  dueList(now: string): Promise<readonly DueItem[]> {
    return Promise.resolve(dueListView(this.#notebook, now));
  }
}
