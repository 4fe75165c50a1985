import { html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { DataForm } from '../../notebook/export/data-out.ts';
import { dataWords } from '../../notebook/words/data-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { saveFile } from '../take-out/save-file.ts';
import { styles } from './tg-data.styles.ts';

/**
 * @summary The notebook's data in the forms that others read, each a file to keep.
 */
@customElement('tg-data-out')
export class TgDataOut extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;

  @state() private making?: DataForm;
  @state() private said = '';

  override render() {
    return html`<section aria-labelledby="out">
      <h2 id="out">Out</h2>
      <p>Files for other people and programs. The notebook itself, photos and all, goes out as a zip of its own page.</p>
      <ul class="forms">
        ${(Object.keys(dataWords) as DataForm[]).map(
          (form) =>
            html`<li>
              <button type="button" ?disabled=${this.making !== undefined} @click=${() => this.#take(form)}>
                ${dataWords[form].title}
              </button>
              <p class="quiet">${dataWords[form].says}</p>
            </li>`,
        )}
      </ul>
      <p role="status">${this.making === undefined ? this.said : 'Writing the file.'}</p>
    </section>`;
  }

  async #take(form: DataForm) {
    if (!this.engine) return;
    this.making = form;
    const file = await this.engine.dataOut(form).catch(() => undefined);
    this.making = undefined;
    if (file) saveFile(file.name, new Blob([file.text], { type: file.type }));
    this.said = file ? `${file.name} went to your downloads.` : 'The file could not be written. Nothing was changed; try again.';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-data-out': TgDataOut;
  }
}
