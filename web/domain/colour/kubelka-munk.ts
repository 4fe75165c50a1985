import { resample } from './sprague.ts';
import type { Spectrum } from './spectrum.ts';
import { WORKING_BANDS } from './spectrum.ts';

/** K/S on the working bands (380, 390 … 730 nm): what absorbs, divided by what scatters; ≥ 0. */
export type KsCurve = readonly number[];

/** Reflectance below this is surface shine and instrument noise, and would make K/S boundless. */
export const LOWEST_REFLECTANCE = 0.001;

/**
 * K/S of a reflectance.
 *
 * @param reflectance 0–1; taken as at least 0.001 and at most 1.
 * @source Kubelka & Munk 1931, for a sample thick enough to be opaque.
 */
export function toKs(reflectance: number): number {
  const r = Math.min(1, Math.max(LOWEST_REFLECTANCE, reflectance));
  return (1 - r) ** 2 / (2 * r);
}

/**
 * Reflectance of a K/S ≥ 0, in the form that stays exact for dark samples.
 *
 * @source Kubelka 1948; 1 + k − √(k² + 2k) written as its reciprocal.
 */
export const fromKs = (ks: number): number => 1 / (1 + ks + Math.sqrt(ks * ks + 2 * ks));

/** K/S of a spectrum on the working bands; a shorter measured range holds its end values. */
export const spectrumToKs = (spectrum: Spectrum): KsCurve => resample(spectrum, WORKING_BANDS).values.map(toKs);

/** The spectrum of a K/S curve on the working bands; negative values count as 0. */
export const ksToSpectrum = (ks: KsCurve): Spectrum => ({
  startNm: WORKING_BANDS.startNm,
  stepNm: WORKING_BANDS.stepNm,
  values: ks.map((value) => fromKs(Math.max(0, value))),
});

/**
 * What a dye adds to its ground, band by band: K/S dyed − K/S ground. Where the dyed cloth is lighter than its ground
 * (noise, or the ground lost colour in the bath) nothing is added.
 */
export function dyeTerm(dyed: Spectrum, ground: Spectrum): KsCurve {
  const under = spectrumToKs(ground);
  return spectrumToKs(dyed).map((value, i) => Math.max(0, value - (under[i] ?? 0)));
}

/** One dye of an over-dye: how it looks alone, on which ground, and how much of that depth is wanted. */
export interface DyeLayer {
  readonly dyed: Spectrum;
  readonly ground: Spectrum;
  /** 1 = as deep as `dyed`; default 1. */
  readonly depth?: number;
}

/**
 * Predicted colour of several dyes on one ground: K/S of the ground plus the term of each dye times its depth.
 * The order of the dyes makes no difference here; in the pot it may.
 *
 * @param ground the cloth that is dyed; need not be the one a dye was measured on: then equal uptake is assumed.
 * @returns on the working bands, inside 0–1.
 * @source Duncan 1940, additivity of K and S; single-constant form for textiles (Allen 1980), from memory.
 */
export function overDye(ground: Spectrum, dyes: readonly DyeLayer[]): Spectrum {
  const sum = [...spectrumToKs(ground)];
  for (const { dyed, ground: own, depth = 1 } of dyes)
    dyeTerm(dyed, own).forEach((term, i) => (sum[i] = (sum[i] ?? 0) + Math.max(0, depth) * term));
  return ksToSpectrum(sum);
}

/** The same dye deeper or lighter on the same ground; `depth` 1 leaves it. */
export const atDepth = (dyed: Spectrum, ground: Spectrum, depth: number): Spectrum => overDye(ground, [{ dyed, ground, depth }]);

/** The same dye on another ground, equal uptake assumed. */
export const onGround = (dyed: Spectrum, ground: Spectrum, other: Spectrum): Spectrum => overDye(other, [{ dyed, ground }]);
