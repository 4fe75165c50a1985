import type {
  Change,
  EarlierVersion,
  FileStamp,
  NotebookStore,
  PutResult,
  StoredFile,
  StoreEvent,
  StoreFailure,
  Version,
} from '../domain/ports.ts';
import { ok, type Result } from '../domain/result.ts';
import type { Engine } from './engine.ts';
import type { FoundFiles } from './import/found-files.ts';
import type { ImportOptions, ImportReport } from './import/import-files.ts';
import { isNotePath } from './note-path.ts';
import type { NotebookFile } from './notebook.ts';
import { stamped } from './stamped.ts';
import { isPhotoPath } from './photo-path.ts';

/** What happened to the notebook, for whoever shows it. */
export type KeeperEvent =
  | { readonly type: 'changed'; readonly paths: readonly string[]; readonly by: 'this-tab' | 'another-tab' }
  /** The notebook, until now only shown, is kept from here on. */
  | { readonly type: 'kept' }
  | { readonly type: 'ended'; readonly reason: 'terminated' | 'newer-version' };

/** A file for writing, and the version to base the change on; no version while it is not kept. */
export interface OpenedFile {
  readonly bytes: Uint8Array;
  readonly version?: Version;
}

/** How readings of notes are kept, so that the next start need not read those again. */
export interface ReadingsKept {
  /** Changes whenever the program may read a note otherwise than before: what was kept under another is not there. */
  readonly madeBy: string;
  /** Fewer notes than this are read in about the time that readings take. */
  readonly fromNotes?: number;
  /** So many notes have to be read anew before readings are kept again: some seconds' work at the next start. */
  readonly afterNotes?: number;
}

/** Our choice: a thousand notes are read in a second or two, behind a page that already shows. */
const FROM_NOTES = 1000;
/** Our choice: what so many notes take to be read at a start is hardly noticed, and weeks of writing lie between two keepings. */
const AFTER_NOTES = 200;
const packetName = (nth: number): string => `readings:${nth}`;

/** The setting that tells a notebook emptied by its reader from one never begun. */
const BEGUN = 'begun';

/**
 * Where a reader's changes go: first to the store, and once they are on disk, into the notebook at hand. It also brings in what
 * other tabs change.
 *
 * A notebook may be shown without being kept, as the demonstration is, until its reader changes something.
 */
export class Keeper {
  readonly store: NotebookStore;
  readonly #engine: Engine;
  readonly #readings: Required<ReadingsKept> | undefined;
  readonly #listeners = new Set<(event: KeeperEvent) => void>();
  /** What is shown and not kept. */
  #shown: ReadonlyMap<string, Uint8Array> | undefined;
  /** What this tab showed before it was kept: a reader may still be writing on it. */
  #wasShown: ReadonlyMap<string, Uint8Array> = new Map();
  #hearing: Promise<void> = Promise.resolve();
  /** Counts the notebooks opened, so that texts of one before never come into the next. */
  #opening = 0;
  #textsComing: Promise<void> = Promise.resolve();
  /** Notes read since readings were last kept. */
  #readAnew = 0;
  /** Imports under way: what they still bring would be kept again soon after. */
  #imports = 0;
  /** True once the store has ended under us: what is at hand is then all there is to read. */
  #hasEnded = false;

  /** @param readings absent where none are kept. */
  constructor(store: NotebookStore, engine: Engine, readings?: ReadingsKept) {
    this.store = store;
    this.#engine = engine;
    this.#readings = readings && { fromNotes: FROM_NOTES, afterNotes: AFTER_NOTES, ...readings };
    // One after another, so that a later change is never overtaken by an earlier one.
    store.subscribe((event) => {
      this.#hearing = this.#hearing.then(() => this.#hear(event));
    });
  }

  /** Whether the notebook is kept, or only shown. */
  get isKept(): boolean {
    return this.#shown === undefined;
  }

  /**
   * Opens what the store keeps.
   *
   * @returns false where no notebook was begun yet.
   */
  async openKept(): Promise<Result<boolean, StoreFailure>> {
    const [stamps, begun] = await Promise.all([this.store.stamps(), this.store.setting(BEGUN)]);
    if (!stamps.ok) return stamps;
    if (!begun.ok) return begun;
    if (stamps.value.length === 0 && begun.value !== true) return ok(false);
    const opening = await this.#open([]);
    await this.#engine.mention(stamps.value.map(({ path }) => path).filter(isPhotoPath));
    const taken = await this.#takeReadings(stamps.value);
    for await (const batch of this.store.loadAll(({ path }) => !isPhotoPath(path) && !taken.has(path))) {
      if (!batch.ok) return batch;
      await this.#putIn(batch.value);
    }
    if (taken.size > 0) this.#textsComing = this.#bringTexts(taken, opening);
    return ok(true);
  }

