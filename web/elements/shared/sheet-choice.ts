import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { PageSize } from '../on-show/page-size.ts';

/** Papers of ISO 216 that a page can be printed on, in mm. */
const SHEETS = {
  A4: { words: 'A4', widthMm: 210, heightMm: 297 },
  A3: { words: 'A3', widthMm: 297, heightMm: 420 },
} as const;
type Sheet = keyof typeof SHEETS;

/** White edge of every page, as the whole site has it at the sides. */
const MARGIN_MM = 16;

/** Lets a reader choose the paper before printing: a browser's own choice of paper is overruled by the page. */
export class SheetChoice implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #size: PageSize;
  #sheet: Sheet = 'A4';

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.#size = new PageSize(host);
    host.addController(this);
  }

  hostConnected(): void {
    this.#choose(this.#sheet);
  }

  /** Between the margins, in mm. */
  get widthMm(): number {
    return SHEETS[this.#sheet].widthMm - 2 * MARGIN_MM;
  }

  /** The choice and the button; `what` is printed: "this comparison". */
  template(what: string): TemplateResult {
    return html`<p class="print-ways">
      <label
        >Paper
        <select @change=${({ target }: Event) => this.#choose((target as HTMLSelectElement).value as Sheet)}>
          ${Object.entries(SHEETS).map(([sheet, { words }]) => html`<option value=${sheet} ?selected=${sheet === this.#sheet}>${words}</option>`)}
        </select></label
      >
      <button type="button" @click=${() => globalThis.print()}>Print ${what} (key P)</button>
    </p>`;
  }

  #choose(sheet: Sheet): void {
    this.#sheet = sheet;
    this.#size.set(SHEETS[sheet], MARGIN_MM);
    this.#host.requestUpdate();
  }
}
