import type { StoreEvent } from '../domain/ports.ts';

type Changed = Extract<StoreEvent, { readonly type: 'changed' }>;

/** Tells the other tabs of one notebook what this one wrote. Its own words do not come back to it. */
export class TabChannel {
  readonly #channel: BroadcastChannel | undefined;

  constructor(name: string, hear: (event: Changed) => void) {
    this.#channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(name) : undefined;
    this.#channel?.addEventListener('message', (event: MessageEvent<Changed>) => hear(event.data));
  }

  tell(event: Changed): void {
    this.#channel?.postMessage(event);
  }

  close(): void {
    this.#channel?.close();
  }
}
