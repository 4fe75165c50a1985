import type { SourcedRange } from './conversion.ts';
import { twelveDigits } from './conversion.ts';
import type { GramRange } from './fresh-dry.ts';

/**
 * How much fibre a mass of dyestuff colours.
 *
 * @param percent % of the weight of fibre: the higher per cent colours the less.
 * @returns undefined unless the per cent is above 0 at both ends.
 * @source fibre = dyestuff ÷ (% WOF ÷ 100).
 */
export function fibreDyedBy(dyestuffGrams: number, { from, to }: { readonly from: number; readonly to: number }): GramRange | undefined {
  if (!(from > 0) || !(to >= from) || !(dyestuffGrams >= 0)) return undefined;
  return { from: twelveDigits((dyestuffGrams * 100) / to), to: twelveDigits((dyestuffGrams * 100) / from) };
}

/** What scouring takes from a greasy fleece, as a share of it. */
export const SCOURING_LOSS: SourcedRange = {
  from: 0.3,
  to: 0.5,
  source: 'from memory',
  caution: 'Fine wools lose up to 0.6. Weigh a washed handful of your own.',
};

/**
 * Greasy fleece that scours down to a mass.
 *
 * @param loss share lost, 0 ≤ loss < 1.
 * @source greasy = scoured ÷ (1 − loss).
 */
export function greasyFleece(
  scouredGrams: number,
  loss: { readonly from: number; readonly to: number } = SCOURING_LOSS,
): GramRange | undefined {
  if (!(loss.from >= 0) || !(loss.to >= loss.from) || !(loss.to < 1) || !(scouredGrams >= 0)) return undefined;
  return { from: twelveDigits(scouredGrams / (1 - loss.from)), to: twelveDigits(scouredGrams / (1 - loss.to)) };
}

/** First-year woad leaf to a working batch. */
export const WOAD_BATCH_GRAMS: SourcedRange = {
  from: 1250,
  to: 1250,
  source: 'cookslane-woad-2010: one bag of leaf',
  caution: 'One grower’s batch.',
};

/** Indigotin from fresh woad leaf, grams to the kilogram. */
export const WOAD_INDIGOTIN: SourcedRange = { from: 1, to: 4, source: 'from memory', caution: 'Depends on plant, season and process.' };
