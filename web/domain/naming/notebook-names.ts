import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { Note, NoteId, NoteKind } from '../note/note.ts';
import { findNames, type Mention } from './find-names.ts';
import { type NameDictionary, nameDictionary, type SharedName } from './name-dictionary.ts';

/** The names of one kind of note, and where each note of the notebook has them. */
export interface KindNames {
  readonly dictionary: NameDictionary;
  /** Mentions in a note's whole source; found once for each note as it stands. */
  mentionsIn(note: Note): readonly Mention[];
}

interface Kept {
  version: number;
  signature: string;
  names: KindNames;
}

const kept = new WeakMap<EvidenceBase, Map<NoteKind, Kept>>();

/**
 * The names of one kind of note in a notebook. The longest name wins among names of one kind only: a "woad vat" is a
 * process and names woad as well. Kept until a name of that kind, or a colour-word, changes.
 */
export function namesOfKind(base: EvidenceBase, kind: NoteKind): KindNames {
  const byKind = kept.get(base) ?? new Map<NoteKind, Kept>();
  kept.set(base, byKind);
  const known = byKind.get(kind);
  const version = base.versionOf({ notes: [kind, 'colour-word'], names: ['dyestuff'] });
  if (known?.version === version) return known.names;
  const notes = base.ofKind(kind as 'dyestuff');
  const shared = kind === 'dyestuff' ? sharedNames(base) : [];
  const signature = JSON.stringify([notes.map(({ id, title, names, record }) => [id, title, names, record.latin, record.part]), shared]);
  if (known?.signature === signature) {
    known.version = version;
    return known.names;
  }
  const names = kindNames(nameDictionary(notes, shared));
  byKind.set(kind, { version, signature, names });
  return names;
}

function kindNames(dictionary: NameDictionary): KindNames {
  const found = new WeakMap<Note, readonly Mention[]>();
  return {
    dictionary,
    mentionsIn(note) {
      const mentions = found.get(note) ?? findNames(note.source, dictionary);
      found.set(note, mentions);
      return mentions;
    },
  };
}

/** Colour-words whose meanings name dyestuffs: where such a word is also a dyestuff's name, it is shared with them. */
const sharedNames = (base: EvidenceBase): readonly SharedName[] =>
  base.ofKind('colour-word').map(({ id, title, names, record }) => ({
    colourWord: id,
    names: [title, ...names.map(({ name }) => name)],
    means: [...new Set(record.means.flatMap(({ dyes }) => dyes.map(({ text }) => base.resolve(text, ['dyestuff']) as NoteId)))],
  }));
