import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { TypedQuestion } from '../../notebook/pose-question.ts';
import type { AsFoundView, FoundHypothesis, OriginalsStrip, PossibleOriginalView } from '../../notebook/views/as-found-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { asFoundStyles } from './as-found.styles.ts';

/**
 * @summary What a faded colour may have been: strips of possible originals, dye by dye, each hypothesis written out and each piece asked.
 * @csspart strip - The pieces of one strip, from nothing lost to much lost.
 */
@customElement('tg-as-found')
export class TgAsFound extends LitElement {
  static override styles = [baseStyles, asFoundStyles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The question, its colour as found. */
  @property({ attribute: false }) question: TypedQuestion = { region: '', when: '' };
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  /** Dyeings the reader names, such as a laboratory found. */
  @state() private named: readonly string[] = [];
  @state() private view?: AsFoundView | 'none';

  readonly #finding = new LatestTask<AsFoundView | undefined>((view) => (this.view = view ?? 'none'));

  override willUpdate(changed: PropertyValues) {
    if (!this.engine) return;
    if (['engine', 'question', 'version', 'named'].some((key) => changed.has(key)))
      this.#finding.run(this.engine.asFound(this.question, this.named));
  }

  override render() {
    const { view } = this;
    if (!view) return html`<p role="status">Working out what it may have been.</p>`;
    if (view === 'none')
      return html`<p>
        What this colour may have been cannot be worked out: it needs a colour, and trials of single dyes on such a fibre with its undyed
        ground.
      </p>`;
    const [first, ...others] = view.hypotheses;
    return html`<h2>As found, it may have been</h2>
      <p class="small">${view.caution}</p>
      ${this.#naming(view)}
      <div aria-live="polite">
        ${
          first
            ? html`<div class="hypothesis">
                <p class="says">${first.says}</p>
                ${this.#strips(first)}
              </div>`
            : html`<p>No single dye of this notebook comes near it.</p>`
        }
        ${others.map(
          (one) =>
            html`<details class="hypothesis">
              <summary><span class="says">${one.says}</span></summary>
              ${this.#strips(one)}
            </details>`,
        )}
      </div>
      ${
        view.leftOut.length > 0 && this.named.length === 0
          ? html`<p class="small">Not considered, because your notes rule them out here and then: ${view.leftOut.join('; ')}.</p>`
          : nothing
      }`;
  }

  #naming({ dyeings }: AsFoundView) {
    const list = (label: string, at: number, none: string) =>
      html`<label
        >${label}
        <select @change=${(event: Event) => this.#name(at, (event.target as HTMLSelectElement).value)}>
          <option value="" .selected=${this.named[at] === undefined}>${none}</option>
          ${dyeings.map(({ id, title }) => html`<option value=${id} .selected=${id === this.named[at]}>${title}</option>`)}
        </select>
      </label>`;
    return html`<div class="named" role="group" aria-label="The dyes it is taken for">
      ${list('Taken as dyed with', 0, 'what its colour suggests')} ${this.named[0] === undefined ? nothing : list('and', 1, 'nothing else')}
    </div>`;
  }

  #strips({ strips }: FoundHypothesis) {
    return strips.map(
      (strip: OriginalsStrip) =>
        html`<h3>${strip.says}</h3>
          <ol part="strip" class="strip">
            ${strip.pieces.map((piece) => this.#piece(piece))}
          </ol>`,
    );
  }

  #piece({ hex, wide, inScreenGamut, loss, verdictWord, by, address }: PossibleOriginalView) {
    return html`<li>
      <span class="patch" style=${`--_patch:${hex};--_wide:${wide ?? hex}`} aria-hidden="true"></span>
      <a href=${address}>${loss}<strong>${verdictWord}</strong></a>
      <span class="small">${by}${inScreenGamut ? '' : ' · the screen shows it duller'}</span>
    </li>`;
  }

  #name(at: number, id: string) {
    const kept = this.named.slice(0, at);
    this.named = id === '' ? kept : [...kept, id, ...this.named.slice(at + 1)];
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-as-found': TgAsFound;
  }
}
