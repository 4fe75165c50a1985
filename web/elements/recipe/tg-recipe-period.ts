import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { Choice } from '../../notebook/views/choices-view.ts';
import { problemSentence } from '../ask/question-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { fieldStyles } from '../write/field.styles.ts';

type Judged = Awaited<ReturnType<Engine['periodOf']>>;

/**
 * @summary Whether a recipe fits a place and time, and which claims of the notebook say so.
 * @csspart verdict - The verdict in a word and a sentence.
 * @csspart claims - The materials, each with the claims that carry it.
 */
@customElement('tg-recipe-period')
export class TgRecipePeriod extends LitElement {
  static override styles = [
    baseStyles,
    fieldStyles,
    css`
      :host {
        display: block;
      }
      .asked {
        display: flex;
        flex-wrap: wrap;
        gap: var(--tg-space-3);
        align-items: end;
      }
      .asked .field {
        flex: 0 1 16rem;
      }
      p {
        margin: var(--tg-space-3) 0;
        max-inline-size: var(--tg-measure);
      }
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
      .claims > li {
        display: grid;
        grid-template-columns: 8.5rem minmax(0, 1fr);
        gap: 0 var(--tg-space-4);
        padding-block: var(--tg-space-2);
        border-block-end: var(--tg-line-1) solid var(--tg-hairline);
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      @media (max-width: 40rem) {
        .claims > li {
          grid-template-columns: minmax(0, 1fr);
        }
      }
      @media print {
        .asked,
        .way {
          display: none;
        }
        .claims {
          columns: 2;
          column-gap: 6mm;
        }
        .claims > li {
          grid-template-columns: 20mm minmax(0, 1fr);
          gap: 2mm;
          padding-block: 0.4mm;
          font-size: 6.75pt;
          line-height: 1.2;
          break-inside: avoid;
        }
        .claims > li li:nth-child(n + 2) {
          display: none;
        }
        p {
          margin: 0.5mm 0;
          max-inline-size: none;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the recipe. */
  @property() recipe = '';
  /** Id of the place. */
  @property() region = '';
  /** The date as written. */
  @property() when = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private regions: readonly Choice[] = [];
  @state() private judged: Judged;

  readonly #choosing = new LatestTask<readonly Choice[]>((regions) => (this.regions = regions));
  readonly #judging = new LatestTask<Judged>((judged) => (this.judged = judged));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    if (changed.has('engine') || changed.has('version')) this.#choosing.run(this.engine.choices().then(({ regions }) => regions));
    if ((['engine', 'version', 'recipe', 'region', 'when'] as const).some((name) => changed.has(name)))
      this.#judging.run(this.engine.periodOf(this.recipe, { region: this.region, when: this.when }));
  }

  override render() {
    return html`
      <div class="asked">
        <div class="field">
          <label for="region">Place</label>
          <select id="region" @change=${(event: Event) => (this.region = (event.target as HTMLSelectElement).value)}>
            ${this.regions.map(
              ({ id, title, depth }) =>
                html`<option value=${id} ?selected=${id === this.region}>${'\u2003'.repeat(depth)}${title}</option>`,
            )}
          </select>
        </div>
        <div class="field">
          <label for="when">Date</label>
          <input
            id="when"
            autocomplete="off"
            .value=${this.when}
            @change=${(event: Event) => (this.when = (event.target as HTMLInputElement).value)}
          />
        </div>
      </div>
      ${this.judged?.problems.map((problem) => html`<p role="alert">${problemSentence(problem)}</p>`)} ${this.#period()}
    `;
  }

  #period() {
    const period = this.judged?.period;
    if (!period) return nothing;
    const place = this.regions.find(({ id }) => id === this.region)?.title ?? this.region;
    return html`
      <p part="verdict" role="status"><strong>${period.verdict}</strong>, ${place}, ${this.when}. ${period.means}</p>
      ${period.because.map((because) => html`<p class="way">${because}</p>`)}
      <ul class="claims" part="claims">
        ${period.materials.map(
          ({ id, title, stands, claims }) =>
            html`<li>
              <a href=${`#/notebook/${encodeURIComponent(id)}`}>${title}</a>
              <ul>
                ${[stands, ...claims].map((line) => html`<li>${line}</li>`)}
              </ul>
            </li>`,
        )}
      </ul>
      ${period.ask === '' ? nothing : html`<p class="way"><a href=${period.ask}>Ask for its colour, there and then</a></p>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-recipe-period': TgRecipePeriod;
  }
}
