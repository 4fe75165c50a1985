import { readSpectralFile } from '../domain/colour/read-spectral-file.ts';
import type { Spectrum } from '../domain/colour/spectrum.ts';
import { findSample, type SpectralFile } from '../domain/colour/spectral-file.ts';

/** Spectral files by path, each read once. */
export class SpectralShelf {
  readonly #read = new Map<string, SpectralFile>();

  /** Forgets a file, because it changed. */
  forget(path: string): void {
    this.#read.delete(path);
  }

  /**
   * The curve of a sample in a file.
   *
   * @param sample its id or name; where none is given the file must hold just one.
   * @returns undefined when the file cannot be read or holds no such sample.
   */
  spectrum(path: string, textOf: () => string, sample: string | undefined): Spectrum | undefined {
    const file = this.#read.get(path) ?? readSpectralFile(textOf());
    this.#read.set(path, file);
    if (sample === undefined) return file.samples.length === 1 ? file.samples[0]?.spectrum : undefined;
    return findSample(file.samples, sample)?.spectrum;
  }
}
