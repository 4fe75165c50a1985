import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { paletteCss, paletteCsv, paletteFileStem, paletteSvg, paletteSvgSize, type PaletteToFile } from '../../notebook/palette-files.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { TakeAway, takeAwayStyles } from '../take-out/take-away.ts';
import { drawnAsPng } from './drawn-as-png.ts';

/** How each text is made, and of what sort it is. */
const TEXTS = {
  csv: ['CSV, for a spreadsheet', 'text/csv', paletteCsv],
  svg: ['SVG', 'image/svg+xml', paletteSvg],
  css: ['CSS text', 'text/css', paletteCss],
} as const;

/**
 * @summary Takes a palette away as a file: values, a picture, or CSS colours.
 * @csspart ways - The ways to take it.
 */
@customElement('tg-palette-files')
export class TgPaletteFiles extends LitElement {
  static override styles = [
    baseStyles,
    takeAwayStyles,
    css`
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  /** The palette to take away. */
  @property({ attribute: false }) palette?: PaletteToFile;

  readonly #away = new TakeAway(this);

  override render() {
    return html`<div part="ways" role="group" aria-label="Take the palette away as a file">
        <span>Take it away as</span>
        ${(['csv', 'svg'] as const).map((format) => this.#button(TEXTS[format][0], () => this.#text(format)))}
        ${this.#button('PNG', () => void this.#picture())} ${this.#button(TEXTS.css[0], () => this.#text('css'))}
      </div>
      <p role="status">${this.#away.said}</p>`;
  }

  #button(words: string, take: () => void) {
    return html`<button type="button" class="plain" ?disabled=${!this.palette} @click=${take}>${words}</button>`;
  }

  #text(format: keyof typeof TEXTS) {
    if (!this.palette) return;
    const [, sort, make] = TEXTS[format];
    this.#away.text(nameOf(this.palette, format), sort, make(this.palette));
  }

  async #picture() {
    const { palette } = this;
    if (!palette) return;
    const drawn = await drawnAsPng(paletteSvg(palette), paletteSvgSize(palette));
    if (drawn) this.#away.file(nameOf(palette, 'png'), drawn);
    else this.#away.say('This browser could not draw the picture; the SVG shows the same.');
  }
}

const nameOf = (palette: PaletteToFile, ending: string): string => `${paletteFileStem(palette)}.${ending}`;

declare global {
  interface HTMLElementTagNameMap {
    'tg-palette-files': TgPaletteFiles;
  }
}
