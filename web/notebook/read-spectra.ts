import type { Spectrum } from '../domain/colour/spectrum.ts';

/** The samples of a spectral file by name; empty when the file cannot be read. */
export function readSpectra(_path: string, _text: string): ReadonlyMap<string, Spectrum> {
  return new Map();
}
