import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Watches how wide a part of an element is, in whole pixels, and updates the element when that changes. */
export class WidthOf implements ReactiveController {
  /** 0 until it has been seen. */
  value = 0;
  readonly #watcher = new ResizeObserver(([entry]) => this.#seen(entry?.contentRect.width ?? 0));
  #watched: Element | undefined;

  /**
   * @param host the element; hand `this`.
   * @param part the part to watch, found again after every update.
   */
  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly part: () => Element | null,
  ) {
    host.addController(this);
  }

  hostUpdated(): void {
    const part = this.part() ?? undefined;
    if (part === this.#watched) return;
    this.#watcher.disconnect();
    this.#watched = part;
    if (part) this.#watcher.observe(part);
  }

  hostDisconnected(): void {
    this.#watcher.disconnect();
    this.#watched = undefined;
  }

  hostConnected(): void {
    this.host.requestUpdate();
  }

  #seen(width: number): void {
    const whole = Math.floor(width);
    if (whole === this.value) return;
    this.value = whole;
    this.host.requestUpdate();
  }
}
