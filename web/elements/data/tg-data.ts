import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { styles } from './tg-data.styles.ts';
import './tg-data-in.ts';
import './tg-data-out.ts';

/**
 * @summary Other people's data into the notebook, and the notebook's data out of it.
 */
@customElement('tg-data')
export class TgData extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;
  /** True where the notebook can only be read: data only goes out. */
  @property({ type: Boolean, attribute: 'read-only' }) readOnly = false;

  /** A note of the id that this page's address has. */
  @state() private namesake = false;

  readonly #looking = new LatestTask<boolean>((isThere) => (this.namesake = isThere));

  override willUpdate(changed: PropertyValues<this>) {
    if (this.engine && (changed.has('engine') || changed.has('version')))
      this.#looking.run(this.engine.note('data').then((note) => note !== undefined));
  }

  override render() {
    return html`<p class="quiet"><a href="#/notebook">The notebook</a></p>
      <h1>Data in and out</h1>
      ${this.namesake ? html`<p><a href="#/notebook/data?note=1">The note “data”</a> is another thing.</p>` : nothing}
      ${this.readOnly ? nothing : html`<tg-data-in .engine=${this.engine} .version=${this.version}></tg-data-in>`}
      <tg-data-out .engine=${this.engine}></tg-data-out>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-data': TgData;
  }
}
