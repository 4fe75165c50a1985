import type { Quantity, ScaleProblem } from '../../domain/pot/scale-recipe.ts';

/** What is said where an amount could not be worked out, or should be looked at. */
export const scaleProblemWords = {
  'amount-missing': 'The recipe gives no amount.',
  'amount-unread': 'The amount could not be read and is kept in its own words.',
  'unit-unknown': 'This measure is not converted: look up which town and trade it belongs to.',
  'liquor-missing': 'An amount to the litre needs the recipe’s liquor ratio.',
  'never-dosed': 'Named as history only: no amount is worked out here. Do not reproduce it.',
  'staff-only': 'Amounts of this salt are for staff who work by its safety data sheet, never for children or the public.',
  absurd: 'This is far outside what is usual: look whether a slip was copied.',
} as const satisfies Record<ScaleProblem, string>;

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
