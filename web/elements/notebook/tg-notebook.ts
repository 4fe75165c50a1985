import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { DraftShelf } from '../../notebook/draft-shelf.ts';
import type { Engine } from '../../notebook/engine.ts';
import { starterOf } from '../../notebook/starters.ts';
import { storeFailureWords } from '../../notebook/words/save-words.ts';
import { noteAddress } from '../note/note-body.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { tabDrawer } from '../shared/tab-drawer.ts';
import type { NoteGoneEvent, NoteKeptEvent } from '../write/note-gone-event.ts';
import { NoteSaveRequestEvent } from '../write/write-events.ts';
import { type NotebookPlace, notebookPlace, readingPlace } from './notebook-place.ts';

const noteWrite = () => import('../write/tg-note-write.ts');

/** What each place is drawn with, fetched when somebody goes there. */
const PARTS: Readonly<Record<NotebookPlace['is'], () => Promise<unknown>>> = {
  drawer: () => import('../finding/tg-drawer.ts'),
  find: () => import('../finding/tg-find.ts'),
  read: () => Promise.all([import('../note/tg-note.ts'), import('../remarks/tg-remarks.ts')]),
  write: noteWrite,
  new: noteWrite,
  copy: noteWrite,
  choose: () => import('./tg-new-note.ts'),
  versions: () => import('../write/tg-note-versions.ts'),
  capture: () => import('../write/tg-capture.ts'),
};

type CopyPlace = Extract<NotebookPlace, { is: 'copy' }>;

/** What a copy begins with. */
interface CopiedText {
  readonly text: string;
}

/** Drafts that were left, for as long as the tab is open. */
const SHELF = new DraftShelf(tabDrawer('drafts'));
globalThis.addEventListener('beforeunload', (event) => {
  if (SHELF.holdsUnsaved) event.preventDefault();
});

/**
 * @summary The notebook itself: its drawer, a note to read or write, a new one, one caught in passing, earlier versions.
 * @event {NoteSaveRequestEvent} tg-note-save-request - A deleted note shall be put back.
 * @csspart undo - What was deleted, and the way back.
 * @slot ways-in - Under the drawer: how more comes into the notebook, and out of it.
 */
