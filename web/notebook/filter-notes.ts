import { type EvidenceBase, MATERIAL_KINDS } from '../domain/claim/evidence-base.ts';
import { claimsAt, TO_HAND } from '../domain/claim/claims-at.ts';
import type { YearSpan } from '../domain/date/date-span.ts';
import { noteTimePlace } from '../domain/naming/note-time-place.ts';
import type { Ingredient, Note, NoteId, NoteKind, Ref } from '../domain/note/note.ts';
import type { RegionId } from '../domain/place/region-tree.ts';
import { recipeFibres } from '../domain/verdict/cloths.ts';
import { judgeRoute } from '../domain/verdict/judge-route.ts';
import { routeOf } from '../domain/verdict/route.ts';
import { standingOf } from '../domain/verdict/standing.ts';
import type { Standing } from '../domain/verdict/standing-words.ts';

/** What a list of notes is narrowed to; every part that is there must hold. Ids, not typed text. */
export interface SearchFilter {
  readonly kinds?: readonly NoteKind[];
  /** The note speaks of this region or of one inside it. */
  readonly region?: RegionId;
  /** The note speaks of some of these years. */
  readonly span?: YearSpan;
  /** The note is about this fibre or a kind of it. */
  readonly fibre?: string;
  /** The recipe or trial uses this mordant, or the note is the mordant's own. */
  readonly mordant?: string;
  /** The material or recipe stands so at a place and time. */
  readonly standing?: { readonly any: readonly Standing[]; readonly region: RegionId; readonly span: YearSpan };
}

/**
 * Tells of a note whether it holds every part of a filter; what a note does not say it does not hold. For the notebook as it
 * stands: after a change another is asked for.
 */
export function noteFilter(base: EvidenceBase, filter: SearchFilter): (note: Note) => boolean {
  const { kinds, region, span, fibre, mordant, standing } = filter;
  const isOfTimePlace = region === undefined && !span ? undefined : ofTimePlace(base, region, span);
  return (note) => {
    if (kinds && !kinds.includes(note.record.kind)) return false;
    if (isOfTimePlace && !isOfTimePlace(note)) return false;
    if (fibre !== undefined && !fibresOf(base, note).some((one) => base.fibreLine(one).includes(fibre))) return false;
    if (mordant !== undefined && note.id !== mordant && !usesMordant(base, note, mordant)) return false;
    if (!standing) return true;
    const stands = standingOfNote(base, note, standing);
    return stands !== undefined && standing.any.includes(stands);
  };
}

/** A material speaks of every place and date at which it is claimed to have been to hand; other notes of their own. */
function ofTimePlace(base: EvidenceBase, region: RegionId | undefined, span: YearSpan | undefined): (note: Note) => boolean {
  // Asked for once a material is met: most kinds of notes say themselves when and where.
  let materials: ReadonlySet<string> | undefined;
  const materialsThen = (): ReadonlySet<string> =>
    new Set(
      claimsAt(base, { ...(region !== undefined && { region }), ...(span && { span }), statuses: TO_HAND }).map(({ material }) => material),
    );
  const parts = region === undefined ? undefined : new Set(base.regions.within(region));
  return (note) => {
    if (MATERIAL_KINDS.includes(note.record.kind)) return (materials ??= materialsThen()).has(note.id);
    const { regions, spans } = noteTimePlace(base, note);
    return (!parts || regions.some((one) => parts.has(one))) && (!span || spans.some((one) => meets(one, span)));
  };
}

const meets = (a: YearSpan, b: YearSpan): boolean =>
  Math.max(a.from ?? -Infinity, b.from ?? -Infinity) <= Math.min(a.to ?? Infinity, b.to ?? Infinity);

function fibresOf(base: EvidenceBase, { id, record }: Note): readonly string[] {
  const ids = (refs: readonly (Ref | undefined)[]) => refs.flatMap((ref) => (ref ? [base.resolve(ref.text, ['fibre'])] : []));
  switch (record.kind) {
    case 'fibre':
      return [id];
    case 'recipe':
    case 'text':
      return ids(record.fibre);
    case 'textile':
      return ids(record.threads.map(({ fibre }) => fibre));
    case 'palette':
      return ids([record.fibre]);
    case 'trial': {
      const own = ids(record.samples.map(({ fibre }) => fibre));
      return own.length > 0 || !record.recipe ? own : recipeFibres(base, base.resolve(record.recipe.text, ['recipe']));
    }
    default:
      return [];
  }
}

function usesMordant(base: EvidenceBase, { record }: Note, mordant: string): boolean {
  const uses = (ingredients: readonly Ingredient[]) =>
    ingredients.some(({ what }) => what !== undefined && base.resolve(what.text, MATERIAL_KINDS) === mordant);
  if (record.kind === 'recipe') return uses(record.ingredients);
  if (record.kind !== 'trial') return false;
  if (record.actual.length > 0) return uses(record.actual);
  const recipe = record.recipe && base.note(base.resolve(record.recipe.text, ['recipe']))?.record;
  return recipe?.kind === 'recipe' && uses(recipe.ingredients);
}

function standingOfNote(
  base: EvidenceBase,
  { id, record }: Note,
  { region, span }: { readonly region: RegionId; readonly span: YearSpan },
): Standing | undefined {
  if (MATERIAL_KINDS.includes(record.kind)) {
    return standingOf(base.claimsOf(id), { region, span, fibreLine: [] }, { regions: base.regions, everyday: base.isEveryday(id) })
      .standing;
  }
  const recipe =
    record.kind === 'recipe' ? id : record.kind === 'trial' && record.recipe ? base.resolve(record.recipe.text, ['recipe']) : undefined;
  if (recipe === undefined || base.note(recipe)?.record.kind !== 'recipe') return undefined;
  const fibre = recipeFibres(base, recipe)[0];
  const question = { region, span, dyedHere: false, ...(fibre === undefined ? {} : { fibre }) };
  return judgeRoute(base, routeOf(base, recipe as NoteId, fibre), question, { brief: true }).standing;
}
