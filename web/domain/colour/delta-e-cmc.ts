import { differenceCmc } from 'culori';
import type { Lab, Lab10, Lab2 } from './lab.ts';

// Textile practice is l:c = 2:1; culori's own default is 1:1.
const cmc = differenceCmc(2, 1);
// `lab65` goes in unchanged; `lab` would be adapted from D50 first.
const carrier = ([l, a, b]: Lab) => ({ mode: 'lab65' as const, l, a, b });

/**
 * CMC(2:1) colour difference. Not symmetric: the standard comes first.
 *
 * @returns ΔE CMC(2:1), dimensionless, ≥ 0.
 * @source Clarke, McDonald & Rigg 1984; ISO 105-J03. Computed by culori.
 */
export function deltaECmc(standard: Lab10, sample: Lab10): number;
export function deltaECmc(standard: Lab2, sample: Lab2): number;
export function deltaECmc(standard: Lab, sample: Lab): number {
  return cmc(carrier(standard), carrier(sample));
}
