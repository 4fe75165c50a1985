import { unfade } from './fade.ts';
import { dyeTerm, ksToSpectrum, spectrumToKs } from './kubelka-munk.ts';
import type { Spectrum } from './spectrum.ts';
import { unmix } from './unmix.ts';

/** One colour that a faded cloth may have had. */
export interface PossibleOriginal {
  /** Share of each dye left in the cloth as found, in the order of the dyes. */
  readonly lefts: readonly number[];
  readonly spectrum: Spectrum;
}

/** Losses that a strip shows: nothing lost, to two thirds lost. Our choice, in steps one can tell apart. */
export const SHOWN_LEFTS = [1, 0.85, 0.7, 0.5, 0.33] as const;

/** Strip of possible originals of a cloth that is taken as dyed with one dye, from least to most faded. */
export const possibleOriginals = (
  found: Spectrum,
  ground: Spectrum,
  lefts: readonly number[] = SHOWN_LEFTS,
  yellowing = 0,
): readonly PossibleOriginal[] => lefts.map((left) => ({ lefts: [left], spectrum: unfade(found, ground, { left, yellowing }) }));

/**
 * The same dye by dye: the found colour is taken apart into the dyes named, and each is restored by its own loss,
 * one after another, the others as found; the last strip restores all alike. What the dyes do not explain stays as it is.
 *
 * @param dyes each alone on the same ground.
 * @returns one strip for each dye, and one for all together when there are several.
 */
export function possibleOriginalsByDye(
  found: Spectrum,
  ground: Spectrum,
  dyes: readonly Spectrum[],
  lefts: readonly number[] = SHOWN_LEFTS,
): readonly (readonly PossibleOriginal[])[] {
  const { depths } = unmix(found, ground, dyes);
  const terms = dyes.map((dyed) => dyeTerm(dyed, ground));
  const foundKs = spectrumToKs(found);
  const restored = (shares: readonly number[]): PossibleOriginal => ({
    lefts: shares,
    // Adding what each dye has lost keeps the unexplained rest.
    spectrum: ksToSpectrum(
      foundKs.map(
        (value, i) =>
          value + terms.reduce((sum, term, k) => sum + (depths[k] ?? 0) * (1 / Math.max(1e-6, shares[k] ?? 1) - 1) * (term[i] ?? 0), 0),
      ),
    ),
  });
  const single = dyes.map((_, which) => lefts.map((left) => restored(dyes.map((_dye, k) => (k === which ? left : 1)))));
  return dyes.length > 1 ? [...single, lefts.map((left) => restored(dyes.map(() => left)))] : single;
}
