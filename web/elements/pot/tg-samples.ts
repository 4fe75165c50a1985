import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { CodeView, PotLine } from '../../notebook/views/pot-view.ts';
import { freeCodesText, logInWords } from '../../notebook/words/pot-log-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { fieldStyles } from '../write/field.styles.ts';
import { type LogBroughtIn, LogInRequestEvent } from './pot-events.ts';
import { potStyles } from './pot.styles.ts';
import { type ScannedEvent } from './tg-scan.ts';
import './tg-scan.ts';

/**
 * @summary Samples by their codes: from a skein to its pot and back, tags to print, logs of other machines to bring in.
 * @event {LogInRequestEvent} tg-log-in-request - The log of another machine is brought in.
 * @csspart found - Where a code leads.
 * @csspart pots - Pots whose skeins have codes.
 */
@customElement('tg-samples')
export class TgSamples extends LitElement {
  static override styles = [baseStyles, fieldStyles, potStyles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** A code, as typed or scanned. */
  @property() code?: string;
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;
  /** What stands above: the page of the pot shows the same list. */
  @property() heading = 'Samples and tags';

  @state() private pots?: readonly PotLine[];
  @state() private found?: CodeView;
  @state() private brought?: LogBroughtIn;

  readonly #listing = new LatestTask<readonly PotLine[]>((pots) => (this.pots = pots));
  readonly #finding = new LatestTask<CodeView | undefined>((found) => (this.found = found));

  override willUpdate(changed: PropertyValues<this>) {
    const { engine, code } = this;
    if (!engine || !(['engine', 'code', 'version'] as const).some((name) => changed.has(name))) return;
    this.#listing.run(engine.pots());
    this.#finding.run(code === undefined ? Promise.resolve(undefined) : engine.code(code));
  }

  override render() {
    return html`
      <h1>${this.heading}</h1>
      <p class="ways screen">
        <a href="#/dye-day">Plan a dye day</a><a href="#/trials">Trials, lots and tests</a><a href="#/recipes">Recipes</a>
      </p>
      <form class="asked" @submit=${this.#typed}>
        <div class="field">
          <label for="code">The code on a tag</label>
          <input id="code" name="code" autocomplete="off" autocapitalize="characters" placeholder="26-014-3-L" .value=${this.code ?? ''} />
        </div>
        <button type="submit">Find its pot</button>
        <tg-scan @tg-scanned=${this.#scanned}></tg-scan>
      </form>
      ${this.found ? html`<section part="found" aria-live="polite">${this.#found(this.found)}</section>` : nothing}
      <h2>Pots</h2>
      ${
        this.pots?.length === 0
          ? html`<p>
              No pot has codes of this kind yet. <a href="#/dye-day">Plan a dye day</a>: its pots get a code for each skein, and tags to
              print before anything is wet.
            </p>`
          : nothing
      }
      <ul class="lines" part="pots">
        ${this.pots?.map((pot) => html`<li>${this.#pot(pot)}</li>`)}
      </ul>
      <h2 class="screen">Bring a log in</h2>
      <p class="screen">
        A log that was handed on from a phone: one file. A pot that is here already is merged by its id; nothing of either is lost.
      </p>
      <div class="field screen">
        <label for="log-in">A log’s file</label>
        <input id="log-in" type="file" accept=".zip,.md,.txt" @change=${this.#broughtIn} />
      </div>
      ${
        this.brought
          ? html`<p role="status">
              ${logInWords[this.brought.is]} ${freeCodesText(this.brought.free ?? [])}
              ${this.brought.id === undefined ? nothing : html`<a href=${`#/pot/${encodeURIComponent(this.brought.id)}`}>The pot</a>`}
              ${
                this.brought.is === 'differ' || this.brought.is === 'beside'
                  ? html`<a href="#/notebook?share=1">Compare the versions</a>`
                  : nothing
              }
            </p>`
          : nothing
      }
    `;
  }

  #found(found: CodeView) {
    if (found.is !== 'one' && found.is !== 'several') return html`<p class="problem" role="alert">${found.says}</p>`;
    if (found.is === 'several')
      return html`<p class="problem" role="alert">${found.says}</p>
        <ul class="lines">
          ${found.trials.map(({ id, title }) => html`<li><a href=${`#/pot/${encodeURIComponent(id)}`}>${title}</a></li>`)}
        </ul>`;
    const { skein, pot, recipe, recipeTitle } = found;
    return html`<h2>${skein.code}</h2>
      <p>
        ${skein.hex === undefined ? nothing : html`<span class="dab" style=${`--_dab:${skein.hex}`} aria-hidden="true"></span>`}Skein
        ${skein.nth + 1} of ${pot.codes.length} in <a href=${`#/pot/${encodeURIComponent(pot.id)}`}>${pot.title}</a>,
        ${[skein.grams, skein.fibre, pot.date, pot.stateWord].filter((part) => part !== '').join(', ')}.
        ${recipe === '' ? nothing : html`After <a href=${`#/recipes/${encodeURIComponent(recipe)}`}>${recipeTitle}</a>.`}
        <a href=${`#/notebook/${encodeURIComponent(pot.id)}`}>Its trial note</a>.
      </p>
      ${
        pot.codes.length < 2
          ? nothing
          : html`<p class="quiet">From the same pot:</p>
              <p class="codes">
                ${pot.codes
                  .filter((code) => code !== skein.code)
                  .map((code) => html`<a class="code" href=${`#/samples/${encodeURIComponent(code)}`}>${code}</a>`)}
              </p>`
      }`;
  }

  #pot({ id, title, stateWord, date, codes }: PotLine) {
    return html`<a href=${`#/pot/${encodeURIComponent(id)}`}>${title}</a>
      <span class="quiet">${[date, stateWord].filter((part) => part !== '').join(' · ')}</span>
      <p class="codes">
        ${codes.map((code) => html`<a class="code" href=${`#/samples/${encodeURIComponent(code)}`}>${code}</a>`)}
        <a class="quiet" href=${`#/samples?tags=${encodeURIComponent(id)}`} aria-label=${`Tags of ${title}`}>Tags</a>
      </p>`;
  }

  #typed(event: Event) {
    event.preventDefault();
    const code = this.renderRoot.querySelector<HTMLInputElement>('#code')?.value.trim() ?? '';
    if (code !== '') this.#goTo(code);
  }

  #scanned({ detail: { text } }: ScannedEvent) {
    this.#goTo(/#\/samples\/([^?]+)/.exec(text)?.[1] ?? text);
  }

  #goTo(code: string) {
    globalThis.location.hash = `#/samples/${encodeURIComponent(code)}`;
  }

  async #broughtIn(event: Event) {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (!file) return;
    const request = new LogInRequestEvent(file.name, new Uint8Array(await file.arrayBuffer()));
    this.dispatchEvent(request);
    this.brought = (await request.answer) ?? { is: 'failed' };
    input.value = '';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-samples': TgSamples;
  }
}
