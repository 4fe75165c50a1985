import type { DateSpan } from '../date/date-span.ts';
import { parseDate } from '../date/parse-date.ts';
import type { FibreClass, Note, NoteId, NoteKind, Ref, WrittenDate } from '../note/note.ts';
import { type RegionEntry, type RegionId, type RegionTree, regionTree, WORLD } from '../place/region-tree.ts';
import { ChangeLog } from './change-log.ts';
import { type Claim, type PlacedClaim } from './claim.ts';
import { deriveClaims } from './derive-claims.ts';
import { type Found, nameKeys, NameIndex, namesOf } from './name-index.ts';
import { type ByKey, perNoteByKey } from './per-note.ts';

/** Kinds that can stand in a route. */
export const MATERIAL_KINDS: readonly NoteKind[] = ['dyestuff', 'mordant', 'assistant', 'process', 'fibre'];

/** What something worked out from a notebook depends on: notes of some kinds whole, of others only their ids, names and kinds. */
export interface DependsOn {
  readonly notes?: readonly NoteKind[];
  readonly names?: readonly NoteKind[];
}

/**
 * What all notes say together, merged by id and kept up note by note.
 *
 * Putting or removing a note derives that note's claims alone. A change to a region or period, or to a note's names, may move
 * where other claims stand: then those that go by these names are placed (not derived) again when next asked.
 * The one mutable value of the domain, because a notebook of ten years is edited one note at a time.
 */
export class EvidenceBase {
  readonly #notes = new Map<string, Note>();
  /** The files of each id, in order: the first holds it. */
  readonly #filesOf = new Map<NoteId, readonly string[]>();
  readonly #holders = new Map<NoteId, Note>();
  readonly #claims = new Map<string, readonly Claim[]>();
  readonly #names = new NameIndex();
  readonly #log = new ChangeLog();
  readonly #kindVersions = new Map<NoteKind, number>();
  readonly #nameVersions = new Map<NoteKind, number>();
  #byKind: Map<NoteKind, readonly Note[]> | undefined;
  #regions: RegionTree | undefined;
  #regionsChanged = false;
  #derivedCount = 0;
  #version = 0;

  /** How many times claims were derived from a note, ever: what the note-by-note promise is tested by. */
  get derivedCount(): number {
    return this.#derivedCount;
  }

  /** Grows with every change. */
  get version(): number {
    return this.#version;
  }

