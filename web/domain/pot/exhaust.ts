import { twelveDigits } from './conversion.ts';

/** What a later bath holds of the first one's dye, as % of the weight of the fibre that goes in next. */
export type NextBath =
  | { readonly is: 'reckoned'; readonly from: number; readonly to: number; readonly sum: string }
  /** Nobody knows how much was taken up: the bath is only "the second". */
  | { readonly is: 'unknown' };

/** A share of the dye that the fibre took up, 0–1: the dyer's own figure. */
export interface Uptake {
  readonly from: number;
  readonly to: number;
}

/**
 * The nominal depth of an exhaust bath by mass balance.
 *
 * @param percent % WOF of the bath before; @param beforeGrams fibre dyed in it; @param nextGrams fibre that goes in next.
 * @param uptake share taken up, 0–1; it is almost never known, and absent leaves the answer unknown.
 * @error undefined where a mass or per cent is not above 0 or the uptake leaves 0–1.
 * @source next % = % × (1 − u) × mass before ÷ mass next.
 */
export function nextBathDepth(percent: number, beforeGrams: number, nextGrams: number, uptake?: Uptake): NextBath | undefined {
  if (!(percent > 0) || !(beforeGrams > 0) || !(nextGrams > 0)) return undefined;
  if (!uptake) return { is: 'unknown' };
  const { from, to } = uptake;
  if (!(from >= 0) || !(to >= from) || !(to <= 1)) return undefined;
  const left = (share: number) => twelveDigits((percent * (1 - share) * beforeGrams) / nextGrams);
  const told = from === to ? String(from) : `${from}–${to}`;
  return { is: 'reckoned', from: left(to), to: left(from), sum: `${percent} % × (1 − ${told}) × ${beforeGrams} g ÷ ${nextGrams} g` };
}
