import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { Note, NoteKind } from '../note/note.ts';
import type { RegionId } from '../place/region-tree.ts';
import type { DyedSample } from '../verdict/cloths.ts';
import type { RouteJudgement } from '../verdict/judge-route.ts';
import type { CaptionSubject } from './check-caption.ts';

/** What was used instead of what: by the recipe, or as the trial declares; ids. */
export interface StandIn {
  readonly used: string;
  readonly meant: string;
}

const MATERIALS: readonly NoteKind[] = ['dyestuff', 'mordant', 'assistant', 'process'];

/** Everything that stands in for something else in a dyed sample, each once. */
export function standInsOf(base: EvidenceBase, { route }: RouteJudgement, sample: DyedSample | undefined): readonly StandIn[] {
  const fromRecipe = route.materials.flatMap(({ id, usedInstead }) =>
    usedInstead === undefined ? [] : [{ used: usedInstead, meant: id }],
  );
  const fromTrial = (sample?.standIns ?? []).flatMap(({ what, standsFor }) =>
    what && standsFor ? [{ used: base.resolve(what.text, MATERIALS), meant: base.resolve(standsFor.text, MATERIALS) }] : [],
  );
  const all = [...fromRecipe, ...fromTrial].filter(({ used, meant }) => used !== meant);
  return all.filter((one, at) => all.findIndex(({ used, meant }) => used === one.used && meant === one.meant) === at);
}

/** The year a sample was dyed, as its trial gives it. */
export function dyedYearOf(base: EvidenceBase, sample: DyedSample | undefined): string | undefined {
  const record = sample && base.note(sample.trial)?.record;
  const year = record?.kind === 'trial' ? record.date?.span?.latestStart : undefined;
  return typeof year === 'number' ? `${year}` : undefined;
}

/** What the caption of a judged colour must name. */
export function captionSubject(
  base: EvidenceBase,
  judgement: RouteJudgement,
  sample: DyedSample | undefined,
  region: RegionId,
): CaptionSubject {
  const dyedYear = dyedYearOf(base, sample);
  const places = base.ofKind('region').filter(({ id }) => ['here', 'within'].includes(base.regions.relation(id, region)));
  return {
    dyes: judgement.route.dyes.map((dye) => ({ names: namesOf(base, dye), latin: latinOf(base.note(dye)) })),
    placeNames: places.sort((a, b) => Number(b.id === region) - Number(a.id === region)).flatMap(({ id }) => namesOf(base, id)),
    factNames: [
      ...judgement.route.dyes.flatMap((dye) => namesOf(base, dye)),
      ...base.ofKind('dyestuff').map(({ title }) => title),
      ...base.ofKind('region').flatMap(({ id }) => namesOf(base, id)),
      ...base.ofKind('wearer').map(({ title }) => title),
    ],
    ...(dyedYear === undefined ? {} : { dyedYear }),
    standIns: standInsOf(base, judgement, sample).map(({ used, meant }) => ({ used: namesOf(base, used), meant: namesOf(base, meant) })),
  };
}

const namesOf = (base: EvidenceBase, id: string): readonly string[] => {
  const note = base.note(id);
  return note ? [note.title, ...note.names.map(({ name }) => name)] : [id];
};

const latinOf = (note: Note | undefined): readonly string[] => (note?.record.kind === 'dyestuff' ? note.record.latin : []);
