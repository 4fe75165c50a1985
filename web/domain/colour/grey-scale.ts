import type { Lab, Lab10 } from './lab.ts';

export const GREY_SCALE_STEPS = ['5', '4-5', '4', '3-4', '3', '2-3', '2', '1-2', '1'] as const;
/** Grade of a change in colour: 5 no change, 1 a great one. */
export type GreyScaleStep = (typeof GREY_SCALE_STEPS)[number];

/** How far a colour changed, as the grey scale grades it. */
export interface GreyScaleChange {
  /** ΔE_F of the method: neither ΔE00 nor ΔE*ab. */
  readonly deltaEF: number;
  /** Decimal grade, 1–5. */
  readonly grade: number;
  readonly step: GreyScaleStep;
}

/** ΔE_F below which each step but the last is given. */
const LIMITS = [0.4, 1.25, 2.1, 2.95, 4.1, 5.8, 8.2, 11.6] as const;
/** ΔE_F of grade 4, the first just noticeable fade. */
export const JUST_NOTICEABLE = 1.7;

/**
 * Grade of the change from an original to a treated colour.
 *
 * @param original, treated under the same conditions; D65/10° by practice.
 * @source ISO 105-A05:1996; formula from memory, confirmed from two public implementations; the standard's text was not available.
 * ΔE_F is rounded to two decimals before the table, so that 0.40 is not 0.39999.
 */
export function greyScaleChange(original: Lab10, treated: Lab10): GreyScaleChange {
  const deltaEF = changeOf(original, treated);
  const grade = deltaEF <= 3.4 ? 5 - deltaEF / 1.7 : 5 - Math.log2(deltaEF / 0.85);
  const rounded = Math.round(deltaEF * 100) / 100;
  const index = LIMITS.findIndex((limit) => rounded < limit);
  return { deltaEF, grade: Math.max(1, grade), step: GREY_SCALE_STEPS[index < 0 ? LIMITS.length : index] ?? '1' };
}

function changeOf(original: Lab, treated: Lab): number {
  const [lO, cO, hO] = polar(original);
  const [lT, cT, hT] = polar(treated);
  const dL = lT - lO;
  const dC = cT - cO;
  const turn = ((((hT - hO + 180) % 360) + 360) % 360) - 180;
  const dH = 2 * Math.sqrt(cO * cT) * Math.sin((turn * Math.PI) / 360);
  const meanC = (cO + cT) / 2;
  let meanH = (hO + hT) / 2;
  if (Math.abs(hT - hO) > 180) meanH += hT + hO < 360 ? 180 : -180;
  const fromBlue = Math.abs(meanH - 280);
  const x = ((fromBlue <= 180 ? fromBlue : 360 - fromBlue) / 30) ** 2;
  const d = (dC * meanC * Math.exp(-x)) / 100;
  const dCF = (dC - d) / (1 + ((20 * meanC) / 1000) ** 2);
  const dHF = (dH - d) / (1 + ((10 * meanC) / 1000) ** 2);
  return Math.hypot(dL, dCF, dHF);
}

function polar([l, a, b]: Lab): readonly [l: number, c: number, h: number] {
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return [l, Math.hypot(a, b), degrees < 0 ? degrees + 360 : degrees];
}
