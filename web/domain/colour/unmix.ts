import { deltaE00 } from './delta-e.ts';
import { dyeTerm, ksToSpectrum, spectrumToKs } from './kubelka-munk.ts';
import { nonNegativeLeastSquares } from './non-negative-least-squares.ts';
import type { Spectrum } from './spectrum.ts';
import { spectrumToLab10 } from './xyz-lab.ts';

/** How much of each dye explains a colour. */
export interface Unmixed {
  /** For each dye ≥ 0; 1 = as deep as its own sample. */
  readonly depths: readonly number[];
  /** The colour that these depths give. */
  readonly spectrum: Spectrum;
  /** ΔE00 (D65/10°) between the sample and that colour: large when a dye is missing from the list. */
  readonly deltaE00: number;
}

/**
 * Takes an over-dyed colour apart into known dyes on a known ground, by non-negative least squares on K/S.
 * Says what the colours allow, never what is in the cloth.
 *
 * @param dyes each on the same `ground`.
 */
export function unmix(sample: Spectrum, ground: Spectrum, dyes: readonly Spectrum[]): Unmixed {
  const under = spectrumToKs(ground);
  const terms = dyes.map((dyed) => dyeTerm(dyed, ground));
  const depths = nonNegativeLeastSquares(
    terms,
    spectrumToKs(sample).map((value, i) => value - (under[i] ?? 0)),
  );
  const ks = under.map((value, i) => value + terms.reduce((sum, term, k) => sum + (depths[k] ?? 0) * (term[i] ?? 0), 0));
  const spectrum = ksToSpectrum(ks);
  return { depths, spectrum, deltaE00: deltaE00(spectrumToLab10(sample), spectrumToLab10(spectrum)) };
}
