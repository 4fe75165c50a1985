import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { TextRange } from '../diagnostic.ts';
import { lineColumn, lineStarts } from '../note/line-column.ts';
import { type Note, type NoteId, NOTE_KINDS } from '../note/note.ts';
import { type CandidateReading, readingsOf } from './ambiguous-names.ts';
import type { Excerpt } from './excerpt.ts';
import { undosedExcerpt } from './undosed-excerpt.ts';
import type { Mention } from './find-names.ts';
import { namesOfKind } from './notebook-names.ts';
import { noteTimePlace } from './note-time-place.ts';
import { type PlaceInNote, placeInNote } from './place-in-note.ts';

/** How sure it is that a dyestuff is meant, best first. */
export const NAMING_READINGS = ['certain', 'ambiguous', 'doubtful', 'ruled-out'] as const;
export type NamingReading = (typeof NAMING_READINGS)[number];

/** One place where a dyestuff is named. */
export interface Naming {
  readonly where: 'front-matter' | 'body' | 'link';
  /** The key it stands under, in front matter. */
  readonly key?: string;
  /** As it stands there. */
  readonly text: string;
  /** The name of the dyestuff's note it goes back to. */
  readonly name: string;
  readonly range: TextRange;
  /** 1-based. */
  readonly line: number;
  readonly excerpt: Excerpt;
  readonly reading: NamingReading;
  /** Every dyestuff that shares the name, with whether it is possible there and then; empty where the name is not shared. */
  readonly candidates: readonly CandidateReading[];
}

/** A note that names a dyestuff, and where. */
export interface NamedNote {
  readonly note: Note;
  /** The best reading of its namings. */
  readonly reading: NamingReading;
  /** It is the dyestuff's own note. */
  readonly own: boolean;
  readonly namings: readonly Naming[];
}

/**
 * Every note that names a material (or anything else with names), in front matter or body, under any of its names.
 *
 * A name shared with another dyestuff is `ambiguous`; `ruled-out` where the note's own place and date leave it impossible;
 * certain where the note refers to this one alone, by id in front matter or by a link.
 *
 * @returns certain notes first, the dyestuff's own before all; then by kind and title. Empty for an unknown id.
 */
export function whereNamed(base: EvidenceBase, id: NoteId): readonly NamedNote[] {
  const subject = base.note(id);
  if (!subject) return [];
  const names = namesOfKind(base, subject.record.kind);
  const found: NamedNote[] = [];
  for (const note of base.notes()) {
    if (base.note(note.id) !== note) continue;
    const own = note.id === id;
    const namings = namingsIn(base, note, id, names.mentionsIn(note));
    if (!own && namings.length === 0) continue;
    const best = Math.min(...namings.map(({ reading }) => NAMING_READINGS.indexOf(reading)));
    const reading = own ? 'certain' : (NAMING_READINGS[best] ?? 'certain');
    found.push({ note, reading, own, namings });
  }
  return found.sort(byReading);
}

function namingsIn(base: EvidenceBase, note: Note, id: NoteId, mentions: readonly Mention[]): readonly Naming[] {
  if (!mentions.some(({ candidates }) => candidates.includes(id))) return [];
  const placeOf = placeInNote(note);
  const starts = lineStarts(note.source);
  const placed = mentions.map((mention) => ({ mention, place: placeOf(mention.start) })).filter(({ place }) => place.part !== 'aside');
  const meant = new Set(placed.flatMap(({ mention, place }) => meantBy(mention, place)));
  const refers = new Set([note.id, ...placed.flatMap(({ mention, place }) => (isReference(place) ? meantBy(mention, place) : []))]);
  const at = noteTimePlace(base, note);
  return placed.flatMap(({ mention, place }): Naming[] => {
    const holding = mention.holders.get(id);
    if (!holding || place.part === 'aside') return [];
    const sure = meantBy(mention, place);
    if (sure.length > 0 && !sure.includes(id)) return [];
    if (place.part === 'link' && sure.length === 0) return [];
    const shared = mention.candidates.length > 1 && sure.length === 0;
    // The writer's own reference says which of them is meant; a colour-word's other meanings are no such help.
    const said = shared ? mention.candidates.filter((one) => refers.has(one) && !mention.holders.get(one)?.colourWord) : [];
    if (said.length === 1 && said[0] !== id) return [];
    const readings = shared && said.length !== 1 ? readingsOf(base, mention.holders, at).filter(counts) : [];
    if (readings.length > 0 && !readings.some((one) => one.id === id)) return [];
    const candidates = readings.length > 1 ? readings : [];
    return [
      {
        where: place.part,
        ...(place.part === 'front-matter' ? { key: place.key } : {}),
        text: mention.text,
        name: holding.name.listed,
        range: [mention.start, mention.end],
        line: lineColumn(starts, mention.start).line,
        excerpt: undosedExcerpt(base, note.source, mention.start, mention.end),
        reading: readingOf(mention, place, candidates, id, meant),
        candidates,
      },
    ];
  });
}

/** Keys whose values refer to other notes. */
const REFERENCE_KEYS = new Set(['what', 'stands-for', 'dyes', 'concerns', 'mordant', 'on', 'fibre', 'is', 'recipe', 'follows']);

/** A stretch that points at another note rather than speaking of it. */
const isReference = (place: PlaceInNote): boolean =>
  place.part === 'link' || (place.part === 'front-matter' && REFERENCE_KEYS.has(place.key));

/** The candidates a mention means without doubt: a reference by id, a link to the note, or a name nobody shares. */
function meantBy({ candidates, text, doubt }: Mention, place: PlaceInNote): readonly NoteId[] {
  if (place.part === 'link') return candidates.filter((id) => id === place.stem);
  if (place.part === 'front-matter' && REFERENCE_KEYS.has(place.key)) {
    const byId = candidates.filter((id) => id === text);
    if (byId.length > 0) return byId;
  }
  return candidates.length === 1 && doubt === undefined ? candidates : [];
}

/** A dyestuff that has the name only through a colour-word does not count where that word was not in use. */
const counts = ({ possible, colourWord }: CandidateReading): boolean => possible || colourWord === undefined;

function readingOf(
  mention: Mention,
  place: PlaceInNote,
  candidates: readonly CandidateReading[],
  id: NoteId,
  meant: ReadonlySet<NoteId>,
): NamingReading {
  if (candidates.some((one) => one.id === id && !one.possible)) return 'ruled-out';
  if (mention.doubt && !meant.has(id) && !isReference(place)) return 'doubtful';
  return candidates.length > 0 ? 'ambiguous' : 'certain';
}

function byReading(a: NamedNote, b: NamedNote): number {
  const kinds: readonly string[] = NOTE_KINDS;
  const kindRank = ({ note }: NamedNote) => (note.record.kind === 'plain' ? kinds.length : kinds.indexOf(note.record.kind));
  return (
    Number(b.own) - Number(a.own) ||
    NAMING_READINGS.indexOf(a.reading) - NAMING_READINGS.indexOf(b.reading) ||
    kindRank(a) - kindRank(b) ||
    (a.note.title < b.note.title ? -1 : a.note.title > b.note.title ? 1 : a.note.id < b.note.id ? -1 : 1)
  );
}
