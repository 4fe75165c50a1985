/** What the ultraviolet part of the light is like: `rich` is daylight through plain glass, `removed` a good filter or LED. */
export type Ultraviolet = 'rich' | 'removed';

/** How a thing is lit over a year. */
export interface LightPlan {
  /** Measured where the cloth hangs. */
  readonly lux: number;
  /** 0–24. */
  readonly hoursPerDay: number;
  /** 0–366. */
  readonly daysPerYear: number;
  readonly uv: Ultraviolet;
}

/** @source the definition of the foot, 0.3048 m: 1 lm/ft² = 1/0.3048² lx = 10.764 lx. Guides round to 10 or 11. */
const LUX_PER_FOOT_CANDLE = 1 / 0.3048 ** 2;

/** Foot-candles as lux. */
export const luxFromFootCandles = (footCandles: number): number => footCandles * LUX_PER_FOOT_CANDLE;

/**
 * Light dose: illuminance by time.
 *
 * @returns lux hours; 1 Mlx·h is a million of them.
 * @source ERCO, light-sensitive exhibits: H = E × t.
 */
export const luxHours = (lux: number, hours: number): number => lux * hours;

/** Hours of light a year. A museum's usual year is 8 h on about 365 days, near 3000 h (convention, from memory). */
export const hoursPerYear = ({ hoursPerDay, daysPerYear }: LightPlan): number => hoursPerDay * daysPerYear;

/** Lux hours a year. */
export const yearlyLuxHours = (plan: LightPlan): number => luxHours(plan.lux, hoursPerYear(plan));

/**
 * Ultraviolet irradiance.
 *
 * @param microwattsPerLumen proportion of ultraviolet: dimming does not change it, only how much arrives.
 * @returns mW/m².
 */
export const ultravioletMilliwatts = (microwattsPerLumen: number, lux: number): number => (microwattsPerLumen * lux) / 1000;
