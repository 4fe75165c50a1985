import { claimKey, isPositive } from '../claim/claim.ts';
import type { JudgedMaterial, RouteJudgement } from './judge-route.ts';
import type { JudgedClaim } from './judge-claim.ts';

/** The claims of a route sorted for reading. */
export interface WeighedClaims {
  /** Positive, of this place or near it, in time or doubtfully so; the firm first. */
  readonly speaksFor: readonly JudgedClaim[];
  /** Absences that touch place and time, doubtful ones too: these are only shown. */
  readonly speaksAgainst: readonly JudgedClaim[];
  /** The nearest positive claims before and after, where nothing meets the asked years. */
  readonly nearest: readonly JudgedClaim[];
  /** How many more claims speak of other years or places. */
  readonly others: number;
}

const meets = ({ time }: JudgedClaim): boolean => time === 'throughout' || time === 'part' || time === 'perhaps';

/** Sorts the claims behind a route by what they do to it; every claim is counted in one of the four. */
export function weighClaims({ materials }: Pick<RouteJudgement, 'materials'>): WeighedClaims {
  const all = materials
    .filter(({ everyday }) => !everyday)
    .flatMap((one) => one.claims.map((judged) => ({ judged, carried: one.carriedBy.includes(judged) })));
  const nearby = all.filter(({ judged, carried }) => carried || (judged.place !== 'elsewhere' && judged.onFibre && meets(judged)));
  const side = (positive: boolean) => nearby.filter(({ judged }) => isPositive(judged.placed.claim) === positive);
  const order = (a: { judged: JudgedClaim; carried: boolean }, b: { judged: JudgedClaim; carried: boolean }) =>
    Number(b.carried) - Number(a.carried) || rank(a.judged) - rank(b.judged);
  const speaksFor = side(true)
    .sort(order)
    .map(({ judged }) => judged);
  const speaksAgainst = side(false)
    .sort(order)
    .map(({ judged }) => judged);
  const shown = new Set([...speaksFor, ...speaksAgainst].map((one) => claimKey(one.placed.claim)));
  const nearest = materials.flatMap(nearestShown).filter((one) => !shown.has(claimKey(one.placed.claim)));
  return { speaksFor, speaksAgainst, nearest, others: all.length - shown.size - nearest.length };
}

const rank = (one: JudgedClaim): number => (one.firm ? 0 : one.speaks && one.hard ? 1 : one.speaks ? 2 : 3);

/** A material that firm claims carry needs no nearest years; any other shows them. */
function nearestShown({ everyday, origins, nearest: { before, after } }: JudgedMaterial): readonly JudgedClaim[] {
  if (everyday || origins.length > 0) return [];
  return [before, after].filter((one) => one !== undefined);
}
