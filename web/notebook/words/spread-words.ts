import type { LikelySpread } from '../../domain/colour/spread.ts';
import { PAIRS_NEEDED } from '../../domain/colour/spread.ts';

const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five'] as const;

/** How far a predicted colour is likely to be off, and how that is known. */
export function spreadWords({ deltaE00, from, count }: LikelySpread): string {
  const spread = `likely spread ΔE00 ${deltaE00.toFixed(1)}`;
  if (from === 'own-pairs') return `${spread}: four in five of the notebook’s ${count} predicted and then dyed colours lie nearer`;
  if (from === 'simulated') return `${spread}: four in five of ${count} dyeings worked out by chance lie nearer`;
  return `${spread} (our choice, by judgement, until ${COUNTS[PAIRS_NEEDED] ?? PAIRS_NEEDED} predicted colours of this notebook have been dyed)`;
}

/** How far one prediction may be off, worked out by chance; what is varied is our choice, by judgement. */
export const chanceWords = ({ deltaE00, count }: LikelySpread): string =>
  `by chance, from how depths, grounds, measuring and the model vary (our judgement), four in five of ${count} dyeings of these two lie within ΔE00 ${deltaE00.toFixed(1)}`;
