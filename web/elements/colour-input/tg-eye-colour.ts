import { css, html, LitElement } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { baseStyles } from '../shared/base.styles.ts';
import { colourInputStyles } from './colour-input.styles.ts';
import { ColourPickEvent } from './colour-pick-event.ts';
import { eyeColour } from './eye-view.ts';

/**
 * @summary A colour by eye: a hue, and how deeply dyed.
 * @event {ColourPickEvent} tg-colour-pick - The reader takes the colour; it is marked as chosen by eye.
 */
@customElement('tg-eye-colour')
export class TgEyeColour extends LitElement {
  static override styles = [
    baseStyles,
    colourInputStyles,
    css`
      .sliders {
        display: grid;
        gap: var(--tg-space-3);
        flex: 1 1 16rem;
        max-inline-size: 30rem;
      }
      input[type='range'] {
        inline-size: 100%;
        min-block-size: var(--tg-touch);
        accent-color: var(--tg-ink);
      }
      .found {
        flex-wrap: wrap;
        margin: 0;
      }
    `,
  ];

  @state() private hue = 35;
  @state() private depth = 60;

  override render() {
    const { hex, hueWord, depthWord, lab, text } = eyeColour(this.hue, this.depth);
    return html`<div class="found">
        <span class="patch" style=${`--_patch:${hex}`} role="img" aria-label=${`${hueWord}, ${depthWord}`}></span>
        <div class="sliders">
          <label>
            <span>Hue: ${hueWord}</span>
            <input
              type="range"
              min="0"
              max="359"
              .value=${String(this.hue)}
              aria-valuetext=${`${hueWord}, ${this.hue}°`}
              @input=${(event: Event) => (this.hue = Number((event.target as HTMLInputElement).value))}
            />
          </label>
          <label>
            <span>Depth: ${depthWord}</span>
            <input
              type="range"
              min="0"
              max="100"
              .value=${String(this.depth)}
              aria-valuetext=${`${depthWord}, ${this.depth} per cent`}
              @input=${(event: Event) => (this.depth = Number((event.target as HTMLInputElement).value))}
            />
          </label>
        </div>
      </div>
      <p class="hint">${lab}. Chosen by eye on this screen: the answer will say so.</p>
      <div class="row">
        <button type="button" class="press" @click=${() => this.dispatchEvent(new ColourPickEvent({ text, by: 'eye' }))}>
          Take this colour
        </button>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-eye-colour': TgEyeColour;
  }
}
