import type { Standing } from '../verdict/standing-words.ts';
import type { DyeProfile, Strength } from './compound.ts';
import { agedBy, type Explanation, type KnownFinding, type LabAnswer, type LabContext, methodFor } from './explain.ts';
import type { Found, LabReport } from './findings.ts';
import { detection } from './likelihood.ts';
import { ratioFit } from './ratio-likelihood.ts';
import { LAB_WEIGHTS } from './tables/weights.ts';

/** One thing that speaks for or against an explanation, ready for words. */
export type Reason =
  | { readonly kind: 'found'; readonly compound: string; readonly found: Found; readonly from: readonly GivenBy[] }
  | { readonly kind: 'unexplained'; readonly compound: string; readonly found: Found }
  /** Not detected; `chance`: how likely the method would have shown it, were the dye there, 0–1. */
  | { readonly kind: 'missing'; readonly compound: string; readonly dye: string; readonly strength: Strength; readonly chance: number }
  | {
      readonly kind: 'ratio';
      readonly ratio: string;
      readonly value: number;
      readonly dye: string;
      readonly low: number;
      readonly high: number;
      readonly off: number;
    }
  | { readonly kind: 'standing'; readonly dye: string; readonly standing: Standing };

/** A dye of the explanation that holds a compound. */
export interface GivenBy {
  readonly dye: string;
  readonly strength: Strength;
}

/** What bears on one explanation; `weak` are absences that say little, because the method or age would mostly hide the compound. */
export interface Reasons {
  readonly speaksFor: readonly Reason[];
  readonly against: readonly Reason[];
  readonly weak: readonly Reason[];
}

/** An absence weighs from here on. Our choice: below it, more than every second such dyeing would not have shown the compound. */
const WEIGHS_FROM = 0.5;
/** Standard deviations from which a ratio speaks against. Our choice. */
const OFF_FROM = 1.5;
const TO_HAND: ReadonlySet<Standing> = new Set<Standing>(['local', 'imported', 'cloth-only', 'on-cloth', 'perhaps', 'nearby']);

/** What speaks for and against an explanation of a report. */
export function reasonsFor(explanation: Explanation, answer: LabAnswer, report: LabReport, context: LabContext): Reasons {
  const dyes = explanation.dyes.flatMap((id) => answer.candidates.find(({ dye }) => dye === id) ?? []);
  const weights = context.weights ?? LAB_WEIGHTS;
  const aged = agedBy(context.ageYears, weights);
  const speaksFor: Reason[] = [];
  const against: Reason[] = [];
  const weak: Reason[] = [];
  for (const known of answer.known) {
    const { found } = known.finding;
    const from = givers(known, dyes);
    const compound = known.compound.name;
    if (found === 'present' || found === 'trace') {
      if (from.length > 0) speaksFor.push({ kind: 'found', compound, found, from });
      else against.push({ kind: 'unexplained', compound, found });
    } else if (found === 'absent') {
      for (const { dye, strength } of from) {
        const chance = detection(known.compound, strength, methodFor(known.finding, known.compound, report), aged, weights.figures);
        (chance >= WEIGHS_FROM ? against : weak).push({ kind: 'missing', compound, dye, strength, chance });
      }
    }
  }
  for (const ratio of report.ratios) {
    const fits = dyes.flatMap(({ dye }) => ratioFit(ratio, dye) ?? []);
    const fit = fits[0];
    if (fits.length !== 1 || !fit) continue;
    (fit.off >= OFF_FROM ? against : speaksFor).push({ kind: 'ratio', ratio: ratio.ratio, value: ratio.value, ...fit });
  }
  for (const { dye } of dyes) {
    const standing = context.standingOf?.(dye);
    if (standing) (TO_HAND.has(standing) ? speaksFor : against).push({ kind: 'standing', dye, standing });
  }
  return { speaksFor, against, weak };
}

const givers = ({ compound }: KnownFinding, dyes: readonly DyeProfile[]): readonly GivenBy[] =>
  dyes.flatMap(({ dye, holds }) => holds.filter((one) => one.compound === compound.name).map(({ strength }) => ({ dye, strength })));
