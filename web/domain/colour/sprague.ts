import type { Spectrum } from './spectrum.ts';

/** Two made-up points beyond an end, from the six outermost values (y[0] is the end). */
const FIRST_BEYOND = [508, -540, 488, -367, 144, -24] as const;
const SECOND_BEYOND = [884, -1960, 3033, -2648, 1080, -180] as const;

/** Coefficients of x^1 … x^5 over the six points around the interval, times 24. */
const POLYNOMIAL = [
  [2, -16, 0, 16, -2, 0],
  [-1, 16, -30, 16, -1, 0],
  [-9, 39, -70, 66, -33, 7],
  [13, -64, 126, -124, 61, -12],
  [-5, 25, -50, 50, -25, 5],
] as const;

/**
 * Value of a curve between its points, by Sprague's fifth-order interpolation; the end values hold beyond the ends.
 * Fewer than six values are joined by straight lines, because the method needs six.
 *
 * @param spectrum at least one value.
 * @param nm wavelength asked, any.
 * @returns same unit as the values; may leave 0–1 a little beside a steep edge.
 * @source CIE 167:2005 and CIE 15; coefficients from memory, checked: polynomials of degree 4 come back exactly away from the ends, straight lines everywhere.
 */
export function spragueAt(spectrum: Spectrum, nm: number): number {
  const { values } = spectrum;
  const last = values.length - 1;
  const position = (nm - spectrum.startNm) / spectrum.stepNm;
  if (position <= 0) return values[0] ?? 0;
  if (position >= last) return values[last] ?? 0;
  const index = Math.floor(position);
  const x = position - index;
  if (x < 1e-9) return values[index] ?? 0;
  const at = (i: number): number => values[i] ?? beyond(values, i);
  if (values.length < 6) return at(index) * (1 - x) + at(index + 1) * x;
  let sum = at(index);
  let power = 1;
  for (const row of POLYNOMIAL) {
    power *= x;
    let coefficient = 0;
    for (let k = 0; k < 6; k++) coefficient += (row[k] ?? 0) * (row[k] ? at(index - 2 + k) : 0);
    sum += (coefficient / 24) * power;
  }
  return sum;
}

function beyond(values: readonly number[], i: number): number {
  const before = i < 0;
  const distance = before ? -i : i - values.length + 1;
  const weights = distance === 1 ? FIRST_BEYOND : SECOND_BEYOND;
  let sum = 0;
  for (let k = 0; k < 6; k++) sum += (weights[k] ?? 0) * ((before ? values[k] : values[values.length - 1 - k]) ?? 0);
  return sum / 209;
}

/**
 * A spectrum on other wavelengths, by Sprague, kept inside 0–1.
 *
 * @param bands the wavelengths wanted; the ends hold where they lie outside the measured range.
 */
export function resample(
  spectrum: Spectrum,
  bands: { readonly startNm: number; readonly stepNm: number; readonly count: number },
): Spectrum {
  const { startNm, stepNm, count } = bands;
  if (spectrum.startNm === startNm && spectrum.stepNm === stepNm && spectrum.values.length === count) return spectrum;
  const values = Array.from({ length: count }, (_, i) => Math.min(1, Math.max(0, spragueAt(spectrum, startNm + i * stepNm))));
  return { startNm, stepNm, values };
}
