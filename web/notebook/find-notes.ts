import { type EvidenceBase, MATERIAL_KINDS } from '../domain/claim/evidence-base.ts';
import { genericName } from '../domain/laboratory/colour-index.ts';
import { findCompound, isCasNumber } from '../domain/laboratory/find-compound.ts';
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
  /** The compound the note names, where the words are another name of it, or its CAS number. */
  readonly compound?: string;
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
  const wanted = literalHits(base, words, hits);
  for (const hit of wanted) {
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
  for (const [note, compound] of compoundNotes(base, words)) {
    if (shown.has(note)) continue;
    shown.add(note);
    found.push({ note, group: 'other-name', compound });
  }
  for (const hit of wanted) {
    const note = base.noteIn(hit.file);
    if (note && hit.near && !shown.has(note)) found.push({ note, group: 'near', hit });
  }
  return found;
}

/** Numbers are no words: of a CAS number or a Colour Index name only the whole of it answers. */
function literalHits(base: EvidenceBase, words: string, hits: readonly TextHit[]): readonly TextHit[] {
  const text = words.trim().toLowerCase();
  if (!isCasNumber(text) && !genericName(text)) return hits;
  return hits.filter(({ file }) => base.noteIn(file)?.source.toLowerCase().includes(text));
}

/** Dyestuffs of the notebook that a Colour Index generic name stands for. */
const genericHolders = (base: EvidenceBase, words: string): readonly NoteId[] =>
  (genericName(words)?.dyes ?? []).flatMap((dye) => base.note(dye)?.id ?? []);

/** Dyestuffs and textiles whose markers name the compound that the words mean, under whatever name; none where they mean a material. */
function compoundNotes(base: EvidenceBase, words: string): ReadonlyMap<Note, string> {
  const compound = namedMaterials(base, words).length > 0 ? undefined : findCompound(words)?.name;
  const found = new Map<Note, string>();
  if (compound === undefined) return found;
  const names = (markers: readonly string[]) => markers.some((text) => findCompound(text)?.name === compound);
  for (const note of base.ofKind('dyestuff')) if (names(note.record.markers)) found.set(note, compound);
  for (const note of base.ofKind('textile')) if (note.record.threads.some(({ markers }) => names(markers))) found.set(note, compound);
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
  const named = MATERIAL_KINDS.flatMap((kind) =>
    findNames(text, namesOfKind(base, kind).dictionary)
      .filter(({ start, end }) => start === 0 && end === text.length)
      .flatMap(({ holders }) => [...holders].map(([id, { colourWord }]) => ({ id, own: colourWord === undefined }))),
  );
  return [...named, ...genericHolders(base, text).map((id) => ({ id, own: true }))];
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
