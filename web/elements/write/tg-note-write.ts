import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { lineStarts, offsetAt } from '../../domain/note/line-column.ts';
import { stemOf } from '../../domain/note/stem-of.ts';
import { parseNote } from '../../domain/note/parse-note.ts';
import type { NoteKind } from '../../domain/note/note.ts';
import { type Draft, filesOf, isDirty, openDraft, redone, savedAs, undone, withFile, withText } from '../../notebook/draft.ts';
import type { DraftShelf } from '../../notebook/draft-shelf.ts';
import { withoutValue, withValue } from '../../notebook/draft-value.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { NoteText } from '../../notebook/note-text.ts';
import type { SaveOutcome } from '../../notebook/ports-writing.ts';
import { newPath } from '../../notebook/starters.ts';
import type { ProblemView } from '../../notebook/views/problem-view.ts';
import type { WritingChoices } from '../../notebook/views/writing-choices.ts';
import { spliceErrorWords, storeFailureWords } from '../../notebook/words/save-words.ts';
import { kindWords } from '../../notebook/words/kind-words.ts';
import { noteAddress } from '../note/note-body.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { NoteGoneEvent, NoteKeptEvent } from './note-gone-event.ts';
import './tg-note-form.ts';
import './tg-note-text.ts';
import type { TgNoteText } from './tg-note-text.ts';
import { styles } from './tg-note-write.styles.ts';
import { CaptureSaveRequestEvent, type DraftEditEvent, NoteDeleteRequestEvent, NoteSaveRequestEvent } from './write-events.ts';

/** Which side of a note is being written: its form, its text, or both beside each other. */
export type WriteMode = 'form' | 'text' | 'both';

const MODES: readonly (readonly [WriteMode, string])[] = [
  ['form', 'Form'],
  ['text', 'Text'],
  ['both', 'Both'],
];

/** Names tried for a new note whose own is taken. */
const MOST_NAMES = 50;

/**
 * Long because saving has many ends, and each is told where the writing is: saved, taken, changed elsewhere, no room.
 *
 * @summary A note being written: its form and its text, which are one and the same, with steps back and a save that says what became of it.
 * @event {NoteSaveRequestEvent} tg-note-save-request - The writer wants it saved.
 * @event {CaptureSaveRequestEvent} tg-capture-save-request - The writer wants it saved with files picked for it.
 * @event {NoteDeleteRequestEvent} tg-note-delete-request - The writer wants it deleted.
 * @event {NoteKeptEvent} tg-note-kept - It is saved.
 * @event {NoteGoneEvent} tg-note-gone - It is deleted.
 * @csspart bar - Save, steps, and which side is shown.
 * @csspart problems - What is wrong in the text.
 */
