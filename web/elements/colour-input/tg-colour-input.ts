import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ClothChoice } from '../../notebook/views/choices-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { colourInputStyles } from './colour-input.styles.ts';
import { ColourPickEvent } from './colour-pick-event.ts';
import './tg-eye-colour.ts';

/** How a colour can be given. */
type Way = 'write' | 'photo' | 'spectrum' | 'eye';
const WAYS: readonly (readonly [Way, string])[] = [
  ['write', 'Write it, or take a cloth'],
  ['photo', 'From a photo'],
  ['spectrum', 'From a spectrum'],
  ['eye', 'By eye'],
];

/** Fetched when they are first opened. */
const LATER: Partial<Record<Way, () => Promise<unknown>>> = {
  photo: () => import('./tg-photo-colour.ts'),
  spectrum: () => import('./tg-spectrum-colour.ts'),
};

/**
 * @summary Asks for a colour: written, a cloth of the notebook, from a photo, from a spectrum, or by eye.
 * @event {ColourPickEvent} tg-colour-pick - The reader chose a colour; the detail says where it comes from.
 * @csspart ways - The buttons for the ways to give it.
 * @csspart shelf - The cloths of the notebook.
 */
@customElement('tg-colour-input')
export class TgColourInput extends LitElement {
  static override styles = [
    baseStyles,
    colourInputStyles,
    css`
      [part='ways'] {
        display: flex;
        flex-wrap: wrap;
        gap: var(--tg-space-2);
      }
      .way {
        margin-block-start: var(--tg-space-4);
      }
      [part='shelf'] {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(11.5rem, 1fr));
        gap: 0 var(--tg-space-4);
        margin: var(--tg-space-4) 0 0;
        padding: 0;
        list-style: none;
        max-block-size: 19rem;
        overflow-y: auto;
      }
      [part='shelf'] button {
        display: flex;
        gap: var(--tg-space-3);
        align-items: center;
        inline-size: 100%;
        min-block-size: var(--tg-touch);
        padding: var(--tg-space-1) 0;
        border: 0;
        border-block-end: 1px solid var(--tg-hairline);
        background: none;
        font: var(--tg-type-small) / 1.3 var(--tg-font-label);
        text-align: start;
        cursor: pointer;
      }
      [part='shelf'] button:hover {
        border-block-end-color: var(--tg-ink);
      }
      [part='shelf'] button[aria-pressed='true'] {
        font-weight: var(--tg-weight-strong);
      }
      [part='shelf'] .patch {
        inline-size: 1.6rem;
        block-size: 2.1rem;
      }
    `,
  ];

  /** The colour as it stands, as text. */
  @property() value = '';
  /** Cloths of the notebook whose colour can be taken. */
  @property({ attribute: false }) cloths: readonly ClothChoice[] = [];
  /** What the field is called. */
  @property() label = 'A colour';

  @state() private way: Way = 'write';

  override render() {
    return html`<div part="ways" role="group" aria-label="How the colour is given">
        ${WAYS.map(
          ([way, words]) =>
            html`<button type="button" class="press" aria-pressed=${this.way === way ? 'true' : 'false'} @click=${() => this.#take(way)}>
              ${words}
            </button>`,
        )}
      </div>
      <div class="way">${this.#chosen()}</div>`;
  }

  #chosen() {
    switch (this.way) {
      case 'photo':
        return html`<tg-photo-colour></tg-photo-colour>`;
      case 'spectrum':
        return html`<tg-spectrum-colour></tg-spectrum-colour>`;
      case 'eye':
        return html`<tg-eye-colour></tg-eye-colour>`;
      default:
        return html`${this.#field()}${this.#shelf()}`;
    }
  }

  #field() {
    return html`<div class="row">
        <label
          >${this.label}
          <input type="text" autocomplete="off" spellcheck="false" .value=${this.value} @change=${this.#typed} />
        </label>
      </div>
      <p class="hint">
        A hex or CSS colour (lab, lch and oklch too); L*, a*, b* as 45, 45, 28, with D65/10 behind it if you know; or a period word such as
        murrey.
      </p>`;
  }

  #shelf() {
    if (this.cloths.length === 0) return nothing;
    return html`<ul part="shelf" aria-label="Cloths of the notebook">
      ${this.cloths.map(
        ({ id, title, hex }) =>
          html`<li>
            <button type="button" aria-pressed=${id === this.value ? 'true' : 'false'} @click=${() => this.#pick(id)}>
              <span class="patch" style=${`--_patch:${hex}`} aria-hidden="true"></span>${title}
            </button>
          </li>`,
      )}
    </ul>`;
  }

  #take(way: Way) {
    this.way = way;
    void LATER[way]?.();
  }

  readonly #typed = (event: Event) => this.#pick((event.target as HTMLInputElement).value.trim());

  #pick(text: string) {
    this.dispatchEvent(new ColourPickEvent({ text }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-colour-input': TgColourInput;
  }
}
