import type { Version } from '../ports.ts';
import type { Note, NoteKind } from './note.ts';

/** A note as the full-text index takes it: plain strings that can cross to a worker. */
export interface NoteDocument {
  /** The note's file: unique, where an id may clash. */
  readonly file: string;
  readonly id: string;
  readonly kind: NoteKind;
  readonly title: string;
  readonly names: string;
  readonly tags: string;
  readonly sources: string;
  /** The Markdown body without addresses of links. */
  readonly body: string;
  /** The words of the front matter, without its keys. */
  readonly words: string;
  /** Under which version the file is kept as it was read; absent where nobody knows. */
  readonly version?: Version;
}

/**
 * A note's words, field by field.
 *
 * @param version under which its file is kept so.
 */
export function noteDocument(note: Note, version?: Version): NoteDocument {
  const { source, bodyStart, record } = note;
  const latin = 'latin' in record ? record.latin : [];
  return {
    file: note.file,
    id: note.id,
    kind: record.kind,
    title: note.title,
    names: [...note.names.map(({ name }) => name), ...latin].join(' · '),
    tags: note.tags.join(' · '),
    sources: note.sources.map(({ key, locator }) => (locator === undefined ? key : `${key}, ${locator}`)).join(' · '),
    body: source.slice(bodyStart).replace(/\]\([^)\s]*/g, '] '),
    words: source.slice(0, bodyStart).replace(KEYS, '$1 '),
    ...(version !== undefined && { version }),
  };
}

/** Keys of YAML: letters and hyphens before a colon that ends the line or is followed by space. */
const KEYS = /((?:^|[{,[])[ \t-]*)["']?[\p{L}][\p{L}\d-]{0,40}["']?:(?=\s)/gmu;
