import { bodyOf } from '../note/markdown.ts';
import { type RelativeLink, relativeLinks } from '../note/markdown-links.ts';
import { resolveLink } from '../note/resolve-link.ts';
import type { Note } from '../note/note.ts';
import type { EvidenceBase } from './evidence-base.ts';

/** Links depend on a note's own text alone, and a note never changes: worked out once. */
const linksOf = new WeakMap<Note, readonly RelativeLink[]>();

/** The links of a note's body to notes that are not in the notebook, in reading order. */
export function brokenLinks(base: EvidenceBase, note: Note): readonly RelativeLink[] {
  return noteLinks(note).filter(({ path }) => {
    const file = resolveLink(note.file, path);
    return file === undefined || base.noteIn(file) === undefined;
  });
}

function noteLinks(note: Note): readonly RelativeLink[] {
  const known = linksOf.get(note);
  if (known) return known;
  const links = mayLink(note) ? relativeLinks(bodyOf(note), note.bodyStart).filter(({ path }) => NOTE_FILE.test(path)) : [];
  linksOf.set(note, links);
  return links;
}

const NOTE_FILE = /\.(?:md|markdown)$/i;

/** Parsing Markdown is slow; most bodies hold nothing that could lead to a note. */
const mayLink = ({ source, bodyStart }: Note): boolean => /\.(?:md|markdown)/i.test(source.slice(bodyStart));
