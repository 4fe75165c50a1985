import type { NotebookStore } from '../domain/ports.ts';
import type { Engine } from '../notebook/engine.ts';
import type { Finder, FindingProgress, TypedFinding } from '../notebook/ports-finding.ts';
import type { FoundView } from '../notebook/views/found-view.ts';
import { KEPT_INDEX } from '../search/kept-index.ts';
import { SearchClient } from '../search/search-client.ts';
import '../elements/finding/find-request-event.ts';

/** Notes sent to the index at once (our choice: some tens of milliseconds each, so that the engine can answer in between). */
const AT_ONCE = 200;
/** The same while nobody waits for it and somebody may be typing. */
const AT_ONCE_IDLE = 40;
/**
 * From which share of edited notes on the index is made anew, and never below so many. An edited note costs some 5 ms whenever a
 * session first looks for something, a note of a new index 2 ms, once and unnoticed: at a twentieth and 2,000 notes a reader waits
 * half a second at most.
 */
const RENEWED_FROM = { share: 1 / 20, notes: 50 } as const;
/** From which share on it is the shorter way to make it anew at once. */
const MADE_ANEW_FROM = 1 / 3;

/** The part of the engine that finding needs. */
export type FindingEngine = Pick<Engine, 'documents' | 'noteStamps' | 'found'>;

/** Where the index is kept between sessions. */
export type IndexStore = Pick<NotebookStore, 'derived' | 'keepDerived'>;

/**
 * Finds notes: the full text in its worker, names and filters in the engine. The worker starts when somebody first looks for
 * something, with the index that was kept and the notes it lacks; from then on it follows what changes. An index is made in a
 * worker of its own, so that nobody who types waits for it.
 */
export class SearchingFinder implements Finder {
  readonly #engine: FindingEngine;
  readonly #start: () => Worker;
  readonly #store: () => IndexStore | undefined;
  #client: SearchClient | undefined;
  #filled: Promise<void> | undefined;
  #following: Promise<void> = Promise.resolve();
  #turn = 0;
  /** Counts the notebooks that were opened: an index made of another one is of no use. */
  #notebook = 0;
  /** What changed since an index began to be made; undefined where none is. */
  #since: Set<string> | undefined;
  /** Where those who wait for the first filling are told how far it is. */
  #tell: ((progress: FindingProgress) => void) | undefined;

  /** @param store where the index is kept; gives undefined while the notebook is not kept itself. */
  constructor(engine: FindingEngine, startWorker: () => Worker, store: () => IndexStore | undefined = () => undefined) {
    this.#engine = engine;
    this.#start = startWorker;
    this.#store = store;
  }

