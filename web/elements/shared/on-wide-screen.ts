import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Knows whether the screen shows more colours than an ordinary one, and draws its host anew when it is moved to another. */
export class OnWideScreen implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #wide = globalThis.matchMedia('(color-gamut: p3)');

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** Whether colours of Display P3 are shown as they are. */
  get value(): boolean {
    return this.#wide.matches;
  }

  hostConnected() {
    this.#wide.addEventListener('change', this.#changed);
  }

  hostDisconnected() {
    this.#wide.removeEventListener('change', this.#changed);
  }

  readonly #changed = () => this.#host.requestUpdate();
}
