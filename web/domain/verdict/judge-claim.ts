import { isHard, isPositive, type PlacedClaim } from '../claim/claim.ts';
import type { YearSpan } from '../date/date-span.ts';
import { timeRelation } from '../date/time-relation.ts';
import type { PlaceRelation, RegionId, RegionTree } from '../place/region-tree.ts';

/** Where, when and on what: what a standing is asked for. */
export interface Asked {
  readonly region: RegionId;
  /** The asked core, astronomical years. */
  readonly span: YearSpan;
  /** The asked fibre and every kind it belongs to, itself first; empty when no fibre is asked. */
  readonly fibreLine: readonly string[];
}

/** A placed claim as seen from the question. */
export interface JudgedClaim {
  readonly placed: PlacedClaim;
  readonly place: PlaceRelation;
  readonly time: 'throughout' | 'part' | 'perhaps' | 'later' | 'earlier';
  /** Years between the nearest asked year and the nearest outer year; 0 when they meet. */
  readonly gapYears: number;
  /** Whether it says anything about the asked fibre. */
  readonly onFibre: boolean;
  readonly speaks: boolean;
  readonly hard: boolean;
  readonly firm: boolean;
}

/** Whether a claim's place and fibre make it speak, how its time lies, and whether it is firm. */
export function judgeClaim(placed: PlacedClaim, asked: Asked, regions: RegionTree): JudgedClaim {
  const place = regions.relation(placed.region, asked.region);
  const { relation: time, gapYears } = timeRelation(placed.span, asked.span);
  const onFibre = placed.on.length === 0 || asked.fibreLine.length === 0 || placed.on.some((fibre) => asked.fibreLine.includes(fibre));
  const reaches = place === 'here' || place === 'within' || (place === 'around' && placed.extent === 'whole');
  const speaks = reaches && onFibre;
  const hard = isHard(placed.claim);
  const firm = isPositive(placed.claim) && speaks && hard && (time === 'throughout' || time === 'part');
  return { placed, place, time, gapYears, onFibre, speaks, hard, firm };
}
