import { deltaE00 } from './delta-e.ts';
import type { DyeLayer } from './kubelka-munk.ts';
import { ksToSpectrum, overDye, spectrumToKs } from './kubelka-munk.ts';
import type { Lab10 } from './lab.ts';
import type { Spectrum } from './spectrum.ts';
import type { ColourOrigin } from './swatch-colour.ts';
import { spectrumToLab10 } from './xyz-lab.ts';

/** A source of chance, handed in: evenly spread numbers, 0 ≤ n < 1. */
export type Random = () => number;

/** How far off a predicted colour is likely to be: four in five fall within `deltaE00` of it. */
export interface LikelySpread {
  readonly deltaE00: number;
  readonly from: 'default' | 'own-pairs' | 'simulated';
  /** Own pairs, or simulated dyeings, it rests on. */
  readonly count: number;
}

/** A colour that was predicted, and what the pot then gave. */
export interface PredictedPair {
  readonly predicted: Lab10;
  readonly dyed: Lab10;
}

/** Spread said before there are own pairs. Our choice, by judgement: hand-dyed repeats scatter by some 2 to 5, and the model adds 1 to 3. */
export const DEFAULT_SPREAD: LikelySpread = { deltaE00: 6, from: 'default', count: 0 };
/** From so many pairs on the reader's own pots speak. */
export const PAIRS_NEEDED = 5;
const SHARE = 0.8;

/**
 * Spread learned from one's own predicted-and-then-dyed pairs; the default until there are five.
 *
 * @returns the ⌈0.8 (n + 1)⌉-th smallest ΔE00: holds the next pair in four of five cases, whatever the distribution.
 * @source split conformal prediction (Vovk et al. 2005), from memory.
 */
export function learnedSpread(pairs: readonly PredictedPair[]): LikelySpread {
  if (pairs.length < PAIRS_NEEDED) return DEFAULT_SPREAD;
  const differences = pairs.map(({ predicted, dyed }) => deltaE00(predicted, dyed)).sort((a, b) => a - b);
  const rank = Math.min(differences.length, Math.ceil(SHARE * (differences.length + 1)));
  return { deltaE00: differences[rank - 1] ?? DEFAULT_SPREAD.deltaE00, from: 'own-pairs', count: pairs.length };
}

/** How much single dyeings, their measuring and the model vary: relative standard deviations of K/S, 0.15 = 15 %. */
export interface PotVariation {
  readonly depth: number;
  readonly groundKs: number;
  /** What measuring the single dyeings leaves open, by where their colours come from. */
  readonly input: number;
  /** What the model leaves out: dyes that hinder or help one another. */
  readonly model: number;
}

/** Our choice: hand-dyed depths vary by about a sixth, fleeces and cloths of one kind by a tenth, and the model errs by as much. */
export const USUAL_VARIATION: PotVariation = { depth: 0.17, groundKs: 0.1, input: 0, model: 0.1 };

/** How far the K/S of a colour may be off for where it comes from. Our choice, by judgement. */
export const INPUT_ERROR: Readonly<Record<ColourOrigin, number>> = {
  spectrum: 0.02,
  lab: 0.04,
  'photo-with-chart': 0.1,
  photo: 0.2,
  eye: 0.3,
  predicted: 0.2,
};

/** A spread found by dyeing in the head, with the colours that came out. */
export interface SimulatedSpread extends LikelySpread {
  readonly from: 'simulated';
  readonly colours: readonly Lab10[];
}

/**
 * Monte Carlo of an over-dye: each depth, what was measured of each dyeing, the ground and the model vary, log-normally, and the
 * colours are compared with the predicted one. Measuring and model err in the short and the long half of the spectrum apart, for they
 * shift hue as well as depth.
 *
 * @param origins where the colour of each dyeing comes from, in the order of the dyes; `variation.input` for what is not named.
 * @param random the only source of chance; the same source gives the same answer.
 * @param runs how many dyeings; at least 1.
 */
export function simulateSpread(
  ground: Spectrum,
  dyes: readonly DyeLayer[],
  random: Random,
  runs = 200,
  variation: PotVariation = USUAL_VARIATION,
  origins: readonly ColourOrigin[] = [],
): SimulatedSpread {
  const central = spectrumToLab10(overDye(ground, dyes));
  const colours = Array.from({ length: Math.max(1, runs) }, () => {
    const varied = dyes.map((dye, nth) => {
      const origin = origins[nth];
      const measured = tilted(dye.dyed, random, origin === undefined ? variation.input : INPUT_ERROR[origin]);
      return { ...dye, dyed: measured, depth: (dye.depth ?? 1) * around(random, variation.depth) };
    });
    // A darker or lighter ground of the same kind: its own K/S over nothing, at another depth.
    const groundNow = overDye(WHITE, [{ dyed: ground, ground: WHITE, depth: around(random, variation.groundKs) }]);
    return spectrumToLab10(tilted(overDye(groundNow, varied), random, variation.model));
  });
  const differences = colours.map((lab) => deltaE00(lab, central)).sort((a, b) => a - b);
  const rank = Math.min(differences.length, Math.ceil(SHARE * differences.length));
  return { deltaE00: differences[rank - 1] ?? 0, from: 'simulated', count: colours.length, colours };
}

/** The curve with its K/S off by one factor at its short end and another at its long end, evenly between. */
function tilted(spectrum: Spectrum, random: Random, deviation: number): Spectrum {
  if (deviation === 0) return spectrum;
  const [short, long] = [Math.log(around(random, deviation)), Math.log(around(random, deviation))];
  const ks = spectrumToKs(spectrum);
  return ksToSpectrum(ks.map((value, at) => value * Math.exp(short + ((long - short) * at) / Math.max(1, ks.length - 1))));
}

const WHITE: Spectrum = { startNm: 380, stepNm: 10, values: new Array<number>(36).fill(1) };

/** A factor around 1, log-normal with the given relative standard deviation (Box–Muller). */
function around(random: Random, deviation: number): number {
  const normal = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  return Math.exp(deviation * normal);
}
