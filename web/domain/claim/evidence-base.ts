import type { DateSpan } from '../date/date-span.ts';
import { parseDate } from '../date/parse-date.ts';
import type { FibreClass, Note, NoteId, NoteKind, WrittenDate } from '../note/note.ts';
import { type RegionEntry, type RegionId, type RegionTree, regionTree, WORLD } from '../place/region-tree.ts';
import { fold } from '../text/fold.ts';
import { type Claim, type PlacedClaim } from './claim.ts';
import { deriveClaims } from './derive-claims.ts';
import { type Found, NameIndex } from './name-index.ts';

/** Kinds that can stand in a route. */
export const MATERIAL_KINDS: readonly NoteKind[] = ['dyestuff', 'mordant', 'assistant', 'process', 'fibre'];

/**
 * What all notes say together, merged by id and kept up note by note.
 *
 * Putting or removing a note derives that note's claims alone. A change to a region, period, fibre or wearer,
 * or to a note's names, may move where other claims stand: then placing (not deriving) is done again when next asked.
 * The one mutable value of the domain, because a notebook of ten years is edited one note at a time.
 */
export class EvidenceBase {
  readonly #notes = new Map<string, Note>();
  readonly #fileOf = new Map<NoteId, string>();
  readonly #claims = new Map<string, readonly Claim[]>();
  readonly #names = new NameIndex();
  #placed: Map<string, PlacedClaim[]> | undefined;
  #byKind: ReadonlyMap<NoteKind, readonly Note[]> | undefined;
  #regions: RegionTree | undefined;
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

  /** Puts a note in, or in the place of the one with the same file. */
  put(note: Note): void {
    this.remove(note.file);
    this.#notes.set(note.file, note);
    const holder = this.#fileOf.get(note.id);
    if (holder === undefined || note.file < holder) {
      if (holder !== undefined) this.#retire(holder);
      this.#enter(note);
    }
    this.#changed();
  }

  /** Takes the note of a file out. */
  remove(file: string): void {
    const note = this.#notes.get(file);
    if (!note) return;
    this.#notes.delete(file);
    if (this.#fileOf.get(note.id) === file) {
      this.#retire(file, note);
      const heir = [...this.#notes.values()].filter(({ id }) => id === note.id).sort((a, b) => (a.file < b.file ? -1 : 1))[0];
      if (heir) this.#enter(heir);
    }
    this.#changed();
  }

  /** Every note, also those whose id another note holds already. */
  notes(): IterableIterator<Note> {
    return this.#notes.values();
  }

  /** The note that holds an id: of two with one id, the first by file name. */
  note(id: string): Note | undefined {
    const file = this.#fileOf.get(id as NoteId);
    return file === undefined ? undefined : this.#notes.get(file);
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
    this.#regions ??= regionTree(
      this.ofKind('region').map(({ id, record }): RegionEntry => ({
        id,
        parents: record.within.map(({ text }) => this.regionId(text)).filter((known) => known !== undefined),
        near: record.near.map(({ text }) => this.regionId(text)).filter((known) => known !== undefined),
      })),
    );
    return this.#regions;
  }

  /** The region a text names by id, title or name; undefined when none or several answer. */
  regionId(text: string): RegionId | undefined {
    const found = this.findRegion(text);
    return found.is === 'one' ? found.id : undefined;
  }

  /** As `find`, for regions, with `world` built in. */
  findRegion(text: string): Found {
    return fold(text) === WORLD ? { is: 'one', id: WORLD as NoteId } : this.find(text, ['region']);
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
    this.#placed ??= this.#placeAll();
    return this.#placed.get(material) ?? [];
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
    const atTop = region === WORLD || this.regions.parentsOf(region).includes(WORLD);
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

  #enter(note: Note): void {
    this.#fileOf.set(note.id, note.file);
    this.#names.add(note);
    this.#claims.set(note.file, deriveClaims(note));
    this.#derivedCount += 1;
  }

  #retire(file: string, note = this.#notes.get(file)): void {
    if (!note) return;
    this.#fileOf.delete(note.id);
    this.#names.remove(note);
    this.#claims.delete(file);
  }

  #changed(): void {
    this.#placed = undefined;
    this.#byKind = undefined;
    this.#regions = undefined;
    this.#version += 1;
  }

  #sortByKind(): ReadonlyMap<NoteKind, readonly Note[]> {
    const byKind = new Map<NoteKind, Note[]>();
    for (const file of this.#fileOf.values()) {
      const note = this.#notes.get(file);
      if (!note) continue;
      const list = byKind.get(note.record.kind);
      if (list) list.push(note);
      else byKind.set(note.record.kind, [note]);
    }
    for (const list of byKind.values()) list.sort((a, b) => (a.id < b.id ? -1 : 1));
    return byKind;
  }

  #placeAll(): Map<string, PlacedClaim[]> {
    const byMaterial = new Map<string, PlacedClaim[]>();
    for (const file of [...this.#claims.keys()].sort()) {
      for (const claim of this.#claims.get(file) ?? []) {
        const placed = this.place(claim);
        if ('lacks' in placed) continue;
        const list = byMaterial.get(placed.material);
        if (list) list.push(placed);
        else byMaterial.set(placed.material, [placed]);
      }
    }
    return byMaterial;
  }
}
