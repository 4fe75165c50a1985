import { dyeTerm, ksToSpectrum, spectrumToKs } from './kubelka-munk.ts';
import type { KsCurve } from './kubelka-munk.ts';
import type { Spectrum } from './spectrum.ts';

/** One dyeing of a series: the amount of dye (any one unit, such as % WOF), and what came of it. */
export interface DepthStep {
  readonly amount: number;
  readonly dyed: Spectrum;
}

/** How strength grows with the amount of dye: strength = amountScale × amount^exponent. */
export interface DepthLaw {
  readonly ground: Spectrum;
  /** The dye's K/S at strength 1, which is that of the deepest dyeing. */
  readonly term: KsCurve;
  readonly amountScale: number;
  /** 1 = twice the dye, twice the K/S; below 1 the fibre fills up. */
  readonly exponent: number;
  readonly deepest: number;
}

/** A colour taken from a law; `beyond` when the amount lies more than twice above the deepest dyeing it rests on. */
export interface DepthPrediction {
  readonly spectrum: Spectrum;
  readonly beyond: boolean;
}

/** How far past the deepest dyeing a law is trusted. Our choice: one doubling, as dyers step their series. */
export const TRUSTED_DOUBLING = 2;
/** Exponents outside these are noise of few dyeings. Our choice. */
const EXPONENTS = [0.2, 1.2] as const;

/**
 * Fits a power law to a depth series on one ground. A single dyeing gives the linear law.
 *
 * @returns undefined when no step has a positive amount and any dye on it.
 * @source the linear law is single-constant Kubelka–Munk; the power is our choice, because exhaust dyeings level off.
 */
export function fitDepthLaw(ground: Spectrum, series: readonly DepthStep[]): DepthLaw | undefined {
  const steps = series.filter(({ amount }) => amount > 0).sort((a, b) => a.amount - b.amount);
  const deepest = steps.at(-1);
  if (!deepest) return undefined;
  const term = dyeTerm(deepest.dyed, ground);
  const norm = dot(term, term);
  if (norm === 0) return undefined;
  const points = steps.flatMap(({ amount, dyed }) => {
    const strength = dot(dyeTerm(dyed, ground), term) / norm;
    return strength > 0 ? [{ x: Math.log(amount), y: Math.log(strength) }] : [];
  });
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / points.length;
  const sxx = points.reduce((sum, { x }) => sum + (x - meanX) ** 2, 0);
  const sxy = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0);
  const exponent = sxx < 1e-9 ? 1 : Math.min(EXPONENTS[1], Math.max(EXPONENTS[0], sxy / sxx));
  return { ground, term, amountScale: Math.exp(meanY - exponent * meanX), exponent, deepest: deepest.amount };
}

/** The colour a law gives for an amount ≥ 0, on the ground it was fitted on or another. */
export function atAmount(law: DepthLaw, amount: number, ground: Spectrum = law.ground): DepthPrediction {
  const strength = amount <= 0 ? 0 : law.amountScale * amount ** law.exponent;
  const ks = spectrumToKs(ground).map((value, i) => value + strength * (law.term[i] ?? 0));
  return { spectrum: ksToSpectrum(ks), beyond: amount > TRUSTED_DOUBLING * law.deepest };
}

const dot = (a: KsCurve, b: KsCurve): number => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
