import { isPositive, type PlacedClaim } from '../claim/claim.ts';
import { type Bound, coreOf, outerOf, type YearSpan } from '../date/date-span.ts';
import { reachAt } from '../date/reach.ts';
import { type Status } from '../note/note.ts';
import type { RegionTree } from '../place/region-tree.ts';
import { type Asked, judgeClaim, type JudgedClaim } from './judge-claim.ts';
import { type Origin, originOf, ORIGINS, type Standing } from './standing-words.ts';

/** What a standing was found from. */
export interface MaterialStanding {
  readonly standing: Standing;
  /** Every origin firmly found, best first; empty when none is firm. */
  readonly origins: readonly Origin[];
  /** The claims that carry the standing. */
  readonly carriedBy: readonly JudgedClaim[];
  /** Every claim about the material, as seen from the question, in notebook order. */
  readonly claims: readonly JudgedClaim[];
  /** Needs no evidence. */
  readonly everyday: boolean;
  /** The nearest years recorded before and after the asked span by positive claims that speak. */
  readonly nearest: { readonly before?: JudgedClaim; readonly after?: JudgedClaim };
}

/** What the rules of standing need besides the claims. */
export interface StandingContext {
  readonly regions: RegionTree;
  readonly everyday: boolean;
  /** Statuses left out, as when the dyeing itself is asked for. */
  readonly without?: ReadonlySet<Status>;
}

/**
 * The standing of one material at a place and time: rules 0 to 7, the first that applies.
 * The order of the claims does not matter.
 */
export function standingOf(placed: readonly PlacedClaim[], asked: Asked, context: StandingContext): MaterialStanding {
  const claims = placed.filter(({ claim }) => !context.without?.has(claim.status)).map((one) => judgeClaim(one, asked, context.regions));
  const firm = claims.filter((one) => one.firm);
  const origins = ORIGINS.filter((origin) => firm.some((one) => originOfJudged(one) === origin));
  const result = (standing: Standing, carriedBy: readonly JudgedClaim[]): MaterialStanding => ({
    standing,
    origins,
    carriedBy,
    claims,
    everyday: context.everyday,
    nearest: nearestOf(claims),
  });

  if (context.everyday) return { ...result('local', firm), origins: ['local', ...origins.filter((origin) => origin !== 'local')] };

  const absences = claims.filter((one) => isSettledAbsence(one, asked.fibreLine.length > 0));
  const clash = contestOf(firm, absences, asked.span);
  if (clash.length > 0) return result('contested', clash);

  const best = origins[0];
  if (best)
    return result(
      best,
      firm.filter((one) => originOfJudged(one) === best),
    );

  const throughout = absences.filter(({ time }) => time === 'throughout');
  if (throughout.length > 0) return result('absent', throughout);

  const positive = claims.filter(({ placed: { claim } }) => isPositive(claim));
  const perhaps = positive.filter((one) => one.speaks && (one.hard ? one.time === 'perhaps' : touches(one)));
  if (perhaps.length > 0) return result('perhaps', perhaps);

  const nearby = positive.filter((one) => one.hard && one.onFibre && (isNearInTime(one, asked) || isNearInPlace(one)));
  if (nearby.length > 0) return result('nearby', nearby);

  const speaking = positive.filter((one) => one.hard && one.speaks);
  const first = extreme(speaking, (one) => outerOf(one.placed.span).from, -1);
  if (first.length > 0 && first.some(({ time, placed: p }) => time === 'later' && p.claim.startKnown)) {
    return result(
      'not-yet',
      first.filter(({ placed: p }) => p.claim.startKnown),
    );
  }
  const last = extreme(speaking, (one) => outerOf(one.placed.span).to, 1);
  if (last.length > 0 && last.some(({ time, placed: p }) => time === 'earlier' && p.claim.endKnown)) {
    return result(
      'no-longer',
      last.filter(({ placed: p }) => p.claim.endKnown),
    );
  }
  return result('unrecorded', []);
}

const originOfJudged = ({ placed: { claim } }: JudgedClaim): Origin | undefined =>
  claim.status === 'absent' ? undefined : originOf(claim.status);

const touches = ({ time }: JudgedClaim): boolean => time === 'throughout' || time === 'part' || time === 'perhaps';

/**
 * An absence that can settle something: not doubtful, of the place itself or all around it, and of the asked fibre.
 * One that speaks of certain fibres only settles nothing when no fibre is asked. Our reading, because it denies only those.
 */
function isSettledAbsence(one: JudgedClaim, fibreAsked: boolean): boolean {
  if (!fibreAsked && one.placed.on.length > 0) return false;
  const { status, sure } = one.placed.claim;
  return (
    status === 'absent' &&
    sure !== 'doubtful' &&
    (one.place === 'here' || one.place === 'around') &&
    one.onFibre &&
    (one.time === 'throughout' || one.time === 'part')
  );
}

/** Rule 1: firm claims of local or imported and absences whose cores meet each other inside the asked span. */
function contestOf(firm: readonly JudgedClaim[], absences: readonly JudgedClaim[], span: YearSpan): readonly JudgedClaim[] {
  const sides = firm.filter((one) => ['local', 'imported'].includes(originOfJudged(one) ?? ''));
  const against = new Set<JudgedClaim>();
  const inFavour = sides.filter((one) => {
    const met = absences.filter((absence) => meets(coreOf(one.placed.span), coreOf(absence.placed.span), span));
    met.forEach((absence) => against.add(absence));
    return met.length > 0;
  });
  return [...inFavour, ...absences.filter((absence) => against.has(absence))];
}

function meets(...spans: readonly YearSpan[]): boolean {
  const from = Math.max(...spans.map((span) => span.from ?? -Infinity));
  const to = Math.min(...spans.map((span) => span.to ?? Infinity));
  return from <= to;
}

/** Rule 5 (a): it speaks, and lies within the reach of the asked year or is wild, without crossing a known end. */
function isNearInTime(one: JudgedClaim, { span }: Asked): boolean {
  if (!one.speaks || (one.time !== 'later' && one.time !== 'earlier')) return false;
  const { claim } = one.placed;
  if (one.time === 'later' ? claim.startKnown : claim.endKnown) return false;
  const nearestAsked = one.time === 'later' ? span.to : span.from;
  return claim.status === 'wild' || (nearestAsked !== null && one.gapYears <= reachAt(nearestAsked));
}

/** Rule 5 (b): somewhere around, or in a neighbouring region, at the time itself. */
const isNearInPlace = (one: JudgedClaim): boolean =>
  (one.time === 'throughout' || one.time === 'part') &&
  (one.place === 'neighbour' || (one.place === 'around' && one.placed.extent === 'somewhere'));

/** The claims whose bound lies farthest to one side; an open bound is farthest. */
function extreme(claims: readonly JudgedClaim[], boundOf: (one: JudgedClaim) => Bound, side: -1 | 1): readonly JudgedClaim[] {
  const far = (one: JudgedClaim) => boundOf(one) ?? side * Infinity;
  const best = side * Math.max(...claims.map((one) => side * far(one)));
  return claims.filter((one) => far(one) === best);
}

function nearestOf(claims: readonly JudgedClaim[]): MaterialStanding['nearest'] {
  const speaking = claims.filter((one) => one.speaks && one.hard && isPositive(one.placed.claim));
  const closest = (time: 'later' | 'earlier') =>
    speaking
      .filter((one) => one.time === time)
      .reduce<JudgedClaim | undefined>((best, one) => (best && best.gapYears <= one.gapYears ? best : one), undefined);
  const before = closest('earlier');
  const after = closest('later');
  return { ...(before && { before }), ...(after && { after }) };
}
