import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { DraftNote } from '../../notebook/lab-note.ts';
import type { SaveOutcome } from '../../notebook/ports-writing.ts';
import type { TypedLab } from '../../notebook/typed-lab.ts';
import type { LabExplanation } from '../../notebook/views/lab-view.ts';
import { NoteSaveRequestEvent } from '../write/write-events.ts';
import { styles } from './tg-laboratory.styles.ts';

/**
 * @summary Keeps a laboratory's report as a textile note: a draft to read over, then saved.
 * @event {NoteSaveRequestEvent} tg-note-save-request - The reader wants the draft saved.
 */
@customElement('tg-lab-keep')
export class TgLabKeep extends LitElement {
  static override styles = styles;

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The report to keep. */
  @property({ attribute: false }) report?: TypedLab;
  /** What it may be taken for. */
  @property({ attribute: false }) explanations: readonly LabExplanation[] = [];

  /** The explanation the reader takes it for, by its place in the list; none at first, because a dye on a thread is a claim. */
  @state() private taken = -1;
  @state() private draft?: DraftNote;
  @state() private told = '';
  @query('textarea') private area?: HTMLTextAreaElement;

  override willUpdate(changed: PropertyValues<this>) {
    if (!changed.has('explanations')) return;
    this.taken = -1;
    this.draft = undefined;
  }

  override render() {
    return html`<section class="block keep">
      <h3>Keep it as a textile note</h3>
      <fieldset>
        ${[{ title: 'compounds only, no dye taken' }, ...this.explanations].map(
          ({ title }, at) =>
            html`<label
              ><input type="radio" name="taken" .checked=${this.taken === at - 1} @change=${() => (this.taken = at - 1)} />${title}</label
            >`,
        )}
      </fieldset>
      <p class="small">A dyestuff on a thread counts as a find of it there and then. Take one only if you would stand behind it.</p>
      <p><button type="button" @click=${this.#drafted}>Draft the note</button></p>
      ${
        this.draft
          ? html`<label class="small"
                >${this.draft.path}
                <textarea rows="16" spellcheck="false" .value=${this.draft.text}></textarea>
              </label>
              <p><button type="button" @click=${this.#save}>Save this note</button></p>`
          : nothing
      }
      <p role="status">${this.told}</p>
    </section>`;
  }

  #drafted() {
    const dyes = this.explanations[this.taken]?.dyes.map(({ id }) => id) ?? [];
    if (!this.engine || !this.report) return;
    void this.engine.labDraft(this.report, dyes).then((draft) => {
      if (draft) this.draft = draft;
      this.told = draft ? '' : 'The report cannot be understood yet; see above.';
    });
  }

  #save() {
    if (!this.draft || !this.area) return;
    const request = new NoteSaveRequestEvent({ path: this.draft.path, text: this.area.value });
    this.dispatchEvent(request);
    if (!request.answer) {
      this.told = 'Nothing here can save it: copy the text into a file of that name.';
      return;
    }
    void request.answer.then((outcome) => (this.told = outcomeSentence(outcome, this.draft?.path ?? '')));
  }
}

function outcomeSentence(outcome: SaveOutcome, path: string): string {
  if (outcome.is === 'saved') return `Saved as ${path}.`;
  if (outcome.is === 'taken') return `There is a file ${path} already. Draft the note again for another name.`;
  return 'It could not be saved. The text above is kept until you leave this page.';
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-lab-keep': TgLabKeep;
  }
}
