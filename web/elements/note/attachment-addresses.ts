import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Pictures that browsers draw in an `img`, where nothing in them can run. */
const TYPES: Readonly<Record<string, string>> = {
  png: 'image/png',
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  gif: 'image/gif',
  webp: 'image/webp',
  avif: 'image/avif',
  svg: 'image/svg+xml',
};

/** Gives the notebook's own pictures an address in this page, and takes it back when the element goes. */
export class AttachmentAddresses implements ReactiveController {
  readonly #known = new Map<string, string | undefined>();
  readonly #host: ReactiveControllerHost;
  readonly #read: (path: string) => Promise<Uint8Array | undefined>;
  #turn = 0;

  /** @param read gives the bytes of a file of the notebook. */
  constructor(host: ReactiveControllerHost, read: (path: string) => Promise<Uint8Array | undefined>) {
    this.#host = host;
    this.#read = read;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.forget();
  }

  /** Takes every address back. */
  forget(): void {
    this.#turn += 1;
    for (const address of this.#known.values()) if (address !== undefined) URL.revokeObjectURL(address);
    this.#known.clear();
  }

  /** The address of a picture; undefined while it is read, and for a file that is none. */
  of(path: string): string | undefined {
    const type = TYPES[path.slice(path.lastIndexOf('.') + 1).toLowerCase()];
    if (type === undefined || this.#known.has(path)) return this.#known.get(path);
    this.#known.set(path, undefined);
    const turn = this.#turn;
    void this.#read(path).then((bytes) => {
      if (!bytes || turn !== this.#turn) return;
      this.#known.set(path, URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type })));
      this.#host.requestUpdate();
    });
    return undefined;
  }
}
