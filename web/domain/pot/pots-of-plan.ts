import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { DyeDayPlan, PlanItem } from './dye-day.ts';

/** One pot of a day: what comes out of one last bath after one recipe, and becomes one trial. */
export interface DayPot {
  readonly recipe: string;
  /** Items of the plan that are in it, from 0. */
  readonly items: readonly number[];
  /** Its baths by number, in order. */
  readonly baths: readonly number[];
  /** Which bath of its dye it is: 1 for a full one, more for what finishes another. */
  readonly nth: number;
  /** The pot whose bath it finishes, by place in the list of pots. */
  readonly finishes?: number;
}

/** The pots of a plan, in the order they are done with. Items that end in one bath after one recipe are one pot. */
export function potsOfPlan(base: EvidenceBase, items: readonly PlanItem[], plan: Pick<DyeDayPlan, 'baths'>): readonly DayPot[] {
  const pots = new Map<string, { readonly recipe: string; readonly items: number[]; readonly baths: Set<number> }>();
  items.forEach((item, at) => {
    const baths = plan.baths.filter((bath) => bath.items.includes(at)).map(({ nth }) => nth);
    const last = baths.at(-1);
    if (last === undefined) return;
    const recipe = base.resolve(item.recipe, ['recipe']);
    const key = `${String(last).padStart(4, '0')} ${recipe}`;
    const held = pots.get(key);
    if (held) {
      held.items.push(at);
      for (const bath of baths) held.baths.add(bath);
    } else pots.set(key, { recipe, items: [at], baths: new Set(baths) });
  });
  const list = [...pots].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, pot]) => pot);
  const potOf = (item: number | undefined) => (item === undefined ? -1 : list.findIndex((pot) => pot.items.includes(item)));
  return list.map((pot, at) => {
    const finishes = potOf(items[pot.items[0] ?? -1]?.exhaustOf);
    const others = list.slice(0, at).filter((one) => finishes >= 0 && potOf(items[one.items[0] ?? -1]?.exhaustOf) === finishes);
    return {
      recipe: pot.recipe,
      items: pot.items,
      baths: [...pot.baths].sort((a, b) => a - b),
      nth: finishes < 0 ? 1 : 2 + others.length,
      ...(finishes >= 0 && { finishes }),
    };
  });
}
