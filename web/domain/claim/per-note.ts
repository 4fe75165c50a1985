import type { Note, NoteKind } from '../note/note.ts';
import type { EvidenceBase } from './evidence-base.ts';

/** One thing a note says, under the key it is asked for by. */
export interface NoteEntry<V> {
  readonly key: string;
  readonly value: V;
}

/** How entries are got from the notes. */
export interface EntriesOf<V> {
  /** The kinds of notes that have any. */
  readonly kinds: readonly NoteKind[];
  /** The entries of one note: may depend on that note, on what names lead to, and on the places and dates these stand for. */
  readonly derive: (base: EvidenceBase, note: Note) => readonly NoteEntry<V>[];
  /** What notes are sorted by, different for every note. Default: their files. */
  readonly order?: (note: Note) => string;
}

/** Finds what the notes say under a key, in order of the notes. */
export type EntriesByKey<V> = (base: EvidenceBase, key: string) => readonly V[];

/** What the notes say, by key. A list stays the same object until what stands under its key changes. */
export interface ByKey<V> {
  under(key: string): readonly V[];
  keys(): Iterable<string>;
}

/**
 * Keeps what notes say, each for itself, by key: of an edited note only its own entries are made again, and those of notes
 * that go by a name which changed.
 */
export function perNote<V>(entriesOf: EntriesOf<V>): EntriesByKey<V> {
  const kept = perNoteByKey(entriesOf);
  return (base, key) => kept(base).under(key);
}

/** The same with its keys, for whoever does not know them. */
export function perNoteByKey<V>(entriesOf: EntriesOf<V>): (base: EvidenceBase) => ByKey<V> {
  const kept = new WeakMap<EvidenceBase, KeptEntries<V>>();
  return (base) => {
    const entries = kept.get(base) ?? new KeptEntries(entriesOf);
    kept.set(base, entries);
    entries.follow(base);
    return entries;
  };
}

interface Placed<V> {
  readonly order: string;
  readonly value: V;
}

/** What is kept of one note. */
interface OfNote<V> {
  readonly order: string;
  readonly entries: readonly NoteEntry<V>[];
  readonly names: readonly string[];
}

/** Entries that come and go together under one key. */
interface KeyChange<V> {
  readonly gone: Set<string>;
  readonly come: Placed<V>[];
}

class KeptEntries<V> implements ByKey<V> {
  readonly #of: EntriesOf<V>;
  readonly #byFile = new Map<string, OfNote<V>>();
  readonly #filesByName = new Map<string, Set<string>>();
  readonly #byKey = new Map<string, { readonly placed: readonly Placed<V>[]; readonly values: readonly V[] }>();
  #at = -1;

  constructor(of: EntriesOf<V>) {
    this.#of = of;
  }

  under(key: string): readonly V[] {
    return this.#byKey.get(key)?.values ?? [];
  }

  keys(): Iterable<string> {
    return this.#byKey.keys();
  }

  follow(base: EvidenceBase): void {
    const files = this.#filesToRead(base);
    if (files.size === 0) return;
    const changes = new Map<string, KeyChange<V>>();
    for (const file of files) {
      this.#takeOut(file, changes);
      const note = base.noteIn(file);
      if (note && base.note(note.id) === note && this.#of.kinds.includes(note.record.kind)) this.#putIn(base, note, changes);
    }
    for (const [key, change] of changes) this.#apply(key, change);
  }

  #filesToRead(base: EvidenceBase): ReadonlySet<string> {
    if (base.changes.length === this.#at) return NOTHING;
    const changes = this.#at < 0 ? undefined : base.changes.since(this.#at);
    this.#at = base.changes.length;
    if (!changes) return new Set([...this.#byFile.keys(), ...this.#of.kinds.flatMap((kind) => base.ofKind(kind)).map(({ file }) => file)]);
    const files = new Set(changes.flatMap((change) => change.files));
    for (const name of changes.flatMap((change) => change.names)) for (const file of this.#filesByName.get(name) ?? []) files.add(file);
    return files;
  }

  #takeOut(file: string, changes: Map<string, KeyChange<V>>): void {
    const own = this.#byFile.get(file);
    if (!own) return;
    this.#byFile.delete(file);
    for (const { key } of own.entries) changeOf(changes, key).gone.add(own.order);
    for (const name of own.names) {
      const files = this.#filesByName.get(name);
      files?.delete(file);
      if (files?.size === 0) this.#filesByName.delete(name);
    }
  }

  #putIn(base: EvidenceBase, note: Note, changes: Map<string, KeyChange<V>>): void {
    const { derive, order: orderOf } = this.#of;
    const order = orderOf ? orderOf(note) : note.file;
    const { done: entries, names } = base.watchNames(() => derive(base, note));
    this.#byFile.set(note.file, { order, entries, names: [...names] });
    for (const { key, value } of entries) changeOf(changes, key).come.push({ order, value });
    for (const name of names) this.#filesByName.set(name, (this.#filesByName.get(name) ?? new Set<string>()).add(note.file));
  }

  #apply(key: string, { gone, come }: KeyChange<V>): void {
    const left = (this.#byKey.get(key)?.placed ?? []).filter(({ order }) => !gone.has(order));
    const placed = [...left, ...come].sort((a, b) => (a.order < b.order ? -1 : a.order > b.order ? 1 : 0));
    if (placed.length === 0) this.#byKey.delete(key);
    else this.#byKey.set(key, { placed, values: placed.map(({ value }) => value) });
  }
}

const NOTHING: ReadonlySet<string> = new Set();

function changeOf<V>(changes: Map<string, KeyChange<V>>, key: string): KeyChange<V> {
  const known = changes.get(key) ?? { gone: new Set<string>(), come: [] };
  changes.set(key, known);
  return known;
}
