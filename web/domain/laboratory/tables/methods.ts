import type { Basis, CompoundFamily, Loss, Strength } from '../compound.ts';

export const LAB_METHODS = ['hplc-ms', 'hplc-dad', 'tlc', 'fors', 'spot-test', 'sem-edx', 'not-said'] as const;
/** How the thread was examined; `not-said` reaches about as far as the older methods. */
export type LabMethod = (typeof LAB_METHODS)[number];

/** The chance that a method shows a compound that is there in plenty, by family; 0: it cannot. Our judgement throughout. */
export interface MethodReach {
  readonly usual: number;
  readonly but: Readonly<Partial<Record<CompoundFamily, number>>>;
  /** How much of that is left for a compound that comes in small or very small amounts. */
  readonly ofMinor: number;
  readonly ofTrace: number;
  readonly basis: Basis;
}

const judged: Basis = { source: 'our judgement' };

/** What each method reaches. */
export const METHOD_REACH: Readonly<Record<LabMethod, MethodReach>> = {
  'hplc-ms': {
    usual: 0.95,
    but: { element: 0, carotenoid: 0.8, 'lichen-acid': 0.6, safflower: 0.9 },
    ofMinor: 0.92,
    ofTrace: 0.75,
    basis: judged,
  },
  'hplc-dad': {
    usual: 0.9,
    but: { element: 0, 'lichen-purple': 0.75, carotenoid: 0.7, 'lichen-acid': 0.3, naphthoquinone: 0.7 },
    ofMinor: 0.8,
    ofTrace: 0.5,
    basis: {
      source:
        'our judgement; that limits lie within 0.002–0.029 µg/mL for a dozen compounds: Karapanagiotis et al., garments of Mount Athos, abstract',
    },
  },
  tlc: { usual: 0.65, but: { element: 0, 'lichen-acid': 0.2, tannin: 0.4, carotenoid: 0.4 }, ofMinor: 0.5, ofTrace: 0.15, basis: judged },
  fors: {
    usual: 0.08,
    but: {
      indigoid: 0.85,
      bromoindigoid: 0.5,
      anthraquinone: 0.35,
      'insect-red': 0.4,
      flavonoid: 0.05,
      synthetic: 0.5,
      element: 0,
      tannin: 0.02,
    },
    ofMinor: 0.3,
    ofTrace: 0.05,
    basis: judged,
  },
  'spot-test': {
    usual: 0.12,
    but: { indigoid: 0.6, anthraquinone: 0.1, tannin: 0.3, element: 0.3, flavonoid: 0.08, isoflavone: 0 },
    ofMinor: 0.3,
    ofTrace: 0.05,
    basis: judged,
  },
  'sem-edx': { usual: 0, but: { element: 0.75 }, ofMinor: 0.6, ofTrace: 0.25, basis: judged },
  'not-said': { usual: 0.6, but: { element: 0.3, 'lichen-acid': 0.2 }, ofMinor: 0.6, ofTrace: 0.25, basis: judged },
};

/** The chance that a dyeing with a dyestuff carries a compound of this strength at all. Our judgement. */
export const CARRIES: Readonly<Record<Strength, number>> = { main: 0.97, minor: 0.8, trace: 0.4 };

/** Of what is found, the share that is reported plainly and not as a trace. Our judgement. */
export const PLAINLY: Readonly<Record<Strength, number>> = { main: 0.88, minor: 0.6, trace: 0.25 };

/** The chance that a compound is gone after about 250 years. The grades: each compound's own source; the numbers: our judgement. */
export const GONE: Readonly<Record<Loss, number>> = { steady: 0.05, some: 0.2, much: 0.45, most: 0.7 };
