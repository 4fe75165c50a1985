import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AnswerView } from '../../notebook/views/answer-view.ts';
import type { ClothView } from '../../notebook/views/cloth-view.ts';
import type { ClaimLine } from '../../notebook/words/claim-line.ts';
import '../swatch/tg-swatch.ts';
import { styles } from './tg-answer.styles.ts';

/** How many lines of a side are printed and shown at first; the rest is one step away. Our choice: what fits one A4. */
const FIRST_LINES = 6;
const FIRST_CLOTHS = 6;
const MOST_PREDICTED = 12;

/**
 * @summary A verdict in large words, with what speaks for it, what against, and the cloths that come near.
 * @csspart verdict - The verdict and the reason.
 * @csspart for - What speaks for it.
 * @csspart against - What speaks against it, or is missing.
 * @csspart cloths - The cloths that come near.
 */
@customElement('tg-answer')
export class TgAnswer extends LitElement {
  static override styles = styles;

  /** The answer to show. */
  @property({ attribute: false }) answer?: AnswerView;
  /** What stands over the cloths. */
  @property({ attribute: 'cloths-title' }) clothsTitle = 'Cloths that come near';
  /** When the notebook last changed, for the printed foot. */
  @property({ attribute: 'notebook-date' }) notebookDate = '';

  override render() {
    const { answer } = this;
    if (!answer) return nothing;
    const lead = answer.cloths[0] ?? answer.predicted[0] ?? answer.closest;
    return html`
      <section class="verdict" part="verdict" aria-live="polite">
        <div>
          <h2 class="word">${answer.word}</h2>
          <p class="why">${answer.why}</p>
          <p class="means">${answer.means}</p>
          <ul class="because">
            ${answer.because.slice(1).map((sentence) => html`<li>${sentence}</li>`)}
          </ul>
        </div>
        <div class="lead">${lead ? this.#swatch(lead) : nothing}</div>
      </section>
      <div class="sides">
        <section part="for" aria-labelledby="for">
          <h3 id="for">What speaks for it</h3>
          ${this.#lines(answer.speaksFor, 'Nothing in these notes reaches this place and time.')}
        </section>
        <section part="against" aria-labelledby="against">
          <h3 id="against">What speaks against it, or is missing</h3>
          ${this.#against(answer)}
        </section>
      </div>
      ${this.#plain('What the word meant', answer.meanings)} ${this.#plain('Rules beside it', answer.rules)}
      ${this.#plain('For whom, how usual, at what price', answer.forWhom)} ${this.#plain('What would change it', answer.changes)}
      <section class="block" part="cloths">${this.#cloths(answer)}</section>
      ${this.#plain('Settings that are not the usual ones', answer.settings)}
    `;
  }

