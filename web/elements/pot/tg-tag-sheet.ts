import { css, html, LitElement, nothing, svg, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { TagView } from '../../notebook/views/pot-view.ts';
import { COPY_WORDS } from '../../notebook/words/pot-log-words.ts';
import { PageSize } from '../on-show/page-size.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { fieldStyles } from '../write/field.styles.ts';
import { TagAddressRequestEvent } from './pot-events.ts';
import { potStyles } from './pot.styles.ts';
import { qrDrawing, qrSize } from './qr-drawing.ts';

type Copy = keyof typeof COPY_WORDS;
const COPIES = Object.keys(COPY_WORDS) as readonly Copy[];
/** Until somebody says otherwise only what goes into the pot gets a tag. */
const USUAL_COPIES: Readonly<Record<Copy, number>> = { skein: 1, master: 0, working: 0, display: 0, strip: 0 };
/** Light, wash and rub each spoil a strip: fewer than three are no set. */
const LEAST_STRIPS = 3;
const MOST_COPIES = 24;

/**
 * @summary Tags for the skeins of pots, to be printed before dyeing: code, QR, what it is; copies of a sample share the code.
 * @event {TagAddressRequestEvent} tg-tag-address-request - Asks for the address on the tags, or changes it.
 * @csspart tags - The tags.
 */
@customElement('tg-tag-sheet')
export class TgTagSheet extends LitElement {
  static override styles = [
    baseStyles,
    fieldStyles,
    potStyles,
    css`
      .tags {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(19rem, 100%), 1fr));
        gap: var(--tg-space-3);
        margin-block-start: var(--tg-space-4);
      }
      .tag {
        display: grid;
        grid-template-columns: 1rem 7rem minmax(0, 1fr);
        gap: var(--tg-space-3);
        align-items: center;
        padding: var(--tg-space-2) var(--tg-space-3);
        border: var(--tg-line-1) dashed var(--tg-edge);
        background: var(--tg-surface);
        font: var(--tg-type-small) / 1.35 var(--tg-font-label);
        break-inside: avoid;
      }
      .hole {
        inline-size: 0.9rem;
        block-size: 0.9rem;
        border: var(--tg-line-1) solid var(--tg-edge);
        border-radius: 50%;
      }
      .tag svg {
        inline-size: 7rem;
        block-size: 7rem;
        forced-color-adjust: none;
      }
      .tag .code {
        font-size: var(--tg-type-1);
      }
      .copies {
        display: flex;
        flex-wrap: wrap;
        gap: var(--tg-space-3) var(--tg-space-5);
      }
      .copies .field {
        flex: 0 1 10rem;
      }
      .copies legend {
        margin-block-end: var(--tg-space-2);
      }
      @media print {
        .tags {
          grid-template-columns: 1fr 1fr;
          gap: 0;
          margin: 0;
        }
        .tag {
          grid-template-columns: 4mm 26mm minmax(0, 1fr);
          gap: 2mm;
          min-block-size: 30mm;
          padding: 1mm 2mm;
          font-size: 8pt;
        }
        .tag svg {
          inline-size: 26mm;
          block-size: 26mm;
        }
        .tag .code {
          font-size: 13pt;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Ids of the trials whose skeins get tags. */
  @property({ attribute: false }) trials: readonly string[] = [];
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private tags?: readonly TagView[];
  @state() private copies: Readonly<Record<Copy, number>> = USUAL_COPIES;
  @state() private address = '';

  readonly #listing = new LatestTask<readonly TagView[]>((tags) => (this.tags = tags));
  readonly #paper = new PageSize(this);

  override connectedCallback() {
    super.connectedCallback();
    void this.#ask();
  }

  override willUpdate(changed: PropertyValues<this>) {
    this.#paper.set({ widthMm: 210, heightMm: 297 }, 10);
    if (this.engine && (['engine', 'trials', 'version'] as const).some((name) => changed.has(name)))
      this.#listing.run(this.engine.tags(this.trials));
  }

  override render() {
    const { tags } = this;
    return html`
      <div class="screen">
        <p class="quiet"><a href="#/samples">Samples and tags</a> · <a href="#/pot">The pot</a></p>
        <h1>Tags</h1>
        <p>
          Print them before anything is wet, on cloth or spun plastic that stands boiling; paper does for samples that stay dry. Every copy
          of a skein has its code.
        </p>
        <fieldset class="copies" style="border:0;padding:0;margin:0">
          <legend class="label">How many tags of each skein; strips are at least three, for light, wash and rub</legend>
          ${COPIES.map(
            (copy) =>
              html`<div class="field">
                <label for=${`copies-${copy}`}>${COPY_WORDS[copy].name}</label>
                <input
                  id=${`copies-${copy}`}
                  type="number"
                  min="0"
                  max=${MOST_COPIES}
                  step="1"
                  aria-describedby=${`says-${copy}`}
                  .value=${String(this.copies[copy])}
                  @change=${(event: Event) => this.#copied(copy, event)}
                />
                <p class="hint" id=${`says-${copy}`}>${COPY_WORDS[copy].says}</p>
              </div>`,
          )}
        </fieldset>
        <div class="asked">
          <div class="field">
            <label for="address">Address before the code in the QR, if there is one</label>
            <input id="address" type="url" placeholder="none: the code alone" .value=${this.address} @change=${this.#addressed} />
          </div>
          <button type="button" @click=${() => globalThis.print()}>Print the tags (key P)</button>
        </div>
        <p class="hint">Without an address the QR holds the code alone, and nothing on the tag says whose it is.</p>
      </div>
      ${tags?.length === 0 ? html`<p role="alert">None of these trials has a skein with a code. <a href="#/dye-day">Plan a dye day</a> to give codes out.</p>` : nothing}
      <ul class="tags" part="tags">
        ${tags?.flatMap((tag) => COPIES.flatMap((copy) => Array.from({ length: this.copies[copy] }, (_, nth) => html`<li class="tag">${this.#tag(tag, copy, nth + 1)}</li>`)))}
      </ul>
      <p class="screen ways">${this.trials.map((id) => html`<a href=${`#/pot/${encodeURIComponent(id)}`}>At the pot: ${id}</a>`)}</p>
    `;
  }

  #tag({ code, recipe, fibre, date, cautions }: TagView, copy: Copy, nth: number) {
    const text = this.address === '' ? code : `${this.address}#/samples/${encodeURIComponent(code)}`;
    const size = qrSize(text);
    return html`<span class="hole" aria-hidden="true"></span>
      <svg viewBox=${`0 0 ${size} ${size}`} role="img" aria-label=${`QR of ${text}`} shape-rendering="crispEdges">
        ${svg`${qrDrawing(text)}`}
      </svg>
      <div>
        <p class="code">${code}</p>
        <p>${recipe}</p>
        <p>
          ${[fibre, date, copy === 'skein' ? '' : COPY_WORDS[copy].name, this.copies[copy] > 1 ? `${nth} of ${this.copies[copy]}` : ''].filter((part) => part !== '').join(' · ')}
        </p>
        ${cautions.map((caution) => html`<p>${caution}</p>`)}
      </div>`;
  }

  #copied(copy: Copy, event: Event) {
    if (!(event.target instanceof HTMLInputElement)) return;
    const typed = Math.min(MOST_COPIES, Math.max(0, Math.floor(event.target.valueAsNumber || 0)));
    const count = copy === 'strip' && typed > 0 ? Math.max(LEAST_STRIPS, typed) : typed;
    event.target.value = String(count);
    this.copies = { ...this.copies, [copy]: count };
  }

  #addressed(event: Event) {
    if (!(event.target instanceof HTMLInputElement)) return;
    void this.#ask(event.target.validity.valid ? event.target.value.trim() : '');
  }

  async #ask(set?: string) {
    const request = new TagAddressRequestEvent(set);
    this.dispatchEvent(request);
    this.address = (await request.answer) ?? set ?? '';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-tag-sheet': TgTagSheet;
  }
}
