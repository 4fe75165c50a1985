import type { Diagnostic, DiagnosticCode, Report, TextRange } from '../diagnostic.ts';
import type { AvailabilityEntry, Citation, Note, NoteKind, Ref, WrittenDate } from '../note/note.ts';
import type { EvidenceBase } from './evidence-base.ts';
import { MATERIAL_KINDS } from './evidence-base.ts';
import { brokenLinks } from './broken-links.ts';
import { isOverdue } from '../date/is-overdue.ts';
import { parseDate } from '../date/parse-date.ts';

/** What checking needs beside the notes. */
export interface CheckContext {
  /** Keys of the bibliography; absent when the notebook has none: then no source is called unknown. */
  readonly citationKeys?: ReadonlySet<string>;
  /** Whether the notebook has a file at this path, from its folder or from beside the note. */
  readonly hasFile?: (path: string, noteFile: string) => boolean;
  /** `YYYY-MM-DD`; absent where nobody looks at a clock: then no review is overdue. */
  readonly today?: string;
}

/**
 * What can only be seen once all notes are together: references, regions, dates that should name a period, clashes.
 * What the note's own text shows was reported when it was read.
 */
export function checkNote(base: EvidenceBase, note: Note, context: CheckContext = {}): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const report: Report = (diagnostic) => found.push(diagnostic);
  const checker = new NoteChecker(base, note, context, report);
  checker.run();
  return found;
}

class NoteChecker {
  readonly #base: EvidenceBase;
  readonly #note: Note;
  readonly #context: CheckContext;
  readonly #report: Report;

  constructor(base: EvidenceBase, note: Note, context: CheckContext, report: Report) {
    this.#base = base;
    this.#note = note;
    this.#context = context;
    this.#report = report;
  }