  /**
   * Keeps what reading the notes gave, where enough of them were read since it was last kept. For when nobody is waiting; where
   * it cannot be kept, the next start reads the notes.
   */
  async keepReadings(): Promise<void> {
    await this.#textsComing;
    if (!this.#readings || !this.isKept || this.#imports > 0 || this.#readAnew < this.#readings.afterNotes) return;
    const { madeBy, fromNotes } = this.#readings;
    if ((await this.#engine.size()).notes < fromNotes) return;
    const before = this.#readAnew;
    const packets = await this.#engine.readings().catch(() => undefined);
    if (!packets) return;
    // An empty one ends the row: those of a longer one before may lie behind it.
    for (const [nth, bytes] of [...packets, new Uint8Array()].entries()) {
      const kept = await this.store.keepDerived(packetName(nth), { madeBy, bytes });
      if (!kept.ok) return;
    }
    this.#readAnew -= before;
  }

  /** Shows a notebook without keeping it. */
  async show(files: readonly NotebookFile[]): Promise<void> {
    await this.#open(files);
    this.#shown = new Map(files.map(({ path, bytes }) => [path, bytes]));
    this.#wasShown = this.#shown;
  }

  /** Keeps what has only been shown. */
  async keepShown(): Promise<PutResult> {
    const shown = this.#shown;
    if (!shown) return ok([]);
    const begun = await this.store.setting(BEGUN);
    if (!begun.ok) return begun;
    const puts = [...shown].map(([path, bytes]) => ({ path, bytes }));
    const result = begun.value === true ? undefined : await this.store.put(puts);
    if (result?.ok === false && result.error !== 'conflict') return result;
    // Begun, or files in the way: another tab was here first, and its word has not reached us yet.
    if (!result?.ok) await this.#follow();
    else {
      await this.store.keepSetting(BEGUN, true);
      this.#keepFromNow();
    }
    return ok(result?.ok ? result.value : []);
  }

  /** Begins a notebook with nothing in it; what has only been shown goes. */
  async beginEmpty(): Promise<Result<void, StoreFailure>> {
    const begun = await this.store.keepSetting(BEGUN, true);
    if (!begun.ok) return begun;
    await this.#open([]);
    this.#keepFromNow();
    return begun;
  }

  /** A file as it is now. */
  async read(path: string): Promise<OpenedFile | undefined> {
    const shown = this.#shown?.get(path);
    if (shown) return { bytes: shown };
    if (this.#hasEnded) return this.#atHand(path);
    const found = await this.store.read([path]);
    const file = found.ok ? found.value[0] : undefined;
    return file && { bytes: file.bytes, version: file.version };
  }

  /** Writes and removes files, all or none; done means on disk. */
  async write(changes: readonly Change[]): Promise<PutResult> {
    const kept = await this.keepShown();
    if (!kept.ok) return kept;
    const result = await this.store.put(await this.#basedOnShown(changes));
    if (result.ok) await this.#takeIn(changes, result.value);
    return result;
  }

  /** Earlier versions of a file, the newest first. */
  history(path: string): Promise<Result<readonly EarlierVersion[], StoreFailure>> {
    return this.store.history(path);
  }

  /** Makes an earlier version the newest one. */
  async restore(path: string, version: Version, basedOn?: Version): ReturnType<NotebookStore['restore']> {
    const result = await this.store.restore(path, version, basedOn);
    if (result.ok) {
      await this.#load([path]);
      this.#say({ type: 'changed', paths: [path], by: 'this-tab' });
    }
    return result;
  }

  /** Reads a folder or zip in; what has only been shown goes. */
  async importFiles(found: FoundFiles, options: Omit<ImportOptions, 'readIn' | 'findings'> = {}): Promise<ImportReport> {
    const begun = this.isKept ? ok(undefined) : await this.beginEmpty();
    const { importFiles, refusedImport } = await import('./import/import-files.ts');
    if (!begun.ok) return refusedImport(found, begun.error);
    this.#imports += 1;
    const report = await importFiles(this.store, found, {
      ...options,
      readIn: (files) => this.#putAway(files),
      findings: (paths) => this.#engine.findings(paths),
    }).finally(() => (this.#imports -= 1));
    this.#say({ type: 'changed', paths: [...report.added, ...report.replaced], by: 'this-tab' });
    return report;
  }

  /** The whole notebook as a zip, piece by piece; where the store has ended, all that is at hand. */
  async *export(folder: string): AsyncGenerator<Result<Uint8Array, StoreFailure>> {
    const shown = this.#hasEnded ? new Map((await this.#engine.files()).map(({ path, bytes }) => [path, bytes])) : this.#shown;
    const { exportNotebook, exportFiles } = await import('./export-notebook.ts');
    yield* shown ? exportFiles(folder, shown) : exportNotebook(this.store, folder);
  }

  subscribe(listener: (event: KeeperEvent) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async #open(files: readonly NotebookFile[]): Promise<number> {
    const opening = (this.#opening += 1);
    await this.#engine.open(files);
    return opening;
  }

  /** Puts in the notes whose readings were kept and are still true; gives back their files. */
  async #takeReadings(stamps: readonly FileStamp[]): Promise<ReadonlySet<string>> {
    if (!this.#readings || stamps.length < this.#readings.fromNotes) return new Set();
    const packets: Uint8Array[] = [];
    for (;;) {
      const packet = await this.store.derived(packetName(packets.length), this.#readings.madeBy);
      if (!packet.ok || !packet.value || packet.value.length === 0) break;
      packets.push(packet.value);
    }
    if (packets.length === 0) return new Set();
    return new Set(await this.#engine.putReadings(packets, new Map(stamps.map(({ path, version }) => [path, version]))));
  }

  /** Brings the texts of notes that were put in without; the first answers do not wait for them. */
  async #bringTexts(paths: ReadonlySet<string>, opening: number): Promise<void> {
    const isOver = () => opening !== this.#opening;
    let all = true;
    try {
      for await (const batch of this.store.loadAll(({ path }) => paths.has(path))) {
        if (isOver()) return;
        if (batch.ok) await this.#engine.putTexts(batch.value.map(asNotebookFile));
        else all = false;
      }
    } catch {
      all = false;
    }
    if (!isOver()) await this.#engine.endTexts(all);
  }

  async #putIn(files: readonly NotebookFile[]): Promise<void> {
    this.#readAnew += files.filter(({ path }) => isNotePath(path)).length;
    await this.#engine.put(files.map(asNotebookFile));
  }

  #keepFromNow(): void {
    if (this.#shown === undefined) return;
    this.#shown = undefined;
    this.#say({ type: 'kept' });
  }

  /** Another tab began the notebook while this one only showed something: from now on both have the same. */
  async #follow(): Promise<void> {
    this.#shown = undefined;
    await this.openKept();
    this.#say({ type: 'kept' });
  }

  /** Someone who wrote in what was only shown based it on those bytes: if they are what is kept now, on that version. */
  async #basedOnShown(changes: readonly Change[]): Promise<readonly Change[]> {
    const open = changes.filter(({ path, basedOn }) => basedOn === undefined && this.#wasShown.has(path));
    if (open.length === 0) return changes;
    const kept = await this.store.read(open.map(({ path }) => path));
    const byPath = new Map(kept.ok ? kept.value.map((file) => [file.path, file]) : []);
    return changes.map((change): Change => {
      const [before, now] = [this.#wasShown.get(change.path), byPath.get(change.path)];
      return change.basedOn === undefined && before && now && isSame(before, now) ? { ...change, basedOn: now.version } : change;
    });
  }

  async #takeIn(changes: readonly Change[], stamps: readonly FileStamp[]): Promise<void> {
    const written = changes.flatMap((change) => ('bytes' in change ? [{ path: change.path, bytes: change.bytes }] : []));
    const removed = changes.filter((change) => 'removed' in change).map(({ path }) => path);
    await this.#engine.remove(removed);
    await this.#putAway(stamped(written, stamps));
    this.#say({ type: 'changed', paths: changes.map(({ path }) => path), by: 'this-tab' });
  }

  /** Puts files that are in the store into the notebook at hand; photos stay in the store. */
  async #putAway(files: readonly NotebookFile[]): Promise<void> {
    await this.#engine.mention(files.map(({ path }) => path).filter(isPhotoPath));
    await this.#putIn(files.filter(({ path }) => !isPhotoPath(path)));
  }

  async #atHand(path: string): Promise<OpenedFile | undefined> {
    const file = (await this.#engine.files()).find((one) => one.path === path);
    return file && { bytes: file.bytes };
  }

  async #load(paths: readonly string[]): Promise<void> {
    const found = await this.store.read(paths);
    if (found.ok) await this.#putAway(found.value);
  }

  async #hear(event: StoreEvent): Promise<void> {
    if (event.type === 'ended') {
      this.#hasEnded = true;
      this.#say(event);
      return;
    }
    if (!this.isKept) await this.#follow();
    else {
      await this.#engine.remove(event.removed);
      await this.#load(event.files.map(({ path }) => path));
    }
    this.#say({ type: 'changed', paths: [...event.removed, ...event.files.map(({ path }) => path)], by: 'another-tab' });
  }

  #say(event: KeeperEvent): void {
    for (const listener of this.#listeners) listener(event);
  }
}

const isSame = (bytes: Uint8Array, file: StoredFile): boolean =>
  bytes.length === file.bytes.length && bytes.every((byte, at) => byte === file.bytes[at]);

const asNotebookFile = ({ path, bytes, version }: NotebookFile): NotebookFile => ({
  path,
  bytes,
  ...(version !== undefined && { version }),
});
