import { claimKey, isPositive } from '../claim/claim.ts';
import { STANDINGS } from './standing-words.ts';
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

interface Weighed {
  readonly judged: JudgedClaim;
  /** Counts the claims that carry one material's standing, from 0; absent for a claim that carries none. */
  readonly carries?: number;
}

/**
 * Sorts the claims behind a route by what they do to it; every claim is counted in one of the four.
 * First one claim for each material that carries its standing, the weakest material first, then dyes; so that a short list tells of all.
 */
export function weighClaims({ materials }: Pick<RouteJudgement, 'materials'>): WeighedClaims {
  const all = materials
    .filter(({ everyday }) => !everyday)
    .sort(inReadingOrder)
    .flatMap((one) => one.claims.map((judged): Weighed => ({ judged, ...carriesIn(one, judged) })));
  const nearby = all.filter(
    ({ judged, carries }) => carries !== undefined || (judged.place !== 'elsewhere' && judged.onFibre && meets(judged)),
  );
  const side = (positive: boolean) =>
    nearby
      .filter(({ judged }) => isPositive(judged.placed.claim) === positive)
      .sort(mostTellingFirst)
      .map(({ judged }) => judged);
  const speaksFor = side(true);
  const speaksAgainst = side(false);
  const shown = new Set([...speaksFor, ...speaksAgainst].map((one) => claimKey(one.placed.claim)));
  const nearest = materials.flatMap(nearestShown).filter((one) => !shown.has(claimKey(one.placed.claim)));
  return { speaksFor, speaksAgainst, nearest, others: all.length - shown.size - nearest.length };
}

function carriesIn({ carriedBy }: JudgedMaterial, judged: JudgedClaim): Pick<Weighed, 'carries'> {
  const carries = carriedBy.indexOf(judged);
  return carries < 0 ? {} : { carries };
}

const inReadingOrder = (a: JudgedMaterial, b: JudgedMaterial): number =>
  STANDINGS.indexOf(b.standing) - STANDINGS.indexOf(a.standing) || Number(b.material.role === 'dye') - Number(a.material.role === 'dye');

/** What carries a standing before what does not; of the first, one for each material before the rest. Otherwise materials stay in reading order. */
function mostTellingFirst(a: Weighed, b: Weighed): number {
  const turn = ({ carries }: Weighed): number => (carries === undefined ? 2 : Math.min(carries, 1));
  return turn(a) - turn(b) || (turn(a) === 2 ? rank(a.judged) - rank(b.judged) : 0);
}

const rank = (one: JudgedClaim): number => (one.firm ? 0 : one.speaks && one.hard ? 1 : one.speaks ? 2 : 3);

/** A material that firm claims carry needs no nearest years; any other shows them. */
function nearestShown({ everyday, origins, nearest: { before, after } }: JudgedMaterial): readonly JudgedClaim[] {
  if (everyday || origins.length > 0) return [];
  return [before, after].filter((one) => one !== undefined);
}
