import type { FolderStamp } from '../../domain/folder-port.ts';
import type { NotebookStore, Version } from '../../domain/ports.ts';

/** A file as it was when the notebook and the folder were last alike. */
export interface SeenFile {
  readonly version: Version;
  readonly byteCount: number;
  readonly modifiedAt: number;
}

const SETTING = 'folder-seen';

/** What the notebook and its folder had in common, file by file; kept, so that the next start knows which side changed. */
export class SeenFiles {
  readonly #store: NotebookStore;
  #files = new Map<string, SeenFile>();
  #isChanged = false;

  constructor(store: NotebookStore) {
    this.#store = store;
  }

  /** Reads what was kept; anything it cannot read counts as never seen. */
  async load(): Promise<void> {
    const kept = await this.#store.setting(SETTING);
    if (kept.ok && kept.value instanceof Map) this.#files = new Map(kept.value as ReadonlyMap<string, SeenFile>);
  }

  get(path: string): SeenFile | undefined {
    return this.#files.get(path);
  }

  get paths(): readonly string[] {
    return [...this.#files.keys()];
  }

  /** Both have this now. */
  set({ path, byteCount, modifiedAt }: FolderStamp, version: Version): void {
    const before = this.#files.get(path);
    if (before?.version === version && before.byteCount === byteCount && before.modifiedAt === modifiedAt) return;
    this.#files.set(path, { version, byteCount, modifiedAt });
    this.#isChanged = true;
  }

  /** Neither has it any more. */
  forget(path: string): void {
    if (this.#files.delete(path)) this.#isChanged = true;
  }

  /** Begins anew, as for another folder. */
  clear(): void {
    this.#isChanged ||= this.#files.size > 0;
    this.#files.clear();
  }

  async keep(): Promise<void> {
    if (!this.#isChanged) return;
    const kept = await this.#store.keepSetting(SETTING, new Map(this.#files));
    if (kept.ok) this.#isChanged = false;
  }
}
