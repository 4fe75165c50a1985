import { SCREEN, TEXTILE } from './conditions.ts';
import type { Illuminant, Observer } from './conditions.ts';
import type { ConditionedLab, Lab, Lab10, Lab2, Xyz } from './lab.ts';
import { asLab10, asLab2 } from './lab.ts';
import type { Spectrum } from './spectrum.ts';
import { spectrumToXyz, whitePoint } from './spectrum-to-xyz.ts';

const KAPPA = 24389 / 27;
const EPSILON = 216 / 24389;

const compress = (t: number): number => (t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116);
const expand = (f: number): number => (f * f * f > EPSILON ? f * f * f : (116 * f - 16) / KAPPA);

/**
 * CIELAB of XYZ against a white.
 *
 * @param xyz, white same scale.
 * @source ISO/CIE 11664-4, CIE 15:2018.
 */
export function xyzToLab(xyz: Xyz, white: Xyz): Lab {
  const fx = compress(xyz[0] / white[0]);
  const fy = compress(xyz[1] / white[1]);
  const fz = compress(xyz[2] / white[2]);
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

/** Y of a lightness, Y of the white = 100. */
export const lightnessToY = (l: number): number => 100 * expand((l + 16) / 116);

/** The inverse of `xyzToLab`, on the scale of the white. */
export function labToXyz([l, a, b]: Lab, white: Xyz): Xyz {
  const fy = (l + 16) / 116;
  return [expand(fy + a / 500) * white[0], expand(fy) * white[1], expand(fy - b / 200) * white[2]];
}

/** Lab of a spectrum under any conditions, with them attached. */
export function spectrumToLab(spectrum: Spectrum, illuminant: Illuminant, observer: Observer): ConditionedLab {
  return { lab: xyzToLab(spectrumToXyz(spectrum, illuminant, observer), whitePoint(illuminant, observer)), illuminant, observer };
}

/** The cloth value of a spectrum: D65, 10 degrees. */
export const spectrumToLab10 = (spectrum: Spectrum): Lab10 => asLab10(spectrumToLab(spectrum, TEXTILE.illuminant, TEXTILE.observer).lab);

/** The screen value of a spectrum: D65, 2 degrees. */
export const spectrumToLab2 = (spectrum: Spectrum): Lab2 => asLab2(spectrumToLab(spectrum, SCREEN.illuminant, SCREEN.observer).lab);