@customElement('tg-notebook')
export class TgNotebook extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      h1 {
        margin: 0;
        font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
      }
      h1:focus {
        outline: none;
      }
      .ways {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--tg-space-5);
        margin: var(--tg-space-2) 0 var(--tg-space-5);
        font: var(--tg-type-base) / 1.35 var(--tg-font-label);
      }
      .ways a {
        display: inline-flex;
        align-items: center;
        min-block-size: var(--tg-touch);
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
      .ways-in {
        margin-block-start: var(--tg-space-7);
      }
      .undo {
        position: sticky;
        inset-block-start: var(--tg-space-2);
        z-index: 3;
        display: flex;
        flex-wrap: wrap;
        gap: var(--tg-space-2) var(--tg-space-4);
        align-items: center;
        margin-block-end: var(--tg-space-4);
        padding: var(--tg-space-2) var(--tg-space-4);
        background: var(--tg-inverse);
        color: var(--tg-ink-inverse);
        font: var(--tg-type-base) / 1.4 var(--tg-font-label);
        --tg-focus: var(--tg-ink-inverse);
      }
      .undo button {
        min-block-size: var(--tg-touch);
        padding: var(--tg-space-1) var(--tg-space-3);
        border: var(--tg-line-1) solid currentColor;
        border-radius: 2px;
        background: none;
        font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
        cursor: pointer;
      }
      .undo button:focus-visible {
        outline-offset: -6px;
      }
      @media print {
        .ways,
        .undo {
          display: none;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The note of the address; absent for the drawer. */
  @property() note?: string;
  /** The settings of the address. */
  @property({ attribute: false }) settings: Readonly<Record<string, string>> = {};
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;
  /** True where nothing but remarks can be written. */
  @property({ type: Boolean, attribute: 'read-only' }) readOnly = false;

  @state() private gone?: { readonly path: string; readonly text: string; readonly title: string };
  @state() private undoFault = '';
  @state() private copied?: CopiedText | 'none';

  readonly #copying = new LatestTask<CopiedText | undefined>((copied) => (this.copied = copied ?? 'none'));
  #starts = new Map<string, { readonly kind: ReturnType<typeof starterOf>['kind']; readonly text: string }>();
  #place: NotebookPlace = { is: 'drawer', by: 'kind', card: '' };

  override willUpdate(changed: PropertyValues<this>) {
    if (!changed.has('note') && !changed.has('settings') && !changed.has('engine')) return;
    const before = this.#place;
    const place = notebookPlace(this.note, this.settings);
    this.#place = this.readOnly ? readingPlace(place) : place;
    void PARTS[this.#place.is]();
    if (this.#place.is === 'copy' && this.engine && !(isSameCopy(before, this.#place) && this.copied)) {
      this.copied = undefined;
      this.#copying.run(copiedText(this.engine, this.#place));
    }
  }

  override render() {
    return html`${this.gone ? this.#undoBar(this.gone) : nothing}
      <div @tg-note-gone=${this.#noteGone} @tg-note-kept=${this.#noteKept}>${this.#view(this.#place)}</div>`;
  }

  #view(place: NotebookPlace) {
    const { engine, version } = this;
    switch (place.is) {
      case 'read':
        return html`<tg-note .engine=${engine} .note=${place.id} .version=${version} ?read-only=${this.readOnly}></tg-note>
          <tg-remarks .engine=${engine} .note=${place.id} .version=${version}></tg-remarks>`;
      case 'write':
        return html`<tg-note-write
          .engine=${engine}
          .note=${place.id}
          .mode=${place.mode}
          .place=${place.place}
          .shelf=${SHELF}
          .version=${version}
        ></tg-note-write>`;
      case 'new':
        return html`<tg-note-write
          .engine=${engine}
          .start=${this.#start(place.kind, place.kind, () => starterOf(place.kind).text)}
          .home=${`#/notebook?new=${place.kind}`}
          .mode=${place.mode}
          .shelf=${SHELF}
          .version=${version}
        ></tg-note-write>`;
      case 'copy':
        return this.#copy(place);
      case 'versions':
        return html`<tg-note-versions .engine=${engine} .note=${place.id} .version=${version}></tg-note-versions>`;
      case 'capture':
        return html`<tg-capture .engine=${engine}></tg-capture>`;
      case 'find':
        return html`<p class="ways"><a href="#/notebook">The drawer</a><a href="#/notebook?new=note">A new note</a></p>
          <tg-find .engine=${engine} .settings=${this.settings} .version=${version}></tg-find>`;
      case 'choose':
        return html`<tg-new-note></tg-new-note>`;
      case 'drawer':
        return html`<h1 tabindex="-1">Notebook</h1>
          <p class="ways">
            <a href="#/notebook?find=">Find notes</a>${
              this.readOnly
                ? nothing
                : html`<a href="#/notebook?new=note">A new note</a><a href="#/notebook?capture=1">Catch it, with a photo</a>`
            }
          </p>
          <tg-drawer .engine=${engine} .by=${place.by} .card=${place.card} .version=${version}></tg-drawer>
          <div class="ways-in"><slot name="ways-in"></slot></div>`;
    }
  }

  #copy(place: CopyPlace) {
    const { copied } = this;
    if (copied === undefined) return html`<p role="status">Opening the note.</p>`;
    if (copied === 'none')
      return html`<p role="alert">No note of this notebook has the id “${place.of}”. <a href="#/notebook">All notes</a></p>`;
    const word = place.repeats ? 'repeat' : 'copy';
    return html`<tg-note-write
      .engine=${this.engine}
      .start=${this.#start(`${word} of ${place.of}`, 'plain', () => copied.text)}
      .home=${`#/notebook?new=${word}&of=${encodeURIComponent(place.of)}`}
      .mode=${place.mode}
      .shelf=${SHELF}
      .version=${this.version}
    ></tg-note-write>`;
  }

  /** One start for each place, so that drawing anew does not begin anew. */
  #start(key: string, kind: ReturnType<typeof starterOf>['kind'], text: () => string) {
    const start = this.#starts.get(key) ?? { kind, text: text() };
    this.#starts.set(key, start);
    return start;
  }

  #undoBar({ title }: { readonly title: string }) {
    return html`<div class="undo" part="undo" role="status">
      <span>${this.undoFault === '' ? `“${title}” is deleted.` : this.undoFault}</span>
      <button type="button" id="undo" @click=${this.#putBack}>Undo</button>
      <button type="button" @click=${this.#letGo}>Let it go</button>
    </div>`;
  }

  #noteGone(event: NoteGoneEvent) {
    this.gone = event.detail;
    this.undoFault = '';
    globalThis.location.hash = '#/notebook';
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('#undo')?.focus());
  }

  #noteKept({ detail: { id, isNew } }: NoteKeptEvent) {
    if (!isNew) return;
    this.#starts.clear();
    globalThis.location.hash = `${noteAddress(id)}?write=${this.settings['write'] ?? 'form'}`;
  }

  /** The bar goes, and the focus it had goes to the page's heading. */
  readonly #letGo = () => {
    this.gone = undefined;
    this.renderRoot.querySelector<HTMLElement>('h1')?.focus();
  };

  readonly #putBack = async () => {
    const { gone } = this;
    if (!gone) return;
    const request = new NoteSaveRequestEvent({ path: gone.path, text: gone.text });
    this.dispatchEvent(request);
    const outcome = await request.answer;
    if (outcome?.is === 'saved') this.#letGo();
    else this.undoFault = outcome?.is === 'failed' ? storeFailureWords[outcome.why] : `There is another note at ${gone.path} now.`;
  };
}

/** The text that a copy of a note, or a repeat of a trial, begins with; undefined where there is no such note. */
async function copiedText(engine: Engine, { of, repeats }: CopyPlace): Promise<CopiedText | undefined> {
  const original = await engine.noteText(of);
  if (!original) return undefined;
  // What takes a text apart is large, and only wanted here.
  if (repeats) return { text: (await import('../../notebook/repeat-text.ts')).repeatText(original) };
  const { duplicateText } = await import('../../notebook/duplicate.ts');
  return { text: duplicateText(original.text, `${original.title}, a copy`) };
}

const isSameCopy = (before: NotebookPlace, place: CopyPlace): boolean =>
  before.is === 'copy' && before.of === place.of && before.repeats === place.repeats;

declare global {
  interface HTMLElementTagNameMap {
    'tg-notebook': TgNotebook;
  }
}
