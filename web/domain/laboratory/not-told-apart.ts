import type { Standing } from '../verdict/standing-words.ts';
import type { DyeProfile } from './compound.ts';
import { agedBy, type Explanation, type LabAnswer, type LabContext, logFit } from './explain.ts';
import type { LabReport } from './findings.ts';
import { MARKER_RATIOS } from './tables/marker-ratios.ts';
import { LAB_WEIGHTS, RULED_OUT } from './tables/weights.ts';

/** Another source that would do in the place of one. */
export interface StandIn {
  readonly dye: string;
  /** How many times better (above 1) or worse it fits the findings, place and date left out. */
  readonly fits: number;
  readonly standing?: Standing;
  /** Only place or date sets it aside, not the findings. */
  readonly ruledOut: boolean;
  /** Nothing in the tables would ever tell the two apart. */
  readonly never: boolean;
}

/** Sources that the findings do not tell from one dye of an explanation. */
export interface NotToldApart {
  readonly dye: string;
  readonly from: readonly StandIn[];
}

/** For each dye of an explanation, the other sources that fit about as well in its place. */
export function notToldApart(explanation: Explanation, answer: LabAnswer, report: LabReport, context: LabContext): readonly NotToldApart[] {
  const weights = context.weights ?? LAB_WEIGHTS;
  const aged = agedBy(context.ageYears, weights);
  const byId = new Map(answer.candidates.map((profile) => [profile.dye, profile]));
  const within = Math.log(weights.tellsFrom);
  return explanation.dyes.flatMap((dye): readonly NotToldApart[] => {
    const own = byId.get(dye);
    if (!own) return [];
    const others = explanation.dyes.filter((one) => one !== dye).flatMap((one) => byId.get(one) ?? []);
    const from = answer.candidates
      .filter((other) => !explanation.dyes.includes(other.dye))
      .flatMap((other): readonly StandIn[] => {
        const apart = logFit([...others, other], answer.known, report, aged, weights) - explanation.logFit;
        if (Math.abs(apart) > within) return [];
        const standing = context.standingOf?.(other.dye);
        const ruledOut = standing !== undefined && RULED_OUT.has(standing);
        return [{ dye: other.dye, fits: Math.exp(apart), ...(standing && { standing }), ruledOut, never: alike(own, other) }];
      });
    return from.length > 0 ? [{ dye, from }] : [];
  });
}

/** Whether the tables hold the same of two sources: same compounds in the same strengths, no ratio that differs. */
export function alike(a: DyeProfile, b: DyeProfile): boolean {
  const list = ({ holds }: DyeProfile) =>
    holds
      .map(({ compound, strength }) => `${compound} ${strength}`)
      .sort()
      .join('\n');
  return list(a) === list(b) && !MARKER_RATIOS.some(({ ranges }) => ranges.some(({ dye }) => dye === a.dye || dye === b.dye));
}
