import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** How dates read, asked for once each and kept; the host is drawn again when a reading comes. */
export class DateReadings implements ReactiveController {
  readonly #known = new Map<string, string | undefined>();
  readonly #host: ReactiveControllerHost;
  readonly #read: (text: string) => Promise<string | undefined> | undefined;

  constructor(host: ReactiveControllerHost, read: (text: string) => Promise<string | undefined> | undefined) {
    this.#host = host;
    this.#read = read;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#known.clear();
  }

  /** Words for what was typed; '' while it is read or where nothing was typed. */
  of(text: string): string {
    const typed = text.trim();
    if (typed === '') return '';
    if (!this.#known.has(typed)) {
      this.#known.set(typed, '');
      void this.#read(typed)?.then((reading) => {
        this.#known.set(typed, reading);
        this.#host.requestUpdate();
      });
    }
    const reading = this.#known.get(typed);
    return reading === undefined
      ? 'Cannot be read as a date, nor as a period of this notebook.'
      : reading === ''
        ? ''
        : `Read as ${reading}.`;
  }
}