  async find(typed: TypedFinding, progress?: (progress: FindingProgress) => void): Promise<FoundView | undefined> {
    const turn = ++this.#turn;
    this.#tell = progress;
    const words = typed.words.trim();
    const hits = words === '' ? [] : await this.#hits(words);
    if (!hits || turn !== this.#turn) return undefined;
    const found = await this.#engine.found(typed, hits);
    return turn === this.#turn ? found : undefined;
  }

  /** Takes in what changed in these files; whoever looks for something meanwhile waits for it. */
  follow(paths: readonly string[]): Promise<void> {
    for (const path of paths) this.#since?.add(path);
    this.#following = this.#following.then(() => this.#takeIn(paths));
    return this.#following;
  }

  async #takeIn(paths: readonly string[]): Promise<void> {
    // Nobody has looked for anything yet: the first who does takes everything in as it is then.
    if (!this.#filled) return;
    const notebook = this.#notebook;
    await this.#filled;
    const documents = await this.#engine.documents(paths);
    const client = this.#client;
    if (!client || notebook !== this.#notebook) return;
    const there = new Set(documents.map(({ file }) => file));
    await client.remove(paths.filter((path) => !there.has(path)));
    this.#renewWhenIdle(client, await client.put(documents));
  }

  /** Forgets every note: another notebook was opened. */
  async forget(): Promise<void> {
    this.#notebook += 1;
    this.#filled = undefined;
    await this.#client?.clear();
  }

  async #hits(words: string) {
    // Another notebook may be opened while this one is taken in.
    for (let filled: Promise<void> | undefined; filled === undefined || filled !== this.#filled;) {
      filled = this.#filled ??= this.#fill();
      await filled.catch((fault: unknown) => this.#failed(filled, fault));
    }
    await this.#following;
    return this.#client?.query(words);
  }

  /** What could not be taken in is tried again when somebody next looks for something. */
  #failed(filled: Promise<void> | undefined, fault: unknown): never {
    if (filled === this.#filled) this.#filled = undefined;
    throw fault;
  }

  async #fill(): Promise<void> {
    const notebook = this.#notebook;
    const client = (this.#client ??= new SearchClient(this.#start()));
    const stamps = await this.#engine.noteStamps();
    const kept = await this.#store()?.derived(KEPT_INDEX.name, KEPT_INDEX.madeBy);
    if (notebook !== this.#notebook) return;
    const lacking = kept?.ok && kept.value ? await client.open(bufferOf(kept.value), stamps) : undefined;
    if (!lacking || lacking.length > stamps.length * MADE_ANEW_FROM) return this.#renew(client, false);
    for (let done = 0; done < lacking.length; done += AT_ONCE) {
      this.#tell?.({ done, of: lacking.length });
      const documents = await this.#engine.documents(lacking.slice(done, done + AT_ONCE));
      if (notebook !== this.#notebook) return;
      await client.put(documents);
    }
    this.#renewWhenIdle(client, stamps.length);
  }

  /** Makes the index anew, puts it in the place of the one before, and keeps it. */
  async #renew(client: SearchClient, unnoticed: boolean): Promise<void> {
    const notebook = this.#notebook;
    const since = (this.#since = new Set<string>());
    const worker = this.#start();
    const maker = new SearchClient(worker);
    const atOnce = unnoticed ? AT_ONCE_IDLE : AT_ONCE;
    try {
      const files = (await this.#engine.noteStamps()).map(([file]) => file);
      for (let done = 0; done < files.length && notebook === this.#notebook; done += atOnce) {
        if (unnoticed) await untilIdle();
        else this.#tell?.({ done, of: files.length });
        await maker.take(await this.#engine.documents(files.slice(done, done + atOnce)));
      }
      const store = this.#store();
      const [fresh, copy] = await maker.freeze(store ? 2 : 1);
      if (!fresh || notebook !== this.#notebook) return;
      await client.adopt(fresh, [...since]);
      if (store && copy) void keep(store, copy);
    } finally {
      worker.terminate();
      if (this.#since === since) this.#since = undefined;
    }
  }

  #renewWhenIdle(client: SearchClient, size: number): void {
    if (this.#since || client.editedCount <= Math.max(RENEWED_FROM.notes, size * RENEWED_FROM.share)) return;
    // What fails here is tried again after the next change; until then nothing is missing.
    this.#renew(client, true).catch(() => undefined);
  }
}

/** Keeps an index. Where there is no room, the next session makes it anew. */
const keep = (store: IndexStore, bytes: ArrayBuffer): Promise<unknown> =>
  store.keepDerived(KEPT_INDEX.name, { madeBy: KEPT_INDEX.madeBy, bytes: new Uint8Array(bytes) }).catch(() => undefined);

/** The buffer of bytes that fill it. */
const bufferOf = (bytes: Uint8Array): ArrayBuffer =>
  bytes.buffer instanceof ArrayBuffer && bytes.byteLength === bytes.buffer.byteLength ? bytes.buffer : bytes.slice().buffer;

const untilIdle = (): Promise<void> =>
  new Promise((done) => {
    const { requestIdleCallback: whenIdle } = globalThis as Partial<Pick<typeof globalThis, 'requestIdleCallback'>>;
    if (whenIdle) whenIdle(() => done());
    else setTimeout(done, 100);
  });

/** Answers the wishes to find something that arrive at a place in the page. */
export const answerFinding = (target: GlobalEventHandlersTarget, finder: Finder): void =>
  target.addEventListener('tg-find-request', (event) => event.respondWith(finder.find(event.detail.typed, event.detail.onProgress)));

type GlobalEventHandlersTarget = Pick<HTMLElement, 'addEventListener'>;