@customElement('tg-note-write')
export class TgNoteWrite extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The note's id; '' for a new one. */
  @property() note = '';
  /** What a new note begins with. */
  @property({ attribute: false }) start?: { readonly kind: NoteKind; readonly text: string };
  /** The address a new note is written at, with its settings begun. */
  @property() home = '#/notebook?new=plain';
  /** Which side is shown. */
  @property() mode: WriteMode = 'form';
  /** Where the caret shall stand in the text, from 1. */
  @property({ attribute: false }) place?: { readonly line: number; readonly column: number };
  /** Where drafts wait that were left. */
  @property({ attribute: false }) shelf?: DraftShelf;
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private draft?: Draft;
  @state() private fileTitle = '';
  @state() private missing = false;
  @state() private readOnly = false;
  @state() private problems: readonly ProblemView[] = [];
  @state() private choices?: WritingChoices;
  @state() private said = '';
  @state() private refused = '';
  @state() private conflict?: { readonly stored?: string };
  @state() private busy = false;

  readonly #opening = new LatestTask<NoteText | undefined>((text) => this.#opened(text));
  readonly #checking = new LatestTask<readonly ProblemView[]>((problems) => (this.problems = problems));
  readonly #choosing = new LatestTask<WritingChoices>((choices) => (this.choices = choices));

  override connectedCallback() {
    super.connectedCallback();
    globalThis.addEventListener('keydown', this.#key);
    globalThis.addEventListener('beforeunload', this.#leaving);
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    globalThis.removeEventListener('keydown', this.#key);
    globalThis.removeEventListener('beforeunload', this.#leaving);
  }

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    const isOther = changed.has('engine') || changed.has('note') || changed.has('start');
    if (isOther) {
      this.draft = undefined;
      this.missing = false;
      this.conflict = undefined;
      this.said = '';
      this.refused = '';
    }
    if (isOther || changed.has('version')) {
      this.#choosing.run(this.engine.writingChoices());
      if (this.note !== '') this.#opening.run(this.engine.noteText(this.note));
      else if (this.start && !this.draft)
        this.#use(this.shelf?.at(this.#shelfPlace) ?? openDraft(newPath(this.start.kind, ''), this.start.text, true));
    }
  }

  override render() {
    if (this.missing)
      return html`<p role="alert">No note of this notebook has the id “${this.note}”. <a href="#/notebook">All notes</a></p>`;
    const { draft } = this;
    if (!draft) return html`<p role="status">Opening the note.</p>`;
    if (this.readOnly)
      return html`<p role="alert">
        This file is not UTF-8. Saving it would change bytes nobody asked to change, so it can only be read.
        <a href=${noteAddress(this.note)}>Read it</a>
      </p>`;
    return html`
      <p class="small">${this.#kindLine(draft)}</p>
      <h1>${this.#heading(draft)}</h1>
      ${this.#bar(draft)} ${this.#notices()}
      <div class=${`sides ${this.mode}`} @tg-draft-edit=${this.#edited}>
        ${
          this.mode === 'text'
            ? nothing
            : html`<tg-note-form
                .engine=${this.engine}
                .text=${draft.text}
                .path=${draft.path}
                .choices=${this.choices}
                .problems=${this.problems}
              ></tg-note-form>`
        }
        ${
          this.mode === 'form'
            ? nothing
            : html`<div>
                <tg-note-text .text=${draft.text} .problems=${this.problems} .choices=${this.choices} .place=${this.place}></tg-note-text>
                ${this.#problemList()}
              </div>`
        }
      </div>
      ${this.#foot(draft)}
    `;
  }

  #kindLine({ path, isNew }: Draft): string {
    const { kind } = this.#read();
    return isNew
      ? `New ${kindWords[kind].one.toLowerCase()} · it will be kept in ${newPath(kind, this.#read().title)}`
      : `${kindWords[kind].one} · ${path}`;
  }

  #heading({ isNew }: Draft): string {
    const { title } = this.#read();
    return title === '' ? (isNew ? `New ${kindWords[this.#read().kind].one.toLowerCase()}` : this.fileTitle) : title;
  }

  /** Kind and title as the text has them now; a title that only the file's name gives is none. */
  #read(): { readonly kind: NoteKind; readonly title: string } {
    const { draft } = this;
    if (!draft) return { kind: 'plain', title: '' };
    const { value } = parseNote(UNNAMED, draft.text);
    return { kind: value.record.kind, title: value.title === stemOf(UNNAMED) ? '' : value.title };
  }

  #bar(draft: Draft) {
    const dirty = isDirty(draft);
    return html`<div class="bar" part="bar" role="toolbar" aria-label="Writing">
      <button type="button" class="first" ?disabled=${!dirty || this.busy} @click=${this.#save} aria-keyshortcuts="Control+S">Save</button>
      <button type="button" ?disabled=${draft.past.length === 0} @click=${() => this.#use(undone(draft))}>Step back</button>
      <button type="button" ?disabled=${draft.future.length === 0} @click=${() => this.#use(redone(draft))}>Step forward</button>
      ${MODES.map(
        ([mode, word]) => html`<a href=${this.#addressOf(mode)} aria-current=${this.mode === mode ? 'true' : 'false'}>${word}</a>`,
      )}
      ${draft.isNew ? nothing : html`<a href=${noteAddress(this.note)}>Read</a>`}
      <span class="state" role="status">${this.busy ? 'Saving.' : this.said !== '' ? this.said : dirty ? 'Not saved yet.' : ''}</span>
    </div>`;
  }

  #addressOf(mode: WriteMode): string {
    return this.note === '' ? `${this.home}&write=${mode}` : `${noteAddress(this.note)}?write=${mode}`;
  }

  #notices() {
    if (this.conflict) return this.#conflict(this.conflict);
    return this.refused === '' ? nothing : html`<p class="notice" role="alert">${this.refused}</p>`;
  }

  #conflict({ stored }: { readonly stored?: string }) {
    return html`<div class="notice" role="alert">
      <p>
        ${
          stored === undefined
            ? 'This note was deleted elsewhere while you were writing. Your text is still here.'
            : 'This note was changed elsewhere, in another tab perhaps, or in the linked folder, while you were writing. Neither text is lost.'
        }
      </p>
      <div class="tools">
        <button type="button" @click=${() => this.#keepMine(stored)}>
          ${stored === undefined ? 'Write it again' : 'Keep my text; theirs stays among the earlier versions'}
        </button>
        ${stored === undefined ? nothing : html`<button type="button" @click=${() => this.#takeTheirs(stored)}>Take theirs; mine is one step back</button>`}
      </div>
    </div>`;
  }

  #problemList() {
    if (this.problems.length === 0) return html`<p class="small">Nothing to look at.</p>`;
    return html`<ul class="problems" part="problems" aria-label="To look at">
      ${this.problems.map(
        (problem) =>
          html`<li>
            <strong>${problem.severity === 'error' ? 'Error' : 'Look at'}</strong>,
            <button type="button" @click=${() => this.#goTo(problem)}>line ${problem.line}, column ${problem.column}</button>:
            ${problem.says} ${problem.instead}
          </li>`,
      )}
    </ul>`;
  }

  #foot(draft: Draft) {
    if (draft.isNew) return nothing;
    return html`<div class="foot tools">
      <a class="small" href=${`#/notebook?new=copy&of=${encodeURIComponent(this.note)}`}>Duplicate this note</a>
      <a class="small" href=${`${noteAddress(this.note)}?versions=all`}>Earlier versions</a>
      <button type="button" @click=${this.#delete} ?disabled=${this.busy}>Delete this note</button>
    </div>`;
  }

  get #shelfPlace(): string {
    return this.note === '' ? `new ${this.start?.kind ?? ''} ${this.start?.text ?? ''}` : this.note;
  }

  #opened(text: NoteText | undefined) {
    const { draft } = this;
    if (!text) {
      this.missing = !draft;
      return;
    }
    this.fileTitle = text.title;
    this.readOnly = text.readOnly;
    const waiting = this.shelf?.at(this.#shelfPlace);
    if (!draft) this.#use(waiting ?? openDraft(text.path, text.text));
    // What nobody is writing in follows the notebook; what is being written stays until it is saved.
    else if (!isDirty(draft) && text.text !== draft.text) this.#use(openDraft(text.path, text.text));
  }

  #use(draft: Draft) {
    this.draft = draft;
    this.shelf?.keep(this.#shelfPlace, draft);
    if (this.engine) this.#checking.run(this.engine.checkText(draft.path, draft.text));
  }

  #edited(event: CustomEvent) {
    const { detail } = event as DraftEditEvent;
    const { draft } = this;
    if (!draft) return;
    this.said = '';
    this.refused = '';
    if (detail.is === 'file') {
      this.draft = withFile(draft, detail.file);
      return;
    }
    if (detail.is === 'text') {
      this.#use(withText(draft, detail.text, detail.label));
      return;
    }
    const result = detail.is === 'set' ? withValue(draft, detail.path, detail.value) : withoutValue(draft, detail.path);
    if (result.ok) this.#use(result.value);
    else this.refused = spliceErrorWords[result.error];
  }

  #goTo({ line, column }: ProblemView) {
    const { draft } = this;
    if (draft) this.renderRoot.querySelector<TgNoteText>('tg-note-text')?.goTo(offsetAt(lineStarts(draft.text), { line, column }));
  }

  readonly #key = (event: KeyboardEvent) => {
    if ((event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 's') {
      event.preventDefault();
      this.#commitField();
      void this.#save();
    }
  };

  /** A field that still has the caret tells its value when it is left, so it is left for a moment. */
  #commitField() {
    const form = this.renderRoot.querySelector('tg-note-form');
    const field = form?.shadowRoot?.activeElement;
    if (field instanceof HTMLElement) {
      field.blur();
      field.focus();
    }
  }

  readonly #leaving = (event: BeforeUnloadEvent) => {
    if (this.draft && isDirty(this.draft)) event.preventDefault();
  };

  readonly #save = async () => {
    const { draft } = this;
    if (!draft || !isDirty(draft) || this.busy) return;
    this.busy = true;
    this.conflict = undefined;
    this.refused = '';
    if (draft.isNew) await this.#saveNew(draft);
    else this.#outcome(draft, draft.path, await this.#ask(draft.path, draft.text, draft.base));
    this.busy = false;
  };

  async #saveNew(draft: Draft) {
    const { kind, title } = this.#read();
    for (let nth = 1; nth <= MOST_NAMES; nth += 1) {
      const path = newPath(kind, title, nth);
      const outcome = await this.#ask(path, draft.text);
      if (outcome?.is === 'taken' && nth < MOST_NAMES) continue;
      this.#outcome(draft, path, outcome);
      return;
    }
  }

  #ask(path: string, text: string, basedOn?: string): Promise<SaveOutcome | undefined> {
    const note = { path, text, ...(basedOn === undefined ? {} : { basedOn }) };
    const files = this.draft ? filesOf(this.draft, text) : [];
    const request = files.length === 0 ? new NoteSaveRequestEvent(note) : new CaptureSaveRequestEvent(note, files);
    this.dispatchEvent(request);
    return request.answer ?? Promise.resolve(undefined);
  }

  #outcome(draft: Draft, path: string, outcome: SaveOutcome | undefined) {
    switch (outcome?.is) {
      case undefined:
        this.refused = 'Nothing here keeps notes, so this cannot be saved. Copy your text.';
        return;
      case 'failed':
        this.refused = storeFailureWords[outcome.why];
        return;
      case 'taken':
        this.refused = `There is a note at ${path} already. Give this one another title.`;
        return;
      case 'conflict':
        this.conflict = outcome.stored === undefined ? {} : { stored: outcome.stored };
        return;
      case 'saved': {
        const place = this.#shelfPlace;
        // Typing may have gone on while it was being saved.
        this.#use({ ...savedAs(this.draft ?? draft, draft.text), path });
        if (draft.isNew) this.shelf?.drop(place);
        this.said = 'Saved.';
        this.dispatchEvent(new NoteKeptEvent(parseNote(path, draft.text).value.id, draft.isNew));
      }
    }
  }

  #keepMine(stored: string | undefined) {
    const { draft } = this;
    if (!draft) return;
    this.conflict = undefined;
    // What was seen now is their text; where it is gone the note is written anew.
    this.draft = stored === undefined ? { ...draft, base: '', isNew: true } : { ...draft, base: stored };
    void this.#saveAt(draft.path, draft.text, stored);
  }

  async #saveAt(path: string, text: string, basedOn: string | undefined) {
    const { draft } = this;
    if (!draft) return;
    this.busy = true;
    this.#outcome({ ...draft, isNew: false }, path, await this.#ask(path, text, basedOn));
    this.busy = false;
  }

  #takeTheirs(stored: string) {
    const { draft } = this;
    if (!draft) return;
    this.conflict = undefined;
    this.#use({ ...withText(draft, stored, `theirs ${draft.past.length}`), base: stored });
  }

  readonly #delete = async () => {
    const { draft } = this;
    if (!draft || this.busy) return;
    this.busy = true;
    const request = new NoteDeleteRequestEvent(draft.path, draft.base);
    this.dispatchEvent(request);
    const outcome = await request.answer;
    this.busy = false;
    if (outcome?.is !== 'saved') {
      this.#outcome(draft, draft.path, outcome);
      return;
    }
    this.shelf?.drop(this.#shelfPlace);
    this.dispatchEvent(new NoteGoneEvent(draft.path, draft.base, this.#read().title || this.fileTitle));
  };
}

/** A path that gives a note no title of its own. */
const UNNAMED = '\u0000.md';

declare global {
  interface HTMLElementTagNameMap {
    'tg-note-write': TgNoteWrite;
  }
}
