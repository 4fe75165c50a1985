import type { EvidenceBase } from '../claim/evidence-base.ts';
import { CLOSENESS_LIMITS, deltaE00 } from '../colour/delta-e.ts';
import type { Lab10 } from '../colour/lab.ts';
import { mcdm, meanLab10 } from '../colour/mean-colour.ts';
import { usualSamples } from '../palette/mean-colour.ts';
import type { DyedSample } from '../verdict/cloths.ts';
import { trialFacts, type TrialFacts } from './trial-facts.ts';

/** Colours that belong together, with their middle and scatter. */
export interface SpreadGroup {
  /** What they share: a fibre's id, a hardness as written, a person; `undefined` where the trials do not say. */
  readonly key: string | undefined;
  readonly trials: readonly string[];
  readonly count: number;
  readonly mean: Lab10;
  /** Mean ΔE00 from the mean; absent for one sample. */
  readonly mcdm?: number;
  /** The farthest from the mean, ΔE00. */
  readonly farthest: number;
}

/** Whether a recipe comes out alike again. `untested` below three pots of one way of doing it. */
export type Repeatable = 'yes' | 'no' | 'untested';

/** How the dyeings of a recipe scatter. */
export interface Repeatability {
  readonly repeatable: Repeatable;
  /** The MCDM that decided: of the worst set of true repeats. */
  readonly mcdm?: number;
  /** Sets of pots with the same materials, amounts, fibre, ground and dips: true repeats, largest first. */
  readonly repeats: readonly SpreadGroup[];
  readonly byFibre: readonly SpreadGroup[];
  readonly byWater: readonly SpreadGroup[];
  readonly byPerson: readonly SpreadGroup[];
  /** Samples that were left out, and why. */
  readonly leftOut: readonly { readonly sample: DyedSample; readonly why: 'later-bath' | 'other-ground' }[];
}

/** Pots needed before anything is said. Our choice, because two points show no scatter one could rely on. */
export const POTS_NEEDED = 3;
/** Repeats that lie nearer than this to their mean are alike. Our choice: the limit of the word "match". */
export const REPEATABLE_MCDM = CLOSENESS_LIMITS.match;

/**
 * How the dyeings of one recipe scatter: over true repeats, and by fibre, water and person.
 *
 * Later baths and unusual grounds are left out, because they are other colours on purpose; so do depth series fall into
 * different sets of repeats. One trial with many skeins counts as one pot.
 *
 * @param samples of one recipe.
 * @source MCDM in CIEDE2000 (Billmeyer & Alessi 1981, with the later formula); limits our choice.
 */
export function repeatability(base: EvidenceBase, samples: readonly DyedSample[]): Repeatability {
  const byFibre = groupBy(samples, ({ fibre }) => fibre);
  const counted = byFibre.flatMap(([, ofFibre]) => usualSamples(base, ofFibre));
  const facts = new Map(counted.map(({ trial }) => [trial, trialFacts(base, trial)]));
  const of = (one: DyedSample) => facts.get(one.trial);
  const groups = (key: (one: DyedSample) => string | undefined) =>
    groupBy(counted, key)
      .map(([name, list]) => spreadOf(name, list))
      .filter((group) => group !== undefined)
      .sort((a, b) => b.count - a.count || (a.key ?? '~').localeCompare(b.key ?? '~', 'en'));
  const repeats = groups((one) => wayOf(one, of(one))).filter(({ key }) => key !== undefined);
  const tested = repeats.filter(({ trials }) => trials.length >= POTS_NEEDED);
  const worst = tested.reduce<number | undefined>((most, { mcdm: scatter }) => Math.max(most ?? 0, scatter ?? 0), undefined);
  return {
    repeatable: worst === undefined ? 'untested' : worst <= REPEATABLE_MCDM ? 'yes' : 'no',
    ...(worst === undefined ? {} : { mcdm: worst }),
    repeats,
    byFibre: groups(({ fibre }) => fibre),
    byWater: groups((one) => of(one)?.hardness),
    byPerson: groups((one) => of(one)?.by),
    leftOut: samples
      .filter((one) => !counted.includes(one))
      .map((sample) => ({ sample, why: (trialFacts(base, sample.trial)?.bath ?? 1) > 1 ? 'later-bath' : 'other-ground' })),
  };
}

/** What makes two pots the same way of doing it; undefined where the trial does not list what it used. */
function wayOf({ fibre, sample }: DyedSample, facts: TrialFacts | undefined): string | undefined {
  if (!facts || facts.materials.length === 0) return undefined;
  const used = facts.materials.map(({ id, amount, percent }) => `${id} ${percent ?? amount ?? ''}`).sort();
  return [fibre ?? '', sample.onto ?? '', `bath ${facts.bath}`, `dips ${facts.dips ?? '-'}`, ...used].join(' | ');
}

function spreadOf(key: string | undefined, samples: readonly DyedSample[]): SpreadGroup | undefined {
  const labs = samples.map(({ colour }) => colour.lab10);
  const mean = meanLab10(labs);
  if (!mean) return undefined;
  const scatter = mcdm(labs);
  return {
    key,
    trials: [...new Set(samples.map(({ trial }) => trial))].sort(),
    count: samples.length,
    mean,
    ...(scatter === undefined ? {} : { mcdm: scatter }),
    farthest: Math.max(...labs.map((lab) => deltaE00(lab, mean))),
  };
}

function groupBy<T>(list: readonly T[], key: (one: T) => string | undefined): readonly (readonly [string | undefined, readonly T[]])[] {
  const groups = new Map<string | undefined, T[]>();
  for (const one of list) {
    const name = key(one);
    const held = groups.get(name);
    if (held) held.push(one);
    else groups.set(name, [one]);
  }
  return [...groups];
}
