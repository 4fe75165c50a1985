import { html, LitElement, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { ImportProgress } from '../../notebook/import/import-files.ts';
import { type ImportLine, type ImportView, importView } from '../../notebook/views/import-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { ReadInRequestEvent } from './read-in-events.ts';
import { styles } from './tg-read-in.styles.ts';
import { type LookedInto, waysIn } from './ways-in.ts';

/** A list longer than this is cut, with a word about the rest. Our choice, because nobody reads more at once. */
const MOST_LINES = 200;

/**
 * @summary Reads a folder or a zip into the notebook: a progress one can stop, then a report, file by file where something is to be said.
 * @event {ReadInRequestEvent} tg-read-in-request - The reader wants this read in; the answer is a report.
 * @csspart report - What was read, what not, and why.
 */
@customElement('tg-read-in')
export class TgReadIn extends LitElement {
  static override styles = [baseStyles, styles];

  @state() private progress?: ImportProgress;
  @state() private report?: ImportView;
  @state() private trouble = '';
  @state() private keepsMine = false;

  #isStopped = false;

  override render() {
    return html`
      <h2>Read in a folder or a zip</h2>
      <p>Notes, photos and spectra are copied into this browser. Nothing leaves your machine, and the folder stays as it is.</p>
      ${this.progress ? this.#progressTemplate(this.progress) : this.#waysTemplate()}
      <div role="status">${this.trouble === '' ? nothing : html`<p>${this.trouble}</p>`} ${this.#reportTemplate()}</div>
    `;
  }

  #waysTemplate() {
    return html`
      <div class="ways">${waysIn((look) => void this.#readIn(look))}</div>
      <fieldset>
        <legend>Where the notebook has another text under the same name</legend>
        <label
          ><input type="radio" name="different" .checked=${!this.keepsMine} @change=${() => (this.keepsMine = false)} /> take the new one,
          keep mine as an earlier version</label
        >
        <label><input type="radio" name="different" .checked=${this.keepsMine} @change=${() => (this.keepsMine = true)} /> keep mine</label>
      </fieldset>
    `;
  }

  #progressTemplate({ planned, saved }: ImportProgress) {
    return html`
      <progress aria-label="Files saved" max=${planned} .value=${saved}></progress>
      <p data-saved=${saved}>${saved.toLocaleString()} of ${planned.toLocaleString()} saved</p>
      <button type="button" @click=${() => (this.#isStopped = true)}>Stop</button>
    `;
  }

  #reportTemplate() {
    if (!this.report) return nothing;
    const { sentences, skipped, problems, missing } = this.report;
    return html`
      <section part="report" aria-label="Report">
        ${sentences.map((sentence) => html`<p>${sentence}</p>`)} ${this.#listTemplate('To put right', problems)}
        ${this.#listTemplate('Not read', skipped)}
        ${this.#listTemplate(
          'Missing',
          missing.map((path) => ({ path, says: '' })),
        )}
      </section>
    `;
  }

  #listTemplate(title: string, lines: readonly ImportLine[]) {
    if (lines.length === 0) return nothing;
    const rest = lines.length - MOST_LINES;
    return html`
      <h3>${title}</h3>
      <ul>
        ${lines
          .slice(0, MOST_LINES)
          .map(
            ({ path, says, address }) =>
              html`<li>
                <span class="path">${address === undefined ? path : html`<a href=${address}>${path}</a>`}</span
                >${says === '' ? '' : `: ${says}`}
              </li>`,
          )}
        ${rest > 0 ? html`<li>and ${rest.toLocaleString()} more</li>` : nothing}
      </ul>
    `;
  }

  async #readIn(look: () => Promise<LookedInto>) {
    this.report = undefined;
    this.trouble = '';
    this.#isStopped = false;
    const looked = await look();
    if ('trouble' in looked) {
      this.trouble = looked.trouble;
      return;
    }
    const { found } = looked;
    this.progress = { planned: found.files.length, saved: 0 };
    const wish = new ReadInRequestEvent({
      found,
      whereDifferent: this.keepsMine ? 'keep-mine' : 'replace',
      onProgress: (progress) => (this.progress = progress),
      isStopped: () => this.#isStopped,
    });
    this.dispatchEvent(wish);
    const report = await wish.answer;
    this.progress = undefined;
    this.report = report && importView(report);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-read-in': TgReadIn;
  }
}
