import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { LitColour, TypedLightDose } from '../../notebook/views/after-light-view.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import { lightNames, type LookedCloth, type LookingView, MOST_LOOKED_AT } from '../../notebook/views/looking-view.ts';
import type { LookedLight } from '../../notebook/words/looking-words.ts';
import type { ColourPickEvent } from '../colour-input/colour-pick-event.ts';
import '../colour-input/tg-colour-input.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { OnPaper } from '../shared/on-paper.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';
import { LookingChangeEvent } from './looking-change-event.ts';
import { lookingStyles } from './looking.styles.ts';
import './tg-judging.ts';

/** Fastness a reader may take for a dye without a published grade: blue wool classes. */
const ASSUMED = [
  ['fugitive, blue wool 1 to 2', { from: 1, to: 2 }],
  ['moderate, blue wool 3 to 4', { from: 3, to: 4 }],
  ['fair, blue wool 5 to 6', { from: 5, to: 6 }],
  ['fast, blue wool 7 to 8', { from: 7, to: 8 }],
] as const;

/**
 * @summary Cloths side by side in daylight, by the lamp and in the gallery, their difference in a sentence, and what light leaves of them.
 * @event {LookingChangeEvent} tg-looking-change - The reader lays other cloths side by side.
 * @csspart side - The cloths beside each other.
 * @csspart joined - Two bare colours edge to edge.
 * @csspart difference - The difference, in sentences.
 */
