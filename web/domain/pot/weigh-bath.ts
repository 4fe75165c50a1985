import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { PlanItem, Weight } from './dye-day.ts';
import type { Audience } from './never-dosed.ts';
import { type Quantity, scaleRecipe } from './scale-recipe.ts';
import { commonAmounts, type SharedBath } from './share-baths.ts';

/** What is weighed for a bath, and the pot it needs. */
export interface BathWeights {
  readonly weights: readonly Weight[];
  readonly liquor?: Quantity;
  readonly potMl?: number;
}

/**
 * What is weighed for a bath. A shared mordant is weighed for all its fibre at the per cents on which its recipes agree; into an
 * exhaust bath goes no fresh dye.
 */
export function weightsOf(base: EvidenceBase, bath: SharedBath, items: readonly PlanItem[], audience: Audience): BathWeights {
  const [first] = bath.needs;
  if (!first) return { weights: [] };
  const { stage } = first;
  const grams = bath.needs.reduce((sum, { fibreGrams }) => sum + fibreGrams, 0);
  const percent = items[first.item]?.percent;
  const scaled = scaleRecipe(base, stage.recipe, grams, audience, percent ? { percent } : {});
  const recipes = new Set(bath.needs.map(({ stage: { recipe } }) => recipe));
  const common = recipes.size > 1 ? commonAmounts(base, bath.needs) : undefined;
  const weights = stage.ingredients.flatMap((at, nth): Weight[] => {
    const one = scaled?.ingredients[at];
    if (!one || (bath.exhausts !== undefined && one.role === 'dye')) return [];
    const agreed = common?.[nth];
    const chosen = percent && Object.hasOwn(percent, one.what);
    const planned: Quantity | undefined =
      one.asPlanned && agreed && !chosen ? { from: (agreed.from * grams) / 100, to: (agreed.to * grams) / 100, unit: 'g' } : one.asPlanned;
    return [
      {
        what: one.what,
        ...(one.role && { role: one.role }),
        ...(one.form === undefined ? {} : { form: one.form }),
        ...(planned && { planned }),
        ...(one.problem && { problem: one.problem }),
        ...(one.refused && { refused: one.refused }),
      },
    ];
  });
  return { weights, ...(scaled?.liquor && { liquor: scaled.liquor }), ...(scaled?.potMl === undefined ? {} : { potMl: scaled.potMl }) };
}