  /** Another number whenever something changed that this depends on. */
  versionOf({ notes = [], names = [] }: DependsOn): number {
    const sum = (versions: ReadonlyMap<NoteKind, number>, kinds: readonly NoteKind[]): number =>
      kinds.reduce((all, kind) => all + (versions.get(kind) ?? 0), 0);
    return sum(this.#kindVersions, notes) + sum(this.#nameVersions, names);
  }

  /** The latest changes: what is kept up note by note follows them. */
  get changes(): Pick<ChangeLog, 'length' | 'since'> {
    this.#settleRegions();
    return this.#log;
  }

  /** Does some work, and tells by which names, as they are compared, it looked for notes. */
  watchNames<T>(work: () => T): { readonly done: T; readonly names: ReadonlySet<string> } {
    return this.#names.watch(work);
  }

  /** Puts a note in, or in the place of the one with the same file. */
  put(note: Note): void {
    const before = this.#notes.get(note.file);
    this.#notes.set(note.file, note);
    if (before?.id !== note.id) {
      if (before) this.#leave(before);
      this.#filesOf.set(note.id, [...(this.#filesOf.get(note.id) ?? []), note.file].sort());
    }
    this.#settle(note.id);
  }

  /** Takes the note of a file out. */
  remove(file: string): void {
    const note = this.#notes.get(file);
    if (!note) return;
    this.#notes.delete(file);
    this.#leave(note);
  }

  /** Every note, also those whose id another note holds already. */
  notes(): IterableIterator<Note> {
    return this.#notes.values();
  }

  /** The note that holds an id: of two with one id, the first by file name. */
  note(id: string): Note | undefined {
    return this.#holders.get(id as NoteId);
  }

  /** The note kept in a file. */
  noteIn(file: string): Note | undefined {
    return this.#notes.get(file);
  }

  /** Every note that holds its id and is of this kind, by id. */
  ofKind<K extends NoteKind>(kind: K): readonly (Note & { record: Extract<Note['record'], { kind: K }> })[] {
    type OfKind = Note & { record: Extract<Note['record'], { kind: K }> };
    this.#byKind ??= this.#sortByKind();
    // The map holds each note under its own kind.
    return (this.#byKind.get(kind) ?? []) as readonly OfKind[];
  }

  /** The claims one note makes, as derived. */
  claimsIn(file: string): readonly Claim[] {
    return this.#claims.get(file) ?? [];
  }

  /** Finds a note by id, title or name among these kinds. */
  find(text: string, kinds: readonly NoteKind[]): Found {
    return this.#names.find(text, kinds);
  }

  /** The ids of these kinds whose names are nearest to a text. */
  nearestNames(text: string, kinds: readonly NoteKind[]): readonly string[] {
    return this.#names.nearest(text, kinds);
  }

  /** The id a reference means, or the text itself where no single note answers to it. */
  resolve(text: string, kinds: readonly NoteKind[]): string {
    const found = this.find(text, kinds);
    return found.is === 'one' ? found.id : text.trim();
  }

  /** The regions as a tree, `world` built in. */
  get regions(): RegionTree {
    return this.#settleRegions();
  }

  /** The region a text names by id, title or name; undefined when none or several answer. */
  regionId(text: string): RegionId | undefined {
    const found = this.findRegion(text);
    return found.is === 'one' ? found.id : undefined;
  }

  /** As `find`, for regions, with `world` built in. */
  findRegion(text: string): Found {
    return this.#names.keyOf(text) === WORLD ? { is: 'one', id: WORLD as NoteId } : this.find(text, ['region']);
  }

  /** The span a date means: as read, or that of the period it names. */
  spanOf(when: WrittenDate | undefined): DateSpan | undefined {
    if (!when) return undefined;
    return when.span ?? this.periodSpan(when.text);
  }

  /** The span of a date typed by someone: a date, or a period's id or name. */
  spanOfText(text: string): DateSpan | undefined {
    return parseDate(text).span ?? this.periodSpan(text);
  }

  /** The span of the period a text names. */
  periodSpan(text: string): DateSpan | undefined {
    const found = this.find(text, ['period']);
    const record = found.is === 'one' ? this.note(found.id)?.record : undefined;
    return record?.kind === 'period' ? record.when?.span : undefined;
  }

  /** The placed claims about a material (`fibre/undyed name` for an undyed colour). */
  claimsOf(material: string): readonly PlacedClaim[] {
    return this.claimLists.under(material);
  }

  /** The placed claims by material; a material's list stays the same object until one of its claims changes. */
  get claimLists(): ByKey<PlacedClaim> {
    return placedClaims(this);
  }

  /** Whether a material needs no evidence. */
  isEveryday(material: string): boolean {
    const record = this.note(material)?.record;
    return record !== undefined && 'everyday' in record && record.everyday;
  }

  /** A fibre and every kind it belongs to, itself first; a circle ends where it closes. */
  fibreLine(fibre: string): readonly string[] {
    const line: string[] = [];
    for (let id: string | undefined = fibre; id !== undefined && !line.includes(id);) {
      line.push(id);
      const record: Note['record'] | undefined = this.note(id)?.record;
      id = record?.kind === 'fibre' && record.isKindOf ? this.resolve(record.isKindOf.text, ['fibre']) : undefined;
    }
    return line;
  }

  /** The class of a fibre, its own or that of the kind it belongs to. */
  fibreClassOf(fibre: string): FibreClass | undefined {
    for (const id of this.fibreLine(fibre)) {
      const record = this.note(id)?.record;
      if (record?.kind === 'fibre' && record.fibreClass) return record.fibreClass;
    }
    return undefined;
  }

  /** A wearer and every rank or trade it lies within. */
  wearerLine(wearer: string): ReadonlySet<string> {
    const line = new Set<string>();
    const queue = [wearer];
    for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
      if (line.has(id)) continue;
      line.add(id);
      const record = this.note(id)?.record;
      if (record?.kind === 'wearer') queue.push(...record.within.map(({ text }) => this.resolve(text, ['wearer'])));
    }
    return line;
  }

  /** The claim as it stands in the notebook, or why it takes no part. */
  place(claim: Claim): PlacedClaim | { readonly lacks: 'region' | 'date' } {
    const region = claim.region && this.regionId(claim.region.text);
    if (region === undefined) return { lacks: 'region' };
    const span = this.spanOf(claim.when);
    if (!span) return { lacks: 'date' };
    const atTop = region === WORLD || isAtTop(this.regions, region);
    const usual = atTop && claim.status !== 'wild' && claim.status !== 'absent' ? 'somewhere' : 'whole';
    const material = this.resolve(claim.about, claim.status === 'on-cloth' ? ['dyestuff'] : MATERIAL_KINDS);
    return {
      claim,
      material: claim.undyed === undefined ? material : `${material}/${claim.undyed}`,
      region,
      span,
      extent: claim.extent ?? usual,
      on: claim.on.map(({ text }) => this.resolve(text, ['fibre'])),
    };
  }

  #leave({ id, file }: Note): void {
    const files = (this.#filesOf.get(id) ?? []).filter((one) => one !== file);
    if (files.length > 0) this.#filesOf.set(id, files);
    else this.#filesOf.delete(id);
    this.#settle(id);
  }

  /** Sees to it that the first of an id's files holds it. */
  #settle(id: NoteId): void {
    this.#version += 1;
    const file = this.#filesOf.get(id)?.[0];
    const [before, after] = [this.#holders.get(id), file === undefined ? undefined : this.#notes.get(file)];
    if (before === after) return;
    if (after) this.#holders.set(id, after);
    else this.#holders.delete(id);
    if (before) this.#claims.delete(before.file);
    if (after) {
      this.#claims.set(after.file, deriveClaims(after));
      this.#derivedCount += 1;
    }
    this.#log.add({ files: [before, after].flatMap((note) => note?.file ?? []), names: this.#rename(before, after) });
    this.#sortIn(before, after);
  }

  /** @returns the names that may lead elsewhere now. */
  #rename(before: Note | undefined, after: Note | undefined): readonly string[] {
    const both = [before, after].filter((note) => note !== undefined);
    for (const { record } of both) count(this.#kindVersions, record.kind);
    this.#regionsChanged ||= treePart(before) !== treePart(after);
    if (namePart(before) !== namePart(after)) {
      for (const { record } of both) count(this.#nameVersions, record.kind);
      return [...(before ? this.#names.remove(before) : []), ...(after ? this.#names.add(after) : [])];
    }
    return periodPart(before) === periodPart(after) ? [] : both.flatMap(nameKeys);
  }

  #sortIn(before: Note | undefined, after: Note | undefined): void {
    if (!this.#byKind) return;
    const listOf = (note: Note): readonly Note[] => this.#byKind?.get(note.record.kind) ?? [];
    if (before && after && before.record.kind === after.record.kind) {
      this.#byKind.set(after.record.kind, listOf(after).with(placeById(listOf(after), after.id), after));
      return;
    }
    if (before) this.#byKind.set(before.record.kind, listOf(before).toSpliced(placeById(listOf(before), before.id), 1));
    if (after) this.#byKind.set(after.record.kind, listOf(after).toSpliced(placeById(listOf(after), after.id), 0, after));
  }

  #sortByKind(): Map<NoteKind, readonly Note[]> {
    const byKind = new Map<NoteKind, Note[]>();
    for (const note of this.#holders.values()) {
      const list = byKind.get(note.record.kind);
      if (list) list.push(note);
      else byKind.set(note.record.kind, [note]);
    }
    for (const list of byKind.values()) list.sort((a, b) => (a.id < b.id ? -1 : 1));
    return byKind;
  }

  /** Builds the tree again where a region changed, and tells of those that came to stand at its top or left it. */
  #settleRegions(): RegionTree {
    if (this.#regions && !this.#regionsChanged) return this.#regions;
    const before = this.#regions;
    const tree = regionTree(
      this.ofKind('region').map(({ id, record }): RegionEntry => ({
        id,
        parents: record.within.map(({ text }) => this.regionId(text)).filter((known) => known !== undefined),
        near: record.near.map(({ text }) => this.regionId(text)).filter((known) => known !== undefined),
      })),
    );
    this.#regions = tree;
    this.#regionsChanged = false;
    const moved = before ? tree.ids.filter((id) => isAtTop(tree, id) !== isAtTop(before, id)) : [];
    if (moved.length > 0) this.#log.add({ files: [], names: moved.flatMap((id) => this.note(id) ?? []).flatMap(nameKeys) });
    return tree;
  }
}

/** The claims that take part, by material, in order of their files. */
const placedClaims = perNoteByKey<PlacedClaim>({
  kinds: [...MATERIAL_KINDS, 'textile'],
  derive: (base, { file }) =>
    base.claimsIn(file).flatMap((claim) => {
      const value = base.place(claim);
      return 'lacks' in value ? [] : [{ key: value.material, value }];
    }),
});

const isAtTop = (regions: RegionTree, id: RegionId): boolean => regions.parentsOf(id).includes(WORLD);

const count = (versions: Map<NoteKind, number>, kind: NoteKind): void => {
  versions.set(kind, (versions.get(kind) ?? 0) + 1);
};

/** What a note is found by. */
const namePart = (note: Note | undefined): string => (note ? JSON.stringify([note.record.kind, ...namesOf(note)]) : '');

/** What a note says of the tree of regions. */
function treePart(note: Note | undefined): string {
  if (note?.record.kind !== 'region') return '';
  const texts = (refs: readonly Ref[]): readonly string[] => refs.map(({ text }) => text);
  return JSON.stringify([namePart(note), texts(note.record.within), texts(note.record.near)]);
}

/** What a note says a name means as a date. */
const periodPart = (note: Note | undefined): string => (note?.record.kind === 'period' ? JSON.stringify(note.record.when?.span) : '');

/** Where a note stands in a list by id, or would stand. */
function placeById(list: readonly Note[], id: NoteId): number {
  let [from, to] = [0, list.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((list[middle]?.id ?? id) < id) from = middle + 1;
    else to = middle;
  }
  return from;
}
