import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { addressOf } from '../../notebook/address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { DifferenceRow, TrialComparisonView } from '../../notebook/views/trial-comparison-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';
import { styles } from './tg-trials.styles.ts';

/**
 * @summary Pots beside each other: how far their colours lie apart, and what differed, likeliest first and said as a possibility.
 * @csspart pots - The cloths.
 * @csspart differences - What differed.
 */
@customElement('tg-trial-comparison')
export class TgTrialComparison extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The trials' ids. */
  @property({ attribute: false }) trials: readonly string[] = [];
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private view?: TrialComparisonView;

  readonly #comparing = new LatestTask<TrialComparisonView>((view) => (this.view = view));

  override willUpdate(changed: PropertyValues) {
    if (this.engine && (['engine', 'version', 'trials'] as const).some((name) => changed.has(name)))
      this.#comparing.run(this.engine.compareTrials(this.trials));
  }

  override render() {
    const { view } = this;
    if (!view) return html`<p role="status">Comparing the pots.</p>`;
    return html`
      <p class="quiet"><a href="#/trials">All trials</a></p>
      <h1>What differed</h1>
      ${view.missing.map((id) => html`<p role="alert">No trial of this notebook is called “${id}”.</p>`)}
      <ul class="cloths" part="pots">
        ${view.pots.map(
          ({ id, title, hex, inScreenGamut, weave }) =>
            html`<li>
              <tg-swatch .hex=${hex ?? ''} .fibre=${weave} .seed=${id} .outOfGamut=${!inScreenGamut} .label=${title}></tg-swatch>
              <strong>${id}</strong> <a href=${addressOf({ view: 'trials', id, settings: {} })}>${title}</a>
              ${hex === undefined ? html`<span class="quiet">no colour written down</span>` : nothing}
            </li>`,
        )}
      </ul>
      ${view.pots.length < 2 ? html`<p>Two pots are needed. <a href="#/trials">Choose them</a></p>` : html`<p class="says">${view.says}</p>`}
      ${this.#colours(view)}
      <div part="differences">
        ${this.#table('What differed, and may have made the difference; the likeliest first', view, view.differences)}
      </div>
      ${this.#table('Not written down by all of them: whether it differed is not known', view, view.unsaid)}
      ${
        view.pots.length < 2
          ? nothing
          : html`<p class="quiet">
              The order is by our judgement of how much each usually changes a colour; which of them did is not known. To find out,
              ${view.pots.map(
                ({ id }, at) =>
                  html`${at === 0 ? '' : ', or '}<a href=${`#/notebook?new=repeat&of=${encodeURIComponent(id)}`}>repeat ${id}</a>`,
              )}
              with one thing changed.
            </p>`
      }
    `;
  }

  #colours({ colours }: TrialComparisonView) {
    if (colours.length === 0) return nothing;
    return html`<section>
      <h2>How far the colours lie apart</h2>
      <ul class="lines">
        ${colours.map((line) => html`<li>${line}</li>`)}
      </ul>
    </section>`;
  }

  #table(title: string, { pots }: TrialComparisonView, rows: readonly DifferenceRow[]) {
    if (rows.length === 0) return nothing;
    return html`<section>
      <h2>${title}</h2>
      <div class="wide" tabindex="0" role="group" aria-label=${title}>
        <table>
          <thead>
            <tr>
              <td></td>
              ${pots.map(({ id }) => html`<th scope="col">${id}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${rows.map(
              ({ label, values }) =>
                html`<tr>
                  <th scope="row">${label}</th>
                  ${values.map((value) => html`<td>${value}</td>`)}
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-trial-comparison': TgTrialComparison;
  }
}