  #lines(lines: readonly ClaimLine[], empty: string) {
    if (lines.length === 0) return html`<p>${empty}</p>`;
    const rest = lines.slice(FIRST_LINES);
    return html`<ul class="lines">
        ${lines.slice(0, FIRST_LINES).map((line) => this.#line(line))}
      </ul>
      ${
        rest.length === 0
          ? nothing
          : html`<details class="on-screen">
              <summary>${rest.length} more</summary>
              <ul class="lines">
                ${rest.map((line) => this.#line(line))}
              </ul>
            </details>`
      }`;
  }

  #line(line: ClaimLine) {
    return html`<li>
      <span class="says">${line.says}</span>: ${line.region}, ${line.years}
      ${line.sure === '' ? nothing : html`<span class="doubt">(${line.sure})</span>`}
      <span class="small">${line.evidence} · ${line.placeRelation} · ${line.timeRelation}</span>
      <span class="small"
        >${line.source}${line.checked === '' ? nothing : ` · ${line.checked}`} ·
        <a href=${`#/notebook/${line.note}`}>note ${line.note}</a></span
      >
    </li>`;
  }

  #against(answer: AnswerView) {
    const nothingAgainst = answer.speaksAgainst.length === 0 && answer.missing.length === 0;
    return html`${answer.speaksAgainst.length > 0 ? this.#lines(answer.speaksAgainst, '') : nothing}
    ${
      answer.missing.length > 0
        ? html`<ul class="lines">
            ${answer.missing.map((sentence) => html`<li>${sentence}</li>`)}
          </ul>`
        : nothing
    }
    ${nothingAgainst ? html`<p>Nothing in these notes speaks against it.</p>` : nothing}
    ${
      answer.nearest.length > 0
        ? html`<p class="small">The nearest records at other times</p>
            ${this.#lines(answer.nearest, '')}`
        : nothing
    }
    ${
      answer.others > 0
        ? html`<p class="small">
            ${answer.others} more ${answer.others === 1 ? 'claim speaks' : 'claims speak'} of other places or years.
          </p>`
        : nothing
    }`;
  }

  #plain(title: string, sentences: readonly string[]) {
    if (sentences.length === 0) return nothing;
    return html`<section class="block">
      <h3>${title}</h3>
      <ul class="lines">
        ${sentences.map((sentence) => html`<li>${sentence}</li>`)}
      </ul>
    </section>`;
  }

  #cloths(answer: AnswerView) {
    const { closest, nearestAttested, cloths, predicted } = answer;
    const rest = cloths.slice(FIRST_CLOTHS);
    const list = (items: readonly ClothView[]) =>
      html`<ul class="cloths">
        ${items.map((cloth) => html`<li class="cloth">${this.#cloth(cloth)}</li>`)}
      </ul>`;
    if (cloths.length === 0 && predicted.length === 0 && !closest) return nothing;
    return html`${
      cloths.length === 0
        ? nothing
        : html`<h3>${this.clothsTitle}</h3>
            ${list(cloths.slice(0, FIRST_CLOTHS))}
            ${
              rest.length === 0
                ? nothing
                : html`<details class="on-screen">
                    <summary>${rest.length} more</summary>
                    ${list(rest)}
                  </details>`
            }`
    }
    ${
      predicted.length === 0
        ? nothing
        : html`<details class="on-screen">
            <summary>
              Could be tried: ${predicted.length} predicted ${predicted.length === 1 ? 'over-dye comes' : 'over-dyes come'} near
            </summary>
            ${list(predicted.slice(0, MOST_PREDICTED))}
          </details>`
    }
    ${
      closest || nearestAttested
        ? html`<div class="sides">
            ${closest ? this.#named('The closest colour of all', closest, cloths) : nothing}
            ${nearestAttested ? this.#named(`The nearest ${nearestAttested.verdictWord.toLowerCase()} colour`, nearestAttested, cloths) : nothing}
          </div>`
        : nothing
    }`;
  }

  #named(title: string, cloth: ClothView, above: readonly ClothView[]) {
    const isAbove = above.slice(0, FIRST_CLOTHS).some(({ id }) => id === cloth.id);
    return html`<div>
      <h3>${title}</h3>
      ${isAbove ? html`<p class="again">${cloth.title}, ${cloth.verdictWord.toLowerCase()}, above.</p>` : html`<div class="cloth">${this.#cloth(cloth)}</div>`}
    </div>`;
  }

  #swatch(cloth: ClothView) {
    return html`<tg-swatch
      .hex=${cloth.hex}
      .fibre=${cloth.weave}
      .verdict=${cloth.verdict}
      .classes=${cloth.classes}
      .predicted=${cloth.predicted}
      .seed=${cloth.id}
      .outOfGamut=${!cloth.inScreenGamut}
      .label=${`${cloth.title}, ${cloth.verdictWord.toLowerCase()}`}
    ></tg-swatch>`;
  }

  #cloth(cloth: ClothView) {
    return html`${this.#swatch(cloth)}
      <div class="beside">
        <p class="name">${cloth.recipe === undefined ? cloth.title : html`<a href=${`#/notebook/${cloth.recipe}`}>${cloth.title}</a>`}</p>
        <span class="small"
          ><strong>${cloth.verdictWord}</strong> · ΔE00 ${cloth.deltaE},
          ${cloth.closeness}${cloth.onAnotherFibre ? ' · on another fibre' : ''}</span
        >
        <span class="small"
          >${cloth.fibre}${
            cloth.trial === undefined ? nothing : html` · <a href=${`#/notebook/${cloth.trial}`}>trial ${cloth.code ?? cloth.trial}</a>`
          }
          · ${cloth.samples}</span
        >
        ${cloth.standIns.map((text) => html`<span class="small">${text}</span>`)}
        <details>
          <summary>Numbers</summary>
          <span class="small">Lab ${cloth.lab} (D65, 10°)</span>
          <span class="small">${cloth.lch}</span>
          <span class="small">screen ${cloth.hex}${cloth.inScreenGamut ? '' : ', nearest the screen can show'}</span>
        </details>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-answer': TgAnswer;
  }
}
