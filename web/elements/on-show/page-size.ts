import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** The size of the paper while an element is on the page: a size can only be said for the whole document. */
export class PageSize implements ReactiveController {
  readonly #sheet = new CSSStyleSheet();

  constructor(host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected(): void {
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, this.#sheet];
  }

  hostDisconnected(): void {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== this.#sheet);
  }

  /** @param size in mm; undefined leaves the paper to the reader. @param marginMm white edge of every page. */
  set(size: { readonly widthMm: number; readonly heightMm: number } | undefined, marginMm: number): void {
    this.#sheet.replaceSync(size ? `@page { size: ${size.widthMm}mm ${size.heightMm}mm; margin: ${marginMm}mm; }` : '');
  }
}
