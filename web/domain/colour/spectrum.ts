/** A reflectance curve: values 0–1 at `startNm`, `startNm + stepNm`, … */
export interface Spectrum {
  readonly startNm: number;
  readonly stepNm: number;
  readonly values: readonly number[];
}

/** The bands that curves are reconstructed on and dyes are added up on: 380, 390 … 730 nm. */
export const WORKING_BANDS = { startNm: 380, stepNm: 10, count: 36 } as const;

/** Last wavelength of a spectrum, in nm. */
export const endNm = (spectrum: Spectrum): number => spectrum.startNm + spectrum.stepNm * (spectrum.values.length - 1);

/** True when two spectra stand on the same wavelengths, so that their values may be combined band by band. */
export const sameBands = (a: Spectrum, b: Spectrum): boolean =>
  a.startNm === b.startNm && a.stepNm === b.stepNm && a.values.length === b.values.length;
