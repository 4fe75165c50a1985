import type { Spectrum } from '../colour/spectrum.ts';
import { type SwatchColour, swatchFromSpectrum, swatchFromStated } from '../colour/swatch-colour.ts';
import type { SpectrumRef, StatedColour } from '../note/note.ts';

/** Finds a measured curve among the notebook's files; undefined when the file or the sample is not there. */
export type FindSpectrum = (ref: SpectrumRef, noteFile: string) => Spectrum | undefined;

/** Anything in a note that states a colour: a sample, an undyed colour. */
export interface Coloured {
  readonly colour?: StatedColour;
  readonly spectrum?: SpectrumRef;
}

/** Colours of samples, each worked out once: a measured curve wins over a stated number. */
export class SampleColours {
  readonly #known = new WeakMap<Coloured, SwatchColour | 'none'>();
  readonly #findSpectrum: FindSpectrum;

  constructor(findSpectrum: FindSpectrum) {
    this.#findSpectrum = findSpectrum;
  }

  /** The colour of a sample of a note's file; undefined when it states none that can be read. */
  of(sample: Coloured, noteFile: string): SwatchColour | undefined {
    const known = this.#known.get(sample);
    if (known) return known === 'none' ? undefined : known;
    const found = this.#work(sample, noteFile);
    this.#known.set(sample, found ?? 'none');
    return found;
  }

  #work(sample: Coloured, noteFile: string): SwatchColour | undefined {
    const spectrum = sample.spectrum && this.#findSpectrum(sample.spectrum, noteFile);
    if (spectrum) return swatchFromSpectrum(spectrum);
    const stated = sample.colour && swatchFromStated(sample.colour);
    return stated?.ok ? stated.value : undefined;
  }
}
