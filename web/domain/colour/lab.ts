import type { Conditions } from './conditions.ts';

/** CIELAB: L* 0–100, a* and b* about −130 to 130. The conditions stand elsewhere. */
export type Lab = readonly [l: number, a: number, b: number];

/** CIELAB for cloth: D65, 10 degrees. Only ever compared with another of its kind. */
export type Lab10 = Lab & { readonly __conditions: 'D65/10' };

/** CIELAB for the screen: D65, 2 degrees. Only ever compared with another of its kind. */
export type Lab2 = Lab & { readonly __conditions: 'D65/2' };

/** A Lab that is not marked with conditions: whoever compares two of them answers for it. */
export type BareLab = Lab & { readonly __conditions?: never };

/** CIE XYZ, Y of the white = 100. */
export type Xyz = readonly [x: number, y: number, z: number];

/** A Lab that carries its conditions, for any illuminant. */
export interface ConditionedLab extends Conditions {
  readonly lab: Lab;
}

/** Lab in polar form. `h` in degrees 0–360, absent for a grey (C* under 1e-6). */
export interface Lch {
  readonly l: number;
  readonly c: number;
  readonly h?: number;
}

/** Marks numbers as measured or computed for D65, 10 degrees. */
export const asLab10 = (lab: Lab): Lab10 => [lab[0], lab[1], lab[2]] as unknown as Lab10;

/** Marks numbers as computed for D65, 2 degrees. */
export const asLab2 = (lab: Lab): Lab2 => [lab[0], lab[1], lab[2]] as unknown as Lab2;

/** Lightness, chroma and hue angle of a Lab, under the same conditions. */
export function labToLch([l, a, b]: Lab): Lch {
  const c = Math.hypot(a, b);
  if (c < 1e-6) return { l, c };
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return { l, c, h: degrees < 0 ? degrees + 360 : degrees };
}
