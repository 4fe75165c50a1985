import type { SearchReply, SearchRequest, SearchWire, Unnumbered } from './messages.ts';
import type { NoteDocument } from './note-documents.ts';
import type { FileVersion, FoundNote } from './note-search.ts';

/** Documents sent at once (our choice: some tens of milliseconds of indexing, so that a query need not wait long). */
const AT_ONCE = 50;

/** The page's end of the search worker. */
export class SearchClient {
  readonly #wire: SearchWire;
  readonly #waiting = new Map<number, { readonly resolve: (reply: SearchReply) => void; readonly reject: (fault: Error) => void }>();
  #sent = 0;
  #latestQuery = 0;
  #edited = 0;

  constructor(wire: SearchWire) {
    this.#wire = wire;
    wire.addEventListener('message', ({ data }) => this.#hear(data as SearchReply));
  }

  /** How many notes were edited since the index was frozen, as was last heard. */
  get editedCount(): number {
    return this.#edited;
  }

  /** Adds notes or puts them in the place of those of the same files; resolves with how many the index holds. */
  async put(documents: readonly NoteDocument[]): Promise<number> {
    const last = (await this.#inParts('put', documents)).at(-1);
    return last?.is === 'done' ? last.size : 0;
  }

  /**
   * Takes an index that was kept; its buffer is given away.
   *
   * @returns the files it lacks or has in another version; undefined where the bytes are no index.
   */
  async open(bytes: ArrayBuffer, notebook: readonly FileVersion[]): Promise<readonly string[] | undefined> {
    const reply = await this.#ask({ do: 'open', bytes, notebook }, [bytes]);
    return reply.is === 'opened' ? reply.lacking : undefined;
  }

  /**
   * Takes an index just made of the notes at hand; its buffer is given away.
   *
   * @param since files that were put or removed since its making began.
   */
  async adopt(bytes: ArrayBuffer, since: readonly string[]): Promise<void> {
    await this.#ask({ do: 'adopt', bytes, since }, [bytes]);
  }

  /** Takes notes into an index in the making. */
  async take(documents: readonly NoteDocument[]): Promise<void> {
    await this.#inParts('take', documents);
  }

  /** The index made of what was taken, as many times as wanted. */
  async freeze(copies: number): Promise<readonly ArrayBuffer[]> {
    const reply = await this.#ask({ do: 'freeze', copies });
    return reply.is === 'frozen' ? reply.copies : [];
  }

  /** Takes the notes of files out. */
  async remove(files: readonly string[]): Promise<void> {
    await this.#ask({ do: 'remove', files });
  }

  /** Forgets every note. */
  async clear(): Promise<void> {
    await this.#ask({ do: 'clear' });
  }

  /**
   * Notes that answer a query.
   *
   * @returns undefined where a later query was asked meanwhile: the latest wins.
   */
  async query(text: string, most?: number): Promise<readonly FoundNote[] | undefined> {
    const asked = this.#ask({ do: 'query', text, ...(most === undefined ? {} : { most }) });
    const mine = (this.#latestQuery = this.#sent);
    const reply = await asked;
    return reply.is === 'found' && mine === this.#latestQuery ? reply.notes : undefined;
  }

  #inParts(what: 'put' | 'take', documents: readonly NoteDocument[]): Promise<readonly SearchReply[]> {
    const parts: Promise<SearchReply>[] = [];
    for (let at = 0; at < documents.length; at += AT_ONCE)
      parts.push(this.#ask({ do: what, documents: documents.slice(at, at + AT_ONCE) }));
    return Promise.all(parts);
  }

  #ask(request: Unnumbered<SearchRequest>, transfer: ArrayBuffer[] = []): Promise<SearchReply> {
    const id = ++this.#sent;
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject });
      this.#wire.postMessage({ ...request, id } satisfies SearchRequest, transfer);
    });
  }

  #hear(reply: SearchReply): void {
    const caller = this.#waiting.get(reply.id);
    this.#waiting.delete(reply.id);
    if (reply.is === 'done') this.#edited = reply.edited;
    if (reply.is === 'failed') caller?.reject(new Error(reply.why));
    else caller?.resolve(reply);
  }
}
