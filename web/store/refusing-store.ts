import type { PutResult, StoreFailure } from '../domain/ports.ts';
import { failed, type Result } from '../domain/result.ts';
import { MemoryDisk, MemoryStore } from './memory-store.ts';
import type { StoreSurroundings } from './store-surroundings.ts';

/** An empty notebook that nothing can be written to, and that says why: what it took would be lost with the page. */
export class RefusingStore extends MemoryStore {
  readonly #refused: Promise<{ readonly ok: false; readonly error: StoreFailure }>;

  constructor(why: StoreFailure, around: StoreSurroundings) {
    super(new MemoryDisk(), around);
    this.#refused = Promise.resolve(failed(why));
  }

  override put(): Promise<PutResult> {
    return this.#refused;
  }

  override keepSetting(): Promise<Result<void, StoreFailure>> {
    return this.#refused;
  }

  override planImport(): Promise<Result<string, StoreFailure>> {
    return this.#refused;
  }
}
