import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { FOUND, type Found } from '../../domain/laboratory/findings.ts';
import type { LabMethod } from '../../domain/laboratory/tables/methods.ts';
import type { Engine } from '../../notebook/engine.ts';
import { EMPTY_LAB, type TypedLab } from '../../notebook/typed-lab.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import { labOfSettings, settingsOfLab } from '../../notebook/lab-address.ts';
import type { LabFigure, LabFigureRow } from '../../notebook/views/lab-figures.ts';
import type { LabOrProblems, LabView } from '../../notebook/views/lab-view.ts';
import { foundWords, methodWords, reportedWords } from '../../notebook/words/lab-words.ts';
import { problemSentence } from '../ask/question-view.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { fewWords, listWord, typedWord } from '../shared/sentence-words.ts';
import { sentenceStyles } from '../shared/sentence.styles.ts';
import { labHead, labRest } from './lab-answer.ts';
import { LabChangeEvent } from './lab-change-event.ts';
import {
  compoundNames,
  EXAMPLE_LAB,
  familiesToChoose,
  ratioNames,
  withFigure,
  withFinding,
  withoutFinding,
  withRatio,
} from './lab-form-view.ts';
import './tg-lab-keep.ts';
import { styles } from './tg-laboratory.styles.ts';

/**
 * @summary A laboratory's report on one thread, and the dyestuffs and mixtures that would explain it, ranked.
 * @event {LabChangeEvent} tg-lab-change - The reader changed the report.
 * @csspart form - The report as it is put in.
 */
