import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { DyedSample } from './cloths.ts';
import type { Verdict } from './standing-words.ts';
import { undeclaredIn } from './undeclared.ts';

/** True for a sample whose trial owns up to everything it did otherwise than its recipe. */
export function isDeclared(base: EvidenceBase, { trial }: DyedSample): boolean {
  const record = base.note(trial)?.record;
  const recipe = record?.kind === 'trial' && record.recipe ? base.resolve(record.recipe.text, ['recipe']) : undefined;
  return record?.kind !== 'trial' || recipe === undefined || undeclaredIn(base, record, recipe).length === 0;
}

/**
 * The samples that may stand for a colour of this verdict: an attested one is never shown by a pot that used something its recipe
 * does not ask for without saying so. Of any other verdict all may.
 */
export function mayIllustrate(base: EvidenceBase, samples: readonly DyedSample[], verdict: Verdict): readonly DyedSample[] {
  return verdict === 'attested' ? samples.filter((one) => isDeclared(base, one)) : samples;
}
