/**
 * Marks imports that are under way, so that another tab does not take them for abandoned: a lock is let go
 * by the browser itself when its tab ends, in whatever way.
 */
export class ImportLocks {
  readonly #prefix: string;
  readonly #release = new Map<string, () => void>();

  constructor(prefix: string) {
    this.#prefix = prefix;
  }

  /** Takes the lock and keeps it until `release`. */
  async hold(importId: string): Promise<void> {
    await new Promise<void>((taken) => {
      void navigator.locks
        .request(this.#prefix + importId, () => {
          taken();
          return new Promise<void>((release) => this.#release.set(importId, release));
        })
        .catch(() => undefined);
    });
  }

  release(importId: string): void {
    this.#release.get(importId)?.();
    this.#release.delete(importId);
  }

  releaseAll(): void {
    for (const importId of this.#release.keys()) this.release(importId);
  }

  /** Imports that some tab is busy with. */
  async held(): Promise<ReadonlySet<string>> {
    const { held = [] } = await navigator.locks.query();
    return new Set(held.flatMap(({ name = '' }) => (name.startsWith(this.#prefix) ? [name.slice(this.#prefix.length)] : [])));
  }
}
