import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { bodyOf } from '../../domain/note/markdown.ts';
import { relativeLinks } from '../../domain/note/markdown-links.ts';
import { resolveLink } from '../../domain/note/resolve-link.ts';
import { NOTE_KINDS, type Note, type NoteKind, type Ref } from '../../domain/note/note.ts';
import { fold } from '../../domain/text/fold.ts';
import { namesOf } from '../../domain/claim/name-index.ts';

const ALL_KINDS: readonly NoteKind[] = [...NOTE_KINDS, 'plain'];

/** The ids a note names in its record and links to in its body, in reading order, itself left out. */
export function linkedFrom(base: EvidenceBase, note: Note): readonly string[] {
  const named = refsIn(note.record).map(({ text }) => base.resolve(text, ALL_KINDS));
  const linked = relativeLinks(bodyOf(note), note.bodyStart).map(({ path }) => idAt(base, note.file, path));
  return [...new Set([...named, ...linked])].filter(
    (id): id is string => id !== undefined && id !== note.id && base.note(id) !== undefined,
  );
}

/** The notes that name this one in their record or link to it, by kind and title. */
export function linkedTo(base: EvidenceBase, target: Note): readonly Note[] {
  const names = new Set(namesOf(target).map(fold));
  const stem = (target.file.split('/').at(-1) ?? target.file).replace(/\.(?:md|markdown)$/i, '');
  const encoded = encodeURIComponent(stem);
  const found: Note[] = [];
  for (const note of base.notes()) {
    if (note.file === target.file) continue;
    // Only a note whose words could mean this one is looked up, and only one that holds the file's name is parsed.
    const isNamed = refsIn(note.record).some(({ text }) => names.has(fold(text)) && base.resolve(text, ALL_KINDS) === target.id);
    const isNear = () => note.source.includes(stem, note.bodyStart) || note.source.includes(encoded, note.bodyStart);
    const links = () => relativeLinks(bodyOf(note), note.bodyStart).some(({ path }) => resolveLink(note.file, path) === target.file);
    if (isNamed || (isNear() && links())) found.push(note);
  }
  return found.sort((a, b) => order(a) - order(b) || a.title.localeCompare(b.title, 'en'));
}

const order = (note: Note): number => ALL_KINDS.indexOf(note.record.kind);

function idAt(base: EvidenceBase, from: string, path: string): string | undefined {
  const file = resolveLink(from, path);
  return file === undefined ? undefined : base.noteIn(file)?.id;
}

/** Every reference in a record, wherever it stands: a text with its place, and not a date. */
export function refsIn(value: unknown): readonly Ref[] {
  if (Array.isArray(value)) return value.flatMap(refsIn);
  if (typeof value !== 'object' || value === null) return [];
  if ('text' in value && 'range' in value) return typeof value.text === 'string' ? [value as Ref] : [];
  return Object.values(value).flatMap(refsIn);
}
