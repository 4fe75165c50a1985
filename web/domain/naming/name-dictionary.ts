import type { Note, NoteId } from '../note/note.ts';
import { type DyeName, dyeNames } from './dye-names.ts';
import { keysOfName } from './words-of-text.ts';

/** Who answers to a spelling. */
export interface NameEntry {
  readonly holders: ReadonlyMap<NoteId, NameHolding>;
  /** The name itself has commas or brackets, so that they may stand in the text too. */
  readonly loose: boolean;
}

/** How one note holds a spelling: by its own name, or because a colour-word of that name means it. */
export interface NameHolding {
  readonly name: DyeName;
  readonly colourWord?: NoteId;
}

/** A step of the tree of names, word by word. */
export interface NameNode {
  readonly next: ReadonlyMap<string, NameNode>;
  readonly entry?: NameEntry;
}

/** All names of a set of notes as a tree of folded words. */
export interface NameDictionary {
  readonly root: NameNode;
  /** Words of the longest name. */
  readonly longest: number;
}

/** A colour-word that shares a name with a dyestuff and means others by it: "grain" of kermes and, later, of cochineal. */
export interface SharedName {
  readonly colourWord: NoteId;
  readonly names: readonly string[];
  readonly means: readonly NoteId[];
}

interface Growing {
  readonly next: Map<string, Growing>;
  entry?: { readonly holders: Map<NoteId, NameHolding>; loose: boolean };
}

/**
 * Puts the names of notes into a tree. A spelling that is a listed name of one note is not given to another that would
 * only inflect, abbreviate or respell its own into it.
 *
 * @param shared colour-words that widen a name to other dyestuffs; they never bring a name of their own.
 */
export function nameDictionary(notes: Iterable<Note>, shared: readonly SharedName[] = []): NameDictionary {
  const root: Growing = { next: new Map() };
  let longest = 0;
  const nodeFor = (keys: readonly string[]): Growing => {
    let node = root;
    for (const key of keys) {
      const next = node.next.get(key) ?? { next: new Map() };
      node.next.set(key, next);
      node = next;
    }
    longest = Math.max(longest, keys.length);
    return node;
  };
  const add = (id: NoteId, name: DyeName) => {
    const keys = keysOfName(name.spelling);
    // One letter names nothing.
    if (keys.join('').length < 2) return;
    const node = nodeFor(keys);
    node.entry ??= { holders: new Map(), loose: false };
    if (!node.entry.holders.has(id)) node.entry.holders.set(id, { name });
    if (/[,()/]/.test(name.spelling)) node.entry.loose = true;
  };
  const all = [...notes].map((note) => ({ id: note.id, names: dyeNames(note) }));
  for (const { id, names } of all) for (const name of names) if (name.form === 'listed') add(id, name);
  const listed = new Set(
    all.flatMap(({ names }) => names.filter(({ form }) => form === 'listed').map(({ spelling }) => keysOfName(spelling).join(' '))),
  );
  for (const { id, names } of all) {
    for (const name of names) if (name.form !== 'listed' && !listed.has(keysOfName(name.spelling).join(' '))) add(id, name);
  }
  const ids = new Set<NoteId>(all.map(({ id }) => id));
  for (const { colourWord, names, means } of shared) {
    for (const spelling of names) {
      const entry = lookUp(root, keysOfName(spelling));
      if (!entry) continue;
      for (const id of means) {
        const name: DyeName = { spelling, listed: spelling, form: 'listed' };
        if (ids.has(id) && !entry.holders.has(id)) entry.holders.set(id, { name, colourWord });
      }
    }
  }
  return { root, longest };
}

function lookUp(root: Growing, keys: readonly string[]): Growing['entry'] {
  let node: Growing | undefined = root;
  for (const key of keys) node = node?.next.get(key);
  return node?.entry;
}