  run(): void {
    const holder = this.#base.note(this.#note.id);
    if (holder && holder.file !== this.#note.file) this.#say('id-clash', 'error', TOP, [this.#note.id, holder.file, this.#note.file]);
    this.#citations(this.#note.sources, TOP);
    this.#record();
    this.#review();
    for (const { path, range } of brokenLinks(this.#base, this.#note)) this.#say('link-broken', 'warning', range, [path]);
  }

  #review(): void {
    const { reviewBy } = this.#note;
    const { today } = this.#context;
    if (reviewBy && today !== undefined && isOverdue(reviewBy.text, reviewBy.span, today))
      this.#say('review-overdue', 'warning', reviewBy.range, [reviewBy.text]);
  }

  #say(code: DiagnosticCode, severity: Diagnostic['severity'], range: TextRange, about: readonly string[]): void {
    this.#report({ code, severity, range, about });
  }

  #record(): void {
    const { record } = this.#note;
    switch (record.kind) {
      case 'dyestuff':
        record.lightfast.forEach(({ on, mordant, sources }) => {
          this.#ref(on, ['fibre']);
          this.#ref(mordant, ['mordant', 'assistant', 'process']);
          this.#citations(sources, TOP);
        });
        this.#availability(record.availability);
        break;
      case 'mordant':
      case 'assistant':
      case 'process':
        this.#availability(record.availability);
        break;
      case 'fibre':
        this.#ref(record.isKindOf, ['fibre']);
        if (this.#base.fibreLine(this.#note.id).length > 1) this.#fibreLoop(record.isKindOf);
        this.#availability(record.availability);
        for (const undyed of record.undyed) {
          this.#availability(undyed.availability);
          this.#spectrum(undyed.spectrum);
        }
        break;
      case 'recipe':
        this.#refs(record.fibre, ['fibre']);
        this.#refs(record.basedOn, ['text', 'recipe', 'plain']);
        this.#refs(record.follows, ['recipe']);
        if (record.follows.some(({ text }) => this.#leadsBack(text)))
          this.#say('reference-loop', 'error', record.follows[0]?.range ?? TOP, [this.#note.id]);
        this.#ingredients(record.ingredients);
        record.ingredients.forEach(({ what, standsFor }) => this.#recorded(standsFor ?? what, MATERIAL_KINDS));
        record.fibre.forEach((ref) => this.#recorded(ref, ['fibre']));
        break;
      case 'trial':
        this.#ref(record.recipe, ['recipe']);
        this.#ref(record.bath?.after, ['trial']);
        this.#ingredients(record.actual);
        for (const sample of record.samples) {
          this.#ref(sample.fibre, ['fibre']);
          this.#spectrum(sample.spectrum);
        }
        break;
      case 'textile':
        this.#region(record.region);
        this.#region(record.madeAt);
        this.#date(record.when);
        this.#refs(record.wearer, ['wearer']);
        for (const thread of record.threads) {
          this.#ref(thread.fibre, ['fibre']);
          this.#refs(thread.dyes, ['dyestuff']);
          if (thread.dyes.length > 0 && thread.tested === 'found') this.#takesPart(thread.range, record.region, record.when);
        }
        break;
      case 'text':
        this.#region(record.region);
        this.#date(record.when);
        this.#date(record.copied);
        this.#refs(record.dyes, ['dyestuff']);
        this.#refs(record.fibre, ['fibre']);
        break;
      case 'colour-word':
        this.#region(record.region);
        this.#date(record.when);
        for (const meaning of record.means) this.#refs(meaning.dyes, MATERIAL_KINDS);
        break;
      case 'rule':
        this.#region(record.region);
        this.#date(record.when);
        this.#refs(record.concerns, [...MATERIAL_KINDS, 'colour-word']);
        this.#refs(record.allows, ['wearer']);
        this.#refs(record.forbids, ['wearer']);
        break;
      case 'wearer':
        this.#refs(record.within, ['wearer']);
        this.#region(record.region);
        this.#date(record.when);
        break;
      case 'region':
        [...record.within, ...record.near].forEach((ref) => this.#region(ref));
        if (this.#base.regions.inCircle.has(this.#note.id))
          this.#say('region-loop', 'error', record.within[0]?.range ?? TOP, [this.#note.id]);
        break;
      case 'period':
        this.#region(record.region);
        if (record.when && !record.when.span) this.#unreadable(record.when);
        break;
      case 'palette':
        this.#region(record.region);
        this.#date(record.when);
        this.#ref(record.fibre, ['fibre']);
        this.#ref(record.wearer, ['wearer']);
        break;
      case 'display':
        this.#ref(record.palette, ['palette']);
        for (const { trial } of record.places) this.#ref(trial, ['trial']);
        break;
      default:
    }
  }

  #availability(entries: readonly AvailabilityEntry[]): void {
    for (const entry of entries) {
      this.#region(entry.region);
      this.#date(entry.when);
      this.#refs(entry.on, ['fibre']);
      this.#refs(entry.wearers, ['wearer']);
      this.#citations(entry.sources, entry.range);
      if (entry.status) this.#takesPart(entry.range, entry.region, entry.when);
    }
  }

  #takesPart(range: TextRange, region: Ref | undefined, when: WrittenDate | undefined): void {
    const lacks = [
      ...(region && this.#base.regionId(region.text) !== undefined ? [] : ['region']),
      ...(this.#base.spanOf(when) ? [] : ['date']),
    ];
    if (lacks.length > 0) this.#say('claim-takes-no-part', 'warning', range, lacks);
  }

  #ingredients(ingredients: readonly { readonly what?: Ref; readonly standsFor?: Ref }[]): void {
    for (const { what, standsFor } of ingredients) {
      this.#ref(what, MATERIAL_KINDS);
      this.#ref(standsFor, MATERIAL_KINDS);
    }
  }

  /** A material of a recipe without a note, or without a claim that takes part: every answer with this recipe hangs on it. */
  #recorded(ref: Ref | undefined, kinds: readonly NoteKind[]): void {
    if (!ref) return;
    const id = this.#base.resolve(ref.text, kinds);
    if (!this.#base.isEveryday(id) && this.#base.claimsOf(id).length === 0) this.#say('material-unrecorded', 'warning', ref.range, [id]);
  }

  #refs(refs: readonly Ref[], kinds: readonly NoteKind[]): void {
    refs.forEach((ref) => this.#ref(ref, kinds));
  }

  #ref(ref: Ref | undefined, kinds: readonly NoteKind[]): void {
    if (!ref) return;
    const found = this.#base.find(ref.text, kinds);
    if (found.is === 'one') return;
    if (found.is === 'several') this.#say('name-ambiguous', 'error', ref.range, [ref.text, ...found.ids]);
    else if (this.#base.note(ref.text))
      this.#say('reference-wrong-kind', 'error', ref.range, [ref.text, this.#base.note(ref.text)?.record.kind ?? '', kinds.join(', ')]);
    else this.#say('reference-unknown', 'warning', ref.range, [ref.text, kinds[0] ?? '', ...found.nearest]);
  }

  #region(ref: Ref | undefined): void {
    if (!ref) return;
    const found = this.#base.findRegion(ref.text);
    if (found.is === 'several') this.#say('name-ambiguous', 'error', ref.range, [ref.text, ...found.ids]);
    if (found.is === 'none') this.#say('region-unknown', 'error', ref.range, [ref.text, ...found.nearest]);
  }

  #date(when: WrittenDate | undefined): void {
    if (when && !this.#base.spanOf(when)) this.#unreadable(when);
  }

  #unreadable({ text, range }: WrittenDate): void {
    const { problem } = parseDate(text);
    // An ambiguous, reversed or impossible date was reported when the note was read.
    if (problem && problem.code !== 'date-unreadable') return;
    this.#say('date-unreadable', 'error', range, [text, ...(problem?.suggestions ?? [])]);
  }

  #citations(sources: readonly Citation[], range: TextRange): void {
    const known = this.#context.citationKeys;
    if (!known) return;
    for (const { key } of sources) if (!known.has(key)) this.#say('source-unknown', 'warning', range, [key]);
  }

  #spectrum(ref: { readonly file: string; readonly range: TextRange } | undefined): void {
    if (ref && this.#context.hasFile && !this.#context.hasFile(ref.file, this.#note.file))
      this.#say('spectrum-missing', 'error', ref.range, [ref.file]);
  }

  #fibreLoop(ref: Ref | undefined): void {
    const last = this.#base.fibreLine(this.#note.id).at(-1);
    const record = last === undefined ? undefined : this.#base.note(last)?.record;
    if (ref && record?.kind === 'fibre' && record.isKindOf) this.#say('reference-loop', 'error', ref.range, [this.#note.id]);
  }

  #leadsBack(text: string): boolean {
    const seen = new Set<string>();
    const queue = [this.#base.resolve(text, ['recipe'])];
    for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
      if (id === this.#note.id) return true;
      if (seen.has(id)) continue;
      seen.add(id);
      const record = this.#base.note(id)?.record;
      if (record?.kind === 'recipe') queue.push(...record.follows.map((ref) => this.#base.resolve(ref.text, ['recipe'])));
    }
    return false;
  }
}

/** Findings about the note as a whole stand at its beginning. */
const TOP: TextRange = [0, 0];
