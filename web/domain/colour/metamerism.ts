import { ciede2000 } from './ciede2000.ts';
import type { Conditions } from './conditions.ts';
import { TEXTILE } from './conditions.ts';
import type { Lab, Xyz } from './lab.ts';
import type { Spectrum } from './spectrum.ts';
import { spectrumToXyz, whitePoint } from './spectrum-to-xyz.ts';
import { xyzToLab } from './xyz-lab.ts';

/** How far apart two samples fall in another light, though they match in the first. */
export interface Metamerism {
  /** CIELAB distance under the test light. */
  readonly deltaEab: number;
  /** CIEDE2000 under the test light. */
  readonly deltaE00: number;
}

/**
 * Special metamerism index, change of illuminant. A remaining difference under the reference light is divided out of XYZ.
 *
 * @param reference where the two should match; the cloth's D65/10° by default.
 * @param test the other light, such as the gallery's; the same observer.
 * @source CIE 15:2018, from memory.
 */
export function metamerismIndex(one: Spectrum, other: Spectrum, test: Conditions, reference: Conditions = TEXTILE): Metamerism {
  const under = (spectrum: Spectrum, { illuminant, observer }: Conditions): Xyz => spectrumToXyz(spectrum, illuminant, observer);
  const [oneRef, otherRef, oneTest, otherTest] = [under(one, reference), under(other, reference), under(one, test), under(other, test)];
  const corrected = otherTest.map((value, i) => (value * (oneRef[i] ?? 0)) / Math.max(otherRef[i] ?? 0, 1e-9)) as unknown as Xyz;
  const white = whitePoint(test.illuminant, test.observer);
  const [a, b]: readonly [Lab, Lab] = [xyzToLab(oneTest, white), xyzToLab(corrected, white)];
  return { deltaEab: Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]), deltaE00: ciede2000([a[0], a[1], a[2]], [b[0], b[1], b[2]]) };
}

/** The lights a display is usually checked under, beside daylight: tungsten, LED, fluorescent. For the cloth's observer. */
export const TEST_LIGHTS = (['A', 'LED-B3', 'FL2', 'FL11'] as const).map((illuminant) => ({ illuminant, observer: TEXTILE.observer }));
