import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../../domain/claim/evidence-base.ts';
import { coreOf, type YearSpan } from '../../domain/date/date-span.ts';
import { noteTimePlace } from '../../domain/naming/note-time-place.ts';
import { NOTE_KINDS, type Note, type NoteKind } from '../../domain/note/note.ts';
import type { Notebook } from '../notebook.ts';
import { titleOf } from '../words/claim-line.ts';
import { kindWords } from '../words/kind-words.ts';
import { refsIn } from './linked-notes.ts';

/** The ways the drawer can be sorted. */
export const DRAWERS = ['kind', 'dyestuff', 'place', 'date'] as const;
export type DrawerBy = (typeof DRAWERS)[number];

/** A guide card: what stands behind it, and how much. */
export interface DrawerCard {
  readonly key: string;
  readonly title: string;
  readonly count: number;
}

/** A note as a card. */
export interface DrawerNote {
  readonly id: string;
  readonly file: string;
  readonly title: string;
  readonly kind: NoteKind;
  readonly kindWord: string;
  /** Place and date, or the Latin name: what tells it from the next card. */
  readonly says: string;
}

/** The guide cards, in order. */
export function drawerView(notebook: Notebook, by: DrawerBy): readonly DrawerCard[] {
  const { base } = notebook;
  const cards = [...cardsOf(notebook, by)].map(([key, notes]): DrawerCard => ({
    key,
    title: titleOfCard(base, by, key),
    count: notes.length,
  }));
  const order =
    by === 'kind' ? kindOrder : by === 'date' ? dateOrder : (a: DrawerCard, b: DrawerCard) => a.title.localeCompare(b.title, 'en');
  return cards.sort((a, b) => Number(a.key === NOWHERE) - Number(b.key === NOWHERE) || order(a, b));
}

/** The notes behind a guide card, by title. */
export function drawerNotes(notebook: Notebook, by: DrawerBy, key: string): readonly DrawerNote[] {
  return (cardsOf(notebook, by).get(key) ?? [])
    .map((note): DrawerNote => ({
      id: note.id,
      file: note.file,
      title: titleOf(notebook.base, note.id),
      kind: note.record.kind,
      kindWord: kindWords[note.record.kind].one,
      says: cardSays(notebook.base, note),
    }))
    .sort((a, b) => a.title.localeCompare(b.title, 'en', { numeric: true }) || (a.id < b.id ? -1 : 1));
}

/** Where notes stand that say nothing of the kind. */
const NOWHERE = 'none';

const drawers = new WeakMap<Notebook, { readonly version: number; readonly byKey: Map<DrawerBy, ReadonlyMap<string, readonly Note[]>> }>();

/** The notes by guide card, sorted into drawers once for each state of the notebook. */
function cardsOf(notebook: Notebook, by: DrawerBy): ReadonlyMap<string, readonly Note[]> {
  const { base } = notebook;
  const held = drawers.get(notebook);
  const drawer =
    held?.version === base.version ? held : { version: base.version, byKey: new Map<DrawerBy, ReadonlyMap<string, readonly Note[]>>() };
  drawers.set(notebook, drawer);
  const known = drawer.byKey.get(by);
  if (known) return known;
  const cards = new Map<string, Note[]>();
  for (const note of base.notes()) {
    const keys = [...new Set(keysOf(base, note, by))];
    for (const key of keys.length === 0 ? [NOWHERE] : keys) {
      const notes = cards.get(key);
      if (notes) notes.push(note);
      else cards.set(key, [note]);
    }
  }
  // A note that names no dyestuff is missed by nobody; one without place or date may want one.
  if (by === 'dyestuff') cards.delete(NOWHERE);
  drawer.byKey.set(by, cards);
  return cards;
}

function keysOf(base: EvidenceBase, note: Note, by: DrawerBy): readonly string[] {
  switch (by) {
    case 'kind':
      return [note.record.kind];
    case 'dyestuff':
      return dyesOf(base, note);
    case 'place':
      return isMaterial(note) ? base.claimsOf(note.id).map(({ region }) => region) : noteTimePlace(base, note).regions;
    case 'date':
      return (isMaterial(note) ? base.claimsOf(note.id).map(({ span }) => coreOf(span)) : noteTimePlace(base, note).spans).flatMap(
        centuriesOf,
      );
  }
}

const isMaterial = (note: Note): boolean => MATERIAL_KINDS.includes(note.record.kind);

/** The dyestuffs a note is about: itself, or those its record names; a trial's are its recipe's too. */
function dyesOf(base: EvidenceBase, note: Note): readonly string[] {
  if (note.record.kind === 'dyestuff') return [note.id];
  const named = refsIn(note.record).flatMap(({ text }) => {
    const id = base.resolve(text, ['dyestuff']);
    return base.note(id)?.record.kind === 'dyestuff' ? [id] : [];
  });
  if (note.record.kind !== 'trial' || !note.record.recipe) return named;
  const recipe = base.note(base.resolve(note.record.recipe.text, ['recipe']));
  return recipe && recipe.id !== note.id ? [...named, ...dyesOf(base, recipe)] : named;
}

/** A span over more centuries than this stands under its first and last only (our choice: it would fill the drawer otherwise). */
const MOST_CENTURIES = 8;

/** The centuries a span touches, as the number of their first year: 1301 for the 14th. */
function centuriesOf({ from, to }: YearSpan): readonly string[] {
  const [first, last] = [from ?? to, to ?? from];
  if (first === null || last === null) return [];
  const [start, end] = [centuryOf(first), centuryOf(last)];
  const all = Array.from({ length: Math.max(0, Math.min((end - start) / 100 + 1, MOST_CENTURIES + 1)) }, (_, at) => start + at * 100);
  return (all.length > MOST_CENTURIES ? [start, end] : all).map(String);
}

/** The first year of a year's century; astronomical years, so 1 BC (0) lies in the century of −99. */
const centuryOf = (year: number): number => Math.floor((year - 1) / 100) * 100 + 1;

function titleOfCard(base: EvidenceBase, by: DrawerBy, key: string): string {
  if (key === NOWHERE) return by === 'date' ? 'No date' : 'No place';
  if (by === 'kind') return kindWords[key as NoteKind].many;
  if (by !== 'date') return capital(titleOf(base, key));
  const start = Number(key);
  return start > 0 ? `${ordinal((start + 99) / 100)} century` : `${ordinal((1 - start) / 100)} century BC`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function ordinal(n: number): string {
  const tail = n % 100 >= 11 && n % 100 <= 13 ? 'th' : ({ 1: 'st', 2: 'nd', 3: 'rd' }[n % 10] ?? 'th');
  return `${n}${tail}`;
}

const ALL_KINDS: readonly NoteKind[] = [...NOTE_KINDS, 'plain'];
const kindOrder = (a: DrawerCard, b: DrawerCard): number => ALL_KINDS.indexOf(a.key as NoteKind) - ALL_KINDS.indexOf(b.key as NoteKind);
const dateOrder = (a: DrawerCard, b: DrawerCard): number => Number(a.key) - Number(b.key);

function cardSays(base: EvidenceBase, note: Note): string {
  const { record } = note;
  if ('latin' in record && record.latin[0] !== undefined) return record.latin[0];
  const region = 'region' in record && record.region ? base.regionId(record.region.text) : undefined;
  const when = 'when' in record ? record.when?.text : 'date' in record ? record.date?.text : undefined;
  return [region === undefined ? undefined : titleOf(base, region), when].filter((part) => part !== undefined).join(', ');
}
