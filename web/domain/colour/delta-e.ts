import type { Result } from '../result.ts';
import { failed, ok } from '../result.ts';
import { ciede2000 } from './ciede2000.ts';
import type { ConditionedLab, Lab, Lab10, Lab2 } from './lab.ts';

const bare = (lab: Lab): readonly [number, number, number] => [lab[0], lab[1], lab[2]];

/**
 * Colour difference of two values under the same conditions. A 10° and a 2° value do not go together: that does not compile.
 *
 * @returns ΔE00, dimensionless, ≥ 0.
 * @source Sharma, Wu & Dalal 2005, doi:10.1002/col.20070.
 */
export function deltaE00(a: Lab10, b: Lab10): number;
export function deltaE00(a: Lab2, b: Lab2): number;
export function deltaE00(a: Lab, b: Lab): number {
  return ciede2000(bare(a), bare(b));
}

/**
 * Colour difference of two values that carry their conditions.
 *
 * @error `conditions-differ` when illuminant or observer are not the same: convert through the spectrum first.
 */
export function deltaE00Between(a: ConditionedLab, b: ConditionedLab): Result<number, 'conditions-differ'> {
  if (a.illuminant !== b.illuminant || a.observer !== b.observer) return failed('conditions-differ');
  return ok(ciede2000(bare(a.lab), bare(b.lab)));
}

/** How near two colours are, in words. */
export type Closeness = 'match' | 'near' | 'same-family' | 'apart';

/** Upper ΔE00 of each word, inclusive. Our choice, because in our judgement hand-dyed repeats of one recipe scatter by some 2 to 5. */
export const CLOSENESS_LIMITS = { match: 3, near: 6, 'same-family': 10 } as const;

/** The word for a difference in ΔE00. */
export function closeness(difference: number): Closeness {
  if (difference <= CLOSENESS_LIMITS.match) return 'match';
  if (difference <= CLOSENESS_LIMITS.near) return 'near';
  return difference <= CLOSENESS_LIMITS['same-family'] ? 'same-family' : 'apart';
}
