import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { TypedQuestion } from '../../notebook/pose-question.ts';
import type { AnswerOrProblems, AnswerView } from '../../notebook/views/answer-view.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { viewLinkStyles } from '../shared/view-link.styles.ts';
import '../answer/tg-answer.ts';
import './tg-question.ts';

/**
 * @summary Asks whether a colour or dyestuff is plausible at a place and date, and shows the answer.
 * @csspart print - The button that prints the answer.
 * @csspart ways - Where else the same place and date can be asked about.
 */
@customElement('tg-ask')
export class TgAsk extends LitElement {
  static override styles = [
    baseStyles,
    viewLinkStyles,
    css`
      :host {
        display: block;
        color: var(--tg-ink);
      }
      button {
        font: var(--tg-type-base) / 1.3 var(--tg-font-label);
        padding: var(--tg-space-2) var(--tg-space-4);
        min-block-size: var(--tg-touch);
        cursor: pointer;
      }
      .unfaded {
        margin: var(--tg-space-5) 0 0;
        font: 600 var(--tg-type-2) / 1.25 var(--tg-font-reading);
      }
      .ways {
        margin: var(--tg-space-6) 0 0;
        font: var(--tg-type-base) / 1.5 var(--tg-font-label);
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
      @media print {
        button,
        .ways {
          display: none;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The question; an address holds it. */
  @property({ attribute: false }) question: TypedQuestion = { region: '', when: '' };
  /** Grows when the notebook changes, so that the answer is found anew. */
  @property({ type: Number }) version = 0;

  @state() private choices?: ChoicesView;
  @state() private result?: AnswerOrProblems;
  /** The last answer stays on the table while a new one is found or a word is being mended. */
  @state() private shown?: AnswerView;

  readonly #answering = new LatestTask<AnswerOrProblems>((result) => {
    this.result = result;
    if ('answer' in result) this.shown = result.answer;
  });
  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    if (changed.has('engine') || changed.has('version')) this.#choosing.run(this.engine.choices());
    if (changed.has('engine') || changed.has('version') || changed.has('question')) this.#answering.run(this.engine.answer(this.question));
  }

  override render() {
    const problems = this.result && 'problems' in this.result ? this.result.problems : [];
    return html`
      <tg-question
        .question=${this.question}
        .choices=${this.choices}
        .reading=${problems.length === 0 ? (this.shown?.reading ?? '') : ''}
        .year=${this.shown?.year}
        .askedHex=${problems.length === 0 ? (this.shown?.askedHex ?? '') : ''}
        .problems=${problems}
      ></tg-question>
      ${
        this.shown && problems.length === 0
          ? html`${this.#asFound()}<tg-answer .answer=${this.shown}></tg-answer>
              <button type="button" part="print" @click=${() => globalThis.print()}>Print this answer on one page (key P)</button>`
          : nothing
      }
      <p part="ways" class="ways">${this.#ways()}</p>
    `;
  }

  /** Other questions of the same place and date. */
  #ways() {
    const { region, when, fibre = '' } = this.question;
    const settings = [
      ['region', region],
      ['when', when],
      ['fibre', fibre],
    ].map(([key, value = '']) => `${key}=${encodeURIComponent(value)}`);
    return html`Have you a laboratory’s report instead of a colour?
      <a href=${`#/ask/laboratory?${settings.join('&')}`}>Ask what dyed the thread</a>`;
  }

  /** An old cloth's colour is asked first as what it may have been; the answer below takes it as it stands. */
  #asFound() {
    if (this.question.asFound !== true || this.question.colour === undefined || this.question.dye !== undefined) return nothing;
    void import('../as-found/tg-as-found.ts');
    return html`<tg-as-found .engine=${this.engine} .question=${this.question} .version=${this.version}></tg-as-found>
      <h2 class="unfaded">And if nothing has faded</h2>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-ask': TgAsk;
  }
}
