import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { addressOf } from '../../notebook/address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { TrialView } from '../../notebook/views/trial-view.ts';
import '../fastness/tg-fastness.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';
import { styles } from './tg-trials.styles.ts';

const trialAddress = (id: string): string => addressOf({ view: 'trials', id, settings: {} });

/**
 * @summary One pot: what came out of it, what went in and what was done, its lots, its kin, its tests, and the other pots of its recipe.
 * @csspart skeins - What came out.
 * @csspart materials - What went in.
 * @csspart fastness - Its tests.
 * @csspart others - The other pots of its recipe.
 */
@customElement('tg-trial')
export class TgTrial extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The trial's id. */
  @property() trial = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private view?: TrialView | 'none';

  readonly #opening = new LatestTask<TrialView | undefined>((view) => (this.view = view ?? 'none'));

  override willUpdate(changed: PropertyValues) {
    if (this.engine && (['engine', 'version', 'trial'] as const).some((name) => changed.has(name)))
      this.#opening.run(this.engine.trial(this.trial));
  }

  override render() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Opening the trial.</p>`;
    if (view === 'none')
      return html`<p role="alert">No trial of this notebook is called “${this.trial}”. <a href="#/trials">All trials</a></p>`;
    return html`
      <p class="quiet"><a href="#/trials">All trials</a>${view.invented ? ' · invented for the demonstration' : ''}</p>
      <h1>${view.title}</h1>
      <p class="ways">
        ${view.recipe ? html`<a href=${`#/recipes/${encodeURIComponent(view.recipe.id)}`}>Its recipe: ${view.recipe.title}</a>` : nothing}
        <a href=${`#/notebook/${encodeURIComponent(view.id)}`}>The note itself</a>
        <a href=${`#/notebook?new=repeat&of=${encodeURIComponent(view.id)}`}>Repeat it with one thing changed</a>
      </p>
      ${this.#skeins(view)} ${this.#facts(view)} ${this.#materials(view)} ${this.#done(view)} ${this.#lots(view)} ${this.#ties(view)}
      ${this.#fastness(view)} ${this.#others(view)}
      <section class="care" aria-label="Care">${view.cautions.map((text) => html`<p>${text}</p>`)}</section>
    `;
  }

  #skeins({ skeins }: TrialView) {
    return html`<section part="skeins">
      <h2>${skeins.length === 1 ? 'What came out: one skein' : `What came out: ${skeins.length} skeins of one pot`}</h2>
      ${
        skeins.length === 0
          ? html`<p>No skein is written down yet.</p>`
          : html`<ul class="cloths">
              ${skeins.map(
                ({ code, hex, inScreenGamut, weave, text, lab }) =>
                  html`<li>
                    <tg-swatch
                      .hex=${hex ?? ''}
                      .fibre=${weave}
                      .seed=${code}
                      .outOfGamut=${!inScreenGamut}
                      .label=${`${code}, ${text}`}
                    ></tg-swatch>
                    <strong>${code}</strong> ${text}
                    <details>
                      <summary>Numbers</summary>
                      <span class="quiet">${lab}</span>
                    </details>
                  </li>`,
              )}
            </ul>`
      }
    </section>`;
  }

  #facts({ facts }: TrialView) {
    if (facts.length === 0) return nothing;
    return html`<dl>
      ${facts.map(
        ({ label, text }) =>
          html`<dt>${label}</dt>
            <dd>${text}</dd>`,
      )}
    </dl>`;
  }

  #materials({ materials }: TrialView) {
    return html`<section part="materials">
      <h2>What went in</h2>
      ${
        materials.length === 0
          ? html`<p>What went in is not written down, so this pot cannot be compared or repeated.</p>`
          : html`<ul class="lines">
              ${materials.map(
                ({ id, title, role, amount, form, standsFor }) =>
                  html`<li>
                    <a href=${`#/notebook/${encodeURIComponent(id)}`}>${title}</a>${amount === '' ? ', no amount' : `, ${amount}`}${
                      form === '' ? '' : `, ${form}`
                    }${standsFor === '' ? nothing : html`, <strong>standing in for ${standsFor}</strong>`}
                    <span class="quiet">${role}</span>
                  </li>`,
              )}
            </ul>`
      }
    </section>`;
  }

  #done({ log, deviations }: TrialView) {
    return html`${
      log.length === 0
        ? nothing
        : html`<section>
            <h2>What was done</h2>
            <ol class="steps">
              ${log.map((line) => html`<li><span>${line}</span></li>`)}
            </ol>
          </section>`
    }${
      deviations.length === 0
        ? nothing
        : html`<section>
            <h2>Otherwise than the recipe says</h2>
            <ul class="lines">
              ${deviations.map((line) => html`<li>${line}</li>`)}
            </ul>
          </section>`
    }`;
  }

  #lots({ lots }: TrialView) {
    if (lots.length === 0) return nothing;
    return html`<section>
      <h2>Lots</h2>
      <ul class="lines">
        ${lots.map(
          ({ text, others }) =>
            html`<li>
              ${text}
              <span class="quiet"
                >${
                  others.length === 0
                    ? 'in no other pot'
                    : html`also in ${others.map(({ id }, at) => html`${at === 0 ? '' : ', '}<a href=${trialAddress(id)}>${id}</a>`)}`
                }</span
              >
            </li>`,
        )}
      </ul>
    </section>`;
  }

  #ties({ ties }: TrialView) {
    if (ties.length === 0) return nothing;
    return html`<section>
      <h2>Its kin</h2>
      <ul class="lines">
        ${ties.map(({ id, title, why }) => html`<li><a href=${trialAddress(id)}>${title}</a> <span class="quiet">${why}</span></li>`)}
      </ul>
    </section>`;
  }

  #fastness({ fastness, lightTests }: TrialView) {
    return html`<section part="fastness">
      <h2>Fastness, as tested on this pot</h2>
      ${
        fastness.length + lightTests.length === 0
          ? html`<p>
              Not tested. A light test is <a href="#/notebook?new=exposure">a note of its own</a>; a wash or rub test is a line of the log:
              <q>wash fastness: 4 (grey scale for change; ISO 105-C06)</q>.
            </p>`
          : html`<tg-fastness .rows=${fastness} .tests=${lightTests}></tg-fastness>`
      }
    </section>`;
  }

  #others({ id, others, repeatable, recipe }: TrialView) {
    if (!recipe) return nothing;
    return html`<section part="others">
      <h2>Other pots of this recipe</h2>
      <p>${repeatable}</p>
      ${
        others.length === 0
          ? html`<p>There is no other yet.</p>`
          : html`<ul class="cloths">
              ${others.map(
                (one) =>
                  html`<li>
                    <tg-swatch .hex=${one.hex} .fibre=${one.weave} .seed=${one.id} .label=${one.title}></tg-swatch>
                    <a href=${trialAddress(one.id)}>${one.title}</a>
                    <span class="quiet">${one.apart}</span>
                    <a href=${addressOf({ view: 'trials', settings: { beside: `${id},${one.id}` } })}>What differed</a>
                  </li>`,
              )}
            </ul>`
      }
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-trial': TgTrial;
  }
}
