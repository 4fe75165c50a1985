import { css, html, LitElement, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import { LABEL_SHEETS, labelBoxes } from '../../domain/display/label-sheet.ts';
import { qrCode } from '../../notebook/qr-code.ts';
import { webAddress } from '../../notebook/web-address.ts';
import type { BoardColour, DisplayView } from '../../notebook/views/display-view.ts';
import { colourAddress } from '../publish/published-files.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { captionWords } from './caption-block.ts';
import { onShowStyles } from './on-show.styles.ts';
import { PageSize } from './page-size.ts';

/**
 * @summary A display's captions as labels on common label sheets, at their true size in print.
 * @csspart sheet - One sheet of labels.
 */
@customElement('tg-label-sheet')
export class TgLabelSheet extends LitElement {
  static override styles = [
    baseStyles,
    onShowStyles,
    css`
      :host {
        container-type: inline-size;
      }
      .sheet {
        --_mm: calc(100cqi / 210);
        position: relative;
        inline-size: calc(210 * var(--_mm));
        block-size: calc(297 * var(--_mm));
        margin-block-end: var(--tg-space-5);
        border: 1px solid var(--tg-edge);
        background: var(--tg-surface);
      }
      .label {
        position: absolute;
        inset-inline-start: calc(var(--_x) * var(--_mm));
        inset-block-start: calc(var(--_y) * var(--_mm));
        inline-size: calc(var(--_bw) * var(--_mm));
        block-size: calc(var(--_bh) * var(--_mm));
        padding: calc(3 * var(--_mm));
        overflow: hidden;
        outline: calc(0.1 * var(--_mm)) dotted var(--tg-edge);
        font: calc(var(--_type) * var(--_mm)) / 1.25 var(--tg-font-reading);
      }
      .label h3 {
        font: 700 1.1em / 1.2 var(--tg-font-reading);
      }
      .label p {
        margin: 0;
      }
      .label .quiet {
        font: 0.85em / 1.3 var(--tg-font-label);
      }
      /* Black on white, also in an evening view: readers of codes know nothing else. */
      .code {
        float: inline-end;
        inline-size: calc(16 * var(--_mm));
        block-size: calc(16 * var(--_mm));
        margin-inline-start: calc(1.5 * var(--_mm));
        background: #fff;
        fill: #000;
      }
      @media print {
        .sheet {
          --_mm: 1mm;
          margin: 0;
          border: 0;
          break-after: page;
        }
        .sheet:last-child {
          break-after: auto;
        }
        .label {
          outline: 0;
        }
      }
    `,
  ];

  /** The display whose captions are printed. */
  @property({ attribute: false }) display?: DisplayView;
  /** Which of the common sheets, counted from 0. */
  @property({ type: Number }) size = 2;
  /** Labels already taken off the first sheet. */
  @property({ type: Number }) used = 0;

  readonly #paper = new PageSize(this);

  override willUpdate(_changed: PropertyValues<this>) {
    this.#paper.set({ widthMm: 210, heightMm: 297 }, 0);
  }

  override render() {
    const labels = LABEL_SHEETS[this.size] ?? LABEL_SHEETS[0];
    const captions = this.display?.colours.flatMap((colour) => colour.captions.map((caption) => ({ colour, caption }))) ?? [];
    if (!labels || captions.length === 0) return html`<p>No captions are written yet, so there are no labels.</p>`;
    const boxes = labelBoxes(labels, captions.length, this.used);
    const pages = [...new Set(boxes.map(({ page }) => page))];
    const longest = Math.max(...captions.map(({ caption }) => caption.text.length + caption.headline.length));
    const type = typeFor(labels.label, longest, webAddress(this.display?.publishedAt ?? '') !== undefined);
    return html`
      <div class="asked screen">
        <label
          >Labels
          <select @change=${this.#sized}>
            ${LABEL_SHEETS.map(({ name }, at) => html`<option value=${at} ?selected=${at === this.size}>${name}</option>`)}
          </select></label
        >
        <label
          >Already used on the first sheet<input type="number" min="0" max="23" .value=${`${this.used}`} @change=${this.#begun}
        /></label>
      </div>
      ${type < LEAST_TYPE_MM ? html`<p class="notice screen">The longest caption would be set smaller than 7 points on these labels: take a larger one.</p>` : nothing}
      ${pages.map(
        (page) =>
          html`<div class="sheet" part="sheet">
            ${captions.map(({ colour, caption }, at) => {
              const place = boxes[at];
              if (place?.page !== page) return nothing;
              const { x, y, widthMm, heightMm } = place.box;
              return html`<div
                class="label"
                lang=${caption.lang}
                style=${styleMap({ '--_x': `${x}`, '--_y': `${y}`, '--_bw': `${widthMm}`, '--_bh': `${heightMm}`, '--_type': `${Math.max(LEAST_TYPE_MM, type)}` })}
              >
                ${this.#code(colour)}
                <h3>${caption.headline}</h3>
                <p>${captionWords(caption.text, colour.latin)}</p>
                <p class="quiet" lang="en">
                  ${[colour.code, colour.cloth?.verdictWord, `v${caption.version}`].filter((part) => part).join(' · ')}
                </p>
              </div>`;
            })}
          </div>`,
      )}
    `;
  }

  /** A code that leads from the label to its colour's published page, where the display has one. */
  #code({ key }: BoardColour) {
    const published = webAddress(this.display?.publishedAt ?? '');
    const address = published && colourAddress(published, key);
    const code = address === undefined ? undefined : qrCode(address);
    if (!code) return nothing;
    return html`<svg class="code" viewBox=${`0 0 ${code.size} ${code.size}`} role="img" aria-label=${`Leads to ${address ?? ''}`}>
      ${svg`<path d=${code.path}></path>`}
    </svg>`;
  }

  #sized(event: Event) {
    if (event.target instanceof HTMLSelectElement) this.size = Number(event.target.value);
  }

  #begun(event: Event) {
    if (event.target instanceof HTMLInputElement && event.target.validity.valid) this.used = event.target.valueAsNumber || 0;
  }
}

/** 7 points: below it nobody reads a label. */
const LEAST_TYPE_MM = 2.5;

/** What a code takes of a label with the gap beside and the words it breaks below, in mm². */
const CODE_MM2 = 17.5 * 18;

/** The type in which the longest caption, beside a code if there is one, fills four fifths of a label; at most 10 points. */
function typeFor(
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
  characters: number,
  coded: boolean,
): number {
  const room = (widthMm - 6) * (heightMm - 6) - (coded ? CODE_MM2 : 0);
  return Math.min(3.5, Math.sqrt((room * 0.8) / ((characters + 60) * 0.5 * 1.25)));
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-label-sheet': TgLabelSheet;
  }
}
