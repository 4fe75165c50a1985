import { type LightPlan, luxHours } from './dose.ts';
import { addDays, type IsoDay } from './iso-day.ts';

/** The part of the year's days on which the light is on. */
const openShare = ({ daysPerYear }: LightPlan): number => Math.min(1, daysPerYear / 365);

/**
 * The day on which a plan has given a dose, counted in whole open days spread evenly over the year.
 *
 * @returns undefined where the plan gives no light, or the day is beyond the year 9999.
 */
export function dayOfDose(dose: number, plan: LightPlan, from: IsoDay): IsoDay | undefined {
  const perOpenDay = luxHours(plan.lux, plan.hoursPerDay);
  return perOpenDay > 0 && openShare(plan) > 0 ? addDays(from, Math.floor(dose / perOpenDay) / openShare(plan)) : undefined;
}

/** Lux hours that a plan gives in some days. */
export const doseInDays = (days: number, plan: LightPlan): number =>
  Math.max(0, days) * openShare(plan) * luxHours(plan.lux, plan.hoursPerDay);
