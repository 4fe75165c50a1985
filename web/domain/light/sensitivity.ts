import type { BlueWoolRange } from './blue-wool.ts';
import { type LightPlan, yearlyLuxHours } from './dose.ts';

/** How strongly a thing answers to light, by the names of CIE 157. Its numbers (R0–R3, R1–R4) are used both ways round: names only. */
export const SENSITIVITIES = ['high', 'medium', 'low', 'irresponsive'] as const;
export type Sensitivity = (typeof SENSITIVITIES)[number];

/** What a class allows; an absent limit is none. */
export interface LightLimit {
  readonly lux?: number;
  readonly luxHoursPerYear?: number;
}

/**
 * Limits by class.
 *
 * @source class names: CIE 157:2004 (contents seen). Illuminance: Schwen & Berns 2011. Yearly exposure: CIE 157:2004 as taken over in
 *   CEN/TS 16163:2014 (superseded by EN 16163, whose figures were not seen), **from memory**.
 */
export const LIGHT_LIMITS: Readonly<Record<Sensitivity, LightLimit>> = {
  high: { lux: 50, luxHoursPerYear: 15_000 },
  medium: { lux: 50, luxHoursPerYear: 150_000 },
  low: { lux: 200, luxHoursPerYear: 600_000 },
  irresponsive: {},
};

/** Where the limits come from, as it is to be cited. */
export const LIMITS_SOURCE = 'CIE 157:2004; CEN/TS 16163:2014 (superseded by EN 16163)';

const ofClass = (blueWool: number): Sensitivity => (blueWool <= 3 ? 'high' : blueWool <= 6 ? 'medium' : 'low');

/**
 * The class of a span of blue wools: the more sensitive end decides, because a limit protects.
 *
 * @source blue wool 1–3 high, 4–6 medium, 7–8 low: CCI sensitivity table.
 */
export const sensitivityOf = ({ from }: BlueWoolRange): Sensitivity => ofClass(from);

/** Both ends of a span, when they are not of one class. */
export const sensitivitiesOf = ({ from, to }: BlueWoolRange): readonly Sensitivity[] => [...new Set([ofClass(from), ofClass(to)])];

/** How a plan stands against a class. */
export interface BudgetShare {
  /** The plan's lux hours a year. */
  readonly luxHoursPerYear: number;
  /** Of the class's yearly limit: 1 is all of it; absent where there is no limit. */
  readonly share?: number;
  readonly tooBright: boolean;
  /** Hours a year the limit allows at this light; absent where there is no limit or no light. */
  readonly hoursAllowed?: number;
}

/** A plan against the limits of a class. */
export function budgetShare(plan: LightPlan, sensitivity: Sensitivity): BudgetShare {
  const limit = LIGHT_LIMITS[sensitivity];
  const luxHoursPerYear = yearlyLuxHours(plan);
  return {
    luxHoursPerYear,
    tooBright: limit.lux !== undefined && plan.lux > limit.lux,
    ...(limit.luxHoursPerYear === undefined ? {} : { share: luxHoursPerYear / limit.luxHoursPerYear }),
    ...(limit.luxHoursPerYear === undefined || plan.lux <= 0 ? {} : { hoursAllowed: limit.luxHoursPerYear / plan.lux }),
  };
}

/**
 * The share of opening hours a house's own policy allows: one just noticeable fade in so many years.
 *
 * @returns 1 is all opening hours; more than 1 where the policy asks for nothing.
 * @source the form of a time-share policy, as told by the National Museum of Australia 2009.
 */
export const policyShare = (jnfLuxHours: number, policyYears: number, lux: number, openHoursPerYear: number): number =>
  jnfLuxHours / (policyYears * lux * openHoursPerYear);
