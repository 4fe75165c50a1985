import type { EvidenceBase } from '../claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { perNote } from '../claim/per-note.ts';
import type { DateSpan } from '../date/date-span.ts';
import { timeRelation } from '../date/time-relation.ts';
import type { NoteId, Ref, RuleRecord } from '../note/note.ts';
import type { PlaceRelation, RegionId } from '../place/region-tree.ts';
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
  const rules = new Set([...concerned].flatMap((one) => rulesAbout(base, one)));
  const inOrder = [...rules].sort((a, b) => (a.id < b.id ? -1 : 1));
  return inOrder.flatMap(({ id, record, about, region, span }): RuleFinding[] => {
    const concerns = about.filter((one) => concerned.has(one));
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

/** A rule whose region and date can be read, with what it is about. */
interface PlacedRule {
  readonly id: NoteId;
  readonly record: RuleRecord;
  readonly about: readonly string[];
  readonly region: RegionId;
  readonly span: DateSpan;
}

const rulesAbout = perNote<PlacedRule>({
  kinds: ['rule'],
  derive(base, { id, record }) {
    if (record.kind !== 'rule') return [];
    const about = record.concerns.map(({ text }) => base.resolve(text, [...MATERIAL_KINDS, 'colour-word']));
    const region = record.region && base.regionId(record.region.text);
    const span = base.spanOf(record.when);
    if (region === undefined || !span) return [];
    const value = { id, record, about, region, span };
    return about.map((key) => ({ key, value }));
  },
});
