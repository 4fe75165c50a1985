import type { FileStamp, NotebookStore, PutFile, PutResult, StoreFailure } from '../../domain/ports.ts';
import { ok, type Result } from '../../domain/result.ts';
import type { FileFinding, NotebookFile } from '../notebook.ts';
import { stamped } from '../stamped.ts';
import type { FoundFiles, Skipped } from './found-files.ts';
import { type FilePlan, type PlannedFile, planFiles } from './plan-files.ts';

/** How far an import is. Everything counted as saved is on disk. */
export interface ImportProgress {
  readonly planned: number;
  readonly saved: number;
}

/** What an import did. */
export interface ImportReport {
  readonly from: string;
  readonly planned: number;
  /** Files written that were not there, that took an older one's place, and that were there already, byte for byte. */
  readonly added: readonly string[];
  readonly replaced: readonly string[];
  readonly unchanged: readonly string[];
  readonly skipped: readonly Skipped[];
  readonly hiddenCount: number;
  /** What was found wrong in the notes that were read. */
  readonly problems: readonly FileFinding[];
  /** Present where the import ended early: why, and what was not read. */
  readonly endedBy?: StoreFailure | 'stopped';
  readonly missing: readonly string[];
}

export interface ImportOptions {
  /** What happens to a file that is there with other bytes; the one replaced stays among its earlier versions. */
  readonly whereDifferent?: 'replace' | 'keep-mine';
  /** Reads written files into the notebook at hand. */
  readonly readIn?: (files: readonly NotebookFile[]) => Promise<void>;
  /** Says what is wrong in the files read in. Asked once all of them are, since what one refers to may come after it. */
  readonly findings?: (paths: readonly string[]) => Promise<readonly FileFinding[]>;
  readonly onProgress?: (progress: ImportProgress) => void;
  /** Asked between batches. */
  readonly isStopped?: () => boolean;
}

/** Files are written together up to this many and this much: few enough that progress is seen, enough that writing is fast. */
const BATCH_FILES = 100;
const BATCH_BYTES = 4 * 1024 * 1024;

/**
 * Reads a folder or zip into the notebook, batch by batch, each whole on disk before the next begins.
 *
 * What is going to be written is written down first, so that after a crash the next start can say what is missing.
 */
export async function importFiles(store: NotebookStore, found: FoundFiles, options: ImportOptions = {}): Promise<ImportReport> {
  return new Import(store, found.from, planFiles(found), options).run();
}

/** The report of an import that could not even begin. */
export function refusedImport(found: FoundFiles, endedBy: StoreFailure): ImportReport {
  const { files, skipped, hiddenCount } = planFiles(found);
  const missing = files.map(({ path }) => path);
  const none = { added: [], replaced: [], unchanged: [], problems: [] };
  return { from: found.from, planned: files.length, ...none, skipped, hiddenCount, endedBy, missing };
}

class Import {
  readonly #store: NotebookStore;
  readonly #from: string;
  readonly #plan: FilePlan;
  readonly #options: ImportOptions;
  readonly #skipped: Skipped[];
  readonly #added: string[] = [];
  readonly #replaced: string[] = [];
  readonly #unchanged: string[] = [];

  constructor(store: NotebookStore, from: string, plan: FilePlan, options: ImportOptions) {
    this.#store = store;
    this.#from = from;
    this.#plan = plan;
    this.#options = options;
    this.#skipped = [...plan.skipped];
  }

