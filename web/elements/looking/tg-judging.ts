import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { baseStyles } from '../shared/base.styles.ts';

/**
 * @summary Lays what it holds on the mid-grey judging surround, alone on the screen; Escape returns.
 * @slot - A swatch, a line of cloths, a palette.
 * @csspart lay - The button that lays it down.
 * @csspart surround - The grey, while it is open.
 */
@customElement('tg-judging')
export class TgJudging extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
      }
      [part='lay'],
      .back {
        font: var(--tg-type-base) / 1.3 var(--tg-font-label);
        background: none;
        border: var(--tg-line-1) solid var(--tg-edge);
        border-radius: 2px;
        padding: var(--tg-space-2) var(--tg-space-4);
        min-block-size: var(--tg-touch);
        cursor: pointer;
      }
      [part='surround'] {
        position: fixed;
        inset: 0;
        inline-size: 100%;
        max-inline-size: none;
        block-size: 100%;
        max-block-size: none;
        margin: 0;
        padding: var(--tg-space-7) var(--tg-space-5);
        border: 0;
        overflow: auto;
        background: var(--tg-judging);
        color: var(--tg-ink);
        --tg-ground: var(--tg-judging);
        --tg-surface: var(--tg-judging);
        --tg-well: var(--tg-judging);
        --tg-ink: var(--tg-ink-judging);
        --tg-ink-quiet: var(--tg-ink-judging);
        --tg-edge: var(--tg-ink-judging);
        --tg-hairline: var(--tg-ink-judging);
        --tg-focus: var(--tg-ink-judging);
      }
      [part='surround'][open] {
        display: grid;
        align-content: center;
        justify-items: center;
        gap: var(--tg-space-6);
      }
      .on {
        inline-size: 100%;
        display: grid;
        justify-items: center;
      }
      .back {
        border-color: transparent;
        text-decoration: underline;
      }
      @media print {
        [part='lay'] {
          display: none;
        }
      }
    `,
  ];

  /** What the button says. */
  @property() label = 'Lay on mid-grey, alone';

  @state() private isOpen = false;

  override updated() {
    const surround = this.renderRoot.querySelector('dialog');
    if (surround && !surround.open) surround.showModal();
  }

  override render() {
    if (!this.isOpen)
      return html`<slot></slot><button type="button" part="lay" @click=${() => (this.isOpen = true)}>${this.label}</button>`;
    return html`<dialog part="surround" aria-label="On mid-grey" @close=${this.#closed}>
      <div class="on"><slot></slot></div>
      <button type="button" class="back" @click=${this.#back}>Back (Escape)</button>
    </dialog>`;
  }

  #back() {
    this.renderRoot.querySelector('dialog')?.close();
  }

  readonly #closed = () => {
    this.isOpen = false;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('[part="lay"]')?.focus());
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-judging': TgJudging;
  }
}
