import type { BlueWoolRange } from './blue-wool.ts';
import { type LightCaveat, YEARS_CAVEATS } from './caveats.ts';
import { type LightPlan, yearlyLuxHours } from './dose.ts';
import { jnfLuxHours } from './jnf.ts';

/** Years until the first just noticeable fade: always a span, never a promise. */
export interface YearsToFade {
  /** From the classes as published. */
  readonly years: { readonly from: number; readonly to: number };
  /** The same one class to either side: how far published grades of one dye lie apart. Our choice. */
  readonly spread: { readonly from: number; readonly to: number };
  readonly caveats: readonly LightCaveat[];
}

/**
 * Years to a just noticeable fade under a plan of light.
 *
 * @returns undefined when the plan gives no light: then light does nothing.
 * @source years = dose to a just noticeable fade / (lux × hours a year), as in `jnf.ts`.
 */
export function yearsToFade(classes: BlueWoolRange, plan: LightPlan): YearsToFade | undefined {
  const yearly = yearlyLuxHours(plan);
  if (!(yearly > 0)) return undefined;
  const years = (blueWool: number): number => jnfLuxHours(blueWool, plan.uv) / yearly;
  return {
    years: { from: years(classes.from), to: years(classes.to) },
    spread: { from: years(classes.from - 1), to: years(classes.to + 1) },
    caveats: YEARS_CAVEATS,
  };
}

/** Just noticeable fades a dose makes up, the fewest first: 2 means the dose of two first fades, not twice the change. */
export const fadesOfDose = (doseLuxHours: number, classes: BlueWoolRange, uv: LightPlan['uv']) => ({
  from: doseLuxHours / jnfLuxHours(classes.to, uv),
  to: doseLuxHours / jnfLuxHours(classes.from, uv),
});