@customElement('tg-laboratory')
export class TgLaboratory extends LitElement {
  static override styles = [sentenceStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The report. */
  @property({ attribute: false }) report: TypedLab = EMPTY_LAB;
  /** The report as an address holds it; it goes before `report`. */
  @property({ attribute: false }) settings?: Readonly<Record<string, string>>;
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private choices?: ChoicesView;
  @state() private result?: LabOrProblems;
  @query('#compound') private compound?: HTMLInputElement;
  @query('#value') private value?: HTMLInputElement;
  @query('#tolerance') private tolerance?: HTMLInputElement;
  @query('#ratio') private ratio?: HTMLSelectElement;

  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));
  readonly #asking = new LatestTask<LabOrProblems>((result) => (this.result = result));

  override willUpdate(changed: PropertyValues<this>) {
    if (changed.has('settings') && this.settings && !isSame(this.settings, settingsOfLab(this.report)))
      this.report = labOfSettings(this.settings);
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version');
    if (anew) this.#choosing.run(this.engine.choices());
    if (anew || changed.has('report')) this.#asking.run(this.engine.laboratory(this.report));
  }

  override render() {
    const { report, result, choices } = this;
    return html`
      <h1>
        <span class="sentence"
          >What dyed a thread of ${listWord('Fibre', report.fibre, choices?.fibres, (fibre) => this.#change({ fibre }), 'some fibre')} from
          ${listWord('Place', report.region, choices?.regions, (region) => this.#change({ region }), 'some place')} about
          <span class="held">${typedWord('Date', report.when ?? '', (when) => this.#change({ when }))},</span> examined by
          ${fewWords<LabMethod>('Method', report.method, methodWords, (method) => this.#change({ method }))}?</span
        >
      </h1>
      <p class="on-paper">${reportedWords(this.report)}</p>
      <div class="form" part="form">${this.#findings()} ${this.#add()} ${this.#ratios()} ${this.#choose()}</div>
      ${result && 'problems' in result ? result.problems.map((problem) => html`<p class="problem" role="alert">${problemSentence(problem)}</p>`) : nothing}
      ${result && 'lab' in result && report.findings.length > 0 ? this.#answer(result.lab) : nothing}
    `;
  }

  #answer(lab: LabView) {
    return html`${labHead(lab)} ${labRest(lab)} ${this.#figures(lab.figures)}
      <tg-lab-keep .engine=${this.engine} .report=${this.report} .explanations=${lab.explanations}></tg-lab-keep>`;
  }

  #figures(rows: readonly LabFigureRow[]) {
    return html`<details class="figures">
      <summary>The figures it was reckoned with, to be changed where you know better</summary>
      <p class="small">
        Each is a chance between 0 and 1. Shown: that the method shows the compound where there is plenty of it. Gone: that 250 years have
        taken it. An empty field takes the tables’ figure again.
      </p>
      <ul class="lines">
        ${rows.map((row) => this.#figureRow(row))}
      </ul>
    </details>`;
  }

  #figureRow(row: LabFigureRow) {
    const field = (which: 'reach' | 'gone', label: string, { value, from, isOwn }: LabFigure) =>
      html`<div>
        <label
          >${label}
          <input
            class="number"
            type="text"
            inputmode="decimal"
            aria-label=${`${row.compound}: ${label}`}
            .value=${value}
            @change=${(event: Event) => this.#set(withFigure(this.report, row, which, (event.target as HTMLInputElement).value))}
          />
        </label>
        <span class="small">${isOwn ? html`<strong>${from}</strong>` : from}</span>
      </div>`;
    return html`<li class="figure">
      <p><strong>${row.compound}</strong> <span class="small">${row.also}</span></p>
      ${field('reach', `shown by ${row.methodWord}`, row.reach)} ${field('gone', 'gone after 250 years', row.gone)}
      <p class="small">strays in without a source: ${row.stray}</p>
      ${row.givenBy.map((line) => html`<p class="small">${line}</p>`)}
    </li>`;
  }

  #findings() {
    if (this.report.findings.length === 0) {
      return html`<p>Nothing is put in yet. Add what the report names, line by line.</p>
        <p><button type="button" @click=${() => this.#set(EXAMPLE_LAB)}>Try it with an invented report</button></p>`;
    }
    return html`<ul class="findings">
      ${this.report.findings.map(
        ({ compound, found }, at) =>
          html`<li>
            <span id=${`line-${at}`}>${compound}</span>
            <fieldset aria-labelledby=${`line-${at}`}>
              ${FOUND.map(
                (one) =>
                  html`<label
                    ><input
                      type="radio"
                      name=${`found-${at}`}
                      .checked=${one === found}
                      @change=${() => this.#set(withFinding(this.report, compound, one))}
                    />${foundWords[one]}</label
                  >`,
              )}
            </fieldset>
            <button
              type="button"
              class="plain"
              aria-label=${`take out ${compound}`}
              @click=${() => this.#set(withoutFinding(this.report, compound))}
            >
              take out
            </button>
          </li>`,
      )}
    </ul>`;
  }

  #add() {
    return html`<form class="row" @submit=${this.#added}>
        <label
          >Compound, any usual name or CAS number
          <input id="compound" type="text" list="compounds" autocomplete="off" spellcheck="false" />
        </label>
        <datalist id="compounds">${compoundNames().map((name) => html`<option value=${name}></option>`)}</datalist>
        <button type="submit">Add as present</button>
        <label class="check"
          ><input
            type="checkbox"
            .checked=${this.report.elseAbsent === true}
            @change=${(event: Event) => this.#change({ elseAbsent: (event.target as HTMLInputElement).checked })}
          />Everything else was looked for and not found</label
        >
      </form>
      <details>
        <summary>Choose from the tables</summary>
        <div class="families">
          ${familiesToChoose().map(
            ({ title, compounds }) =>
              html`<div>
                <p>${title}</p>
                ${compounds.map(
                  (name) =>
                    html`<button type="button" class="plain" @click=${() => this.#set(withFinding(this.report, name, 'present'))}>
                      ${name}
                    </button>`,
                )}
              </div>`,
          )}
        </div>
      </details>`;
  }

  #ratios() {
    return html`
      ${this.report.ratios.map(
        ({ ratio, value, tolerance }) =>
          html`<p>
            ${ratio}: ${value}${tolerance === undefined ? nothing : ` ± ${tolerance}`}
            <button
              type="button"
              class="plain"
              aria-label=${`take out ${ratio}`}
              @click=${() => this.#set(withRatio(this.report, ratio, '', ''))}
            >
              take out
            </button>
          </p>`,
      )}
      <form class="row" @submit=${this.#ratioAdded}>
        <label
          >Ratio
          <select id="ratio">
            ${ratioNames().map((name) => html`<option value=${name}>${name}</option>`)}
          </select>
        </label>
        <label>Value (shares 0–1)<input id="value" class="number" type="text" inputmode="decimal" /></label>
        <label>± tolerance<input id="tolerance" class="number" type="text" inputmode="decimal" /></label>
        <button type="submit">Add the ratio</button>
      </form>
    `;
  }

  #choose() {
    return html`<div class="row">
      <label
        >Where the report is printed: citation key, page
        <input
          type="text"
          .value=${this.report.source ?? ''}
          @change=${(event: Event) => this.#change({ source: (event.target as HTMLInputElement).value })}
        />
      </label>
    </div>`;
  }

  #added(event: SubmitEvent) {
    event.preventDefault();
    if (!this.compound) return;
    this.#set(withFinding(this.report, this.compound.value, 'present' satisfies Found));
    this.compound.value = '';
    this.compound.focus();
  }

  #ratioAdded(event: SubmitEvent) {
    event.preventDefault();
    if (!this.ratio || !this.value || !this.tolerance) return;
    this.#set(withRatio(this.report, this.ratio.value, this.value.value, this.tolerance.value));
    this.value.value = '';
    this.tolerance.value = '';
  }

  #change(change: Partial<TypedLab>) {
    this.#set({ ...this.report, ...change });
  }

  #set(report: TypedLab) {
    this.report = report;
    this.dispatchEvent(new LabChangeEvent(report));
  }
}

const isSame = (a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>): boolean =>
  Object.keys(a).length === Object.keys(b).length && Object.entries(a).every(([key, value]) => b[key] === value);

declare global {
  interface HTMLElementTagNameMap {
    'tg-laboratory': TgLaboratory;
  }
}
