import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { chosenText, conflictsOf, type MergeChoice, type NoteMerge } from '../../domain/merge/note-merge.ts';
import { counted } from '../../notebook/words/counted.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { MergeDoneEvent } from './merge-events.ts';
import { CHOICES, type MergeRow, mergeView, type Run } from './merge-view.ts';
import { styles } from './tg-merge.styles.ts';

/**
 * @summary Two versions of a note side by side: what is alike once, and for each place that differs this, that or both.
 * @event {MergeDoneEvent} tg-merge-done - The reader decided every place; the text is the whole note.
 * @csspart place - One place to decide.
 * @csspart side - One version's words there.
 */
@customElement('tg-merge')
export class TgMerge extends LitElement {
  static override styles = [baseStyles, styles];

  /** The two versions, brought as near as they come. Replace it; never mutate it. */
  @property({ attribute: false }) merge?: NoteMerge;
  /** What the first version is called. */
  @property({ attribute: 'this-one' }) thisOne = 'In this notebook';
  /** What the second version is called. */
  @property({ attribute: 'that-one' }) thatOne = 'On the other side';

  @state() private choices: readonly (MergeChoice | undefined)[] = [];
  @state() private isAsked = false;

  override willUpdate(changed: PropertyValues<this>) {
    if (!changed.has('merge') || isSameMerge(changed.get('merge'), this.merge)) return;
    this.choices = this.merge ? conflictsOf(this.merge).map(() => undefined) : [];
    this.isAsked = false;
  }

  override render() {
    if (!this.merge) return nothing;
    const open = this.choices.filter((choice) => choice === undefined).length;
    return html`
      ${this.choices.length > 1 ? this.#allTemplate() : nothing} ${mergeView(this.merge).map((row) => this.#rowTemplate(row))}
      ${this.choices.length === 0 ? html`<p>Nothing is left to decide: both say the same, or changed in different places.</p>` : nothing}
      <div class="tools">
        <button type="button" class="keep" @click=${this.#keep}>Keep the note like this</button>
        <p role="status">${this.isAsked && open > 0 ? `${counted(open, 'place')} still to decide.` : nothing}</p>
      </div>
    `;
  }

  #allTemplate() {
    return html`<div class="tools">
      ${CHOICES.map(
        ([choice, words]) => html`<button type="button" class="plain" @click=${() => this.#chooseAll(choice)}>${words} everywhere</button>`,
      )}
    </div>`;
  }

  #rowTemplate(row: MergeRow) {
    if (row.is === 'alike')
      return html`<p class="alike">${row.beginning}</p>
        ${
          row.hidden > 0
            ? html`<p class="hidden">${counted(row.hidden, 'line')} alike</p>
                <p class="alike">${row.end}</p>`
            : nothing
        }`;
    const choice = this.choices[row.at];
    return html`<fieldset part="place">
      <legend>${`Place ${row.at + 1} of ${this.choices.length}: ${row.about}`}</legend>
      <div class="sides">
        ${this.#sideTemplate(this.thisOne, row.mine, choice === 'mine' || choice === 'both')}
        ${this.#sideTemplate(this.thatOne, row.theirs, choice === 'theirs' || choice === 'both')}
      </div>
      <div class="choices">
        ${CHOICES.map(
          ([one, words]) =>
            html`<label
              ><input type="radio" name=${`place-${row.at}`} .checked=${choice === one} @change=${() => this.#choose(row.at, one)} />
              ${words}</label
            >`,
        )}
      </div>
    </fieldset>`;
  }

  #sideTemplate(name: string, runs: readonly Run[], isTaken: boolean) {
    return html`<div>
      <h4>${name}</h4>
      <p class=${isTaken ? 'side taken' : 'side'} part="side">
        ${
          runs.length === 0
            ? html`<em>nothing here</em>`
            : html`<span class="words">${runs.map(({ text, differs }) => (differs ? html`<strong>${text}</strong>` : text))}</span>`
        }
      </p>
    </div>`;
  }

  #choose(at: number, choice: MergeChoice) {
    this.choices = this.choices.with(at, choice);
  }

  #chooseAll(choice: MergeChoice) {
    this.choices = this.choices.map(() => choice);
  }

  #keep() {
    this.isAsked = true;
    const { merge, choices } = this;
    if (!merge || choices.includes(undefined)) {
      const first = choices.indexOf(undefined);
      this.renderRoot.querySelector<HTMLInputElement>(`input[name="place-${first}"]`)?.focus();
      return;
    }
    this.dispatchEvent(new MergeDoneEvent(chosenText(merge, (_conflict, at) => choices[at] ?? 'both')));
  }
}

/** Whether there is the same to decide: what is looked at again and found as it was keeps what its reader chose. */
const isSameMerge = (a: NoteMerge | undefined, b: NoteMerge | undefined): boolean =>
  JSON.stringify(a?.pieces) === JSON.stringify(b?.pieces);

declare global {
  interface HTMLElementTagNameMap {
    'tg-merge': TgMerge;
  }
}
