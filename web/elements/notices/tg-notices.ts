import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { baseStyles } from '../shared/base.styles.ts';
import { NoticeCloseEvent } from './notice-events.ts';

/** Something the reader should know that no view is about. It waits until it is put away. */
export interface Notice {
  readonly id: string;
  readonly text: string;
  /** What can be done about it, on a button. */
  readonly offer?: string;
}

const styles = css`
  :host {
    display: block;
    font: var(--tg-type-small) / var(--tg-leading-label) var(--tg-font-label);
    color: var(--tg-ink);
  }
  .notice {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-4);
    align-items: center;
    max-inline-size: 76rem;
    margin-inline: auto;
    padding: var(--tg-space-2) clamp(var(--tg-space-4), 4vw, var(--tg-space-7));
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  p {
    flex: 1 1 20rem;
    margin: 0;
  }
  button {
    min-block-size: var(--tg-touch);
  }
  @media print {
    :host {
      display: none;
    }
  }
`;

/**
 * @summary Quiet notices above the page: an import that was cut off, a new version that lies ready, a store that ended.
 * @event {NoticeCloseEvent} tg-notice-close - The reader took the offer up, or put the notice away.
 * @csspart notice - One notice.
 */
@customElement('tg-notices')
export class TgNotices extends LitElement {
  static override styles = [baseStyles, styles];

  /** What there is to say, oldest first. */
  @property({ attribute: false }) notices: readonly Notice[] = [];

  override render() {
    return html`<div role="status">
      ${repeat(
        this.notices,
        ({ id }) => id,
        ({ id, text, offer }) => html`
          <div class="notice" part="notice">
            <p>${text}</p>
            ${offer === undefined ? '' : html`<button type="button" class="plain" @click=${() => this.#close(id, true)}>${offer}</button>`}
            <button type="button" class="plain" @click=${() => this.#close(id, false)}>Put away</button>
          </div>
        `,
      )}
    </div>`;
  }

  #close(id: string, taken: boolean) {
    this.dispatchEvent(new NoticeCloseEvent(id, taken));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-notices': TgNotices;
  }
}
