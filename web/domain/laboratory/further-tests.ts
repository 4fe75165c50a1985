import type { DyeProfile } from './compound.ts';
import { findCompound } from './find-compound.ts';
import { agedBy, type LabAnswer, type LabContext, methodFor } from './explain.ts';
import type { LabReport } from './findings.ts';
import { detection, reachOf } from './likelihood.ts';
import { MARKER_RATIOS } from './tables/marker-ratios.ts';
import type { LabMethod } from './tables/methods.ts';
import { LAB_WEIGHTS } from './tables/weights.ts';

/** A test that would help to tell two sources apart. */
export type FurtherTest =
  | {
      readonly kind: 'compound';
      readonly compound: string;
      readonly method: LabMethod;
      /** The one of the two whose presence it would show. */
      readonly points: string;
      readonly between: readonly [string, string];
      /** How far the two differ in the chance to show it, 0–1. */
      readonly gain: number;
    }
  | { readonly kind: 'ratio'; readonly ratio: string; readonly between: readonly [string, string]; readonly gain: number };

/** Below this a test is not worth a sample. Our choice. */
const WORTH_FROM = 0.15;

/**
 * The tests that would tell two sources apart, best first; empty when the tables know none.
 * Only what was not tested yet, or was looked for by a method of less reach.
 */
export function furtherTests(
  a: DyeProfile,
  b: DyeProfile,
  answer: LabAnswer,
  report: LabReport,
  context: LabContext,
): readonly FurtherTest[] {
  const weights = context.weights ?? LAB_WEIGHTS;
  const { figures } = weights;
  const aged = agedBy(context.ageYears, weights);
  const between = [a.dye, b.dye] as const;
  const compounds = [...new Set([...a.holds, ...b.holds].map(({ compound }) => compound))].flatMap((name): readonly FurtherTest[] => {
    const compound = findCompound(name);
    if (!compound) return [];
    const method: LabMethod = compound.family === 'element' ? 'sem-edx' : 'hplc-ms';
    const known = answer.known.find((one) => one.compound.name === name);
    if (known && known.finding.found !== 'not-tested') {
      const already = reachOf(methodFor(known.finding, compound, report), compound, 'minor', figures);
      if (known.finding.found !== 'absent' || already >= 0.8 * reachOf(method, compound, 'minor', figures)) return [];
    }
    const shown = (dye: DyeProfile): number => {
      const held = dye.holds.find((one) => one.compound === name);
      return held ? detection(compound, held.strength, method, aged, figures) : 0;
    };
    const gain = shown(a) - shown(b);
    return [{ kind: 'compound', compound: name, method, points: gain > 0 ? a.dye : b.dye, between, gain: Math.abs(gain) }];
  });
  const ratios = MARKER_RATIOS.flatMap((ratio): readonly FurtherTest[] => {
    const [one, other] = [a, b].map(({ dye }) => ratio.ranges.find((range) => range.dye === dye));
    if (!one || !other || report.ratios.some((known) => known.ratio === ratio.name)) return [];
    // A ratio wants both sides on the thread: with one of them still unlooked for, looking for it comes first.
    const isThere = [ratio.above, ratio.below].every((side) =>
      side.some((name) => answer.known.some(({ compound, finding }) => compound.name === name && finding.found === 'present')),
    );
    if (!isThere) return [];
    const covered = Math.max(0, Math.min(one.high, other.high) - Math.max(one.low, other.low));
    const least = Math.min(one.high - one.low, other.high - other.low);
    return [{ kind: 'ratio', ratio: ratio.name, between, gain: 0.8 * (1 - covered / least) }];
  });
  return [...compounds, ...ratios].filter(({ gain }) => gain >= WORTH_FROM).sort((x, y) => y.gain - x.gain);
}
