import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { PlannedBath, ShoppingLine } from './dye-day.ts';
import type { Quantity } from './scale-recipe.ts';

/** Everything the baths need, each material and form once, summed; refused materials are not shopped for. */
export function shoppingOf(base: EvidenceBase, baths: readonly PlannedBath[]): readonly ShoppingLine[] {
  const lines = new Map<string, ShoppingLine>();
  for (const { weights } of baths)
    for (const { what, form, planned, problem } of weights) {
      if (problem === 'never-dosed' || problem === 'staff-only' || what === 'water') continue;
      const key = `${what}|${form ?? ''}|${planned?.unit ?? ''}`;
      // A bath without an amount joins the line of its material that has one.
      const held = lines.get(key) ?? [...lines.values()].find((one) => one.what === what && one.form === form && (!planned || !one.needed));
      const sum = added(held?.needed, planned);
      const line: ShoppingLine = {
        what,
        ...(form === undefined ? {} : { form }),
        ...(sum && { needed: sum }),
        more: (held?.more ?? false) || !planned,
        everyday: base.isEveryday(what),
      };
      if (held) for (const [name, one] of lines) if (one === held) lines.delete(name);
      lines.set(`${what}|${form ?? ''}|${sum?.unit ?? ''}`, line);
    }
  return [...lines.values()].sort((a, b) => Number(a.everyday) - Number(b.everyday) || a.what.localeCompare(b.what, 'en'));
}

function added(a: Quantity | undefined, b: Quantity | undefined): Quantity | undefined {
  if (!a || !b) return a ?? b;
  return a.unit === b.unit ? { from: a.from + b.from, to: a.to + b.to, unit: a.unit } : a;
}
