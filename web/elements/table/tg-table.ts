import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import { withSkein } from '../../notebook/read-skeins.ts';
import type { SampleLine } from '../../notebook/views/sample-lines.ts';
import type { JudgedLine, TableOrProblems, TableView, TypedTable } from '../../notebook/views/table-view.ts';
import { problemSentence } from '../ask/question-view.ts';
import { OnPaper } from '../shared/on-paper.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { listWord, typedWord } from '../shared/sentence-words.ts';
import { sentenceStyles } from '../shared/sentence.styles.ts';
import '../swatch/tg-swatch.ts';
import '../verdict-mark/tg-verdict-mark.ts';
import { TableChangeEvent } from './table-change-event.ts';
import { styles } from './tg-table.styles.ts';

/**
 * @summary A table of one's own skeins judged for a place and date, line by line, to print and take along.
 * @event {TableChangeEvent} tg-table-change - The reader asks about another table, place or date.
 * @csspart list - The list as it was typed.
 * @csspart lines - The judged lines.
 */
@customElement('tg-table')
export class TgTable extends LitElement {
  static override styles = [
    sentenceStyles,
    styles,
    css`
      h1 {
        margin: 0;
        font: inherit;
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The table asked about. */
  @property({ attribute: false }) table: TypedTable = { list: '', region: '', when: '' };
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private choices?: ChoicesView;
  @state() private result?: TableOrProblems;
  @state() private samples: readonly SampleLine[] = [];

  readonly #paper = new OnPaper(this, () => this.performUpdate());
  readonly #listing = new LatestTask<readonly SampleLine[]>((samples) => (this.samples = samples));
  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));
  readonly #judging = new LatestTask<TableOrProblems>((result) => (this.result = result));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version');
    if (anew) {
      this.#choosing.run(this.engine.choices());
      this.#listing.run(this.engine.sampleLines());
    }
    if (anew || changed.has('table')) this.#judging.run(this.engine.judgeTable(this.table));
  }

  override render() {
    const { table, result } = this;
    return html`
      <h1>
        <span class="sentence"
          >Would these skeins stand in
          ${listWord('Place', table.region, this.choices?.regions, (region) => this.#change({ region: region ?? '' }))} about
          ${typedWord('Date', table.when, (when) => this.#change({ when }))} for
          ${listWord('Wearer', table.wearer, this.choices?.wearers, (wearer) => this.#change({ wearer }), 'anyone')}?</span
        >
      </h1>
      <div class="given" part="list" @dragover=${(event: DragEvent) => event.preventDefault()} @drop=${this.#drop}>
        <label
          >The skeins, one a line: name; dyestuffs; mordant; fibre; colour
          <textarea
            rows="8"
            spellcheck="false"
            placeholder="Madder red; madder; alum; wool; #a8443a"
            .value=${table.list}
            @change=${(event: Event) => this.#change({ list: (event.target as HTMLTextAreaElement).value })}
          ></textarea>
        </label>
        <p class="quiet">
          Paste from a spreadsheet, drop a CSV file here, or
          <label class="file">choose a file<input type="file" accept=".csv,.txt,.tsv,text/csv,text/plain" @change=${this.#choose} /></label
          >. Join dyestuffs with +.
        </p>
        ${this.#samples()}
      </div>
      ${result && 'problems' in result ? result.problems.map((problem) => html`<p class="problem" role="alert">${problemSentence(problem)}</p>`) : nothing}
      ${result && 'table' in result ? this.#judged(result.table) : nothing}
    `;
  }

  #judged(view: TableView) {
    if (view.lines.length === 0) {
      return html`<p>Nothing is listed yet.</p>
        <p>
          <button type="button" @click=${() => this.#change({ list: EXAMPLE })}>Try it with an example</button>
        </p>`;
    }
    return html`
      <p role="status" class="sum">
        ${view.place}, ${view.reading}: ${view.counts.map(({ answer, count }) => `${count} ${answer}`).join(', ')}.
      </p>
      <ol class="lines" part="lines">
        ${view.lines.map((line) => this.#line(line))}
      </ol>
      <p><button type="button" @click=${() => globalThis.print()}>Print this sheet (key P)</button></p>
    `;
  }

  #line({ name, made, answer, verdict, verdictWord, classes, because, rules, problems, hex, weave, nearest, line }: JudgedLine) {
    return html`<li>
      ${
        hex === undefined
          ? html`<tg-verdict-mark .verdict=${verdict} .classes=${classes}>${verdictWord}</tg-verdict-mark>`
          : html`<tg-swatch
              .hex=${hex}
              .fibre=${weave}
              .verdict=${verdict}
              .classes=${classes}
              .seed=${`${line} ${name}`}
              .label=${`${name}, ${verdictWord.toLowerCase()}`}
            ></tg-swatch>`
      }
      <div>
        <p class="name"><strong>${name}</strong> <span class="answer">${answer}</span></p>
        <p class="quiet">${made} · ${verdictWord.toLowerCase()}</p>
        ${problems.map((problem) => html`<p class="problem">Line ${line}: ${problem}</p>`)}
        <p>${because[0]}</p>
        ${
          because.length < 2
            ? nothing
            : this.#paper.value
              ? html`<ul>
                  ${because.slice(1).map((sentence) => html`<li>${sentence}</li>`)}
                </ul>`
              : html`<details>
                  <summary>Why</summary>
                  <ul>
                    ${because.slice(1).map((sentence) => html`<li>${sentence}</li>`)}
                  </ul>
                </details>`
        }
        ${rules.map((rule) => html`<p>${rule}</p>`)} ${this.#instead(answer, nearest, hex)}
      </div>
    </li>`;
  }

  #instead(answer: JudgedLine['answer'], nearest: string | undefined, hex: string | undefined) {
    if (nearest !== undefined) return html`<p>The nearest that would stand: ${nearest}.</p>`;
    if (answer !== 'does not' && answer !== 'disputed') return nothing;
    return html`<p class="quiet">
      ${hex === undefined ? 'Write its colour, and the nearest that would stand is named.' : 'These notes hold no sample of a colour that would stand here.'}
    </p>`;
  }

  #samples() {
    const { samples } = this;
    if (samples.length === 0) return nothing;
    return html`<div class="samples">
      <label
        >Add a sample of the notebook
        <select id="sample">
          ${samples.map(({ id, title }) => html`<option value=${id}>${title}</option>`)}
        </select></label
      >
      <button type="button" @click=${this.#addSample}>Add it to the list</button>
    </div>`;
  }

  #addSample() {
    const chosen = this.renderRoot.querySelector<HTMLSelectElement>('#sample')?.value;
    const sample = this.samples.find(({ id }) => id === chosen);
    if (sample) this.#change({ list: withSkein(this.table.list, sample.cells) });
  }

  #drop(event: DragEvent) {
    event.preventDefault();
    this.#read(event.dataTransfer?.files[0]);
  }

  #choose(event: Event) {
    this.#read((event.target as HTMLInputElement).files?.[0]);
  }

  #read(file: File | undefined) {
    void file?.text().then((list) => this.#change({ list }));
  }

  #change(change: Partial<TypedTable>) {
    this.dispatchEvent(new TableChangeEvent({ ...this.table, ...change }));
  }
}

/** A list to try it with; invented. */
const EXAMPLE = `name; dyestuffs; mordant; fibre; colour
Madder red; madder; alum; wool; #b0473f
Weld yellow; weld; alum; wool; #cfc84a
Green; woad + weld; alum; wool; #4f8558
Scarlet; kermes; alum; wool; #a82a40
Crimson; american-cochineal; alum; wool; #96305a
Black; logwood; iron; wool; #2b2a30`;

declare global {
  interface HTMLElementTagNameMap {
    'tg-table': TgTable;
  }
}
