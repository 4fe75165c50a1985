import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { stemOf } from '../../domain/note/stem-of.ts';
import { endingOf } from '../../notebook/attached-path.ts';
import { capturedNote } from '../../notebook/captured-note.ts';
import type { SaveOutcome } from '../../notebook/ports-writing.ts';
import type { WritingChoices } from '../../notebook/views/writing-choices.ts';
import type { Engine } from '../../notebook/engine.ts';
import { storeFailureWords } from '../../notebook/words/save-words.ts';
import { noteAddress } from '../note/note-body.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { fieldStyles } from './field.styles.ts';
import { CaptureSaveRequestEvent } from './write-events.ts';

/** Captures of one day that begin alike. */
const MOST_ALIKE = 50;

/**
 * @summary Catches something in passing, on a phone: a photo, words, a source, done.
 * @event {CaptureSaveRequestEvent} tg-capture-save-request - The note and its photo are to be kept.
 */
@customElement('tg-capture')
export class TgCapture extends LitElement {
  static override styles = [
    baseStyles,
    fieldStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      form {
        display: grid;
        gap: var(--tg-space-5);
        max-inline-size: 34rem;
      }
      h1 {
        margin: 0;
        font: 600 var(--tg-type-3) / 1.2 var(--tg-font-reading);
      }
      textarea {
        min-block-size: 9rem;
      }
      .photo {
        display: grid;
        place-items: center;
        min-block-size: 9rem;
        padding: var(--tg-space-4);
        border: var(--tg-line-2) dashed var(--tg-edge);
        font: var(--tg-type-base) / 1.4 var(--tg-font-label);
        text-align: center;
        cursor: pointer;
      }
      .photo:focus-within {
        outline: var(--tg-focus-width) solid var(--tg-focus);
        outline-offset: var(--tg-focus-gap);
      }
      .photo img {
        max-inline-size: 100%;
        max-block-size: 16rem;
        forced-color-adjust: none;
      }
      .done {
        min-block-size: 3.25rem;
        border-color: var(--tg-inverse);
        background: var(--tg-inverse);
        color: var(--tg-ink-inverse);
        font: 700 var(--tg-type-1) / 1.2 var(--tg-font-label);
      }
      .done:disabled {
        background: none;
        color: var(--tg-ink-quiet);
        border-color: var(--tg-hairline);
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;

  @state() private photo?: { readonly file: File; readonly address: string };
  @state() private words = '';
  @state() private source = '';
  @state() private choices?: WritingChoices;
  @state() private busy = false;
  @state() private fault = '';
  @state() private kept?: string;

  readonly #choosing = new LatestTask<WritingChoices>((choices) => (this.choices = choices));

  override firstUpdated() {
    if (this.engine) this.#choosing.run(this.engine.writingChoices());
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    this.#take(undefined);
  }

  override render() {
    const isEmpty = this.words.trim() === '' && !this.photo;
    return html`<form @submit=${this.#done} autocomplete="off">
      <h1>Catch it</h1>
      <div class="photo" @click=${this.#open}>
        <label for="photo"
          >${this.photo ? html`<img src=${this.photo.address} alt="" />Another photo` : 'Take a photo, or choose one'}</label
        >
        <input class="visually-hidden" id="photo" type="file" accept="image/*" capture="environment" @change=${this.#photographed} />
      </div>
      <div class="field">
        <label for="words">Words</label>
        <textarea id="words" spellcheck="true" .value=${this.words} @input=${this.#worded}></textarea>
      </div>
      <div class="field">
        <label for="source">Where it is from</label>
        <input id="source" type="text" list="sources" aria-describedby="source-hint" .value=${this.source} @input=${this.#sourced} />
        <p class="hint" id="source-hint">A key of the bibliography with a page, or words: the label in room 4.</p>
        <datalist id="sources">${this.choices?.sources.map(({ value, label }) => html`<option value=${value}>${label}</option>`)}</datalist>
      </div>
      ${this.fault === '' ? nothing : html`<p class="fault" role="alert">${this.fault}</p>`}
      <button type="submit" class="done" ?disabled=${isEmpty || this.busy}>${this.busy ? 'Keeping it' : 'Done'}</button>
      <p role="status">
        ${this.kept === undefined ? nothing : html`Kept. <a href=${noteAddress(this.kept)}>Read it</a>, or catch the next.`}
      </p>
    </form>`;
  }

  #open(event: Event) {
    // The label opens the picker by itself; the frame around it does the same.
    if (event.target === event.currentTarget) this.renderRoot.querySelector<HTMLInputElement>('#photo')?.click();
  }

  #worded(event: Event) {
    this.words = valueOf(event);
  }

  #sourced(event: Event) {
    this.source = valueOf(event);
  }

  #photographed(event: Event) {
    const [file] = (event.target as HTMLInputElement).files ?? [];
    this.#take(file);
    this.kept = undefined;
  }

  #take(file: File | undefined) {
    if (this.photo) URL.revokeObjectURL(this.photo.address);
    this.photo = file && { file, address: URL.createObjectURL(file) };
    // Else the same photo, taken again, would be no change.
    const input = this.renderRoot?.querySelector<HTMLInputElement>('#photo');
    if (!file && input) input.value = '';
  }

  readonly #done = async (event: Event) => {
    event.preventDefault();
    if (this.busy) return;
    this.busy = true;
    this.fault = '';
    this.kept = undefined;
    await this.#keep();
    this.busy = false;
  };

  async #keep() {
    const { photo, words, source } = this;
    const bytes = photo && new Uint8Array(await photo.file.arrayBuffer());
    const capture = { words, source, ...(photo && { photoEnding: endingOf(photo.file) }) };
    for (let nth = 1; nth <= MOST_ALIKE; nth += 1) {
      const { path, text, photoPath } = capturedNote(capture, today(), nth);
      const outcome = await this.#ask(path, text, photoPath !== undefined && bytes ? [{ path: photoPath, bytes }] : []);
      if (outcome?.is === 'taken' && nth < MOST_ALIKE) continue;
      this.#outcome(outcome, path);
      return;
    }
  }

  #ask(path: string, text: string, photos: ConstructorParameters<typeof CaptureSaveRequestEvent>[1]): Promise<SaveOutcome | undefined> {
    const request = new CaptureSaveRequestEvent({ path, text }, photos);
    this.dispatchEvent(request);
    return request.answer ?? Promise.resolve(undefined);
  }

  #outcome(outcome: SaveOutcome | undefined, path: string) {
    if (outcome?.is !== 'saved') {
      this.fault = outcome?.is === 'failed' ? storeFailureWords[outcome.why] : 'Not kept. Your words are still here; try once more.';
      return;
    }
    this.kept = stemOf(path);
    this.words = '';
    this.#take(undefined);
    this.renderRoot.querySelector<HTMLTextAreaElement>('#words')?.focus();
  }
}

const valueOf = (event: Event): string => (event.target as HTMLInputElement | HTMLTextAreaElement).value;

/** The reader's own day, not the one in Greenwich. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-capture': TgCapture;
  }
}
