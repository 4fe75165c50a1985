import { readSpectralFile } from '../../web/domain/colour/read-spectral-file.ts';
import type { Spectrum } from '../../web/domain/colour/spectrum.ts';
import { referenceText } from './reference-table.ts';

const FILES = ['a-cgats17-spectral_nm-fraction-crlf.txt', 'b-iso28178-percent-with-lab.txt', 'c-cgats17-nm-decimal-comma.txt'];
const all = FILES.flatMap((file) => readSpectralFile(referenceText(`iso28178-samples/${file}`)).samples);

/** One of the twelve invented dyeings by its short name: W0, Y1–Y3, B1–B3, R1, G1, G2, V1, K1. */
export function inventedSample(short: string): Spectrum {
  const found = all.find(({ id, name }) => id === short || name?.startsWith(`${short} `));
  if (!found) throw new Error(`no sample ${short}`);
  return found.spectrum;
}

/** A spectrum of 36 values on 380–730 nm. */
export const bands = (text: string): Spectrum => ({ startNm: 380, stepNm: 10, values: text.trim().split(/\s+/).map(Number) });

/** The same reflectance, 0–1, on 380–730 nm. */
export const flatSpectrum = (reflectance: number): Spectrum => ({
  startNm: 380,
  stepNm: 10,
  values: Array.from({ length: 36 }, () => reflectance),
});
