import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Box } from '../../domain/display/lay-out.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { BoardColour, DisplayView } from '../../notebook/views/display-view.ts';
import type { DisplayEdit, TypedCaption } from '../../notebook/display-edit.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';
import type { BoardMoveEvent, DisplayEditEvent } from './on-show-events.ts';
import { onShowStyles } from './on-show.styles.ts';
import { PageSize } from './page-size.ts';
import { writtenEdit } from './written-edit.ts';
import './tg-arrange.ts';
import './tg-board.ts';
import './tg-board-files.ts';
import './tg-caption.ts';
import './tg-light-plan.ts';

/**
 * @summary A display: its board, captions with what they rest on, light plan, and what was not to be had then. Paper holds the board.
 * @event {NoteSaveRequestEvent} tg-note-save-request - Something of it is to be written into its note.
 * @csspart board - The board.
 * @csspart captions - The captions, each with its colour.
 */
@customElement('tg-display')
export class TgDisplay extends LitElement {
  static override styles = [
    baseStyles,
    onShowStyles,
    css`
      tg-board {
        max-inline-size: 60rem;
        margin-block: var(--tg-space-4);
      }
      summary > h2 {
        display: inline-block;
        inline-size: calc(100% - 1.5em);
        margin-block-start: var(--tg-space-5, var(--tg-space-4));
      }
      .not-then {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(20rem, 100%), 1fr));
        gap: 0 var(--tg-space-6);
      }
      @media print {
        tg-board {
          max-inline-size: none;
          margin: 0;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the display note. */
  @property({ attribute: 'display-id' }) displayId = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;
  /** UTC, ISO 8601: the day it is. */
  @property() now = '';

  @state() private view?: DisplayView | 'none';
  @state() private language = 'en';
  @state() private windows = false;
  @state() private moved: ReadonlyMap<string, Box> = new Map();
  /** New captions being written, by their colour. */
  @state() private drafts: ReadonlyMap<string, TypedCaption> = new Map();
  @state() private said = '';

  readonly #opening = new LatestTask<DisplayView | undefined>((view) => {
    this.view = view ?? 'none';
    this.#paper.set(view?.sheet, 0);
  });
  readonly #paper = new PageSize(this);
  /** Whether the screen was wider than a phone’s when the page was opened. */
  readonly #roomy = globalThis.matchMedia('(min-width: 40rem)').matches;

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine || !(['engine', 'displayId', 'version'] as const).some((name) => changed.has(name))) return;
    if (changed.has('displayId')) {
      this.moved = new Map();
      this.drafts = new Map();
    }
    this.#opening.run(this.engine.display(this.displayId));
  }

  override render() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Laying out the board.</p>`;
    if (view === 'none')
      return html`<p role="alert">No display of this notebook is called “${this.displayId}”. <a href="#/on-show">All displays</a></p>`;
    const id = encodeURIComponent(view.id);
    return html`
      <div class="screen">
        <p class="quiet"><a href="#/on-show">All displays and what is due</a></p>
        <h1>${view.title}</h1>
        <p class="quiet">
          ${[view.place, view.reading, view.sheet.name, `version ${view.version}`].filter((part) => part !== '').join(' · ')} ·
          <a href=${`#/palette/${encodeURIComponent(view.palette.id)}`}>${view.palette.title}</a> ·
          <a href=${`#/notebook/${id}`}>the note</a>
        </p>
        <p role="status">
          ${view.staleCaptions === 0 ? 'Every caption still stands on its claims.' : html`<strong>${view.staleCaptions} ${view.staleCaptions === 1 ? 'caption is' : 'captions are'} stale.</strong>`}
        </p>
        ${
          view.problems.length + view.alike.length === 0
            ? nothing
            : html`<ul class="notice">
                ${[...view.problems, ...view.alike].map((says) => html`<li>${says}</li>`)}
              </ul>`
        }
        <div class="asked">
          ${
            view.languages.length > 1
              ? html`<label
                  >Captions on the board
                  <select @change=${this.#spoken}>
                    ${view.languages.map((language) => html`<option ?selected=${language === this.language}>${language}</option>`)}
                  </select></label
                >`
              : nothing
          }
          <button type="button" class="plain" aria-pressed=${this.windows} @click=${this.#showWindows}>Windows for real cloth</button>
          <a href=${`#/on-show/${id}?print=labels`}>Labels</a>
          <a href=${`#/on-show/${id}?print=dossier`}>Dossier: every evidence sheet</a>
          <a href=${`#/on-show/${id}?publish=1`}>Publish it</a>
          <button type="button" class="plain" @click=${() => globalThis.print()}>Print the board at its true size</button>
        </div>
      </div>
      <tg-board
        part="board"
        .display=${view}
        .language=${this.language}
        .moved=${this.moved}
        .windows=${this.windows}
        .day=${this.now.slice(0, 10)}
        @tg-board-move=${this.#tryOut}
      ></tg-board>
      <div class="screen" @tg-display-edit=${this.#answerEdit}>
        ${this.#movedText()}
        <tg-board-files .display=${view} .language=${this.language} .windows=${this.windows} .day=${this.now.slice(0, 10)}></tg-board-files>
        ${this.#folded('Arranging it', html`<tg-arrange .display=${view}></tg-arrange>`)}
        ${this.#folded('Captions', html`<div part="captions">${view.colours.map((colour) => this.#captions(view, colour))}</div>`)}
        ${this.#folded('Light', html`<tg-light-plan .engine=${this.engine} .displayId=${view.id} .version=${this.version} .now=${this.now}></tg-light-plan>`)}
        ${this.#folded(
          'What is not on it',
          html`${view.gaps === '' ? nothing : html`<p>${view.gaps}</p>`}
            <ul class="not-then">
              ${view.notThen.map(({ title, why }) => html`<li><strong>${title}</strong><br /><span class="quiet">${why}</span></li>`)}
            </ul>`,
        )}
      </div>
    `;
  }

  /** A part of the page under its heading: open where there is room, folded on a phone. */
  #folded(heading: string, matter: unknown) {
    return html`<details ?open=${this.#roomy}>
      <summary><h2>${heading}</h2></summary>
      ${matter}
    </details>`;
  }

  #captions(view: DisplayView, colour: BoardColour) {
    const draft = this.drafts.get(colour.what);
    return html`<section class="pair">
      <tg-swatch
        .hex=${colour.hex}
        .fibre=${colour.cloth?.weave ?? 'wool'}
        .verdict=${colour.cloth?.verdict}
        .classes=${colour.cloth?.classes ?? 0}
        .seed=${colour.code || colour.what}
        .label=${colour.title}
      ></tg-swatch>
      <div>
        <p class="quiet">
          ${[colour.title, colour.cloth?.verdictWord, colour.code, colour.material === 'real' ? `window for a ${colour.form}` : 'printed'].filter((part) => part).join(' · ')}
          · <a href=${`#/on-show/${encodeURIComponent(view.id)}?sheet=${encodeURIComponent(colour.what)}`}>everything behind it</a>
        </p>
        ${repeat(
          colour.captions,
          ({ nth }) => nth,
          (caption) =>
            html`<tg-caption
              .engine=${this.engine}
              .displayId=${view.id}
              .colour=${colour}
              .caption=${caption}
              .now=${this.now}
            ></tg-caption>`,
        )}
        ${
          draft
            ? html`<tg-caption
                .engine=${this.engine}
                .displayId=${view.id}
                .colour=${colour}
                .start=${draft}
                .now=${this.now}
              ></tg-caption>`
            : html`<p class="asked">
                ${
                  colour.cloth && !colour.captions.some(({ lang }) => lang === 'en')
                    ? html`<button type="button" class="plain" @click=${() => this.#draft(colour.what)}>
                        Draft a caption from the claims
                      </button>`
                    : nothing
                }
                <button type="button" class="plain" @click=${() => this.#begin(colour)}>Write one in another language</button>
              </p>`
        }
      </div>
    </section>`;
  }

  #movedText() {
    if (this.moved.size === 0) return this.said === '' ? nothing : html`<p class="notice" role="alert">${this.said}</p>`;
    return html`<div class="notice">
      <p role="status">
        ${this.moved.size === 1 ? 'One cloth was' : `${this.moved.size} cloths were`} moved, and not written down yet. ${this.said}
      </p>
      <p class="asked">
        <button type="button" @click=${this.#keepPlaces}>Keep the board as it lies</button>
        <button type="button" class="plain" @click=${this.#putBack}>Put everything back</button>
      </p>
    </div>`;
  }

  /** Every cloth is written down: were only the moved ones, the others would be laid out round them. */
  readonly #keepPlaces = async () => {
    if (typeof this.view !== 'object') return;
    const boxes = this.view.colours.flatMap(({ what, box }) => {
      const at = this.moved.get(what) ?? box;
      return at ? [{ what, box: at }] : [];
    });
    this.said = await this.#write({ is: 'places', boxes });
    if (this.said === '') this.moved = new Map();
  };

  #answerEdit(event: DisplayEditEvent) {
    const { detail: edit } = event;
    const written = this.#write(edit);
    event.respondWith(written);
    if (edit.is === 'caption' && edit.nth === undefined)
      void written.then((said) => {
        if (said !== '') return;
        this.drafts = new Map([...this.drafts].filter(([what]) => what !== edit.what));
      });
  }

  #write(edit: DisplayEdit): Promise<string> {
    return writtenEdit(this, this.engine, this.displayId, edit);
  }

  #showWindows() {
    this.windows = !this.windows;
  }

  #putBack() {
    this.said = '';
    this.moved = new Map();
  }

  #tryOut({ detail: { what, box } }: BoardMoveEvent) {
    this.moved = new Map(this.moved).set(what, box);
  }

  #spoken(event: Event) {
    if (event.target instanceof HTMLSelectElement) this.language = event.target.value;
  }

  #draft(what: string) {
    void this.engine?.captionDraft(this.displayId, what).then((draft) => {
      if (!draft) return;
      const claims = draft.claims.map(({ claim = '', says = '' }) => ({ claim, says }));
      this.#start(what, { lang: 'en', headline: draft.headline, text: draft.text, claims });
    });
  }

  /** A caption in a language of the board that this colour has none in yet. */
  #begin({ what, captions }: BoardColour) {
    const languages = typeof this.view === 'object' ? this.view.languages : [];
    const lang = languages.find((one) => !captions.some((caption) => caption.lang === one)) ?? '';
    this.#start(what, { lang, headline: '', text: '', claims: [] });
  }

  #start(what: string, caption: TypedCaption) {
    this.drafts = new Map(this.drafts).set(what, caption);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-display': TgDisplay;
  }
}
