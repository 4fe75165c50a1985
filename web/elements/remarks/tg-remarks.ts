import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Engine } from '../../notebook/engine.ts';
import { type ReadRemarks, readRemarks, type Remark, REMARKS_FILE } from '../../notebook/remarks.ts';
import { counted } from '../../notebook/words/counted.ts';
import { remarkFailureWords } from '../../notebook/words/remark-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { RemarkAddRequestEvent, RemarkDoneRequestEvent, type RemarkOutcome } from './remark-events.ts';

/** The name a reader last signed with, while the page is open. */
let lastName = '';

/**
 * @summary What people remarked on one note, and a form for one remark more.
 * @event {RemarkAddRequestEvent} tg-remark-add-request - The reader made a remark; the answer is what became of it.
 * @event {RemarkDoneRequestEvent} tg-remark-done-request - A remark was dealt with.
 * @csspart remarks - The remarks there are.
 * @csspart form - The form for one more.
 */
@customElement('tg-remarks')
export class TgRemarks extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        max-inline-size: var(--tg-measure);
        margin-block-start: var(--tg-space-5);
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      h2 {
        margin: 0 0 var(--tg-space-2);
        font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
      }
      ul {
        margin: 0 0 var(--tg-space-3);
        padding: 0;
        list-style: none;
      }
      li {
        padding-block: var(--tg-space-2);
        border-block-start: var(--tg-line-1) solid var(--tg-hairline);
      }
      li p {
        margin: 0;
        white-space: pre-wrap;
        overflow-wrap: anywhere;
      }
      .small,
      summary,
      label,
      form button {
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      .small {
        color: var(--tg-ink-quiet);
      }
      summary,
      label {
        min-block-size: var(--tg-touch);
      }
      form {
        display: grid;
        grid-template-columns: minmax(0, 1fr) 6rem;
        gap: var(--tg-space-2) var(--tg-space-4);
      }
      .whole {
        grid-column: 1 / -1;
      }
      textarea,
      input {
        display: block;
        inline-size: 100%;
        min-block-size: var(--tg-touch);
        padding: var(--tg-space-2);
        border: var(--tg-line-1) solid var(--tg-edge);
        border-radius: 2px;
        background: none;
        color: inherit;
        font: inherit;
      }
      button {
        min-block-size: var(--tg-touch);
      }
      @media print {
        details,
        button {
          display: none;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The note's id. */
  @property() note = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private remarks: readonly Remark[] = [];
  @state() private trouble = '';

  @query('form') private readonly form?: HTMLFormElement;

  readonly #reading = new LatestTask<ReadRemarks | undefined>((read) => (this.remarks = read?.remarks ?? []));

  override willUpdate(changed: PropertyValues<this>) {
    if (this.engine && (changed.has('engine') || changed.has('version'))) this.#reading.run(this.#read(this.engine));
  }

  override render() {
    const remarks = this.remarks.filter(({ note }) => note === this.note);
    return html`
      ${
        remarks.length === 0
          ? nothing
          : html`<h2 id="heading">${counted(remarks.length, 'remark')}</h2>
              <ul part="remarks" aria-labelledby="heading">
                ${repeat(
                  remarks,
                  ({ id }) => id,
                  (remark) => this.#remarkTemplate(remark),
                )}
              </ul>`
      }
      <details>
        <summary>Make a remark</summary>
        <form part="form" @submit=${this.#add}>
          <label class="whole">Remark <textarea name="text" rows="3" required></textarea></label>
          <label>Your name <input name="by" autocomplete="name" required .value=${lastName} /></label>
          <label>Line, if one <input name="line" type="number" min="1" step="1" /></label>
          <div class="whole"><button type="submit">Keep the remark</button></div>
        </form>
      </details>
      <p class="small" role="status">${this.trouble}</p>
    `;
  }

  #remarkTemplate({ id, line, text, by, at, done }: Remark) {
    const when = new Date(at);
    return html`<li>
      <p>${text}</p>
      <span class="small"
        >${by},
        <time datetime=${at}>${when.toLocaleDateString()}</time>${line === undefined ? '' : `, line ${line}`}${done ? ' · done' : ''}</span
      >
      ${done ? nothing : html`<button type="button" class="plain" @click=${() => this.#finish(id)}>Done with it</button>`}
    </li>`;
  }

  async #read(engine: Engine): Promise<ReadRemarks | undefined> {
    const bytes = await engine.attachment(REMARKS_FILE);
    const read = bytes && readRemarks(bytes);
    return read?.ok ? read.value : undefined;
  }

  async #add(event: SubmitEvent) {
    event.preventDefault();
    const { form } = this;
    if (!form) return;
    const data = new FormData(form);
    const words = (name: string): string => {
      const value = data.get(name);
      return typeof value === 'string' ? value.trim() : '';
    };
    if (words('text') === '' || words('by') === '') {
      this.trouble = 'A remark needs words and a name.';
      return;
    }
    lastName = words('by');
    const line = Number(words('line'));
    const request = new RemarkAddRequestEvent({
      note: this.note,
      text: words('text'),
      by: lastName,
      ...(Number.isInteger(line) && line > 0 && { line }),
    });
    this.dispatchEvent(request);
    const outcome = await request.answer;
    if (outcome === 'kept') form.reset();
    this.#tell(outcome, 'The remark is kept.');
  }

  async #finish(id: string) {
    const request = new RemarkDoneRequestEvent(id);
    this.dispatchEvent(request);
    this.#tell(await request.answer, 'Marked as done.');
  }

  #tell(outcome: RemarkOutcome | undefined, kept: string) {
    if (outcome) this.trouble = outcome === 'kept' ? kept : remarkFailureWords[outcome];
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-remarks': TgRemarks;
  }
}
