import type { EvidenceBase } from '../claim/evidence-base.ts';
import { MOST_FIBRE_GRAMS } from '../note/amount.ts';
import type { DyeDayPlan, PlanItem, PlannedBath, PlanProblem, SoundItem } from './dye-day.ts';
import { nextBathDepth } from './exhaust.ts';
import type { Audience } from './never-dosed.ts';
import { chainOf, needsOf, shareBaths, type SharedBath } from './share-baths.ts';
import { shoppingOf } from './shopping.ts';
import { timelineOf } from './timeline.ts';
import { weightsOf } from './weigh-bath.ts';

/**
 * Plans a day: which baths, in which order, what is weighed for each, what is bought, how long it takes.
 *
 * A recipe's own order stands (blue first or yellow first as its `follows` says); mordants come before what they are for;
 * pots that ask for the same mordant on fibre of one class share it; an exhaust bath comes after its full one.
 *
 * @param audience amounts of tin and copper are worked out for `staff` only; what is never dosed, for nobody.
 * @error none thrown: what stands in the way is in `problems`, the rest is planned.
 */
export function planDyeDay(base: EvidenceBase, items: readonly PlanItem[], audience: Audience = 'public'): DyeDayPlan {
  const problems: PlanProblem[] = [];
  if (items.length === 0) problems.push({ code: 'nothing-planned', about: [] });
  const sound = items.flatMap((item, at) => {
    const found = soundItem(base, items, item, at, problems);
    return found ? [found] : [];
  });
  const shared = shareBaths(
    base,
    sound.flatMap((item) => needsOf(base, item)),
  );
  const baths = shared.map((bath, at) => plannedBath(base, items, shared, bath, at, audience));
  for (const {
    weights,
    items: [first],
  } of baths)
    for (const { problem, what } of weights)
      if (problem === 'never-dosed' || problem === 'staff-only')
        problems.push({ code: problem, ...(first === undefined ? {} : { item: first }), about: [what] });
  const pots = baths.flatMap(({ potMl }) => (potMl === undefined ? [] : [potMl]));
  const fibres = new Map<string | undefined, number>();
  for (const { fibre, item } of sound) fibres.set(fibre, (fibres.get(fibre) ?? 0) + item.fibreGrams);
  return {
    baths,
    shopping: shoppingOf(base, baths),
    fibres: [...fibres].map(([fibre, grams]) => ({ fibre, grams })),
    timeline: timelineOf(baths),
    ...(pots.length > 0 && { largestPotMl: Math.max(...pots) }),
    problems,
  };
}

function soundItem(
  base: EvidenceBase,
  items: readonly PlanItem[],
  item: PlanItem,
  at: number,
  problems: PlanProblem[],
): SoundItem | undefined {
  const say = (code: PlanProblem['code'], ...about: readonly string[]) => void problems.push({ code, item: at, about });
  const found = base.find(item.recipe, ['recipe']);
  const record = found.is === 'one' ? base.note(found.id)?.record : undefined;
  if (found.is !== 'one' || record?.kind !== 'recipe') {
    say('recipe-unknown', item.recipe, ...(found.is === 'none' ? found.nearest : found.is === 'several' ? found.ids : []));
    return undefined;
  }
  if (!(item.fibreGrams > 0) || item.fibreGrams > MOST_FIBRE_GRAMS) {
    say('fibre-mass-impossible', String(item.fibreGrams));
    return undefined;
  }
  const { chain, inCircle } = chainOf(base, found.id);
  if (inCircle) say('chain-in-circle', found.id);
  const own = record.fibre[0] && base.resolve(record.fibre[0].text, ['fibre']);
  const asked = item.fibre === undefined ? undefined : base.find(item.fibre, ['fibre']);
  if (asked && asked.is !== 'one') say('fibre-unknown', item.fibre ?? '');
  const fibre = asked?.is === 'one' ? asked.id : own;
  if (fibre !== undefined && own !== undefined && base.fibreClassOf(fibre) !== base.fibreClassOf(own)) say('fibre-other-class', fibre, own);
  if (record.ingredients.length === 0) say('nothing-to-weigh', found.id);
  const full = item.exhaustOf === undefined ? undefined : items[item.exhaustOf];
  const sameDye = full && base.resolve(full.recipe, ['recipe']) === found.id && full.exhaustOf === undefined && item.exhaustOf !== at;
  const usable = sameDye === true && full.fibreGrams > 0;
  if (item.exhaustOf !== undefined && !usable) say('exhaust-of-nothing', item.recipe);
  const { exhaustOf: _, ...rest } = item;
  return { at, item: usable ? item : rest, recipe: found.id, chain, fibre };
}

function plannedBath(
  base: EvidenceBase,
  items: readonly PlanItem[],
  all: readonly SharedBath[],
  bath: SharedBath,
  at: number,
  audience: Audience,
): PlannedBath {
  const [first] = bath.needs;
  const stage = first?.stage;
  const grams = bath.needs.reduce((sum, { fibreGrams }) => sum + fibreGrams, 0);
  const full = bath.exhausts === undefined ? undefined : all[bath.exhausts];
  const { weights, liquor, potMl } = weightsOf(base, bath, items, audience);
  return {
    nth: at + 1,
    kind: stage?.kind ?? 'dye',
    materials: stage?.materials ?? [],
    recipes: [...new Set(bath.needs.map(({ stage: { recipe } }) => recipe))],
    items: [...new Set(bath.needs.map(({ item }) => item))].sort((a, b) => a - b),
    fibreGrams: grams,
    weights,
    ...(liquor && { liquor }),
    ...(potMl === undefined ? {} : { potMl }),
    ...(stage?.tend && { tend: stage.tend }),
    ...(stage?.wait && { wait: stage.wait }),
    when: bath.ahead ? 'ahead' : 'day',
    after: bath.after.map((one) => one + 1),
    ...(full && { exhausts: (bath.exhausts ?? 0) + 1, ...leftIn(base, items, full, bath, grams, audience) }),
  };
}

/** What is left of the full bath's dye, where the recipe gives one per cent or the dyer chose one, and knows the uptake. */
function leftIn(base: EvidenceBase, items: readonly PlanItem[], full: SharedBath, bath: SharedBath, grams: number, audience: Audience) {
  const item = items[bath.needs[0]?.item ?? -1];
  const before = full.needs.reduce((sum, { fibreGrams }) => sum + fibreGrams, 0);
  const dye = weightsOf(base, full, items, audience).weights.find(({ role, planned }) => role === 'dye' && planned?.unit === 'g');
  if (!dye?.planned || before <= 0) return {};
  const [least, most] = [dye.planned.from, dye.planned.to].map((mass) => nextBathDepth((100 * mass) / before, before, grams, item?.uptake));
  if (!least || !most) return {};
  if (least.is === 'unknown' || most.is === 'unknown') return { left: { is: 'unknown' } as const };
  return { left: { is: 'reckoned', from: least.from, to: most.to, sum: most.sum } as const };
}
