import type { Standing } from '../verdict/standing-words.ts';
import type { Compound, DyeProfile } from './compound.ts';
import { findCompound } from './find-compound.ts';
import type { Finding, LabReport } from './findings.ts';
import { chancesOf, likelihoodOf } from './likelihood.ts';
import { ratioDensity } from './ratio-likelihood.ts';
import { COMPOUNDS } from './tables/compounds.ts';
import { LAB_WEIGHTS, type LabWeights, RULED_OUT } from './tables/weights.ts';

/** A line of a report whose compound the tables know. */
export interface KnownFinding {
  readonly compound: Compound;
  readonly finding: Finding;
}

/** One or several dyes that would explain a report together. */
export interface Explanation {
  /** Ids, in the order of the profiles. */
  readonly dyes: readonly string[];
  /** Natural logarithm of how well the findings fit, place and date left out. */
  readonly logFit: number;
  /** Share among everything considered and not ruled out, 0–1. */
  readonly share: number;
}

/** A single source and its share. */
export interface RankedSource {
  readonly dye: string;
  /** Together over every explanation it takes part in, 0–1. */
  readonly share: number;
}

/** What a report may mean, best first. */
export interface LabAnswer {
  readonly explanations: readonly Explanation[];
  readonly sources: readonly RankedSource[];
  /** Would explain the findings, but place or date set them aside: explanations with at least one such dye, best fit first. */
  readonly ruledOut: readonly Explanation[];
  readonly known: readonly KnownFinding[];
  /** Lines whose compound the tables do not know: told, not used. */
  readonly unknown: readonly Finding[];
  readonly candidates: readonly DyeProfile[];
}

/** What the ranking needs besides the report. */
export interface LabContext {
  readonly profiles: readonly DyeProfile[];
  /** How a dyestuff stands at the place and date; undefined where none is asked. */
  readonly standingOf?: (dye: string) => Standing | undefined;
  /** Age of the thread in years; undefined counts as old. */
  readonly ageYears?: number;
  readonly weights?: LabWeights;
}

/** How far ageing has gone, 0–1. */
export const agedBy = (ageYears: number | undefined, weights: LabWeights): number =>
  ageYears === undefined ? 1 : Math.min(1, Math.max(0, ageYears) / weights.agedAfterYears);

/** The lines of a report as the tables know them, everything else counted absent where the report says so. */
export function knownFindings(report: LabReport): { readonly known: readonly KnownFinding[]; readonly unknown: readonly Finding[] } {
  const known = new Map<string, KnownFinding>();
  const unknown: Finding[] = [];
  for (const finding of report.findings) {
    const compound = findCompound(finding.compound);
    if (compound) known.set(compound.name, { compound, finding });
    else unknown.push(finding);
  }
  if (report.elseAbsent) {
    for (const compound of COMPOUNDS) {
      if (!known.has(compound.name)) known.set(compound.name, { compound, finding: { compound: compound.name, found: 'absent' } });
    }
  }
  return { known: [...known.values()].sort((a, b) => (a.compound.name < b.compound.name ? -1 : 1)), unknown };
}

/**
 * How well a set of dyes fits a report, place and date left out.
 *
 * @returns natural logarithm of the likelihood; the order of the findings does not matter.
 */
export function logFit(
  dyes: readonly DyeProfile[],
  known: readonly KnownFinding[],
  report: LabReport,
  aged: number,
  weights: LabWeights,
): number {
  let sum = 0;
  for (const { compound, finding } of known) {
    const chances = chancesOf(compound, dyes, methodFor(finding, compound, report), aged, weights.figures);
    sum += Math.log(Math.max(likelihoodOf(finding.found, chances), 1e-12));
  }
  for (const ratio of [...report.ratios].sort((a, b) => (a.ratio < b.ratio ? -1 : 1))) {
    sum += Math.log(Math.max(ratioDensity(ratio, dyes, weights), 1e-9));
  }
  return sum;
}

