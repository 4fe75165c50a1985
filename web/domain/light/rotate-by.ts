import type { BlueWoolRange } from './blue-wool.ts';
import { type LightPlan, luxHours } from './dose.ts';
import { dayOfDose } from './day-of-dose.ts';
import type { IsoDay } from './iso-day.ts';
import { jnfLuxHours } from './jnf.ts';
import { LIGHT_LIMITS, sensitivityOf } from './sensitivity.ts';

/** The day by which a swatch leaves the board, and why. */
export interface RotateBy {
  readonly day: IsoDay;
  /** `year-limit`: the year's light of its class is used up. `first-fade`: it may begin to show. */
  readonly because: 'year-limit' | 'first-fade';
  /** Lux hours it will then have had. */
  readonly luxHours: number;
}

/**
 * The day by which to take a swatch down: when its class's light for a year is spent, or when the most sensitive
 * of its classes may first show a fade, whichever comes first. Open days are spread evenly over the year.
 *
 * @param already lux hours it has had before.
 * @returns undefined where neither comes before the year 9999, or the plan gives no light. A limit that the whole year
 *   does not reach never runs out.
 */
export function rotateBy(classes: BlueWoolRange, plan: LightPlan, from: IsoDay, already = 0): RotateBy | undefined {
  const perOpenDay = luxHours(plan.lux, plan.hoursPerDay);
  if (!(perOpenDay > 0) || !(plan.daysPerYear > 0)) return undefined;
  const limit = LIGHT_LIMITS[sensitivityOf(classes)].luxHoursPerYear;
  const toFade = Math.max(0, jnfLuxHours(classes.from, plan.uv) - already);
  const yearRunsOut = limit !== undefined && perOpenDay * Math.min(365, plan.daysPerYear) > limit;
  if (yearRunsOut && limit <= toFade) {
    const day = dayOfDose(limit, plan, from);
    return day && { day, because: 'year-limit', luxHours: limit };
  }
  const day = dayOfDose(toFade, plan, from);
  return day && { day, because: 'first-fade', luxHours: toFade };
}
