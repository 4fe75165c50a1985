import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { endedWords } from '../../notebook/words/import-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import '../swatch/tg-swatch.ts';
import { type Beginning, BeginRequestEvent } from './begin-events.ts';

/** The grey of the example cloth: no dye's colour. */
const GREY = '#9a9a9a';

/**
 * @summary The ways to begin a notebook: a first note, a starter shelf, the demonstration, nothing at all.
 * @event {BeginRequestEvent} tg-begin-request - The reader chose a beginning.
 * @csspart ways - The beginnings to choose from.
 */
@customElement('tg-begin')
export class TgBegin extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      .teach {
        display: grid;
        grid-template-columns: 5rem minmax(0, 1fr);
        gap: var(--tg-space-5);
        align-items: start;
        max-inline-size: var(--tg-measure);
        --tg-swatch-size: 4rem;
      }
      h2 {
        margin: 0 0 var(--tg-space-3);
        font: 600 var(--tg-type-2) / 1.2 var(--tg-font-reading);
      }
      p {
        max-inline-size: var(--tg-measure);
        margin: 0 0 var(--tg-space-3);
      }
      ul {
        max-inline-size: var(--tg-measure);
        margin: var(--tg-space-4) 0 0;
        padding: 0;
        list-style: none;
      }
      li {
        padding-block: var(--tg-space-3);
        border-block-start: var(--tg-line-1) solid var(--tg-hairline);
      }
      li p {
        margin: var(--tg-space-1) 0 0;
        color: var(--tg-ink-quiet);
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      p a {
        color: inherit;
      }
      button,
      a.first,
      label {
        display: inline-flex;
        align-items: center;
        min-block-size: var(--tg-touch);
        color: inherit;
        font: 600 var(--tg-type-base) / 1.3 var(--tg-font-label);
      }
      button {
        padding: var(--tg-space-1) var(--tg-space-4);
        border: var(--tg-line-1) solid var(--tg-edge);
        border-radius: 2px;
        background: none;
        cursor: pointer;
      }
      li label {
        gap: var(--tg-space-2);
        margin-inline-start: var(--tg-space-3);
        font-weight: 400;
      }
      @media (max-width: 30rem) {
        li label {
          margin-inline-start: 0;
        }
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  /** `shown`: the demonstration is only shown; `empty`: a notebook is kept and has no note. */
  @property() state: 'shown' | 'empty' = 'shown';

  @state() private isBusy = false;
  @state() private claims = true;
  @state() private said = '';

  override render() {
    return html`${this.state === 'empty' ? this.#teaching() : html`<h2>Begin a notebook of your own</h2>`}
      ${
        this.state === 'empty'
          ? nothing
          : html`<p>
              What lies here is the demonstration. It is kept in this browser from your first change on, or you begin with something else:
            </p>`
      }
      <ul part="ways" aria-label="Ways to begin">
        <li>
          <button type="button" ?disabled=${this.isBusy} @click=${() => this.#begin({ with: 'shelf', claims: this.claims })}>
            A starter shelf
          </button>
          <label>
            <input
              type="checkbox"
              .checked=${this.claims}
              @change=${(event: Event) => (this.claims = (event.target as HTMLInputElement).checked)}
            />
            with claims, each with its source
          </label>
          <p>
            Dyestuffs with their names in several languages, mordants, assistants, processes, fibres, places, periods, wearers and
            colour-words, out of the demonstration. Without claims it says what things are called, and nothing of where and when they were
            to hand.
          </p>
        </li>
        ${
          this.state === 'empty'
            ? html`<li>
                <button type="button" ?disabled=${this.isBusy} @click=${() => this.#begin({ with: 'demonstration' })}>
                  The demonstration, Wadholm Quay
                </button>
                <p>A whole notebook to look around in. Its people, trials and measurements are invented.</p>
              </li>`
            : html`<li>
                <button type="button" ?disabled=${this.isBusy} @click=${() => this.#begin({ with: 'nothing' })}>An empty notebook</button>
                <p>The demonstration goes from this page; you can bring it back as long as the notebook is empty.</p>
              </li>`
        }
        <li>
          <p>Or read in a folder or a zip, ${this.state === 'empty' ? html`in the <a href="#/notebook">notebook</a>` : 'on this page'}.</p>
        </li>
      </ul>
      <p role="status">${this.isBusy ? 'Laying it out.' : this.said}</p>`;
  }

  #teaching() {
    return html`<div class="teach">
      <tg-swatch .hex=${GREY} fibre="wool" verdict="plausible" seed="example" label="An example cloth, undyed grey"></tg-swatch>
      <div>
        <h2>An empty notebook</h2>
        <p>Write down one thing you know: a dyestuff, a find, a pot you ran. Everything else follows from such notes.</p>
        <a class="first" href="#/notebook?new=note">Write a first note</a>
      </div>
    </div>`;
  }

  async #begin(beginning: Beginning) {
    const wish = new BeginRequestEvent(beginning);
    this.isBusy = true;
    this.said = '';
    this.dispatchEvent(wish);
    const begun = await wish.answer;
    this.isBusy = false;
    if (begun?.is !== 'begun') this.said = 'It could not be begun. Nothing was changed; try again.';
    else if (begun.report?.endedBy !== undefined) this.said = endedWords[begun.report.endedBy];
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-begin': TgBegin;
  }
}
