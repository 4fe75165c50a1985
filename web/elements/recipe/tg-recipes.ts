import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ScaleChoices } from '../../domain/pot/understand-amount.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { IngredientView, RecipeEntry, RecipeView } from '../../notebook/views/recipe-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { KeepAwake } from '../shared/keep-awake.ts';
import '../swatch/tg-swatch.ts';
import './tg-fresh-dry.ts';
import './tg-recipe-period.ts';
import { temperatureDrawing } from './temperature-drawing.ts';
import { styles } from './tg-recipes.styles.ts';

/** What is weighed when nobody says: one skein. Our choice. */
const ONE_SKEIN_GRAMS = 100;

/** So many skeins have room on the page of paper; the style sheet leaves the others out. */
const ON_PAPER = 9;

/**
 * @summary The recipes of the notebook, and one of them worked out for a mass of fibre, with what it gave.
 * @csspart ingredients - What is weighed.
 * @csspart steps - What is done, in order.
 * @csspart skeins - What it gave.
 * @csspart spread - How its dyeings scatter by fibre, water and person.
 * @csspart period - The place and time it is judged for.
 * @csspart foretold - Of an over-dye: predicted beside made.
 */
@customElement('tg-recipes')
export class TgRecipes extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The recipe to show; the index when absent. */
  @property() recipe?: string;
  /** The place it is judged for, by id. */
  @property() region = '';
  /** The date it is judged for, as written. */
  @property() when = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private index: readonly RecipeEntry[] = [];
  @state() private view?: RecipeView | 'none';
  /** True where staff read: amounts of tin and copper are then shown. */
  @state() private staff = false;
  /** True in the large view for wet hands. */
  @state() private large = false;
  readonly #awake = new KeepAwake(this);
  @state() private grams = ONE_SKEIN_GRAMS;
  /** What the reader settled where the recipe leaves it open. */
  @state() private choices: ScaleChoices = {};

  readonly #listing = new LatestTask<readonly RecipeEntry[]>((index) => (this.index = index));
  readonly #opening = new LatestTask<RecipeView | undefined>((view) => (this.view = view ?? 'none'));

  override willUpdate(changed: PropertyValues) {
    // Which pound one recipe meant says nothing of another.
    if (changed.has('recipe')) this.choices = {};
    const known: readonly PropertyKey[] = ['engine', 'version', 'recipe', 'grams', 'staff', 'choices'];
    if (!this.engine || !known.some((name) => changed.has(name))) return;
    if (this.recipe === undefined) this.#listing.run(this.engine.recipes());
    else this.#opening.run(this.engine.recipe(this.recipe, this.grams, this.staff ? 'staff' : 'public', this.choices));
  }

  override render() {
    if (this.recipe === undefined) return this.#index();
    if (this.view === undefined) return html`<p role="status">Working the recipe out.</p>`;
    if (this.view === 'none')
      return html`<p role="alert">No recipe of this notebook is called “${this.recipe}”. <a href="#/recipes">All recipes</a></p>`;
    return this.#page(this.view);
  }

  #index() {
    return html`<h1>Recipes</h1>
      <ul class="index">
        ${this.index.map(
          ({ id, title, dyes, fibre, hex, trials }) =>
            html`<li>
              <a href=${`#/recipes/${id}`}>
                <span class="dab" style=${hex === undefined ? '' : `--_dab:${hex}`} aria-hidden="true"></span>
                <span
                  >${title}<br /><span class="quiet"
                    >${[dyes, fibre, trials === 0 ? 'no trial yet' : trials === 1 ? '1 trial' : `${trials} trials`].filter((part) => part !== '').join(' · ')}</span
                  ></span
                >
              </a>
            </li>`,
        )}
      </ul>`;
  }

  #page(view: RecipeView) {
    return html`
      <p class="quiet way">
        <a href="#/recipes">All recipes</a> · <a href=${`#/notebook/${view.note}`}>The note itself</a> ·
        <a href=${`#/trials?of=${encodeURIComponent(view.note)}`}>Its trials</a>
      </p>
      <h1>${view.title}</h1>
      <div class="mass">
        <label
          >Fibre, weighed dry, in grams<br />
          <input type="number" min="1" max="100000" step="1" .value=${String(this.grams)} @change=${this.#weigh} />
        </label>
        <button type="button" @click=${() => globalThis.print()}>Print this recipe (key P)</button>
        <label class="on"
          ><input class="tick" type="checkbox" .checked=${this.staff} @change=${this.#staffed} /> Staff, by safety data sheet</label
        >
        <button type="button" aria-pressed=${this.large ? 'true' : 'false'} @click=${this.#enlarge}>Large, for wet hands</button>
        <a class="on" href=${`#/dye-day?recipes=${encodeURIComponent(view.id)}&grams=${this.grams}`}>Plan a dye day with it</a>
      </div>
      ${this.staff ? html`<p><strong>Shown for staff: amounts of tin and copper are never for children or the public. Follow local rules and the safety data sheet.</strong></p>` : nothing}
      ${this.large ? html`<p role="status">${this.#awake.isAwake ? 'The screen stays on.' : 'The screen may go dark.'}</p>` : nothing}
      <p>For ${view.fibreGrams} g of fibre. ${view.liquor === '' ? '' : `${view.liquor}.`}</p>
      <section part="ingredients">
        <h2>What is weighed</h2>
        <ul class="ingredients">
          ${view.ingredients.map((one) => this.#ingredient(one))}
        </ul>
      </section>
      <div class="doing">
        <section part="steps">
          <h2>What is done; time and temperature do not scale</h2>
          <ol class="steps">
            ${view.steps.map(({ text, cautions }) => html`<li><span>${text} ${cautions.map((caution) => html`<strong class="atstep">${caution}</strong>`)}</span></li>`)}
          </ol>
        </section>
        <div>${temperatureDrawing(view.curve)}</div>
        <section class="care" aria-label="Care">${view.cautions.map((text) => html`<p>${text}</p>`)}</section>
      </div>
      ${this.#links('It starts from', view.follows, 'recipes')} ${this.#links('It rests on', view.basedOn, 'notebook')}
      ${
        view.asWritten === ''
          ? nothing
          : html`<section>
              <h2>As written</h2>
              <blockquote>${view.asWritten}</blockquote>
            </section>`
      }
      ${
        view.skeins.length === 0
          ? html`<p>Nobody has dyed it in this notebook yet.</p>`
          : html`<section part="skeins">
              <h2>What it gave</h2>
              ${view.spread === '' ? nothing : html`<p>${view.spread}</p>`}
              <p class="quiet way">
                MCDM: the mean colour difference from the mean, here in ΔE00. Later baths and unusual grounds are left out.
              </p>
              <dl class="spread" part="spread">
                ${(['fibre', 'water', 'person'] as const).map((by) => {
                  const lines = view.spreadBy.filter((line) => line.by === by);
                  return lines.length === 0
                    ? nothing
                    : html`<dt>By ${by}</dt>
                        ${lines.map(({ key, says }) => html`<dd>${key}: ${says}</dd>`)}`;
                })}
              </dl>
              <p class="way">
                <a href=${view.look}
                  >${view.skeins.length === 1 ? 'Look at it closely' : 'Lay them side by side'}, in daylight, lamp and gallery</a
                >
              </p>
              <ul class="skeins">
                ${view.skeins.map(
                  ({ trial, code, hex, wide, weave, inScreenGamut, text }) =>
                    html`<li>
                      <tg-swatch
                        .hex=${hex}
                        .wide=${wide ?? ''}
                        .fibre=${weave}
                        .seed=${code}
                        .outOfGamut=${!inScreenGamut}
                        .label=${`${code}, ${text}`}
                      ></tg-swatch>
                      <a href=${`#/trials/${encodeURIComponent(trial)}`}>${code}</a> <span class="quiet">${text}</span>
                    </li>`,
                )}
              </ul>
              ${view.skeins.length > ON_PAPER ? html`<p class="paper">And ${view.skeins.length - ON_PAPER} more in the notebook.</p>` : nothing}
            </section>`
      }
      <section part="period">
        <h2>Right for its period, by which claims</h2>
        <tg-recipe-period
          .engine=${this.engine}
          .recipe=${view.id}
          .region=${this.region}
          .when=${this.when}
          .version=${this.version}
        ></tg-recipe-period>
      </section>
      ${this.#foretold(view)} ${view.source === '' ? nothing : html`<p class="quiet">Sources: ${view.source}</p>`}
    `;
  }

  #ingredient(one: IngredientView) {
    const { what, id, role, form, standsFor, asWritten, asUnderstood, asPlanned, conversions, problem, cautions, dye } = one;
    return html`<li>
      <span class="amount">${asPlanned === '' ? '—' : asPlanned}</span>
      <div>
        <a href=${`#/notebook/${id}`}>${what}</a
        >${form === '' ? nothing : `, ${form}`}${standsFor === '' ? nothing : `, standing in for ${standsFor}`}
        <span class="quiet">${role}</span><br />
        <span class="quiet">written ${asWritten === '' ? 'without an amount' : `“${asWritten}”`}; understood as ${asUnderstood}</span>
        ${problem === '' ? nothing : html`<br /><strong>${problem}</strong>`} ${this.#settled(one)}
        ${
          conversions.length + cautions.length === 0
            ? nothing
            : html`<details>
                <summary>How it was worked out${cautions.length > 0 ? ', and care' : ''}</summary>
                ${[...conversions, ...cautions].map((text) => html`<p class="quiet">${text}</p>`)}
              </details>`
        }
        ${
          dye
            ? html`<details>
                <summary>Fresh instead of dried; how far it reaches</summary>
                <tg-fresh-dry .what=${what} .grams=${dye.grams} .percent=${dye.percent} .ratios=${dye.ratios}></tg-fresh-dry>
              </details>`
            : nothing
        }
      </div>
    </li>`;
  }

  /** What the recipe leaves open and the reader has to say. */
  #settled({ id, what, unit, inParts }: IngredientView) {
    return html`${
      unit
        ? html`<p class="settled">
            <label for=${`unit-${id}`}>Which ${unit.written} is meant, for ${what}?</label>
            <select id=${`unit-${id}`} @change=${(event: Event) => this.#measured(unit.written, (event.target as HTMLSelectElement).value)}>
              <option value="" ?selected=${unit.means === ''}>nobody said</option>
              ${unit.possible.map(({ name, says }) => html`<option value=${name} ?selected=${name === unit.means}>${says}</option>`)}
            </select>
          </p>`
        : nothing
    }${
      inParts
        ? html`<p class="settled">
            <label for=${`part-${id}`}>One part of this recipe weighs, in grams</label>
            <input
              id=${`part-${id}`}
              type="number"
              min="0"
              step="0.1"
              .value=${String(this.choices.partGrams ?? '')}
              @change=${this.#parted}
            />
          </p>`
        : nothing
    }`;
  }

  #measured(written: string, name: string) {
    const { [written]: _, ...others } = this.choices.measures ?? {};
    this.choices = { ...this.choices, measures: name === '' ? others : { ...others, [written]: name } };
  }

  #parted(event: Event) {
    const grams = (event.target as HTMLInputElement).valueAsNumber;
    const { partGrams: _, ...others } = this.choices;
    this.choices = grams > 0 ? { ...others, partGrams: grams } : others;
  }

  /** Where the single dyes were tried too: what they foretell, beside what came out. */
  #foretold({ foretold }: RecipeView) {
    if (foretold.length === 0) return nothing;
    return html`<section part="foretold">
      <h2>Predicted, beside made</h2>
      <p class="quiet">Predicted by single-constant Kubelka–Munk from trials of the single dyes on the same fibre.</p>
      <ul class="foretold">
        ${foretold.map(
          ({ trial, weave, predicted, made, text }) =>
            html`<li>
              <tg-swatch
                .hex=${predicted.hex}
                .wide=${predicted.wide ?? ''}
                .fibre=${weave}
                .predicted=${true}
                .outOfGamut=${!predicted.inScreenGamut}
                .seed=${trial}
                .label=${`Predicted for ${trial}`}
              ></tg-swatch>
              <tg-swatch
                .hex=${made.hex}
                .wide=${made.wide ?? ''}
                .fibre=${weave}
                .outOfGamut=${!made.inScreenGamut}
                .seed=${trial}
                .label=${`Made: ${trial}`}
              ></tg-swatch>
              <span><a href=${`#/notebook/${trial}`}>${trial}</a> <span class="quiet">${text}</span></span>
            </li>`,
        )}
      </ul>
    </section>`;
  }

  #links(title: string, links: RecipeView['follows'], view: string) {
    if (links.length === 0) return nothing;
    return html`<p class="links">
      ${title} ${links.map(({ id, title: name }, at) => html`${at === 0 ? '' : ', '}<a href=${`#/${view}/${id}`}>${name}</a>`)}.
    </p>`;
  }

  #staffed(event: Event) {
    if (event.target instanceof HTMLInputElement) this.staff = event.target.checked;
  }

  #enlarge() {
    this.large = !this.large;
    this.toggleAttribute('large', this.large);
    this.#awake.want(this.large);
  }

  #weigh(event: Event) {
    const grams = Number((event.target as HTMLInputElement).value);
    if (grams > 0 && grams <= 100_000) this.grams = grams;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-recipes': TgRecipes;
  }
}
