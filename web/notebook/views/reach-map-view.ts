import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { claimKey, isHard, type PlacedClaim } from '../../domain/claim/claim.ts';
import { coreOf, type DateSpan, type YearSpan } from '../../domain/date/date-span.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { parseDate } from '../../domain/date/parse-date.ts';
import { timeRelation } from '../../domain/date/time-relation.ts';
import { MATERIAL_KINDS } from '../../domain/claim/evidence-base.ts';
import type { Status } from '../../domain/note/note.ts';
import type { Notebook } from '../notebook.ts';
import type { QuestionProblem } from '../pose-question.ts';
import { inSentence, titleOf } from '../words/claim-line.ts';
import { counted } from '../words/counted.ts';
import { type ListedClaim, listedClaim } from './dyestuff-view.ts';

/** What was asked of the map. */
export interface TypedReach {
  readonly dye: string;
  readonly when: string;
}

/** How a source reached a place, best first: it grew wild, was grown or made, arrived, arrived as cloth, is on a find, was not there. */
export const REACHES = ['wild', 'grown', 'made', 'imported', 'cloth-only', 'on-cloth', 'absent'] as const satisfies readonly Status[];
export type Reach = (typeof REACHES)[number];

/** A place on the map. */
export interface ReachPlace {
  readonly region: string;
  readonly title: string;
  /** Latitude, longitude; absent where the region's note gives no point: such a place stands in the table alone. */
  readonly point?: readonly [latitude: number, longitude: number];
  /** Every way it is recorded there and then, best first. */
  readonly reaches: readonly Reach[];
  /** True where only doubtful years reach, or no claim is hard. */
  readonly doubtful: boolean;
  /** A record speaks for it and another says it was not there. */
  readonly contested: boolean;
  /** Somewhere in it, not all over. */
  readonly somewhere: boolean;
  readonly claims: readonly ListedClaim[];
}

/** A map of reach: everything to be drawn and told. */
export interface ReachMapView {
  readonly dye: string;
  readonly title: string;
  readonly reading: string;
  /** One sentence what the map shows. */
  readonly sentence: string;
  /** From west to east, those without a point last. */
  readonly places: readonly ReachPlace[];
  /** Records of other years, that the map leaves out. */
  readonly otherYears: number;
}

/** A map, or what was not understood. */
export type ReachMapOrProblems = { readonly map: ReachMapView } | { readonly problems: readonly QuestionProblem[] };

/** Where a source grew, was grown, arrived and arrived as cloth at a date: what its claims say of each region itself, nothing inferred. */
export function reachMapView({ base }: Notebook, { dye, when }: TypedReach): ReachMapOrProblems {
  const found = base.find(dye, MATERIAL_KINDS);
  const span = base.spanOfText(when);
  const problems: QuestionProblem[] = [];
  if (found.is !== 'one') {
    const problem = dye.trim() === '' ? 'missing' : found.is === 'several' ? 'ambiguous' : 'unknown';
    problems.push({ part: 'dye', problem, typed: dye, nearest: found.is === 'several' ? found.ids : found.nearest });
  }
  if (!span) {
    problems.push({
      part: 'when',
      problem: when.trim() === '' ? 'missing' : 'unreadable',
      typed: when,
      nearest: parseDate(when).problem?.suggestions ?? [],
    });
  }
  if (found.is !== 'one' || !span) return { problems };
  const asked = coreOf(span);
  const claims = base.claimsOf(found.id);
  const then = claims.filter((one) => isThen(one.span, asked));
  const regions = new Map<string, PlacedClaim[]>();
  for (const one of then) regions.set(one.region, [...(regions.get(one.region) ?? []), one]);
  const places = [...regions].map(([region, here]) => placeOf(base, region, here, asked)).sort(westToEast);
  return {
    map: {
      dye: found.id,
      title: titleOf(base, found.id),
      reading: formatSpan(span),
      sentence: sentenceOf(base, found.id, places),
      places,
      otherYears: claims.length - then.length,
    },
  };
}

const isThen = (span: DateSpan, asked: YearSpan): boolean => ['throughout', 'part', 'perhaps'].includes(timeRelation(span, asked).relation);

function placeOf(base: EvidenceBase, region: string, claims: readonly PlacedClaim[], asked: YearSpan): ReachPlace {
  const record = base.note(region)?.record;
  const reaches = REACHES.filter((reach) => claims.some(({ claim }) => claim.status === reach));
  const positive = claims.filter(({ claim }) => claim.status !== 'absent');
  const speaking = positive.length > 0 ? positive : claims;
  return {
    region,
    title: titleOf(base, region),
    ...(record?.kind === 'region' && record.point ? { point: record.point } : {}),
    reaches,
    doubtful: !speaking.some(({ claim, span }) => isHard(claim) && timeRelation(span, asked).relation !== 'perhaps'),
    contested: positive.length > 0 && positive.length < claims.length,
    somewhere: speaking.every(({ extent }) => extent === 'somewhere'),
    claims: [...claims].sort((a, b) => (claimKey(a.claim) < claimKey(b.claim) ? -1 : 1)).map((one) => listedClaim(base, one)),
  };
}

function westToEast(a: ReachPlace, b: ReachPlace): number {
  if (!a.point || !b.point) return Number(!a.point) - Number(!b.point) || (a.title < b.title ? -1 : 1);
  return a.point[1] - b.point[1] || a.point[0] - b.point[0] || (a.region < b.region ? -1 : 1);
}

function sentenceOf(base: EvidenceBase, dye: string, places: readonly ReachPlace[]): string {
  const name = inSentence(base, dye);
  if (places.length === 0) return `Your notes say nothing of ${name} in these years. Silence is not absence.`;
  const positive = places.filter(({ reaches }) => reaches[0] !== 'absent').length;
  const absent = places.length - positive;
  return `Your notes have ${name} in ${counted(positive, 'place')}${absent > 0 ? ` and say of ${absent} that it was not there` : ''}; elsewhere they are silent, which is not absence.`;
}
