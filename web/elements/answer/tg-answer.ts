import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AnswerView } from '../../notebook/views/answer-view.ts';
import type { ClothView } from '../../notebook/views/cloth-view.ts';
import { lookAddress } from '../../notebook/looking-address.ts';
import type { ClaimLine } from '../../notebook/words/claim-line.ts';
import '../swatch/tg-swatch.ts';
import { OnPaper } from '../shared/on-paper.ts';
import { viewLinkStyles } from '../shared/view-link.styles.ts';
import { keysShown, ON_SCREEN, paperPlan, type Shown } from './paper-plan.ts';
import { styles } from './tg-answer.styles.ts';

/** Predictions are many; more than these help nobody. */
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
  static override styles = [viewLinkStyles, styles];

  /** The answer to show. */
  @property({ attribute: false }) answer?: AnswerView;
  /** What stands over the cloths. */
  @property({ attribute: 'cloths-title' }) clothsTitle = 'Cloths that come near';
  readonly #paper = new OnPaper(this, () => this.performUpdate());

  override render() {
    const { answer } = this;
    if (!answer) return nothing;
    const shown = this.#paper.value ? paperPlan(answer) : ON_SCREEN;
    const lead = answer.cloths[0] ?? answer.predicted[0] ?? answer.closest;
    const reasons = answer.because.slice(1);
    return html`
      <section class="verdict" part="verdict" aria-live="polite">
        <div class="head">
          <h2 class="word">${answer.word}</h2>
          <p class="why">${answer.why}</p>
        </div>
        <div class="lead">${lead ? this.#swatch(lead) : nothing}</div>
        <div class="reasons">
          <p class="means">${answer.means}</p>
          <ul class="because">
            ${reasons.slice(0, shown.because).map((sentence) => html`<li>${sentence}</li>`)}
          </ul>
          ${this.#more(reasons.length - shown.because)}
        </div>
      </section>
      <div class="sides">
        <section part="for" aria-labelledby="for">
          <h3 id="for">What speaks for it</h3>
          ${answer.speaksFor.length === 0 ? html`<p>${nothingFor(answer)}</p>` : this.#claims(answer.speaksFor, shown.speaksFor)}
        </section>
        <section part="against" aria-labelledby="against">
          <h3 id="against">What speaks against it, or is missing</h3>
          ${this.#against(answer, shown)}
        </section>
      </div>
      <div class="sides besides">
        ${this.#plain('What the word meant', answer.meanings, shown.meanings)} ${this.#plain('Rules beside it', answer.rules, shown.rules)}
        ${this.#plain('For whom, how usual, at what price', answer.forWhom, shown.forWhom)}
        ${this.#plain('What would change it', answer.changes, shown.changes)}
      </div>
      ${this.#cloths(answer, shown)} ${this.#plain('Settings that are not the usual ones', answer.settings, Infinity)}
      ${this.#sources(answer, shown)}
    `;
  }

  /** What is left out: opened on a screen, counted on paper. */
  #more(count: number, rest?: () => unknown) {
    if (count <= 0) return nothing;
    if (this.#paper.value || !rest) return html`<p class="small">${count} more in the notebook.</p>`;
    return html`<details>
      <summary>${count} more</summary>
      ${rest()}
    </details>`;
  }

  #claims(lines: readonly ClaimLine[], first: number) {
    const list = (some: readonly ClaimLine[]) =>
      html`<ul class="lines">
        ${some.map((line) => this.#line(line))}
      </ul>`;
    return html`${first > 0 ? list(lines.slice(0, first)) : nothing} ${this.#more(lines.length - first, () => list(lines.slice(first)))}`;
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

  #against(answer: AnswerView, shown: Shown) {
    const { speaksAgainst, missing, nearest, others } = answer;
    return html`${speaksAgainst.length > 0 ? this.#claims(speaksAgainst, shown.speaksAgainst) : nothing}
    ${missing.length > 0 ? this.#sentences(missing, shown.missing) : nothing}
    ${speaksAgainst.length + missing.length === 0 ? html`<p>${nothingAgainst(answer)}</p>` : nothing}
    ${
      nearest.length > 0
        ? html`<p class="small apart">The nearest records at other times</p>
            ${this.#claims(nearest, shown.nearest)}`
        : nothing
    }
    ${
      others > 0
        ? html`<p class="small apart">${others} more ${others === 1 ? 'claim speaks' : 'claims speak'} of other places or years.</p>`
        : nothing
    }`;
  }

  #sentences(sentences: readonly string[], first: number) {
    const list = (some: readonly string[]) =>
      html`<ul class="lines">
        ${some.map((sentence) => html`<li>${sentence}</li>`)}
      </ul>`;
    return html`${list(sentences.slice(0, first))} ${this.#more(sentences.length - first, () => list(sentences.slice(first)))}`;
  }

  #plain(title: string, sentences: readonly string[], first: number) {
    if (sentences.length === 0 || first === 0) return nothing;
    return html`<section class="block">
      <h3>${title}</h3>
      ${this.#sentences(sentences, first)}
    </section>`;
  }

  #sources(answer: AnswerView, shown: Shown) {
    const keys = keysShown(answer, shown);
    const sources = this.#paper.value ? answer.sources.filter(({ key }) => keys.has(key)) : answer.sources;
    if (sources.length === 0) return nothing;
    const list = html`<ul class="sources">
      ${sources.map(({ key, text }) => html`<li><strong>${key}</strong>: ${text}</li>`)}
    </ul>`;
    if (this.#paper.value) {
      return html`<section class="block">
        <h3>Sources</h3>
        ${list}
      </section>`;
    }
    return html`<details class="block">
      <summary>Sources of these claims in full (${sources.length})</summary>
      ${list}
    </details>`;
  }

  #cloths(answer: AnswerView, shown: Shown) {
    const { closest, nearestAttested, cloths, predicted } = answer;
    const list = (items: readonly ClothView[]) =>
      html`<ul class="cloths">
        ${items.map((cloth) => html`<li class="cloth">${this.#cloth(cloth)}</li>`)}
      </ul>`;
    const near = cloths.slice(0, shown.cloths);
    if (cloths.length === 0 && predicted.length === 0 && !closest) return nothing;
    return html`<section class="block" part="cloths">
      ${
        near.length === 0
          ? nothing
          : html`<h3>${this.clothsTitle}</h3>
              ${list(near)} ${this.#more(cloths.length - near.length, () => list(cloths.slice(near.length)))}`
      }
      ${
        predicted.length === 0 || this.#paper.value
          ? nothing
          : html`<details>
              <summary>
                Could be tried: ${predicted.length} predicted ${predicted.length === 1 ? 'over-dye comes' : 'over-dyes come'} near
              </summary>
              ${list(predicted.slice(0, MOST_PREDICTED))}
            </details>`
      }
      ${
        shown.named > 0 && (closest || nearestAttested)
          ? html`<div class="sides">
              ${closest ? this.#named('The closest colour of all', closest, near) : nothing}
              ${nearestAttested ? this.#named(`The nearest ${nearestAttested.verdictWord.toLowerCase()} colour`, nearestAttested, near) : nothing}
            </div>`
          : nothing
      }
    </section>`;
  }

  #named(title: string, cloth: ClothView, above: readonly ClothView[]) {
    const isAbove = above.some(({ id }) => id === cloth.id);
    return html`<div>
      <h3>${title}</h3>
      ${isAbove ? html`<p class="again">${cloth.title}, ${cloth.verdictWord.toLowerCase()}, above.</p>` : html`<div class="cloth">${this.#cloth(cloth)}</div>`}
    </div>`;
  }

  #swatch(cloth: ClothView) {
    return html`<tg-swatch
      .hex=${cloth.hex}
      .wide=${cloth.wide ?? ''}
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
        ${cloth.orders === undefined ? nothing : html`<span class="small">${cloth.orders}</span>`}
        ${cloth.spread === undefined ? nothing : html`<span class="small">Predicted, ${cloth.spread}</span>`}
        ${cloth.standIns.map((text) => html`<span class="small">${text}</span>`)}
        ${this.#paper.value ? html`<span class="small">Lab ${cloth.lab} (D65, 10°)</span>` : html`${this.#look(cloth)}${this.#numbers(cloth)}`}
      </div>`;
  }

  #look({ look, title }: ClothView) {
    const asked = this.answer?.askedLook;
    const words = asked === undefined ? 'Look at it closely' : 'Lay it beside what was asked';
    return html`<a class="small" href=${lookAddress(asked === undefined ? [look] : [asked, look])} aria-label=${`${words}: ${title}`}
      >${words}</a
    >`;
  }

  #numbers(cloth: ClothView) {
    return html`<details>
      <summary>Numbers</summary>
      <span class="small">Lab ${cloth.lab} (D65, 10°)</span>
      <span class="small">${cloth.lch}</span>
      <span class="small">screen ${cloth.hex}${cloth.inScreenGamut ? '' : ', nearest the screen can show'}</span>
    </details>`;
  }
}

const nothingFor = ({ verdict }: AnswerView): string =>
  verdict === 'nothing-near'
    ? 'No cloth of these notes comes near, so there was no evidence to weigh.'
    : 'Nothing in these notes reaches this place and time.';

const nothingAgainst = ({ verdict }: AnswerView): string =>
  verdict === 'nothing-near'
    ? 'That nobody dyed such a colour for these notes does not show that there was none.'
    : 'Nothing in these notes speaks against it.';

declare global {
  interface HTMLElementTagNameMap {
    'tg-answer': TgAnswer;
  }
}