/** The method a line was got by: its own, the report's, and for an element under a method blind to elements the electron microscope. */
export function methodFor(finding: Finding, compound: Compound, report: LabReport): LabReport['method'] {
  if (finding.method) return finding.method;
  return compound.family === 'element' && finding.found !== 'absent' ? 'sem-edx' : report.method;
}

/**
 * Ranks the dyes and mixtures that explain a report: likelihood of the findings times what place and date say beforehand.
 * Only dyestuffs that hold something found are considered; those ruled out by place or date are told apart.
 */
export function explain(report: LabReport, context: LabContext): LabAnswer {
  const weights = context.weights ?? LAB_WEIGHTS;
  const { known, unknown } = knownFindings(report);
  const aged = agedBy(context.ageYears, weights);
  const found = new Set(
    known.filter(({ finding }) => finding.found === 'present' || finding.found === 'trace').map(({ compound }) => compound.name),
  );
  const candidates = context.profiles.filter(({ holds }) => holds.some(({ compound }) => found.has(compound)));

  const scored = subsets(candidates, weights.mostDyes).map((dyes) => {
    const standings = dyes.map(({ dye }) => context.standingOf?.(dye));
    const prior = dyes.reduce((product, _, i) => product * (i === 0 ? 1 : weights.perFurtherDye) * priorOf(standings[i], weights), 1);
    const fit = logFit(dyes, known, report, aged, weights);
    return {
      dyes: dyes.map(({ dye }) => dye),
      logFit: fit,
      score: fit + Math.log(prior),
      out: standings.some((one) => one && RULED_OUT.has(one)),
    };
  });
  const kept = scored.filter(({ out }) => !out);
  const most = kept.reduce((best, { score }) => Math.max(best, score), -Infinity);
  const total = kept.reduce((sum, { score }) => sum + Math.exp(score - most), 0);
  const explanations = kept
    .map(({ dyes, logFit: fit, score }): Explanation => ({ dyes, logFit: fit, share: Math.exp(score - most) / total }))
    .sort(byShare);
  const ruledOut = scored
    .filter(({ out }) => out)
    .sort((a, b) => b.score - a.score || compare(a.dyes, b.dyes))
    .map(({ dyes, logFit: fit }): Explanation => ({ dyes, logFit: fit, share: 0 }));
  return { explanations, sources: sourcesOf(explanations), ruledOut, known, unknown, candidates };
}

const priorOf = (standing: Standing | undefined, weights: LabWeights): number =>
  standing === undefined ? weights.unasked : weights.ofStanding[standing];

const compare = (a: readonly string[], b: readonly string[]): number => a.length - b.length || (a.join() < b.join() ? -1 : 1);
const byShare = (a: Explanation, b: Explanation): number => b.share - a.share || compare(a.dyes, b.dyes);

function sourcesOf(explanations: readonly Explanation[]): readonly RankedSource[] {
  const shares = new Map<string, number>();
  for (const { dyes, share } of explanations) for (const dye of dyes) shares.set(dye, (shares.get(dye) ?? 0) + share);
  return [...shares]
    .map(([dye, share]) => ({ dye, share: Math.min(1, share) }))
    .sort((a, b) => b.share - a.share || (a.dye < b.dye ? -1 : 1));
}

/** Every set of one up to `most` dyes. */
function subsets(all: readonly DyeProfile[], most: number): readonly (readonly DyeProfile[])[] {
  let grown: readonly (readonly [readonly DyeProfile[], number])[] = [[[], 0]];
  const sets: (readonly DyeProfile[])[] = [];
  for (let size = 1; size <= most; size += 1) {
    grown = grown.flatMap(([dyes, from]) => all.slice(from).map((one, i) => [[...dyes, one], from + i + 1] as const));
    sets.push(...grown.map(([dyes]) => dyes));
  }
  return sets;
}
