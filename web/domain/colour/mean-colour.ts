import { deltaE00 } from './delta-e.ts';
import type { Lab10 } from './lab.ts';
import { asLab10 } from './lab.ts';

/** The mean of several colours, number by number. Undefined of none. */
export function meanLab10(labs: readonly Lab10[]): Lab10 | undefined {
  if (labs.length === 0) return undefined;
  const sum = labs.reduce<[number, number, number]>((total, lab) => [total[0] + lab[0], total[1] + lab[1], total[2] + lab[2]], [0, 0, 0]);
  return asLab10([sum[0] / labs.length, sum[1] / labs.length, sum[2] / labs.length]);
}

/**
 * Mean colour difference from the mean: how far repeats scatter.
 *
 * @returns mean ΔE00 to the mean colour, ≥ 0; undefined for fewer than two, for one dyeing does not scatter.
 * @source MCDM, Billmeyer & Alessi 1981, here with CIEDE2000.
 */
export function mcdm(labs: readonly Lab10[]): number | undefined {
  const mean = meanLab10(labs);
  if (!mean || labs.length < 2) return undefined;
  return labs.reduce((sum, lab) => sum + deltaE00(lab, mean), 0) / labs.length;
}
