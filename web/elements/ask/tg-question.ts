import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { QuestionProblem, TypedQuestion } from '../../notebook/pose-question.ts';
import type { Choice, ChoicesView } from '../../notebook/views/choices-view.ts';
import { problemSentence, type QuestionPart, questionWords, threadYear, YEARS } from './question-view.ts';
import type { ColourPickEvent } from '../colour-input/colour-pick-event.ts';
import { QuestionChangeEvent } from './question-change-event.ts';
import { styles } from './tg-question.styles.ts';

/**
 * @summary A question as a sentence whose words are the controls, with a year that can be dragged.
 * @event {QuestionChangeEvent} tg-question-change - The reader changed a word of the question.
 * @csspart sentence - The sentence.
 * @csspart panel - The control of the word that is open.
 */
@customElement('tg-question')
export class TgQuestion extends LitElement {
  static override styles = styles;

  /** The question as typed. Replace it; never mutate it. */
  @property({ attribute: false }) question: TypedQuestion = { region: '', when: '' };
  /** What the words can be. */
  @property({ attribute: false }) choices?: ChoicesView;
  /** How the date was read. */
  @property() reading = '';
  /** The middle year of the date as it was read. */
  @property({ type: Number }) year?: number;
  /** The asked colour for the screen, `#rrggbb`. */
  @property({ attribute: 'asked-hex' }) askedHex = '';
  /** What could not be understood. */
  @property({ attribute: false }) problems: readonly QuestionProblem[] = [];

  @state() private open?: QuestionPart;

  override render() {
    const words = questionWords(this.question, this.choices);
    const dab = this.question.dye === undefined ? this.#hexOfSubject() : '';
    return html`
      <h1 part="sentence">
        Would ${this.#word('subject', words.subject, dab)} ${this.question.dye === undefined ? this.#word('state', words.state) : nothing}
        be ${this.#word('act', words.act)} on ${this.#word('fibre', words.fibre)} in ${this.#word('region', words.region)} about
        ${this.#word('when', words.when)} by ${this.#word('wearer', words.wearer)}?
      </h1>
      ${this.#yearThread()} ${this.open === undefined ? nothing : this.#panel(this.open)}
      ${this.problems.map((problem) => html`<p class="problem" role="alert">${problemSentence(problem)}</p>`)}
    `;
  }

