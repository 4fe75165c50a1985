import type { EvidenceBase } from '../claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { perVersion } from '../claim/per-version.ts';
import { timeRelation } from '../date/time-relation.ts';
import type { NoteId, Ref } from '../note/note.ts';
import type { PlaceRelation } from '../place/region-tree.ts';
import type { Asked } from './judge-claim.ts';

/** A law or guild rule that touches a colour, said beside the verdict and never changing it. */
export interface RuleFinding {
  readonly note: NoteId;
  readonly act?: 'wear' | 'dye' | 'import' | 'sell';
  /** The materials or colour-words of the route it concerns. */
  readonly concerns: readonly string[];
  readonly place: PlaceRelation;
  readonly time: 'throughout' | 'part' | 'perhaps';
  /** Forbids the asked wearer, or allows only others; `others` when it touches the colour but not this wearer. */
  readonly touches: 'forbidden' | 'not-among-allowed' | 'others';
}

/**
 * The rules that concern a route, with whether they touch the asked wearer.
 *
 * @param concerned materials and colour-words of the route.
 * @param wearer undefined when nobody was asked about: every rule then only touches others.
 */
export function rulesFor(
  base: EvidenceBase,
  concerned: ReadonlySet<string>,
  asked: Asked,
  wearer: string | undefined,
): readonly RuleFinding[] {
  const line = wearer === undefined ? new Set<string>() : base.wearerLine(wearer);
  const names = (refs: readonly Ref[]) => refs.map(({ text }) => base.resolve(text, ['wearer']));
  return placedRules(base).flatMap(({ id, record, about, region, span }): RuleFinding[] => {
    const concerns = about.filter((one) => concerned.has(one));
    if (concerns.length === 0) return [];
    const place = base.regions.relation(region, asked.region);
    const { relation: time } = timeRelation(span, asked.span);
    if (place === 'neighbour' || place === 'elsewhere' || time === 'later' || time === 'earlier') return [];
    const forbids = names(record.forbids).some((one) => line.has(one));
    const allows = names(record.allows);
    const shutOut = wearer !== undefined && allows.length > 0 && !allows.some((one) => line.has(one));
    const touches = forbids ? 'forbidden' : shutOut ? 'not-among-allowed' : 'others';
    return [{ note: id, ...(record.act && { act: record.act }), concerns, place, time, touches }];
  });
}

/** Every rule whose region and date can be read, with what it is about: the same for every route and question. */
const placedRules = perVersion((base) =>
  base.ofKind('rule').flatMap(({ id, record }) => {
    const about = record.concerns.map(({ text }) => base.resolve(text, [...MATERIAL_KINDS, 'colour-word']));
    const region = record.region && base.regionId(record.region.text);
    const span = base.spanOf(record.when);
    return region === undefined || !span ? [] : [{ id, record, about, region, span }];
  }),
);
