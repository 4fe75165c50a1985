import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { addressOf } from '../../notebook/address.ts';
import { dyeDayOf, settingsOfDyeDay, type TypedDyeDay } from '../../notebook/dye-day-address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { PotNote } from '../../notebook/pot-notes.ts';
import { storeFailureWords } from '../../notebook/words/save-words.ts';
import type { DyeDayChangeEvent } from '../dye-day/dye-day-change-event.ts';
import '../dye-day/tg-dye-day.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { thisMoment } from '../shared/this-moment.ts';
import { NoteSaveRequestEvent } from '../write/write-events.ts';
import './tg-pot-log.ts';
import './tg-samples.ts';
import './tg-tag-sheet.ts';

/**
 * @summary "Pot": the plan of a day, its tags, the log at the pot, and samples found again by their codes.
 * @event {NoteSaveRequestEvent} tg-note-save-request - A pot of the day is begun: its note is to be kept.
 */
@customElement('tg-pot')
export class TgPot extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
      }
      .begin {
        margin-block-start: var(--tg-space-5);
        font: var(--tg-type-base) / 1.5 var(--tg-font-label);
      }
      button {
        min-block-size: var(--tg-touch);
        padding: var(--tg-space-2) var(--tg-space-4);
        border: var(--tg-line-2) solid var(--tg-ink);
        border-radius: 2px;
        background: none;
        font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
        cursor: pointer;
      }
      @media print {
        .begin {
          display: none;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The view of the address. */
  @property() view: 'pot' | 'dye-day' | 'samples' = 'pot';
  /** What the address is about. */
  @property() about?: string;
  /** The settings of the address. */
  @property({ attribute: false }) settings: Readonly<Record<string, string>> = {};
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;
  /** True where nothing can be changed. */
  @property({ type: Boolean, attribute: 'read-only' }) readOnly = false;

  @state() private busy = false;
  @state() private fault = '';

  override render() {
    const { engine, version, about, settings } = this;
    if (this.view === 'dye-day') return this.#day(dyeDayOf(settings));
    if (this.view === 'pot' && about !== undefined)
      return html`<tg-pot-log .engine=${engine} .pot=${about} .version=${version}></tg-pot-log>`;
    const tags = settings['tags'];
    if (tags !== undefined)
      return html`<tg-tag-sheet .engine=${engine} .trials=${tags.split(';').filter((id) => id !== '')} .version=${version}></tg-tag-sheet>`;
    return html`<tg-samples
      .engine=${engine}
      .code=${about}
      .version=${version}
      heading=${this.view === 'pot' ? 'Pot' : 'Samples and tags'}
    ></tg-samples>`;
  }

  #day(day: TypedDyeDay) {
    return html`<tg-dye-day .engine=${this.engine} .day=${day} .version=${this.version} @tg-dye-day-change=${this.#planned}>
      ${
        day.items.length === 0 || this.readOnly
          ? nothing
          : html`<div class="begin" slot="ways-on">
              <button type="button" ?disabled=${this.busy} @click=${() => this.#begin(day)}>
                ${this.busy ? 'Giving codes out' : 'Give codes out and print the tags'}
              </button>
              <p>Each pot gets a trial note, and each skein a code, before anything is wet.</p>
              ${this.fault === '' ? nothing : html`<p role="alert"><strong>${this.fault}</strong></p>`}
            </div>`
      }
    </tg-dye-day>`;
  }

  #planned({ detail: { day } }: DyeDayChangeEvent) {
    globalThis.location.hash = addressOf({ view: 'dye-day', settings: settingsOfDyeDay(day) });
  }

  async #begin(day: TypedDyeDay) {
    if (this.busy || !this.engine) return;
    this.busy = true;
    this.fault = '';
    const notes = await this.engine.potNotes(day, thisMoment());
    const fault =
      notes.length === 0 ? 'Nothing of this plan can be dyed yet, or the year’s numbers are used up.' : await this.#saveAll(notes);
    this.busy = false;
    if (fault === undefined)
      globalThis.location.hash = addressOf({ view: 'samples', settings: { tags: notes.map(({ id }) => id).join(';') } });
    else this.fault = fault;
  }

  /** Saves one pot after another; what a first attempt saved keeps its codes. */
  async #saveAll(notes: readonly PotNote[]): Promise<string | undefined> {
    for (const { path, text } of notes) {
      const request = new NoteSaveRequestEvent({ path, text });
      this.dispatchEvent(request);
      const outcome = await request.answer;
      if (outcome?.is === 'failed') return storeFailureWords[outcome.why];
      if (outcome?.is !== 'saved') return `There is another note at ${path} now. Give codes out once more: the next free ones are taken.`;
    }
    return undefined;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-pot': TgPot;
  }
}
