import type { LightCaveat } from './caveats.ts';

/** A dose in doubt: the least and the most, in lux hours. */
export interface DoseRange {
  readonly from: number;
  readonly to: number;
}

/** Where a board stands for a day outdoors. */
export type OutdoorPreset = 'shade' | 'sun';

/**
 * Light outdoors in lux.
 *
 * @source orders of magnitude, from memory: open shade and overcast 5 000–20 000 lx, direct sun to about 100 000 lx;
 *   CCI has sunlight at about a thousand times good museum light, which gives 50 000–100 000 lx.
 */
const OUTDOOR_LUX: Readonly<Record<OutdoorPreset, DoseRange>> = {
  shade: { from: 5_000, to: 20_000 },
  sun: { from: 50_000, to: 100_000 },
};

/** What stands beside an outdoor dose. */
export const OUTDOOR_CAVEATS: readonly LightCaveat[] = ['light-estimated', 'no-glass', 'reciprocity'];

/**
 * Dose of a day outdoors.
 *
 * @param hours how long the board is out; 8 where nothing is said (our choice: a fair's opening).
 */
export function outdoorDose(preset: OutdoorPreset, hours = 8): DoseRange {
  const { from, to } = OUTDOOR_LUX[preset];
  return { from: from * hours, to: to * hours };
}

/** What an estimate for a window sill is made of. */
export interface SillEstimate {
  /** Mean daylight outdoors, lux on the flat. */
  readonly outdoorLux: number;
  /** Share of it that reaches the sill, 0–1. */
  readonly sillFactor: number;
  /** Share the pane lets through. */
  readonly glass: number;
  readonly daylightHours: number;
}

/** Two sills. @source our judgement: factors 0.1–0.3 north and 0.3–0.6 sunny, glass about 0.8, 4000 h of daylight. */
export const SILLS: Readonly<Record<'north' | 'sunny', SillEstimate>> = {
  north: { outdoorLux: 12_000, sillFactor: 0.2, glass: 0.8, daylightHours: 4000 },
  sunny: { outdoorLux: 25_000, sillFactor: 0.4, glass: 0.8, daylightHours: 4000 },
};

/** Lux hours on a sill: an order of magnitude. */
export const sillLuxHours = ({ outdoorLux, sillFactor, glass, daylightHours }: SillEstimate): number =>
  outdoorLux * sillFactor * glass * daylightHours;

/** What stands beside a dose on a sill. */
export const SILL_CAVEATS: readonly LightCaveat[] = ['light-estimated', 'reciprocity'];
