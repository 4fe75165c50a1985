import type { SpreadGroup } from '../../domain/pot/repeatability.ts';
import type { Quantity, RecipeProblem, ScaleProblem } from '../../domain/pot/scale-recipe.ts';

/** What is said where an amount could not be worked out, or should be looked at. */
export const scaleProblemWords = {
  'amount-missing': 'The recipe gives no amount.',
  'amount-negative': 'An amount below nothing cannot be weighed out.',
  'amount-zero': 'An amount of nothing: look whether a figure was lost.',
  'amount-unread': 'The amount could not be read and is kept in its own words.',
  'unit-missing': 'A number without a unit: write for example 15 %, 5 g/L or 2 oz.',
  'measure-ambiguous': 'Several measures go by this name. Say which is meant; a pound may have 12 ounces or 16.',
  'parts-of-what': 'Parts are parts of something: say how much one part weighs.',
  'fibre-mass-missing': 'Without the mass of the fibre there is nothing to reckon from.',
  'choice-outside': 'The per cent chosen lies outside the recipe’s range.',
  'unit-unknown': 'This measure is not converted: look up which town and trade it belongs to.',
  'liquor-missing': 'An amount to the litre needs the recipe’s liquor ratio.',
  'never-dosed': 'Named as history only: no amount is worked out here. Do not reproduce it.',
  'staff-only': 'Amounts of this salt are for staff who work by its safety data sheet, never for children or the public.',
  absurd: 'This is far outside what is usual: look whether a slip was copied.',
} as const satisfies Record<ScaleProblem, string>;

/** What is said of a recipe that could not be worked out as asked. */
export const recipeProblemWords = {
  'fibre-mass-missing': 'Say what the fibre weighs, air-dry.',
  'fibre-mass-impossible': 'The fibre must weigh more than nothing and at most 100 kg.',
  'liquor-unread': 'The liquor ratio could not be read: write for example 30:1. No bath is worked out.',
  'chain-in-circle': 'The recipes this one starts from lead back to itself. Each is counted once; mend the chain.',
} as const satisfies Record<RecipeProblem, string>;

/** What stands under every weighing sheet. */
export const SCALE_CAUTION =
  'Weigh the fibre dry. Weigh powders in still air, with gloves, away from food. Follow local rules and the supplier’s safety data sheet; ask a competent person.';

/** "25–62.5 g", "1.2 kg", "7.5 L". */
export function quantityText({ from, to, unit }: Quantity): string {
  const big = to >= 1000;
  const value = (amount: number) => Number((big ? amount / 1000 : amount).toPrecision(3)).toString();
  const name = unit === 'g' ? (big ? 'kg' : 'g') : big ? 'L' : 'ml';
  return from === to ? `${value(from)} ${name}` : `${value(from)}–${value(to)} ${name}`;
}

/** How dyeings that share something scatter: the mean colour difference from the mean, in ΔE00. */
export function spreadGroupText({ count, trials, mcdm, farthest }: SpreadGroup): string {
  const of = `${count === 1 ? '1 sample' : `${count} samples`} of ${trials.length === 1 ? '1 pot' : `${trials.length} pots`}`;
  return mcdm === undefined ? `${of}: no spread to tell` : `${of}: MCDM ΔE00 ${mcdm.toFixed(1)}, the farthest ${farthest.toFixed(1)}`;
}
