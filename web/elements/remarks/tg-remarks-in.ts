import { css, html, LitElement } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { readInWords, refusedWords, remarkFailureWords } from '../../notebook/words/remark-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { type RemarksReadIn, RemarksReadInRequestEvent } from './remark-events.ts';

/**
 * @summary Reads a reviewer's file of remarks in, and says how a reviewer gets to make them.
 * @event {RemarksReadInRequestEvent} tg-remarks-read-in-request - The file shall be merged in; the answer is what it brought.
 */
@customElement('tg-remarks-in')
export class TgRemarksIn extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        max-inline-size: var(--tg-measure);
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      h2 {
        margin: var(--tg-space-5) 0 var(--tg-space-2);
        font: 600 var(--tg-type-2) / 1.2 var(--tg-font-reading);
      }
      p {
        margin: 0 0 var(--tg-space-2);
      }
      label {
        display: inline-flex;
        flex-wrap: wrap;
        gap: var(--tg-space-2);
        align-items: center;
        min-block-size: var(--tg-touch);
        max-inline-size: 100%;
        font-family: var(--tg-font-label);
      }
      input {
        min-inline-size: 0;
        max-inline-size: 100%;
        font: inherit;
        color: inherit;
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
    `,
  ];

  @state() private outcome = '';

  override render() {
    return html`
      <h2>Somebody to read it over</h2>
      <p>
        Send a zip of the notebook, or a copy of its folder. A reviewer opens it <a href="?review#/notebook">to read only</a>, writes
        remarks under the notes, and sends back one small file.
      </p>
      <label>A file of remarks <input type="file" accept=".json,application/json" @change=${this.#read} /></label>
      <p role="status">${this.outcome}</p>
    `;
  }

  async #read(event: Event) {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    const buffer = await file?.arrayBuffer().catch(() => undefined);
    // Else the same file, chosen again, would be no change.
    input.value = '';
    if (!buffer) return;
    const request = new RemarksReadInRequestEvent(new Uint8Array(buffer));
    this.dispatchEvent(request);
    const answer = await request.answer;
    if (answer) this.outcome = wordsOf(answer);
  }
}

function wordsOf(answer: RemarksReadIn): string {
  if (answer.is === 'merged') return readInWords(answer.added, answer.known, answer.unread);
  return answer.is === 'refused' ? refusedWords[answer.why] : remarkFailureWords[answer.why];
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-remarks-in': TgRemarksIn;
  }
}
