import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { isInLinkTarget } from '../../domain/naming/excerpt.ts';
import { undosedExcerpt } from '../../domain/naming/undosed-excerpt.ts';
import { wordsOfText } from '../../domain/naming/words-of-text.ts';
import { lineColumn, lineStarts } from '../../domain/note/line-column.ts';
import type { Note } from '../../domain/note/note.ts';
import { noteFilter } from '../filter-notes.ts';
import { type FoundGroup, type FoundHere, findNotes, namedMaterials } from '../find-notes.ts';
import type { Notebook } from '../notebook.ts';
import { type FindingProblem, poseFinding } from '../pose-finding.ts';
import type { TextHit, TypedFinding } from '../ports-finding.ts';
import { titleOf } from '../words/claim-line.ts';
import { kindWords } from '../words/kind-words.ts';
import { readingWords, whyCompound, whyFound, whyNamed } from '../words/naming-words.ts';

/** A stretch of a note's text with the word that answers in its middle. */
export interface FoundPlace {
  readonly line: number;
  readonly before: string;
  readonly found: string;
  readonly after: string;
}

/** A note in the list. */
export interface FoundNoteView {
  readonly id: string;
  readonly title: string;
  /** The title in pieces, those that answer marked. */
  readonly marked: readonly { readonly text: string; readonly isMarked: boolean }[];
  readonly kindWord: string;
  readonly why: string;
  readonly places: readonly FoundPlace[];
}

/** Notes that are there for one reason. */
export interface FoundGroupView {
  readonly group: FoundGroup;
  readonly title: string;
  readonly notes: readonly FoundNoteView[];
  /** How many more there are than shown. */
  readonly more: number;
}

/** What was found. */
export interface FoundView {
  readonly groups: readonly FoundGroupView[];
  readonly count: number;
  /** Materials the words are a name of: everything on them stands on a page of its own. */
  readonly named: readonly { readonly id: string; readonly title: string; readonly isDyestuff: boolean }[];
  readonly problems: readonly FindingProblem[];
}

/** Notes shown of one group at first (our choice: beyond it the reader narrows the sentence). */
export const MOST_SHOWN = 60;
/** Places shown of one note. */
const MOST_PLACES = 2;

const GROUPS: readonly FoundGroup[] = ['words', 'other-name', 'ambiguous', 'doubtful', 'ruled-out', 'near'];

const GROUP_TITLES: Readonly<Record<FoundGroup, string>> = {
  words: 'In these words',
  'other-name': 'Under another name',
  ambiguous: readingWords.ambiguous,
  doubtful: readingWords.doubtful,
  'ruled-out': readingWords['ruled-out'],
  near: 'In a near spelling',
};

/** Notes that answer a sentence: by its words, and narrowed by the rest of it. Without words every note that the rest leaves. */
export function foundView(notebook: Notebook, typed: TypedFinding, hits: readonly TextHit[]): FoundView {
  const { base } = notebook;
  const { filter, problems } = poseFinding(base, typed);
  const isBare = typed.words.trim() === '';
  const all = isBare ? (Object.keys(filter).length === 0 ? [] : everyNote(base)) : findNotes(base, typed.words, hits);
  const holds = noteFilter(base, filter);
  const found = all.filter(({ note }) => holds(note));
  const groups = GROUPS.flatMap((group): readonly FoundGroupView[] => {
    const here = found.filter((one) => one.group === group);
    if (here.length === 0) return [];
    const title = isBare ? 'Everything that fits' : GROUP_TITLES[group];
    return [
      { group, title, notes: here.slice(0, MOST_SHOWN).map((one) => noteView(base, one)), more: Math.max(0, here.length - MOST_SHOWN) },
    ];
  });
  const named = namedMaterials(base, typed.words).map((id) => ({
    id,
    title: titleOf(base, id),
    isDyestuff: base.note(id)?.record.kind === 'dyestuff',
  }));
  return { groups, count: found.length, named, problems };
}

const everyNote = (base: EvidenceBase): readonly FoundHere[] =>
  [...base.notes()]
    .sort((a, b) => a.title.localeCompare(b.title, 'en', { numeric: true }) || (a.id < b.id ? -1 : 1))
    .map((note) => ({ note, group: 'words' }));

function noteView(base: EvidenceBase, { note, hit, named, compound, group }: FoundHere): FoundNoteView {
  const marks = new Set(hit?.marks ?? []);
  const isBare = !hit && !named && compound === undefined;
  return {
    id: note.id,
    title: titleOf(base, note.id),
    marked: markedText(titleOf(base, note.id), marks),
    kindWord: kindWords[note.record.kind].one,
    why: isBare
      ? ''
      : compound !== undefined
        ? whyCompound(compound)
        : named
          ? whyNamed(base, named)
          : group === 'near'
            ? whyFound(hit?.why ?? [])
            : '',
    places: marks.size === 0 ? [] : placesOf(base, note, marks),
  };
}

/** A text in pieces, the words that answer apart. */
export function markedText(text: string, marks: ReadonlySet<string>): FoundNoteView['marked'] {
  const pieces: { readonly text: string; readonly isMarked: boolean }[] = [];
  let at = 0;
  for (const { start, end, key } of wordsOfText(text)) {
    if (!marks.has(key)) continue;
    if (start > at) pieces.push({ text: text.slice(at, start), isMarked: false });
    pieces.push({ text: text.slice(start, end), isMarked: true });
    at = end;
  }
  return at < text.length || pieces.length === 0 ? [...pieces, { text: text.slice(at), isMarked: false }] : pieces;
}

/** The first places of a note that answer: its body before its front matter, whose title stands above already. */
function placesOf(base: EvidenceBase, note: Note, marks: ReadonlySet<string>): readonly FoundPlace[] {
  const { source, bodyStart } = note;
  const starts = lineStarts(source);
  const inBody = toBeRead(source.slice(bodyStart), marks).map(([start, end]) => [start + bodyStart, end + bodyStart] as const);
  const title = source.indexOf(note.title);
  const inFront =
    inBody.length >= MOST_PLACES
      ? []
      : firstOf(source.slice(0, bodyStart), marks, MOST_PLACES * 4).filter(
          ([start]) => title < 0 || start < title || start >= title + note.title.length,
        );
  return [...inBody, ...inFront].slice(0, MOST_PLACES).map(([start, end]) => {
    const { before, found, after } = undosedExcerpt(base, source, start, end);
    return { line: lineColumn(starts, start).line, before, found, after };
  });
}

/** Where a body answers in what stands to be read; in where its links lead only when nothing else does. */
function toBeRead(body: string, marks: ReadonlySet<string>): readonly (readonly [number, number])[] {
  const read = firstOf(body, marks, MOST_PLACES, (start) => !isInLinkTarget(body, start));
  return read.length > 0 ? read : firstOf(body, marks, MOST_PLACES);
}

function firstOf(
  text: string,
  marks: ReadonlySet<string>,
  most: number,
  counts: (start: number) => boolean = () => true,
): readonly (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  for (const { start, end, key, stem } of wordsOfText(text)) {
    if ((!marks.has(key) && !(stem && marks.has(stem.key))) || !counts(start)) continue;
    found.push([start, end]);
    if (found.length >= most) break;
  }
  return found;
}
