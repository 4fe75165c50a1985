import type { PlacedClaim } from '../claim/claim.ts';
import type { YearSpan } from '../date/date-span.ts';
import type { Asked } from './judge-claim.ts';
import { standingOf, type StandingContext } from './standing.ts';
import type { Standing } from './standing-words.ts';

/** A part of the asked span in which one standing holds. */
export interface SubSpan {
  readonly from: number;
  readonly to: number;
  readonly standing: Standing;
}

/** Where the reach itself steps, and how far it goes: the distances at which "nearby" can begin or end. */
const REACHES = [10, 25, 50, 100];
const REACH_STEPS = [501, 1501, 1701];

/**
 * The sub-spans of the asked span in which the standing differs, in order; one alone when it is the same throughout.
 * An asked span open on a side, or of a single year, gives none.
 */
export function subSpans(placed: readonly PlacedClaim[], asked: Asked, context: StandingContext): readonly SubSpan[] {
  const { from, to } = asked.span;
  if (from === null || to === null || from >= to) return [];
  const starts = new Set<number>([from]);
  const addStart = (year: number) => {
    if (year > from && year <= to) starts.add(year);
  };
  REACH_STEPS.forEach(addStart);
  for (const { span } of placed) {
    for (const bound of [span.earliestStart, span.latestStart]) {
      if (bound === null) continue;
      addStart(bound);
      REACHES.forEach((reach) => addStart(bound - reach));
    }
    for (const bound of [span.earliestEnd, span.latestEnd]) {
      if (bound === null) continue;
      addStart(bound + 1);
      REACHES.forEach((reach) => addStart(bound + 1 + reach));
    }
  }
  const ordered = [...starts].sort((a, b) => a - b);
  const parts: SubSpan[] = [];
  ordered.forEach((start, nth) => {
    const end = (ordered[nth + 1] ?? to + 1) - 1;
    const span: YearSpan = { from: start, to: end };
    const { standing } = standingOf(placed, { ...asked, span }, context);
    const last = parts.at(-1);
    if (last?.standing === standing) parts[parts.length - 1] = { ...last, to: end };
    else parts.push({ from: start, to: end, standing });
  });
  return parts;
}
