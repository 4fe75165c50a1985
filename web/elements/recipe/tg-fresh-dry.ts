import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type FreshDryRatio, freshOf, type GramRange } from '../../domain/pot/fresh-dry.ts';
import { fibreDyedBy } from '../../domain/pot/yield.ts';
import { quantityText } from '../../notebook/words/pot-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { fieldStyles } from '../write/field.styles.ts';

interface Range {
  readonly from: number;
  readonly to: number;
}

/**
 * @summary A dyestuff weighed dry, reckoned as fresh, and how far what is in hand reaches; the ratio is the reader's to change.
 */
@customElement('tg-fresh-dry')
export class TgFreshDry extends LitElement {
  static override styles = [
    baseStyles,
    fieldStyles,
    css`
      :host {
        display: block;
        margin-block: var(--tg-space-2) var(--tg-space-3);
      }
      fieldset {
        display: flex;
        flex-wrap: wrap;
        gap: var(--tg-space-2) var(--tg-space-3);
        align-items: end;
        min-inline-size: 0;
        margin: 0 0 var(--tg-space-3);
        padding: 0;
        border: 0;
      }
      .field {
        flex: 0 0 7rem;
      }
      .field.wide {
        flex: 1 1 16rem;
      }
      output {
        flex: 1 1 100%;
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
    `,
  ];

  /** The dyestuff's name. */
  @property() what = '';
  /** What is to be weighed, dry, g. */
  @property({ attribute: false }) grams: Range = { from: 0, to: 0 };
  /** Per cent of the weight of fibre. */
  @property({ attribute: false }) percent: Range = { from: 0, to: 0 };
  /** Figures in print to start from. */
  @property({ attribute: false }) ratios: readonly FreshDryRatio[] = [];

  @state() private ratio?: Range;
  @state() private share?: Range;
  @state() private inHand = 0;

  override render() {
    const { from, to } = this.ratio ?? this.ratios[0] ?? { from: 1, to: 1 };
    const share = this.share ?? this.percent;
    const given = this.ratio !== undefined || this.ratios.length > 0;
    return html`
      <fieldset>
        <legend class="label">Fresh in the place of dried</legend>
        ${
          this.ratios.length === 0
            ? nothing
            : html`<div class="field wide">
                <label for="figure">Figure to start from</label>
                <select id="figure" @change=${this.#figure}>
                  ${this.ratios.map((one, nth) => html`<option value=${nth}>${one.from === one.to ? one.from : `${one.from}–${one.to}`} : 1, ${one.claims === 'mass' ? 'by mass' : 'by colour given'} (${one.source})</option>`)}
                </select>
              </div>`
        }
        ${this.#bound('fresh-from', 'At least, to 1', from, (value) => (this.ratio = { from: value, to: Math.max(value, to) }))}
        ${this.#bound('fresh-to', 'At most, to 1', to, (value) => (this.ratio = { from: Math.min(from, value), to: value }))}
        <output>${given ? this.#fresh({ from, to }) : 'No figure for it here: write your own ratio of fresh to dried.'}</output>
      </fieldset>
      <fieldset>
        <legend class="label">How far what is in hand reaches</legend>
        ${this.#bound('in-hand', 'Dried, g', this.inHand, (value) => (this.inHand = value))}
        ${this.#bound('percent-from', '% of fibre, from', share.from, (value) => (this.share = { from: value, to: Math.max(value, share.to) }))}
        ${this.#bound('percent-to', 'to', share.to, (value) => (this.share = { from: Math.min(share.from, value), to: value }))}
        <output>${this.inHand > 0 ? this.#reach(share) : ''}</output>
      </fieldset>
    `;
  }

  #bound(id: string, label: string, value: number, take: (value: number) => void) {
    return html`<div class="field">
      <label for=${id}>${label}</label>
      <input
        id=${id}
        type="number"
        min="0"
        step="0.1"
        .value=${value === 0 ? '' : String(value)}
        @change=${(event: Event) => {
          const typed = (event.target as HTMLInputElement).valueAsNumber;
          if (typed > 0) take(typed);
        }}
      />
    </div>`;
  }

  #fresh(ratio: Range): string {
    const [least, most] = [freshOf(this.grams.from, ratio), freshOf(this.grams.to, ratio)];
    if (!least || !most) return 'Fresh weighs at least as much as dried: write a ratio of 1 or more.';
    return `${this.what}: ${inGrams({ from: least.from, to: most.to })} fresh for ${inGrams(this.grams)} dried. It depends on plant, season and grower: dry a weighed handful of your own.`;
  }

  #reach(share: Range): string {
    const fibre = fibreDyedBy(this.inHand, share);
    return fibre
      ? `${inGrams({ from: this.inHand, to: this.inHand })} dyes ${inGrams(fibre)} of fibre.`
      : 'Write a per cent above nothing.';
  }

  #figure(event: Event) {
    const chosen = this.ratios[Number((event.target as HTMLSelectElement).value)];
    if (chosen) this.ratio = { from: chosen.from, to: chosen.to };
  }
}

const inGrams = ({ from, to }: GramRange): string => quantityText({ from, to, unit: 'g' });

declare global {
  interface HTMLElementTagNameMap {
    'tg-fresh-dry': TgFreshDry;
  }
}
