import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Knows when the page is being printed, and has the element drawn for paper before it is laid out. */
export class OnPaper implements ReactiveController {
  /** True from just before the page is printed until just after. */
  value = false;

  /**
   * @param host the element; hand `this`.
   * @param updateNow draws the element without waiting: paper is laid out right after the event. Hand `() => this.performUpdate()`.
   */
  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly updateNow: () => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('beforeprint', this.#printing);
    addEventListener('afterprint', this.#printing);
  }

  hostDisconnected(): void {
    removeEventListener('beforeprint', this.#printing);
    removeEventListener('afterprint', this.#printing);
  }

  readonly #printing = ({ type }: Event): void => {
    this.value = type === 'beforeprint';
    this.host.requestUpdate();
    this.updateNow();
  };
}
