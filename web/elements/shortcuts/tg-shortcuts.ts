import { css, html, LitElement } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { baseStyles } from '../shared/base.styles.ts';
import { keepSingleKeys, singleKeysWork } from './page-choices.ts';
import { CONTROL_KEYS, SHORTCUTS } from './shortcuts.ts';

/**
 * @summary The one list of keys, in a dialog; closed, it gives the focus back to where it was.
 * @csspart list - The dialog.
 */
@customElement('tg-shortcuts')
export class TgShortcuts extends LitElement {
  static override styles = [
    baseStyles,
    css`
      dialog {
        max-inline-size: min(32rem, calc(100vw - 2rem));
        padding: var(--tg-space-5);
        border: var(--tg-line-2) solid var(--tg-ink);
        background: var(--tg-ground);
        color: var(--tg-ink);
        font: var(--tg-type-base) / 1.4 var(--tg-font-label);
      }
      h2 {
        margin: 0 0 var(--tg-space-3);
        font: 600 var(--tg-type-2) / 1.2 var(--tg-font-reading);
      }
      dl {
        display: grid;
        grid-template-columns: max-content minmax(0, 1fr);
        gap: var(--tg-space-2) var(--tg-space-5);
        margin: 0 0 var(--tg-space-4);
      }
      dd {
        margin: 0;
      }
      kbd {
        font: 700 var(--tg-type-base) / 1.4 var(--tg-font-label);
      }
      label {
        display: flex;
        gap: var(--tg-space-2);
        align-items: center;
        min-block-size: var(--tg-touch);
      }
      button {
        min-block-size: var(--tg-touch);
        padding: var(--tg-space-1) var(--tg-space-4);
        border: var(--tg-line-1) solid var(--tg-edge);
        border-radius: 2px;
        background: none;
        cursor: pointer;
      }
    `,
  ];

  @state() private keysWork = singleKeysWork();
  @query('dialog') private readonly dialog!: HTMLDialogElement;

  /** Opens the list over the page. */
  show() {
    this.keysWork = singleKeysWork();
    if (!this.dialog.open) this.dialog.showModal();
  }

  override render() {
    return html`<dialog part="list" aria-labelledby="title">
      <h2 id="title">Keys</h2>
      <dl>
        ${[...SHORTCUTS, ...CONTROL_KEYS].map(
          ({ key, words }) =>
            html`<dt><kbd>${key}</kbd></dt>
              <dd>${words}</dd>`,
        )}
      </dl>
      <label><input type="checkbox" .checked=${this.keysWork} @change=${this.#keysChosen} /> Single keys work on this machine</label>
      <button type="button" autofocus @click=${() => this.dialog.close()}>Close</button>
    </dialog>`;
  }

  #keysChosen(event: Event) {
    this.keysWork = (event.target as HTMLInputElement).checked;
    keepSingleKeys(this.keysWork);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-shortcuts': TgShortcuts;
  }
}
