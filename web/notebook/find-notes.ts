import { type EvidenceBase, MATERIAL_KINDS } from '../domain/claim/evidence-base.ts';
import { findNames } from '../domain/naming/find-names.ts';
import { namesOfKind } from '../domain/naming/notebook-names.ts';
import { type NamedNote, type NamingReading, NAMING_READINGS, whereNamed } from '../domain/naming/where-named.ts';
import type { Note, NoteId } from '../domain/note/note.ts';
import type { TextHit } from './ports-finding.ts';

/** Why a note is in the list: its words, a name the words are another name of, or a near spelling. */
export type FoundGroup = 'words' | 'other-name' | Exclude<NamingReading, 'certain'> | 'near';

/** A note found. */
export interface FoundHere {
  readonly note: Note;
  readonly group: FoundGroup;
  readonly hit?: TextHit;
  readonly named?: NamedNote;
}

/**
 * Full text, and where the words are a material's name, the notes that have it under another name.
 *
 * @param hits what the index found, best first.
 */
export function findNotes(base: EvidenceBase, words: string, hits: readonly TextHit[]): readonly FoundHere[] {
  const named = namedBy(base, words);
  const found: FoundHere[] = [];
  const shown = new Set<Note>();
  for (const hit of hits) {
    const note = base.noteIn(hit.file);
    if (!note || hit.near) continue;
    shown.add(note);
    const naming = named.get(note);
    const unsure = naming && naming.reading !== 'certain' ? naming : undefined;
    found.push(unsure ? { note, group: groupOf(unsure), hit, named: unsure } : { note, group: 'words', hit });
  }
  for (const naming of named.values()) {
    if (shown.has(naming.note)) continue;
    shown.add(naming.note);
    found.push({ note: naming.note, group: groupOf(naming), named: naming });
  }
  for (const hit of hits) {
    const note = base.noteIn(hit.file);
    if (note && hit.near && !shown.has(note)) found.push({ note, group: 'near', hit });
  }
  return found;
}

/** The materials the whole text is a name of, by their own name. */
export const namedMaterials = (base: EvidenceBase, words: string): readonly NoteId[] => [
  // A colour-word's dyestuffs are not what was typed; they only make the name a shared one.
  ...new Set(
    materialsMeant(base, words)
      .filter(({ own }) => own)
      .map(({ id }) => id),
  ),
];

/** The materials the whole text may mean: by their own name, or through a colour-word besides. */
export function materialsMeant(base: EvidenceBase, words: string): readonly { readonly id: NoteId; readonly own: boolean }[] {
  const text = words.trim();
  if (text === '') return [];
  return MATERIAL_KINDS.flatMap((kind) =>
    findNames(text, namesOfKind(base, kind).dictionary)
      .filter(({ start, end }) => start === 0 && end === text.length)
      .flatMap(({ holders }) => [...holders].map(([id, { colourWord }]) => ({ id, own: colourWord === undefined }))),
  );
}

function namedBy(base: EvidenceBase, words: string): ReadonlyMap<Note, NamedNote> {
  const named = new Map<Note, NamedNote>();
  for (const id of namedMaterials(base, words)) {
    for (const one of whereNamed(base, id)) {
      const known = named.get(one.note);
      if (!known || rank(one) < rank(known)) named.set(one.note, one);
    }
  }
  return named;
}

const rank = ({ reading }: NamedNote): number => NAMING_READINGS.indexOf(reading);

const groupOf = ({ reading }: NamedNote): FoundGroup => (reading === 'certain' ? 'other-name' : reading);
