import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import { editOutcomeText } from '../../notebook/words/edit-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { NoteSaveRequestEvent } from '../write/write-events.ts';
import { onShowStyles } from './on-show.styles.ts';

/**
 * @summary Begins a display: a kept palette is chosen, and its board becomes a note of its own.
 * @event {NoteSaveRequestEvent} tg-note-save-request - The new display is to be saved.
 */
@customElement('tg-display-begin')
export class TgDisplayBegin extends LitElement {
  static override styles = [baseStyles, onShowStyles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The palette that is chosen at first, by id. */
  @property() palette = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private palettes?: readonly { readonly id: string; readonly title: string }[];
  @state() private said = '';

  readonly #listing = new LatestTask<NonNullable<TgDisplayBegin['palettes']>>((palettes) => (this.palettes = palettes));

  override willUpdate(changed: PropertyValues<this>) {
    if (this.engine && (changed.has('engine') || changed.has('version'))) this.#listing.run(this.engine.keptPalettes());
  }

  override render() {
    const { palettes } = this;
    if (!palettes) return nothing;
    if (palettes.length === 0)
      return html`<p>A board shows a kept palette, and there is none yet. <a href="#/notebook?new=palette">Write one</a></p>`;
    return html`<form class="asked screen" @submit=${this.#begin}>
        <label
          >A new board for the palette
          <select name="palette">
            ${palettes.map(({ id, title }) => html`<option value=${id} ?selected=${id === this.palette}>${title}</option>`)}
          </select></label
        >
        <button type="submit">Begin its board</button>
      </form>
      <p role="status" class=${this.said === '' ? '' : 'notice'}>${this.said}</p>`;
  }

  readonly #begin = async (event: SubmitEvent) => {
    event.preventDefault();
    if (!(event.target instanceof HTMLFormElement)) return;
    const palette = new FormData(event.target).get('palette');
    const draft = typeof palette === 'string' ? await this.engine?.displayDraft(palette) : undefined;
    if (!draft) return;
    const request = new NoteSaveRequestEvent({ path: draft.path, text: draft.text });
    this.dispatchEvent(request);
    this.said = editOutcomeText(await request.answer);
    if (this.said === '') globalThis.location.hash = `#/on-show/${encodeURIComponent(draft.id)}`;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-display-begin': TgDisplayBegin;
  }
}
