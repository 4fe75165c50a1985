import type { Ultraviolet } from './dose.ts';

/**
 * Light dose to a just noticeable fade (about grey-scale grade 4), in Mlx·h, of blue wool classes 1 to 8.
 *
 * @source Michalski (Canadian Conservation Institute) and CIE 157:2004, **from memory**: the tables themselves were not seen.
 *   They agree with what was: a factor of two to three a class, and a share of ultraviolet in fading below one half.
 *   Other published sets start at 0.4 Mlx·h (V&A 1999, Michalski 1990): never mix sets.
 */
export const JNF_MEGALUX_HOURS: Readonly<Record<Ultraviolet, readonly [number, number, number, number, number, number, number, number]>> = {
  rich: [0.22, 0.6, 1.5, 3.5, 8, 20, 50, 120],
  removed: [0.3, 1, 3, 10, 30, 100, 300, 1000],
};

/** Where the table comes from, for whoever prints a figure made with it. */
export const JNF_SOURCE = { name: 'Michalski/CCI and CIE 157:2004', checked: 'from-memory' } as const;

/**
 * Dose to a just noticeable fade of one class.
 *
 * @param blueWool 1–8. One step outside the table (0 or 9) is laid on with the table's own last step, to draw the spread of grades.
 * @returns lux hours.
 */
export function jnfLuxHours(blueWool: number, uv: Ultraviolet): number {
  const table = JNF_MEGALUX_HOURS[uv];
  const [first, second] = table;
  const [seventh, eighth] = [table[6], table[7]];
  const megalux =
    blueWool < 1 ? (first * first) / second : blueWool > 8 ? (eighth * eighth) / seventh : (table[Math.round(blueWool) - 1] ?? first);
  return megalux * 1e6;
}
