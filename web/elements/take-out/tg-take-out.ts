import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { takeOutFailureWords } from '../../notebook/words/take-out-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { saveFile } from './save-file.ts';
import { TakeOutRequestEvent } from './take-out-events.ts';

/**
 * @summary A copy to keep elsewhere: the whole notebook as a zip, or one file as it is.
 * @event {TakeOutRequestEvent} tg-take-out-request - The reader wants the copy; the answer is a file.
 */
@customElement('tg-take-out')
export class TgTakeOut extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font-family: var(--tg-font-label);
      }
      button:not(.plain) {
        min-block-size: var(--tg-touch);
        padding: var(--tg-space-1) var(--tg-space-4);
        font: 600 var(--tg-type-base) / 1.3 var(--tg-font-label);
        cursor: pointer;
      }
      .plain {
        min-block-size: var(--tg-touch);
      }
      p {
        margin-block: var(--tg-space-2) 0;
      }
      .plain + p {
        margin-block: 0;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  /** One file's path; the whole notebook without it. */
  @property() path?: string;
  /** Drawn as one of a row of links. */
  @property({ type: Boolean }) plain = false;

  @state() private isBusy = false;
  @state() private outcome = '';

  override render() {
    return html`
      <button type="button" class=${this.plain ? 'plain' : ''} ?disabled=${this.isBusy} @click=${this.#take}>
        ${this.path === undefined ? 'Export the whole notebook as a zip' : 'Export this file'}
      </button>
      <p role="status">${this.isBusy ? 'Packing.' : this.outcome}</p>
    `;
  }

  async #take() {
    const wish = new TakeOutRequestEvent(this.path === undefined ? { what: 'notebook' } : { what: 'file', path: this.path });
    this.isBusy = true;
    this.dispatchEvent(wish);
    const taken = await wish.answer;
    this.isBusy = false;
    if (!taken) return;
    if (taken.ok) saveFile(taken.value.name, taken.value.file);
    this.outcome = taken.ok ? `${taken.value.name} went to your downloads.` : takeOutFailureWords[taken.error];
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-take-out': TgTakeOut;
  }
}
