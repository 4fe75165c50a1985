import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Keeps the screen from going dark while an element wants it, where the browser can; a page that was hidden asks again. */
export class KeepAwake implements ReactiveController {
  /** True while the screen is kept on. */
  isAwake = false;
  #lock: WakeLockSentinel | undefined;
  #isWanted = false;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected(): void {
    document.addEventListener('visibilitychange', this.#shown);
  }

  hostDisconnected(): void {
    document.removeEventListener('visibilitychange', this.#shown);
    this.want(false);
  }

  /** Asks for the screen to stay on, or lets it go. */
  want(isWanted: boolean): void {
    if (isWanted === this.#isWanted) return;
    this.#isWanted = isWanted;
    if (isWanted) void this.#ask();
    else void this.#lock?.release();
  }

  readonly #shown = (): void => {
    if (this.#isWanted && document.visibilityState === 'visible') void this.#ask();
  };

  async #ask(): Promise<void> {
    const { wakeLock } = navigator as { readonly wakeLock?: WakeLock };
    try {
      this.#lock = await wakeLock?.request('screen');
    } catch {
      // Refused on a low battery, or hidden meanwhile: the page says that the screen may go dark.
      this.#lock = undefined;
    }
    if (!this.#isWanted) void this.#lock?.release();
    this.#lock?.addEventListener('release', () => this.#set(false), { once: true });
    this.#set(this.#lock !== undefined && !this.#lock.released);
  }

  #set(isAwake: boolean): void {
    if (this.isAwake === isAwake) return;
    this.isAwake = isAwake;
    this.host.requestUpdate();
  }
}
