import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { RecipeView } from '../../notebook/views/recipe-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';

/**
 * @summary One recipe on a card: what it gave, what is weighed for a mass of fibre, what is done, and the cautions.
 * @csspart ingredients - What is weighed.
 * @csspart steps - What is done, in order.
 * @csspart cautions - What can hurt.
 */
@customElement('tg-recipe-card')
export class TgRecipeCard extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        max-inline-size: 42rem;
        color: var(--tg-ink);
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      header {
        display: flex;
        gap: var(--tg-space-4);
        align-items: start;
        --tg-swatch-size: 4rem;
      }
      h3 {
        margin: 0;
        font: 600 var(--tg-type-1) / 1.25 var(--tg-font-reading);
      }
      ul,
      ol {
        margin: var(--tg-space-3) 0;
        padding-inline-start: 1.25rem;
      }
      li > strong {
        display: block;
        font: 700 var(--tg-type-small) / 1.45 var(--tg-font-label);
      }
      .caution {
        padding-inline-start: var(--tg-space-3);
        border-inline-start: var(--tg-line-3) solid var(--tg-ink);
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the recipe. */
  @property() recipe = '';
  /** Mass of the fibre, in grams. */
  @property({ type: Number }) grams = 100;

  @state() private view?: RecipeView | 'none';

  readonly #opening = new LatestTask<RecipeView | undefined>((view) => (this.view = view ?? 'none'));

  override willUpdate(changed: PropertyValues<this>) {
    if (this.engine && (['engine', 'recipe', 'grams'] as const).some((name) => changed.has(name)))
      this.#opening.run(this.engine.recipe(this.recipe, this.grams));
  }

  override render() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Working the recipe out.</p>`;
    if (view === 'none') return html`<p role="alert">No recipe of this notebook is called “${this.recipe}”.</p>`;
    const [skein] = view.skeins;
    return html`
      <header>
        ${skein ? html`<tg-swatch .hex=${skein.hex} .fibre=${skein.weave} .seed=${skein.code} .label=${view.title}></tg-swatch>` : nothing}
        <div>
          <h3>${view.title}</h3>
          <p>For ${view.fibreGrams} g of fibre${view.liquor === '' ? '' : `; liquor ${view.liquor}`}.</p>
        </div>
      </header>
      <ul part="ingredients">
        ${view.ingredients.map(
          ({ what, asWritten, asPlanned, problem }) =>
            html`<li>${what}: ${[asWritten, asPlanned].filter((part) => part !== '').join(', which is ')} ${problem}</li>`,
        )}
      </ul>
      ${
        view.steps.length === 0
          ? nothing
          : html`<ol part="steps">
              ${view.steps.map(({ text, cautions }) => html`<li>${text} ${cautions.map((caution) => html`<strong>${caution}</strong>`)}</li>`)}
            </ol>`
      }
      <div part="cautions">${view.cautions.map((caution) => html`<p class="caution">${caution}</p>`)}</div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-recipe-card': TgRecipeCard;
  }
}
