import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { GatherForm } from '../../notebook/import/gather.ts';
import type { GatherUpload } from '../../notebook/import/gather-upload.ts';
import type { SaveOutcome } from '../../notebook/ports-writing.ts';
import type { ColumnView, GatheredRowView, GatheredView } from '../../notebook/views/gathered-view.ts';
import { counted } from '../../notebook/words/counted.ts';
import { gatherFormWords } from '../../notebook/words/gathered-words.ts';
import { storeFailureWords } from '../../notebook/words/save-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { NotesSaveRequestEvent } from '../write/write-events.ts';
import { styles } from './tg-data.styles.ts';

/**
 * @summary Reads somebody else's file: what it is, its columns, what every row becomes; then writes the notes, all or none.
 * @event {NotesSaveRequestEvent} tg-notes-save-request - The reader wants the notes written, or taken back.
 * @csspart preview - What the file would bring in.
 */
@customElement('tg-data-in')
export class TgDataIn extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Grows when the notebook changes: what is new then may be other than before. */
  @property({ type: Number }) version = 0;

  @state() private upload?: GatherUpload;
  @state() private view?: GatheredView;
  @state() private isBusy = false;
  @state() private isOver = false;
  @state() private said = '';
  @state() private written: GatheredView['notes'] = [];
  @query('#said') private saidLine?: HTMLElement;

  #form?: GatherForm;
  #columns: Readonly<Record<string, number>> = {};
  readonly #reading = new LatestTask<GatheredView>(
    (view) => {
      this.view = view;
      this.isBusy = false;
    },
    () => {
      this.isBusy = false;
      this.said = 'The file could not be read. Nothing was changed; choose it again.';
    },
  );

  override willUpdate(changed: PropertyValues<this>) {
    if (changed.has('version') && this.upload && this.hasUpdated) this.#read();
  }

  override render() {
    return html`<section aria-labelledby="in">
      <h2 id="in">In</h2>
      <p>
        Period definitions, places, lists of textiles or of trials, or a notebook that somebody wrote out here. First you see what every row
        becomes; nothing is written before you say so, and nothing is ever overwritten.
      </p>
      <div
        class=${this.isOver ? 'drop over' : 'drop'}
        @dragover=${this.#dragged}
        @dragleave=${() => (this.isOver = false)}
        @drop=${this.#dropped}
      >
        <label
          >Choose a file, or drop it here: CSV, GeoJSON, JSON-LD
          <input type="file" accept=".csv,.tsv,.txt,.json,.jsonld,.geojson,text/csv,application/json" @change=${this.#chosen} />
        </label>
      </div>
      <p id="said" role="status" tabindex="-1">${this.isBusy ? 'Reading the file.' : this.said}</p>
      ${this.written.length === 0 ? nothing : html`<p><button type="button" @click=${this.#takeBack}>Take them back</button></p>`}
      ${this.view && this.upload ? this.#preview(this.view, this.upload.name) : nothing}
    </section>`;
  }

  #preview(view: GatheredView, name: string) {
    return html`<div part="preview">
      <p class="as">
        <span class="name">${name}</span>
        <label for="form">read as</label>
        <select id="form" @change=${this.#formChosen}>
          ${view.form ? nothing : html`<option value="" selected>something not recognised</option>`}
          ${(Object.keys(gatherFormWords) as GatherForm[]).map(
            (form) => html`<option value=${form} ?selected=${form === view.form}>${gatherFormWords[form]}</option>`,
          )}
        </select>
      </p>
      ${view.table ? this.#columnChoice(view.table.headings, view.table.columns) : nothing}
      ${view.says.map((sentence) => html`<p class="problem">${sentence}</p>`)}
      ${view.sentences.length === 0 ? nothing : html`<p>${view.sentences.join(' ')}</p>`}
      ${
        view.notes.length === 0
          ? nothing
          : html`<p>
              <button type="button" class="first" @click=${this.#write}>
                Write ${counted(view.notes.length, 'note')} into the notebook
              </button>
            </p>`
      }
      ${view.rows.length === 0 ? nothing : this.#rows(view)}
    </div>`;
  }

  #columnChoice(headings: readonly string[], columns: readonly ColumnView[]) {
    return html`<fieldset class="columns">
      <legend>Which column holds what</legend>
      ${columns.map(
        ({ name, label, at }) =>
          html`<div>
            <label for=${`column-${name}`}>${label}</label>
            <select
              id=${`column-${name}`}
              @change=${(event: Event) => this.#columnChosen(name, Number((event.target as HTMLSelectElement).value))}
            >
              <option value="-1" ?selected=${at < 0}>no column</option>
              ${headings.map((heading, nth) => html`<option value=${nth} ?selected=${nth === at}>${heading === '' ? `column ${nth + 1}` : heading}</option>`)}
            </select>
          </div>`,
      )}
    </fieldset>`;
  }

  #rows({ rows, moreRows }: GatheredView) {
    return html`<h3>Row by row</h3>
      <ol class="rows">
        ${rows.map((row) => this.#row(row))}
      </ol>
      ${moreRows > 0 ? html`<p>and ${counted(moreRows, 'row')} more that are alike.</p>` : nothing}`;
  }

  #row({ row, title, cells, fate, says }: GatheredRowView) {
    return html`<li>
      <span class="nth">${row}</span>
      <div>
        <p><strong>${title === '' ? 'without a name' : title}</strong> <span class="quiet">${fate}</span></p>
        ${cells.length === 0 ? nothing : html`<p class="quiet">${cells.map(({ label, text }) => `${label} ${text}`).join(' · ')}</p>`}
        ${says.map((sentence) => html`<p class="says">${sentence}</p>`)}
      </div>
    </li>`;
  }

  #chosen(event: Event) {
    const [file] = (event.target as HTMLInputElement).files ?? [];
    if (file) void this.#open(file);
  }

  #dragged(event: DragEvent) {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    this.isOver = true;
  }

  #dropped(event: DragEvent) {
    event.preventDefault();
    this.isOver = false;
    const [file] = event.dataTransfer?.files ?? [];
    if (file) void this.#open(file);
  }

  async #open(file: File) {
    this.#form = undefined;
    this.#columns = {};
    this.view = undefined;
    this.written = [];
    this.said = '';
    this.isBusy = true;
    const buffer = await file.arrayBuffer().catch(() => undefined);
    if (!buffer) {
      this.isBusy = false;
      this.said = `“${file.name}” could not be opened. Is it still where it was?`;
      return;
    }
    this.upload = { name: file.name, bytes: new Uint8Array(buffer) };
    this.#read();
  }

  #read() {
    if (!this.engine || !this.upload) return;
    this.isBusy = true;
    const choice = { ...(this.#form && { form: this.#form }), columns: this.#columns };
    this.#reading.run(this.engine.gather(this.upload, choice));
  }

  #formChosen(event: Event) {
    const { value } = event.target as HTMLSelectElement;
    this.#form = (Object.keys(gatherFormWords) as GatherForm[]).find((one) => one === value);
    this.#columns = {};
    this.#read();
  }

  #columnChosen(name: string, at: number) {
    this.#columns = { ...this.#columns, [name]: at };
    this.#read();
  }

  async #write() {
    const { view, upload } = this;
    if (!view || !upload) return;
    const wish = new NotesSaveRequestEvent(view.notes.map(({ path, text }) => ({ path, text })));
    this.isBusy = true;
    // What was read stays readable; after the writing it would all be there already.
    this.upload = undefined;
    this.dispatchEvent(wish);
    const outcome = await wish.answer;
    this.isBusy = false;
    if (outcome?.is === 'saved') {
      this.view = undefined;
      this.written = view.notes;
      this.said = `${counted(view.notes.length, 'note')} of “${upload.name}” ${view.notes.length === 1 ? 'is' : 'are'} in the notebook.`;
    } else {
      this.upload = upload;
      this.said = faultSentence(outcome);
      this.#read();
    }
    await this.updateComplete;
    this.saidLine?.focus();
  }

  async #takeBack() {
    const wish = new NotesSaveRequestEvent([], this.written);
    this.dispatchEvent(wish);
    const outcome = await wish.answer;
    if (outcome?.is === 'saved') {
      this.said = `${counted(this.written.length, 'note')} ${this.written.length === 1 ? 'is' : 'are'} taken back; the earlier versions keep them.`;
      this.written = [];
    } else this.said = faultSentence(outcome);
    await this.updateComplete;
    this.saidLine?.focus();
  }
}

function faultSentence(outcome: SaveOutcome | undefined): string {
  if (!outcome) return 'Nothing here can write notes. Nothing was changed.';
  if (outcome.is === 'failed') return `${storeFailureWords[outcome.why]} Nothing was written.`;
  if (outcome.is === 'taken') return 'A note of the same name came in meanwhile. Nothing was written; what would come in is reckoned anew.';
  return 'One of them was changed since. Nothing was taken back; delete it on its own page.';
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-data-in': TgDataIn;
  }
}
