import type { Note, NoteId, NoteKind } from '../note/note.ts';
import { fold } from '../text/fold.ts';
import { nearestNames } from '../text/nearest-names.ts';

/** What a name led to. */
export type Found =
  | { readonly is: 'one'; readonly id: NoteId }
  | { readonly is: 'several'; readonly ids: readonly NoteId[] }
  | { readonly is: 'none'; readonly nearest: readonly string[] };

/** Texts kept as found. Our choice: more than the references of a very large notebook. */
const MOST_KEPT = 100_000;

/** A text that was looked for: as it is compared, and where it led, by the kinds it was looked for among. */
interface Looked {
  readonly key: string;
  readonly found: Map<string, Found>;
}

/** Finds notes by id, title or any of their names, case and accents folded; kept up note by note. */
export class NameIndex {
  readonly #byName = new Map<string, Map<NoteId, NoteKind>>();
  readonly #kinds = new Map<NoteId, NoteKind>();
  /** What was looked for before; a notebook asks for the same few names again and again. */
  readonly #looked = new Map<string, Looked>();
  readonly #lookedByKey = new Map<string, Looked[]>();
  #watcher: Set<string> | undefined;
  #changes = 0;

  /**
   * Adds a note under its id, its title, its names and its Latin names.
   *
   * @returns these, as they are compared.
   */
  add(note: Note): readonly string[] {
    this.#kinds.set(note.id, note.record.kind);
    const keys = nameKeys(note);
    for (const key of keys) {
      this.#forget(key);
      const holders = this.#byName.get(key) ?? new Map<NoteId, NoteKind>();
      this.#byName.set(key, holders.set(note.id, note.record.kind));
    }
    this.#changes += 1;
    return keys;
  }

  /**
   * Takes a note out again; the note as it was when added.
   *
   * @returns the names it was found by, as they are compared.
   */
  remove(note: Note): readonly string[] {
    this.#kinds.delete(note.id);
    const keys = nameKeys(note);
    for (const key of keys) {
      this.#forget(key);
      const holders = this.#byName.get(key);
      holders?.delete(note.id);
      if (holders?.size === 0) this.#byName.delete(key);
    }
    this.#changes += 1;
    return keys;
  }

  /** A text as names are compared. */
  keyOf(text: string): string {
    return this.#look(text).key;
  }

  /** Does some work, and tells by which names, as they are compared, it looked for notes. */
  watch<T>(work: () => T): { readonly done: T; readonly names: ReadonlySet<string> } {
    const [outer, names] = [this.#watcher, new Set<string>()];
    this.#watcher = names;
    try {
      return { done: work(), names };
    } finally {
      this.#watcher = outer;
    }
  }

  /**
   * The note of one of these kinds that a text names: an id wins over a title or name.
   *
   * @returns several when the name fits two notes; none with the nearest known names.
   */
  find(text: string, kinds: readonly NoteKind[]): Found {
    const looked = this.#look(text);
    this.#watcher?.add(looked.key);
    const among = kinds.join(' ');
    const held = looked.found.get(among);
    if (held) return held;
    const found = this.#find(text, looked.key, kinds);
    looked.found.set(among, found);
    return found;
  }

  #look(text: string): Looked {
    const known = this.#looked.get(text);
    if (known) return known;
    // Texts typed by people come without end; those of the notes do not.
    if (this.#looked.size > MOST_KEPT) {
      this.#looked.clear();
      this.#lookedByKey.clear();
    }
    const looked: Looked = { key: fold(text), found: new Map() };
    this.#looked.set(text, looked);
    const alike = this.#lookedByKey.get(looked.key);
    if (alike) alike.push(looked);
    else this.#lookedByKey.set(looked.key, [looked]);
    return looked;
  }

  #forget(key: string): void {
    for (const { found } of this.#lookedByKey.get(key) ?? []) found.clear();
  }

  #find(text: string, key: string, kinds: readonly NoteKind[]): Found {
    const exact = text.trim() as NoteId;
    const kind = this.#kinds.get(exact);
    if (kind && kinds.includes(kind)) return { is: 'one', id: exact };
    const holders = [...(this.#byName.get(key) ?? [])].filter(([, held]) => kinds.includes(held)).map(([id]) => id);
    const byId = holders.filter((id) => fold(id) === key);
    if (byId.length === 1 && byId[0]) return { is: 'one', id: byId[0] };
    if (holders.length === 1 && holders[0]) return { is: 'one', id: holders[0] };
    if (holders.length > 1) return { is: 'several', ids: [...holders].sort() };
    // Most names that are not found are not asked about further: the comparing waits until somebody reads it.
    const near = { changes: -1, names: [] as readonly string[] };
    const nearest = () => {
      if (near.changes !== this.#changes) {
        near.names = this.nearest(text, kinds);
        near.changes = this.#changes;
      }
      return near.names;
    };
    return {
      is: 'none',
      get nearest() {
        return nearest();
      },
    };
  }

  /** The ids of these kinds whose id or any name is nearest to a text. */
  nearest(text: string, kinds: readonly NoteKind[], most = 3): readonly string[] {
    const idsByName = new Map<string, string>();
    for (const [name, holders] of this.#byName) {
      // Of several the first by id, so that the order in which notes came makes no difference.
      const [first] = [...holders].flatMap(([id, kind]) => (kinds.includes(kind) ? [id] : [])).sort();
      if (first !== undefined) idsByName.set(name, first);
    }
    const names = nearestNames(text, [...idsByName.keys()], most * 3);
    return [...new Set(names.map((name) => idsByName.get(name) ?? name))].slice(0, most);
  }
}

/** Id, title, names and Latin names of a note, as written. */
export function namesOf(note: Note): readonly string[] {
  const latin = 'latin' in note.record ? note.record.latin : [];
  return [note.id, note.title, ...note.names.map(({ name }) => name), ...latin];
}

/** The names of a note as they are compared, each once. */
export const nameKeys = (note: Note): readonly string[] => [...new Set(namesOf(note).map(fold))];
