import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { paletteCss, paletteCsv, paletteFileStem, paletteSvg, paletteSvgSize, type PaletteToFile } from '../../notebook/palette-files.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { saveFile } from '../take-out/save-file.ts';
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
    css`
      :host {
        display: block;
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      div {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--tg-space-5);
        align-items: center;
      }
      button {
        min-block-size: var(--tg-touch);
      }
      p {
        margin: 0;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  /** The palette to take away. */
  @property({ attribute: false }) palette?: PaletteToFile;

  @state() private outcome = '';

  override render() {
    return html`<div part="ways" role="group" aria-label="Take the palette away as a file">
        <span>Take it away as</span>
        ${(['csv', 'svg'] as const).map((format) => this.#button(TEXTS[format][0], () => this.#text(format)))}
        ${this.#button('PNG', () => void this.#picture())} ${this.#button(TEXTS.css[0], () => this.#text('css'))}
      </div>
      <p role="status">${this.outcome}</p>`;
  }

  #button(words: string, take: () => void) {
    return html`<button type="button" class="plain" ?disabled=${!this.palette} @click=${take}>${words}</button>`;
  }

  #text(format: keyof typeof TEXTS) {
    if (!this.palette) return;
    const [, sort, make] = TEXTS[format];
    this.#save(format, new Blob([make(this.palette)], { type: `${sort};charset=utf-8` }));
  }

  async #picture() {
    const { palette } = this;
    if (!palette) return;
    const drawn = await drawnAsPng(paletteSvg(palette), paletteSvgSize(palette));
    if (drawn) this.#save('png', drawn);
    else this.outcome = 'This browser could not draw the picture; the SVG shows the same.';
  }

  #save(ending: string, file: Blob) {
    if (!this.palette) return;
    const name = `${paletteFileStem(this.palette)}.${ending}`;
    saveFile(name, file);
    this.outcome = `${name} went to your downloads.`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-palette-files': TgPaletteFiles;
  }
}