  async run(): Promise<ImportReport> {
    const stamps = await this.#store.stamps();
    if (!stamps.ok) return this.#report(this.#plan.files, stamps.error);
    const stored = new Map(stamps.value.map((stamp) => [stamp.path, stamp]));
    const batches = inBatches(asStored(this.#plan.files, stored));
    if (batches.length === 0) return this.#report([]);
    const paths = batches.map((batch) => batch.map(({ path }) => path));
    const planned = await this.#store.planImport({ from: this.#from, batches: paths });
    if (!planned.ok) return this.#report(batches.flat(), planned.error);
    const importId = planned.value;
    this.#tellProgress();
    for (const [batch, files] of batches.entries()) {
      const failure = this.#options.isStopped?.() ? 'stopped' : await this.#writeBatch(files, stored, importId, batch);
      if (failure) {
        // The reader is told here and now what is missing; after a crash the plan would tell them.
        await this.#store.closeImport(importId);
        return this.#report(batches.slice(batch).flat(), failure);
      }
      this.#tellProgress();
    }
    await this.#store.closeImport(importId);
    return this.#report([]);
  }

  async #writeBatch(
    files: readonly PlannedFile[],
    stored: ReadonlyMap<string, FileStamp>,
    importId: string,
    batch: number,
  ): Promise<StoreFailure | undefined> {
    const read = await this.#readBatch(files);
    const before = new Map(read.flatMap(({ path }) => stored.get(path) ?? []).map((stamp) => [stamp.path, stamp]));
    const wanted = this.#options.whereDifferent === 'keep-mine' ? await this.#withoutDifferent(read, before) : ok(read);
    if (!wanted.ok) return wanted.error;
    let puts: readonly PutFile[] = wanted.value.map((file) => ({ ...file, ...basedOn(before.get(file.path)) }));
    let result: PutResult = await this.#store.put(puts, { importId, batch });
    while (!result.ok && result.error === 'conflict') {
      const lost = new Set(result.conflicts.map(({ path }) => path));
      for (const path of lost) this.#skipped.push({ path, reason: 'changed-meanwhile' });
      puts = puts.filter(({ path }) => !lost.has(path));
      result = await this.#store.put(puts, { importId, batch });
    }
    if (!result.ok) return result.error;
    for (const { path, version } of result.value) {
      const earlier = before.get(path);
      (earlier === undefined ? this.#added : earlier.version === version ? this.#unchanged : this.#replaced).push(path);
    }
    await this.#options.readIn?.(
      stamped(
        puts.map(({ path, bytes }) => ({ path, bytes })),
        result.value,
      ),
    );
    return undefined;
  }

  async #readBatch(files: readonly PlannedFile[]): Promise<readonly PutFile[]> {
    const puts: PutFile[] = [];
    for (const { path, found } of files) {
      const read = await found.read();
      if (!read.ok) this.#skipped.push({ path, reason: read.error });
      else puts.push({ path, bytes: read.value, ...(found.modifiedAt !== undefined && { modifiedAt: found.modifiedAt }) });
    }
    return puts;
  }

  /** Leaves out files that lie in the notebook with other bytes. */
  async #withoutDifferent(
    puts: readonly PutFile[],
    before: ReadonlyMap<string, FileStamp>,
  ): Promise<Result<readonly PutFile[], StoreFailure>> {
    const mine = await this.#store.read([...before.keys()]);
    if (!mine.ok) return mine;
    const bytesOf = new Map(mine.value.map(({ path, bytes }) => [path, bytes]));
    const kept = puts.filter(({ path, bytes }) => {
      const own = bytesOf.get(path);
      const isSame = own?.length === bytes.length && own.every((byte, at) => byte === bytes[at]);
      if (own && !isSame) this.#skipped.push({ path, reason: 'kept-mine' });
      return !own || isSame;
    });
    return ok(kept);
  }

  get #savedCount(): number {
    return this.#added.length + this.#replaced.length + this.#unchanged.length;
  }

  #tellProgress(): void {
    this.#options.onProgress?.({ planned: this.#plan.files.length, saved: this.#savedCount });
  }

  async #report(missing: readonly PlannedFile[], endedBy?: StoreFailure | 'stopped'): Promise<ImportReport> {
    return {
      from: this.#from,
      planned: this.#plan.files.length,
      added: this.#added,
      replaced: this.#replaced,
      unchanged: this.#unchanged,
      skipped: this.#skipped,
      hiddenCount: this.#plan.hiddenCount,
      problems: (await this.#options.findings?.([...this.#added, ...this.#replaced, ...this.#unchanged])) ?? [],
      ...(endedBy && { endedBy }),
      missing: missing.map(({ path }) => path),
    };
  }
}

/**
 * Some systems take accents apart in the names of files. One that the notebook has under the other spelling is that file; one that
 * is new keeps its name as it came.
 */
function asStored(files: readonly PlannedFile[], stored: ReadonlyMap<string, unknown>): readonly PlannedFile[] {
  const spelt = new Map([...stored.keys()].map((path) => [path.normalize('NFC'), path]));
  const taken = new Set(files.map(({ path }) => path));
  return files.map((file) => {
    const other = stored.has(file.path) ? undefined : spelt.get(file.path.normalize('NFC'));
    if (other === undefined || taken.has(other)) return file;
    taken.add(other);
    return { ...file, path: other };
  });
}

const basedOn = (stamp: FileStamp | undefined) => (stamp ? { basedOn: stamp.version } : {});

function inBatches(files: readonly PlannedFile[]): readonly (readonly PlannedFile[])[] {
  const batches: PlannedFile[][] = [];
  let size = 0;
  for (const file of files) {
    const last = batches.at(-1);
    if (!last || last.length >= BATCH_FILES || size + file.found.byteCount > BATCH_BYTES) {
      batches.push([file]);
      size = 0;
    } else last.push(file);
    size += file.found.byteCount;
  }
  return batches;
}
