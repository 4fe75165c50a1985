import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { TypedPalette } from '../../notebook/typed-palette.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import type { CompareOrProblems, ComparedSide, CompareView } from '../../notebook/views/compare-view.ts';
import { problemSentence } from '../ask/question-view.ts';
import '../cloth-line/tg-cloth-line.ts';
import { clothItem } from '../palette/palette-element-view.ts';
import { styles } from '../palette/tg-palette.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { listWord, typedWord } from '../shared/sentence-words.ts';
import { sentenceStyles } from '../shared/sentence.styles.ts';
import { CompareChangeEvent } from './compare-change-event.ts';

/**
 * @summary Two palettes above each other, and in words what came, what went and what changed.
 * @event {CompareChangeEvent} tg-compare-change - The reader compares two other palettes.
 * @csspart changes - What came, went and changed.
 */
@customElement('tg-compare')
export class TgCompare extends LitElement {
  static override styles = [sentenceStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The first palette. */
  @property({ attribute: false }) earlier: TypedPalette = { region: '', when: '' };
  /** The palette it is compared with. */
  @property({ attribute: false }) now: TypedPalette = { region: '', when: '' };
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private choices?: ChoicesView;
  @state() private result?: CompareOrProblems;

  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));
  readonly #comparing = new LatestTask<CompareOrProblems>((result) => (this.result = result));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version');
    if (anew) this.#choosing.run(this.engine.choices());
    if (anew || changed.has('earlier') || changed.has('now')) this.#comparing.run(this.engine.compare(this.earlier, this.now));
  }

  override render() {
    const { result } = this;
    return html`
      <h1>
        <span class="sentence"
          >From ${this.#words('First', this.earlier, (before) => this.#change(before, this.now))} to
          ${this.#words('Second', this.now, (now) => this.#change(this.earlier, now))}</span
        >
      </h1>
      ${result === undefined ? html`<p role="status">Judging both palettes.</p>` : nothing}
      ${result && 'problems' in result ? result.problems.map((problem) => html`<p class="problem" role="alert">${problemSentence(problem)}</p>`) : nothing}
      ${result && 'compare' in result ? this.#both(result.compare) : nothing}
    `;
  }

  #words(which: string, palette: TypedPalette, change: (palette: TypedPalette) => void) {
    const { choices } = this;
    return html`${listWord(`${which} place`, palette.region, choices?.regions, (region) => change({ ...palette, region: region ?? '' }))}
    about ${typedWord(`${which} date`, palette.when, (when) => change({ ...palette, when }))} for
    ${listWord(`${which} wearer`, palette.wearer, choices?.wearers, (wearer) => change({ ...palette, wearer }), 'anyone')}`;
  }

  #both({ before, now, changes, same }: CompareView) {
    return html`
      ${this.#side(before)} ${this.#side(now)}
      <section part="changes" aria-live="polite">
        <h2>What came, what went, what changed</h2>
        ${
          changes.length === 0
            ? html`<p>Nothing differs.</p>`
            : html`<ul>
                ${changes.map((sentence) => html`<li>${sentence}</li>`)}
              </ul>`
        }
        <p class="quiet">${same} ${same === 1 ? 'colour is' : 'colours are'} the same on both.</p>
      </section>
      <p><button type="button" @click=${() => globalThis.print()}>Print this comparison (key P)</button></p>
    `;
  }

  #side({ heading, cloths }: ComparedSide) {
    return html`<section class="line">
      <h2>${heading}</h2>
      <tg-cloth-line label=${heading} .items=${cloths.map(clothItem)}>
        <p slot="empty">The notes stand behind no colour here.</p>
      </tg-cloth-line>
    </section>`;
  }

  #change(before: TypedPalette, now: TypedPalette) {
    this.dispatchEvent(new CompareChangeEvent(before, now));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-compare': TgCompare;
  }
}
