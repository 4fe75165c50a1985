import type { Engine } from '../notebook/engine.ts';
import type { Finder, FindingProgress, TypedFinding } from '../notebook/ports-finding.ts';
import type { FoundView } from '../notebook/views/found-view.ts';
import { SearchClient } from '../search/search-client.ts';
import '../elements/finding/find-request-event.ts';

/** Notes sent to the index at once (our choice: some tens of milliseconds each, so that the engine can answer in between). */
const AT_ONCE = 200;

/** The part of the engine that finding needs. */
export type FindingEngine = Pick<Engine, 'documents' | 'noteStamps' | 'found'>;

/**
 * Finds notes: the full text in its worker, names and filters in the engine. The worker starts, and takes the notes in, when
 * somebody first looks for something; from then on it follows what changes.
 */
export class SearchingFinder implements Finder {
  readonly #engine: FindingEngine;
  readonly #start: () => Worker;
  #client: SearchClient | undefined;
  #filled: Promise<void> | undefined;
  #following: Promise<void> = Promise.resolve();
  #turn = 0;
  /** Where those who wait for the first filling are told how far it is. */
  #tell: ((progress: FindingProgress) => void) | undefined;

  constructor(engine: FindingEngine, startWorker: () => Worker) {
    this.#engine = engine;
    this.#start = startWorker;
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
    this.#following = this.#following.then(() => this.#takeIn(paths));
    return this.#following;
  }

  async #takeIn(paths: readonly string[]): Promise<void> {
    // Nobody has looked for anything yet: the first who does takes everything in as it is then.
    if (!this.#filled) return;
    await this.#filled;
    const documents = await this.#engine.documents(paths);
    const there = new Set(documents.map(({ file }) => file));
    await this.#client?.remove(paths.filter((path) => !there.has(path)));
    await this.#client?.put(documents);
  }

  /** Forgets every note: another notebook was opened. */
  async forget(): Promise<void> {
    await this.#client?.clear();
    this.#filled = undefined;
  }

  async #hits(words: string) {
    this.#filled ??= this.#fill();
    await this.#filled;
    await this.#following;
    return this.#client?.query(words);
  }

  async #fill(): Promise<void> {
    this.#client ??= new SearchClient(this.#start());
    const paths = (await this.#engine.noteStamps()).map(([path]) => path);
    for (let done = 0; done < paths.length; done += AT_ONCE) {
      this.#tell?.({ done, of: paths.length });
      await this.#client.put(await this.#engine.documents(paths.slice(done, done + AT_ONCE)));
    }
  }
}

/** Answers the wishes to find something that arrive at a place in the page. */
export const answerFinding = (target: GlobalEventHandlersTarget, finder: Finder): void =>
  target.addEventListener('tg-find-request', (event) => event.respondWith(finder.find(event.detail.typed, event.detail.onProgress)));

type GlobalEventHandlersTarget = Pick<HTMLElement, 'addEventListener'>;
