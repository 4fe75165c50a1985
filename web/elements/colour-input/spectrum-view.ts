import { TEXTILE } from '../../domain/colour/conditions.ts';
import { readSpectralFile } from '../../domain/colour/read-spectral-file.ts';
import { swatchFromSpectrum } from '../../domain/colour/swatch-colour.ts';
import { carryColour } from '../../notebook/typed-colour.ts';
import { measuredUnderWords, spectralWords } from '../../notebook/words/spectral-words.ts';

/** One sample of a spectral file as it can be chosen. */
export interface SampleChoice {
  readonly id: string;
  readonly name: string;
  readonly hex: string;
  readonly inScreenGamut: boolean;
  readonly lab: string;
  readonly text: string;
}

/** A spectral file, read for choosing. */
export interface SpectrumFileView {
  readonly samples: readonly SampleChoice[];
  readonly under: string;
  readonly errors: readonly string[];
  readonly warnings: readonly string[];
}

/** What a spectral file holds; nothing of it is guessed. */
export function spectrumFileView(text: string): SpectrumFileView {
  const { samples, under, findings } = readSpectralFile(text);
  const ofSeverity = (wanted: 'error' | 'warning') => findings.filter(({ severity }) => severity === wanted).map(spectralWords);
  return {
    samples: samples.map(({ id, name, spectrum }) => {
      const { hex, inScreenGamut, lab10 } = swatchFromSpectrum(spectrum);
      return {
        id,
        name: name === undefined || name === id ? id : name.startsWith(id) ? name : `${id}, ${name}`,
        hex,
        inScreenGamut,
        lab: `L* ${lab10[0].toFixed(1)}, a* ${lab10[1].toFixed(1)}, b* ${lab10[2].toFixed(1)} (D65, 10°)`,
        text: carryColour({ lab: lab10, ...TEXTILE, by: 'spectrum' }),
      };
    }),
    under: samples.length === 0 ? '' : measuredUnderWords(under),
    errors: ofSeverity('error'),
    warnings: ofSeverity('warning'),
  };
}