@customElement('tg-looking')
export class TgLooking extends LitElement {
  static override styles = [baseStyles, lookingStyles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** What is laid side by side: cloths of a palette, recipes, trials, samples, or colours as text. */
  @property({ attribute: false }) ids: readonly string[] = [];
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private light: LookedLight = 'daylight';
  @state() private dose: TypedLightDose = { megaluxHours: 0, uv: 'removed' };
  @state() private view?: LookingView;
  @state() private choices?: ChoicesView;
  /** Which two of more are compared, by their place. */
  @state() private two: readonly [number, number] = [0, 1];

  readonly #paper = new OnPaper(this, () => this.performUpdate());
  readonly #looking = new LatestTask<LookingView>((view) => (this.view = view));
  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));

  override willUpdate(changed: PropertyValues) {
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version');
    if (anew) this.#choosing.run(this.engine.choices());
    if (changed.has('ids')) this.two = [0, 1];
    if (anew || changed.has('ids') || changed.has('dose')) this.#looking.run(this.engine.looking(this.ids, this.dose));
  }

  override render() {
    const { view } = this;
    if (!view) return html`<p role="status">Laying the cloths out.</p>`;
    return html`<h1>${view.cloths.length > 1 ? 'This cloth and that cloth' : 'This cloth'}</h1>
      ${this.#lights()}
      <tg-judging>
        <div part="side">${view.cloths.map((cloth) => this.#swatch(cloth))}</div>
      </tg-judging>
      ${view.cloths.length > 1 ? this.#difference(view) : html`<p class="quiet">Lay another beside it, and their difference is said here.</p>`}
      ${view.unknown.map((id) => html`<p role="alert">This notebook has no cloth or colour “${id}”.</p>`)} ${this.#dosing()}
      <ul class="cloths">
        ${view.cloths.map((cloth) => this.#cloth(cloth))}
      </ul>
      ${this.#more(view)}`;
  }

  #lights() {
    return html`<div class="lights" role="group" aria-label="Light">
      ${lightNames.map(
        ({ light, exact }) =>
          html`<button
            type="button"
            class="press"
            aria-pressed=${light === this.light ? 'true' : 'false'}
            title=${exact}
            @click=${() => (this.light = light)}
          >
            ${light}
          </button>`,
      )}
    </div>`;
  }

  #swatch(cloth: LookedCloth) {
    const { hex, inScreenGamut, wide } = cloth.lights[this.light];
    return html`<tg-swatch
      .hex=${hex}
      .wide=${wide}
      .fibre=${cloth.weave}
      .predicted=${cloth.predicted}
      .outOfGamut=${!inScreenGamut}
      .seed=${cloth.id}
      .label=${`${cloth.title}, ${this.light}`}
    ></tg-swatch>`;
  }

  #difference(view: LookingView) {
    const [a, b] = this.two;
    const [one, other] = [view.cloths[a], view.cloths[b]];
    if (!one || !other) return nothing;
    const pair = view.pairs.find((found) => found.one === one.id && found.other === other.id);
    const patch = (cloth: LookedCloth): string => `--_patch:${cloth.lights[this.light].hex};--_wide:${cloth.lights[this.light].wide}`;
    return html`${view.cloths.length > 2 ? this.#whichTwo(view) : nothing}
      <div part="joined" role="img" aria-label=${`${one.title} and ${other.title}, edge to edge`}>
        <span class="patch" style=${patch(one)}></span><span class="patch" style=${patch(other)}></span>
      </div>
      <div part="difference" aria-live="polite">${(pair?.says[this.light] ?? []).map((sentence) => html`<p>${sentence}</p>`)}</div>`;
  }

  #whichTwo(view: LookingView) {
    const list = (label: string, chosen: number, take: (at: number) => readonly [number, number]) =>
      html`<label
        >${label}
        <select @change=${(event: Event) => (this.two = inOrder(take(Number((event.target as HTMLSelectElement).value))))}>
          ${view.cloths.map(({ title }, at) => html`<option value=${at} ?selected=${at === chosen}>${title}</option>`)}
        </select>
      </label>`;
    return html`<div class="dose">
      ${list('This cloth', this.two[0], (at) => [at, this.two[1]])} ${list('That cloth', this.two[1], (at) => [this.two[0], at])}
    </div>`;
  }

  #dosing() {
    return html`<div class="dose" role="group" aria-label="What light leaves">
      <label
        >After light, Mlx·h
        <input
          type="number"
          min="0"
          max="1000"
          step="0.1"
          .value=${String(this.dose.megaluxHours)}
          @change=${(event: Event) => (this.dose = { ...this.dose, megaluxHours: held((event.target as HTMLInputElement).value) })}
        />
      </label>
      <label
        >The light
        <select
          @change=${(event: Event) =>
            (this.dose = { ...this.dose, uv: (event.target as HTMLSelectElement).value === 'rich' ? 'rich' : 'removed' })}
        >
          <option value="removed" ?selected=${this.dose.uv === 'removed'}>without ultraviolet</option>
          <option value="rich" ?selected=${this.dose.uv === 'rich'}>daylight through glass</option>
        </select>
      </label>
      <label
        >Where the notes give no fastness, take
        <select @change=${(event: Event) => this.#assume((event.target as HTMLSelectElement).value)}>
          <option value="">nothing</option>
          ${ASSUMED.map(([words], at) => html`<option value=${at}>${words}</option>`)}
        </select>
      </label>
      <p class="quiet">A year at 50 lux, eight hours a day, is 0.15 Mlx·h.</p>
    </div>`;
  }

  #cloth(cloth: LookedCloth) {
    const at = this.view?.cloths.indexOf(cloth) ?? 0;
    const name = (this.view?.cloths.length ?? 0) === 2 ? ['This cloth: ', 'That cloth: '][at] : '';
    const lit = cloth.lights[this.light];
    return html`<li>
      <h2>${name}${cloth.note === undefined ? cloth.title : html`<a href=${`#/notebook/${cloth.note}`}>${cloth.title}</a>`}</h2>
      <p class="quiet">${cloth.detail}</p>
      ${
        lit.inScreenGamut
          ? nothing
          : html`<p>
              Outside the screen’s colours: an ordinary screen shows it
              duller${lit.inWideGamut ? ', a wide one as it is' : ', a wide one a little less so'}.
            </p>`
      }
      <details ?open=${this.#paper.value}>
        <summary>Numbers</summary>
        <dl>
          ${lightNames.map(
            ({ light, exact }) =>
              html`<dt>${light}</dt>
                <dd>
                  Lab ${cloth.lights[light].lab}<br />${cloth.lights[light].lch}<br />${exact}, 10°; screen ${cloth.lights[light].hex}
                </dd>`,
          )}
        </dl>
      </details>
      ${cloth.after ? this.#after(cloth.after) : nothing}
      <button type="button" class="plain" @click=${() => this.#lay(this.ids.filter((id) => id !== cloth.id))}>
        Take ${cloth.title} away
      </button>
    </li>`;
  }

  #after({ says, range }: NonNullable<LookedCloth['after']>) {
    const figure = (words: string, { hex, wide, grade }: LitColour) =>
      html`<figure>
        <span class="patch" style=${`--_patch:${hex};--_wide:${wide ?? hex}`}></span>
        <figcaption>${words}: ${grade}</figcaption>
      </figure>`;
    return html`${range ? html`<div class="range">${figure('least faded', range.best)}${figure('most faded', range.worst)}</div>` : nothing}
    ${says.map((sentence) => html`<p class="quiet">${sentence}</p>`)}`;
  }

  #more({ cloths }: LookingView) {
    if (cloths.length >= MOST_LOOKED_AT) return nothing;
    return html`<details class="more" ?open=${cloths.length < 2}>
      <summary>Lay another beside ${cloths.length > 1 ? 'them' : 'it'}</summary>
      <tg-colour-input
        label="A colour, or a cloth by its id"
        .cloths=${this.choices?.cloths ?? []}
        @tg-colour-pick=${({ detail: { text } }: ColourPickEvent) => {
          if (text !== '') this.#lay([...this.ids, text]);
        }}
      ></tg-colour-input>
    </details>`;
  }

  #assume(value: string) {
    const { assumed: _, ...dose } = this.dose;
    const range = value === '' ? undefined : ASSUMED[Number(value)]?.[1];
    this.dose = { ...dose, ...(range && { assumed: range }) };
  }

  #lay(ids: readonly string[]) {
    this.ids = ids;
    this.dispatchEvent(new LookingChangeEvent(ids));
  }
}

const inOrder = ([a, b]: readonly [number, number]): readonly [number, number] => (a <= b ? [a, b] : [b, a]);
const held = (text: string): number => Math.min(1000, Math.max(0, Number(text) || 0));

declare global {
  interface HTMLElementTagNameMap {
    'tg-looking': TgLooking;
  }
}
