import type { Note, NoteId, NoteKind } from '../note/note.ts';
import { fold } from '../text/fold.ts';
import { nearestNames } from '../text/nearest-names.ts';

/** What a name led to. */
export type Found =
  | { readonly is: 'one'; readonly id: NoteId }
  | { readonly is: 'several'; readonly ids: readonly NoteId[] }
  | { readonly is: 'none'; readonly nearest: readonly string[] };

/** Names kept as found, for one choice of kinds. Our choice: more than the references of a very large notebook. */
const MOST_KEPT = 50_000;

/** Finds notes by id, title or any of their names, case and accents folded; kept up note by note. */
export class NameIndex {
  readonly #byName = new Map<string, Map<NoteId, NoteKind>>();
  readonly #kinds = new Map<NoteId, NoteKind>();
  /** What was found before, by kinds and text; a notebook asks for the same few names again and again. */
  readonly #found = new Map<string, Map<string, Found>>();

  /** Adds a note under its id, its title, its names and its Latin names. */
  add(note: Note): void {
    this.#found.clear();
    this.#kinds.set(note.id, note.record.kind);
    for (const name of namesOf(note)) {
      const key = fold(name);
      const holders = this.#byName.get(key) ?? new Map<NoteId, NoteKind>();
      this.#byName.set(key, holders.set(note.id, note.record.kind));
    }
  }

  /** Takes a note out again; the note as it was when added. */
  remove(note: Note): void {
    this.#found.clear();
    this.#kinds.delete(note.id);
    for (const name of namesOf(note)) {
      const key = fold(name);
      const holders = this.#byName.get(key);
      holders?.delete(note.id);
      if (holders?.size === 0) this.#byName.delete(key);
    }
  }

  /**
   * The note of one of these kinds that a text names: an id wins over a title or name.
   *
   * @returns several when the name fits two notes; none with the nearest known names.
   */
  find(text: string, kinds: readonly NoteKind[]): Found {
    const among = kinds.join(' ');
    let known = this.#found.get(among);
    // Texts typed by people come without end; those of the notes do not.
    if (!known || known.size > MOST_KEPT) this.#found.set(among, (known = new Map<string, Found>()));
    const held = known.get(text);
    if (held) return held;
    const found = this.#look(text, kinds);
    known.set(text, found);
    return found;
  }

  #look(text: string, kinds: readonly NoteKind[]): Found {
    const exact = text.trim() as NoteId;
    const kind = this.#kinds.get(exact);
    if (kind && kinds.includes(kind)) return { is: 'one', id: exact };
    const holders = [...(this.#byName.get(fold(text)) ?? [])].filter(([, held]) => kinds.includes(held)).map(([id]) => id);
    const byId = holders.filter((id) => fold(id) === fold(text));
    if (byId.length === 1 && byId[0]) return { is: 'one', id: byId[0] };
    if (holders.length === 1 && holders[0]) return { is: 'one', id: holders[0] };
    if (holders.length > 1) return { is: 'several', ids: [...holders].sort() };
    // Most names that are not found are not asked about further: the comparing waits until somebody reads it.
    const nearest = () => this.nearest(text, kinds);
    let known: readonly string[] | undefined;
    return {
      is: 'none',
      get nearest() {
        return (known ??= nearest());
      },
    };
  }

  /** The ids of these kinds whose id or any name is nearest to a text. */
  nearest(text: string, kinds: readonly NoteKind[], most = 3): readonly string[] {
    const idsByName = new Map<string, string>();
    for (const [name, holders] of this.#byName) {
      for (const [id, kind] of holders) if (kinds.includes(kind) && !idsByName.has(name)) idsByName.set(name, id);
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
