import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { paletteCss, paletteCsv, type PaletteToFile } from '../../notebook/palette-files.ts';
import { withDensity } from '../../notebook/png-density.ts';
import type { DisplayView } from '../../notebook/views/display-view.ts';
import { boardAltText } from '../../notebook/words/board-words.ts';
import { drawnAsPng } from '../palette/drawn-as-png.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { TakeAway, takeAwayStyles } from '../take-out/take-away.ts';
import { boardSvg } from './board-svg.ts';

/** Points on an inch of the picture, as printers ask for. @source common practice. */
const DOTS_PER_INCH = 300;
const MM_PER_INCH = 25.4;

/**
 * @summary Takes a board away: as a picture at its true size, as the values of its colours, in words.
 * @csspart ways - The ways to take it.
 * @csspart words - The board in words.
 */
@customElement('tg-board-files')
export class TgBoardFiles extends LitElement {
  static override styles = [
    baseStyles,
    takeAwayStyles,
    css`
      summary {
        padding-block: var(--tg-space-2);
      }
      p {
        max-inline-size: var(--tg-measure);
      }
    `,
  ];

  /** The board to take away. */
  @property({ attribute: false }) display?: DisplayView;
  /** The language of its captions. */
  @property() language = 'en';
  /** Windows where real cloth hangs. */
  @property({ type: Boolean }) windows = false;
  /** The day on its foot. */
  @property() day = '';

  readonly #away = new TakeAway(this);

  override render() {
    const { display } = this;
    return html`<div part="ways" role="group" aria-label="Take the board away as a file">
        <span>Take it away as</span>
        ${this.#button('SVG', () => this.#text('svg', 'image/svg+xml', this.#drawing()))}
        ${this.#button(`PNG, ${DOTS_PER_INCH} dpi`, () => void this.#picture())}
        ${this.#button('its colours as CSV', () => this.#text('csv', 'text/csv', display ? paletteCsv(coloursOf(display)) : ''))}
        ${this.#button('as CSS', () => this.#text('css', 'text/css', display ? paletteCss(coloursOf(display)) : ''))}
        ${this.#button('in words', () => this.#text('txt', 'text/plain', display ? `${boardAltText(display)}\n` : ''))}
      </div>
      <p role="status">${this.#away.said}</p>
      ${
        display
          ? html`<details>
              <summary>The board in words, for whoever cannot see it</summary>
              <p part="words">${boardAltText(display)}</p>
            </details>`
          : ''
      }`;
  }

  #button(words: string, take: () => void) {
    return html`<button type="button" class="plain" ?disabled=${!this.display} @click=${take}>${words}</button>`;
  }

  #drawing(): string {
    const { display, language, windows, day } = this;
    return display ? boardSvg(display, { language, windows, day }) : '';
  }

  #text(ending: string, sort: string, text: string) {
    if (this.display) this.#away.text(`${this.display.id}.${ending}`, sort, text);
  }

  async #picture() {
    const { display } = this;
    if (!display) return;
    const { widthMm, heightMm } = display.sheet;
    const drawn = await drawnAsPng(this.#drawing(), { width: widthMm, height: heightMm }, DOTS_PER_INCH / MM_PER_INCH);
    if (!drawn) {
      this.#away.say('This browser could not draw so large a picture; the SVG shows the same.');
      return;
    }
    const dense = withDensity(new Uint8Array(await drawn.arrayBuffer()), DOTS_PER_INCH);
    this.#away.file(`${display.id}.png`, new Blob([dense], { type: 'image/png' }));
  }
}

/** The board's colours as a palette's: each as the sample that hangs there has it. */
const coloursOf = ({ place, reading, colours }: DisplayView): PaletteToFile => ({
  place,
  reading,
  couldBeTried: [],
  cloths: colours.flatMap(({ cloth, hex, lab10 }) => (cloth && lab10 ? [{ ...cloth, hex, lab: lab10 }] : [])),
});

declare global {
  interface HTMLElementTagNameMap {
    'tg-board-files': TgBoardFiles;
  }
}
