import type { Conversion } from './conversion.ts';
import { twelveDigits } from './conversion.ts';

/**
 * Millilitres of a stock solution that hold an amount.
 *
 * @param wofPercent % of the weight of fibre; @param stockPercent grams in 100 ml: 1 % is 10 g made up to a litre.
 * @returns undefined unless the stock is above 0 % and at most 100 %.
 * @source ml = g × % WOF ÷ % stock; worked example in a published dyeing course page (cowern).
 */
export function stockMl(fibreGrams: number, wofPercent: number, stockPercent: number): Conversion | undefined {
  if (!(stockPercent > 0) || stockPercent > 100) return undefined;
  return {
    value: twelveDigits((fibreGrams * wofPercent) / stockPercent),
    unit: 'ml',
    sum: `${fibreGrams} g × ${wofPercent} % ÷ ${stockPercent} %`,
    source: 'a 1 % stock holds 10 g made up to 1 litre',
  };
}

/** Stock and water that make a weaker solution. */
export interface Dilution {
  readonly stockMl: number;
  readonly waterMl: number;
}

/**
 * How much stock and water make a volume of a weaker solution: C₁V₁ = C₂V₂.
 *
 * @returns undefined where the stock is not stronger than what is wanted, or a number is not above 0.
 */
export function dilute(stockPercent: number, wantedPercent: number, wantedMl: number): Dilution | undefined {
  if (!(wantedPercent > 0) || !(wantedMl > 0) || !(stockPercent >= wantedPercent)) return undefined;
  const stock = twelveDigits((wantedMl * wantedPercent) / stockPercent);
  return { stockMl: stock, waterMl: twelveDigits(wantedMl - stock) };
}
