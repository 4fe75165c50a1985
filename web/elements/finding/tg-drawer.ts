import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import { type DrawerBy, type DrawerCard, type DrawerNote, DRAWERS } from '../../notebook/views/drawer-view.ts';
import { noteAddress } from '../note/note-body.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';

const TITLES: Readonly<Record<DrawerBy, string>> = { kind: 'kind', dyestuff: 'dyestuff', place: 'place', date: 'date' };

/**
 * @summary The notebook as a card drawer: guide cards by kind, dyestuff, place or date, and the notes behind one of them.
 * @csspart cards - The guide cards with how many notes stand behind each.
 * @csspart notes - The notes behind the card that is pulled.
 */
@customElement('tg-drawer')
export class TgDrawer extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      .by {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--tg-space-4);
        align-items: baseline;
        margin: 0 0 var(--tg-space-4);
        font: var(--tg-type-base) / 1.35 var(--tg-font-label);
      }
      .by a {
        display: inline-flex;
        align-items: center;
        min-block-size: var(--tg-touch);
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
      a[aria-current='true'] {
        font-weight: 700;
        text-decoration-thickness: 2px;
      }
      h2 {
        margin: var(--tg-space-5) 0 var(--tg-space-3);
        padding-block-end: var(--tg-space-2);
        border-block-end: var(--tg-line-1) solid var(--tg-ink);
        font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
      }
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      .cards {
        columns: 16rem;
        column-gap: var(--tg-space-6);
      }
      .cards li {
        break-inside: avoid;
        border-block-end: var(--tg-line-1) solid var(--tg-hairline);
      }
      .cards a {
        display: flex;
        gap: var(--tg-space-3);
        justify-content: space-between;
        align-items: center;
        min-block-size: var(--tg-touch);
        text-decoration: none;
      }
      .cards a:hover span:first-child {
        text-decoration: underline;
      }
      .count {
        color: var(--tg-ink-quiet);
        font: var(--tg-type-small) / 1 var(--tg-font-label);
        font-variant-numeric: tabular-nums;
      }
      .notes {
        max-inline-size: var(--tg-measure);
      }
      .notes li {
        padding-block: var(--tg-space-2);
        border-block-end: var(--tg-line-1) solid var(--tg-hairline);
      }
      .small {
        color: var(--tg-ink-quiet);
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      @media print {
        .by {
          display: none;
        }
        .cards {
          columns: 3;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** How the cards are sorted. */
  @property() by: DrawerBy = 'kind';
  /** The guide card that is pulled; none when ''. */
  @property() card = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private cards?: readonly DrawerCard[];
  @state() private notes?: readonly DrawerNote[];

  readonly #sorting = new LatestTask<readonly DrawerCard[]>((cards) => (this.cards = cards));
  readonly #pulling = new LatestTask<readonly DrawerNote[]>((notes) => (this.notes = notes));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version') || changed.has('by');
    if (changed.has('by')) this.cards = undefined;
    if (anew) this.#sorting.run(this.engine.drawer(this.by));
    if (anew || changed.has('card')) {
      if (changed.has('card') || changed.has('by')) this.notes = undefined;
      if (this.card !== '') this.#pulling.run(this.engine.drawerNotes(this.by, this.card));
    }
  }

  override render() {
    const pulled = this.cards?.find(({ key }) => key === this.card);
    return html`<p class="by">
        <span id="by">All notes by</span>
        ${DRAWERS.map((by) => html`<a href=${`#/notebook?by=${by}`} aria-current=${by === this.by ? 'true' : 'false'}>${TITLES[by]}</a>`)}
      </p>
      ${this.card === '' ? this.#cards() : this.#pulled(pulled)}`;
  }

  #cards() {
    if (!this.cards) return html`<p role="status">Sorting the notes.</p>`;
    if (this.cards.length === 0) return html`<p>Nothing stands here yet.</p>`;
    return html`<ul class="cards" part="cards">
      ${this.cards.map(
        ({ key, title, count }) =>
          html`<li>
            <a href=${`#/notebook?by=${this.by}&card=${encodeURIComponent(key)}`}
              ><span>${title}</span
              ><span class="count"
                >${count.toLocaleString()}<span class="visually-hidden">${count === 1 ? ' note' : ' notes'}</span></span
              ></a
            >
          </li>`,
      )}
    </ul>`;
  }

  #pulled(card: DrawerCard | undefined) {
    return html`<p class="small"><a href=${`#/notebook?by=${this.by}`}>All cards by ${TITLES[this.by]}</a></p>
      <h2>${card?.title ?? this.card}</h2>
      ${
        this.notes === undefined
          ? html`<p role="status">Pulling the card.</p>`
          : this.notes.length === 0
            ? html`<p>No note stands behind this card.</p>`
            : html`<ul class="notes" part="notes">
                ${this.notes.map(
                  ({ id, title, kindWord, says, kind }) =>
                    html`<li>
                      <a href=${noteAddress(id)}>${title}</a>
                      <span class="small"
                        >${this.by === 'kind' ? nothing : `${kindWord.toLowerCase()}${says === '' ? '' : ' · '}`}${kind === 'dyestuff' ? html`<i lang="la">${says}</i>` : says}</span
                      >
                    </li>`,
                )}
              </ul>`
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-drawer': TgDrawer;
  }
}
