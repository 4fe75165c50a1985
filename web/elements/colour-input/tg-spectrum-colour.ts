import { html, LitElement, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { baseStyles } from '../shared/base.styles.ts';
import { colourInputStyles } from './colour-input.styles.ts';
import { ColourPickEvent } from './colour-pick-event.ts';
import { type SampleChoice, type SpectrumFileView, spectrumFileView } from './spectrum-view.ts';

/** Findings shown at once. */
const MOST_FINDINGS = 6;

/**
 * @summary A colour out of a file of measured spectra.
 * @event {ColourPickEvent} tg-colour-pick - The reader takes a sample's colour.
 */
@customElement('tg-spectrum-colour')
export class TgSpectrumColour extends LitElement {
  static override styles = [baseStyles, colourInputStyles];

  @state() private file?: SpectrumFileView;
  @state() private source?: File;
  @state() private chosen = '';

  override render() {
    return html`<div class="row">
        <label
          >A file of measurements: ISO 28178 or CGATS text, or CSV
          <input type="file" accept=".txt,.csv,.tsv,.cgats,.it8,text/plain,text/csv" @change=${this.#open} />
        </label>
      </div>
      ${this.file ? this.#read(this.file) : nothing}`;
  }

  #read(file: SpectrumFileView) {
    const sample = file.samples.find(({ id }) => id === this.chosen) ?? file.samples[0];
    return html`${file.errors.length > 0 ? html`<div class="refused" role="alert">${this.#lines(file.errors)}</div>` : nothing}
    ${file.warnings.length > 0 ? html`<div class="hint">${this.#lines(file.warnings)}</div>` : nothing}
    ${
      sample
        ? html`<div class="row">
              <label
                >Sample
                <select @change=${(event: Event) => (this.chosen = (event.target as HTMLSelectElement).value)}>
                  ${file.samples.map(({ id, name }) => html`<option value=${id} ?selected=${id === sample.id}>${name}</option>`)}
                </select>
              </label>
            </div>
            <div class="found">
              <span class="patch" style=${`--_patch:${sample.hex}`} aria-hidden="true"></span>
              <div>
                <p>${sample.lab}${sample.inScreenGamut ? '' : '; this screen shows it duller'}</p>
                <p class="hint">${file.under}</p>
              </div>
            </div>
            <div class="row">
              <button type="button" class="press" @click=${() => this.#take(sample)}>Take this colour</button>
            </div>`
        : nothing
    }`;
  }

  #take({ id, text }: SampleChoice) {
    const spectrum = this.source && { file: this.source, sample: id };
    this.dispatchEvent(new ColourPickEvent({ text, by: 'spectrum', ...(spectrum && { spectrum }) }));
  }

  #lines(lines: readonly string[]) {
    const more = lines.length - MOST_FINDINGS;
    return html`${lines.slice(0, MOST_FINDINGS).map((line) => html`<p>${line}</p>`)}${more > 0 ? html`<p>And ${more} more.</p>` : nothing}`;
  }

  readonly #open = async (event: Event) => {
    const file = (event.target as HTMLInputElement).files?.[0];
    if (!file) return;
    this.file = spectrumFileView(await file.text());
    this.source = file;
    this.chosen = '';
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-spectrum-colour': TgSpectrumColour;
  }
}