  #word(part: QuestionPart, text: string, dab = '') {
    const patch = dab === '' ? nothing : html`<span class="dab" style=${`--_dab:${dab}`} aria-hidden="true"></span>`;
    return html`<button
      type="button"
      class="word"
      id=${`word-${part}`}
      aria-expanded=${this.open === part ? 'true' : 'false'}
      aria-controls="panel"
      @click=${() => (this.open = this.open === part ? undefined : part)}
    >
      ${patch}${text}
    </button>`;
  }

  #yearThread() {
    const year = threadYear(this.question.when, this.year);
    return html`<div class="year">
      <label for="year">Year</label>
      <input
        id="year"
        type="range"
        min=${YEARS.from}
        max=${YEARS.to}
        step="1"
        .value=${String(year)}
        aria-valuetext=${this.question.when}
        @input=${(event: InputEvent) => this.#change({ when: (event.target as HTMLInputElement).value }, false)}
      />
      <span>${this.reading === '' ? this.question.when : this.reading}</span>
    </div>`;
  }

  #panel(part: QuestionPart) {
    return html`<section
      class="panel"
      id="panel"
      part="panel"
      aria-labelledby=${`word-${part}`}
      @keydown=${(event: KeyboardEvent) => {
        if (event.key === 'Escape') this.#close(part);
      }}
    >
      ${this.#control(part)}
    </section>`;
  }

  #control(part: QuestionPart) {
    switch (part) {
      case 'subject':
        return this.#subject();
      case 'state':
        return html`<div class="fields" role="group" aria-label="As new, or as found">
            ${this.#pressed('As new: the colour fresh from the dye', this.question.asFound !== true, { asFound: false })}
            ${this.#pressed('As found: the colour of an old cloth, faded', this.question.asFound === true, { asFound: true })}
          </div>
          <p class="hint">As found, what it may have been is worked out dye by dye, and each possibility is asked.</p>`;
      case 'act':
        return html`<div class="fields" role="group" aria-label="Worn there, or dyed there">
          ${this.#pressed('Worn there, wherever it was dyed', this.question.dyedHere !== true, { dyedHere: false })}
          ${this.#pressed('Dyed there', this.question.dyedHere === true, { dyedHere: true })}
        </div>`;
      case 'fibre':
        return this.#list('Fibre', this.choices?.fibres, this.question.fibre, 'Any fibre', (fibre) => ({ fibre }));
      case 'region':
        return this.#list('Place', this.choices?.regions, this.question.region, undefined, (region) => ({ region: region ?? '' }));
      case 'wearer':
        return this.#list('Wearer', this.choices?.wearers, this.question.wearer, 'Anyone', (wearer) => ({ wearer }));
      case 'when':
        return html`<div class="fields">
            <label
              >Date, as you would write it
              <input
                type="text"
                .value=${this.question.when}
                @change=${(event: Event) => this.#change({ when: (event.target as HTMLInputElement).value })}
              />
            </label>
            <label
              >Or a period of this notebook
              <select
                @change=${(event: Event) => {
                  const { value } = event.target as HTMLSelectElement;
                  if (value !== '') this.#change({ when: value });
                }}
              >
                <option value="">Choose</option>
                ${this.choices?.periods.map(({ id, title }) => html`<option value=${id} .selected=${id === this.question.when}>${title}</option>`)}
              </select>
            </label>
          </div>
          <p class="hint">
            For example c. 1370, late 9th century, 880–960, 1660s.${this.reading === '' ? '' : ` Read as: ${this.reading}`}
          </p>`;
    }
  }

  #subject() {
    // The first view needs none of it: it comes when the word is opened.
    void import('../colour-input/tg-colour-input.ts');
    return html`<tg-colour-input
        .value=${this.question.colour ?? ''}
        .cloths=${this.choices?.cloths ?? []}
        @tg-colour-pick=${({ detail: { text } }: ColourPickEvent) => this.#change({ colour: text, dye: undefined })}
      ></tg-colour-input>
      <div class="fields other">
        <label
          >Or a dyestuff
          <select
            @change=${(event: Event) => {
              const { value } = event.target as HTMLSelectElement;
              if (value !== '') this.#change({ dye: value, colour: undefined });
            }}
          >
            <option value="">Choose</option>
            ${this.choices?.dyestuffs.map(({ id, title }) => html`<option value=${id} .selected=${id === this.question.dye}>${title}</option>`)}
          </select>
        </label>
      </div>`;
  }

  #pressed(text: string, isOn: boolean, change: Partial<TypedQuestion>) {
    return html`<button type="button" class="plain" aria-pressed=${isOn ? 'true' : 'false'} @click=${() => this.#change(change)}>
      ${text}
    </button>`;
  }

  #list(
    label: string,
    list: readonly Choice[] | undefined,
    chosen: string | undefined,
    none: string | undefined,
    change: (id: string | undefined) => Partial<TypedQuestion>,
  ) {
    return html`<label
      >${label}
      <select
        @change=${(event: Event) => {
          const { value } = event.target as HTMLSelectElement;
          this.#change(change(value === '' ? undefined : value));
        }}
      >
        ${none === undefined ? nothing : html`<option value="" .selected=${chosen === undefined}>${none}</option>`}
        ${list?.map(({ id, title, depth }) => html`<option value=${id} .selected=${id === chosen}>${'\u2003'.repeat(depth)}${title}</option>`)}
      </select>
    </label>`;
  }

  #hexOfSubject(): string {
    const { colour } = this.question;
    if (this.askedHex !== '') return this.askedHex;
    const cloth = this.choices?.cloths.find((one) => one.id === colour || one.lab === colour);
    return cloth?.hex ?? (colour !== undefined && /^#[0-9a-f]{6}$/i.test(colour) ? colour : '');
  }

  #change(change: Partial<TypedQuestion>, settled = true) {
    this.dispatchEvent(new QuestionChangeEvent({ ...this.question, ...change }, settled));
  }

  #close(part: QuestionPart) {
    this.open = undefined;
    this.renderRoot.querySelector<HTMLButtonElement>(`#word-${part}`)?.focus();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-question': TgQuestion;
  }
}
