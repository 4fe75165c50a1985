import type { EvidenceBase } from '../claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { namesOf } from '../claim/name-index.ts';
import { parseAmount } from '../note/amount.ts';
import type { Amount, Ingredient, NoteId, Role } from '../note/note.ts';
import { measureOf } from './measures.ts';
import { isStaffOnly, neverDosed, type RefusalReason } from './never-dosed.ts';

/** What keeps an amount from being worked out, or should be looked at. */
export type ScaleProblem = 'amount-missing' | 'amount-unread' | 'unit-unknown' | 'liquor-missing' | 'never-dosed' | 'staff-only' | 'absurd';

/** A range of one unit; both ends the same where there is no range. */
export interface Quantity {
  readonly from: number;
  readonly to: number;
  readonly unit: 'g' | 'ml';
}

/** One ingredient: as written, as understood, as planned. */
export interface ScaledIngredient {
  readonly what: string;
  readonly role?: Role;
  readonly form?: string;
  readonly standsFor?: string;
  readonly asWritten: string;
  /** "15 % of the fibre's weight". */
  readonly asUnderstood: string;
  readonly asPlanned?: Quantity;
  /** Every conversion, with its factor and source. */
  readonly conversions: readonly string[];
  readonly problem?: ScaleProblem;
  readonly refused?: RefusalReason;
}

/** A recipe for a mass of fibre. Time and temperature are in the steps and never scale. */
export interface ScaledRecipe {
  readonly recipe: NoteId;
  readonly fibreGrams: number;
  readonly ingredients: readonly ScaledIngredient[];
  /** Bath volume, from the liquor ratio. */
  readonly liquor?: Quantity;
  /** The pot that holds it with room to stir. Our choice: a third more than the bath. */
  readonly potMl?: number;
  readonly steps: readonly string[];
}

/** Above this a mordant or dye is more likely a slip than a recipe. Our choice: five times the highest usual madder. */
const ABSURD_PERCENT = { mordant: 100, assistant: 500, dye: 1000, modifier: 100, process: 1000 } as const satisfies Record<Role, number>;

/**
 * Works a recipe out for a mass of fibre.
 *
 * @param fibreGrams > 0, air-dry, weighed before wetting.
 * @param audience `staff` may see amounts of tin and copper; nobody sees what is never dosed.
 * @error undefined for no such recipe.
 * @source masses by % of the weight of fibre (WOF): common practice; conversions carry their own source.
 */
export function scaleRecipe(
  base: EvidenceBase,
  recipe: NoteId,
  fibreGrams: number,
  audience: 'public' | 'staff' = 'public',
): ScaledRecipe | undefined {
  const record = base.note(recipe)?.record;
  if (record?.kind !== 'recipe') return undefined;
  const liquor = record.liquor === undefined ? undefined : litresOf(parseAmount(record.liquor), fibreGrams);
  return {
    recipe,
    fibreGrams,
    ingredients: record.ingredients.map((one) => scaled(base, one, fibreGrams, liquor, audience)),
    ...(liquor && { liquor, potMl: liquor.to * (4 / 3) }),
    steps: record.steps,
  };
}

function litresOf({ value, upTo, unit }: Amount, fibreGrams: number): Quantity | undefined {
  if (value === undefined || unit !== 'ratio' || value <= 0) return undefined;
  return { from: value * fibreGrams, to: (upTo ?? value) * fibreGrams, unit: 'ml' };
}

function scaled(
  base: EvidenceBase,
  one: Ingredient,
  fibreGrams: number,
  liquor: Quantity | undefined,
  audience: 'public' | 'staff',
): ScaledIngredient {
  const id = one.what ? base.resolve(one.what.text, MATERIAL_KINDS) : '';
  const note = base.note(id);
  const names = note ? [...namesOf(note)] : [id];
  const head = {
    what: id,
    ...(one.role && { role: one.role }),
    ...(one.form === undefined ? {} : { form: one.form }),
    ...(one.standsFor && { standsFor: base.resolve(one.standsFor.text, MATERIAL_KINDS) }),
    asWritten: one.amount?.text ?? '',
    conversions: [],
  };
  const refused = neverDosed(names);
  if (refused) return { ...head, asUnderstood: 'named as history, never dosed', problem: 'never-dosed', refused };
  if (!one.amount) return { ...head, asUnderstood: 'no amount given', problem: 'amount-missing' };
  if (isStaffOnly(names) && audience !== 'staff') return { ...head, asUnderstood: 'amount for staff only', problem: 'staff-only' };
  return { ...head, ...understood(one.amount, one.role ?? 'dye', fibreGrams, liquor) };
}

type Understood = Pick<ScaledIngredient, 'asUnderstood' | 'asPlanned' | 'conversions' | 'problem'>;

function understood({ text, value, upTo, unit }: Amount, role: Role, fibreGrams: number, liquor: Quantity | undefined): Understood {
  if (value === undefined || unit === undefined)
    return { asUnderstood: `“${text}”, kept as it stands`, conversions: [], problem: 'amount-unread' };
  const last = upTo ?? value;
  const range = (factor: number, to: Quantity['unit'] = 'g'): Quantity => ({ from: value * factor, to: last * factor, unit: to });
  if (unit === '%') {
    const absurd = value <= 0 || last > ABSURD_PERCENT[role];
    return {
      asUnderstood: `${span(value, upTo)} % of the fibre’s weight`,
      asPlanned: range(fibreGrams / 100),
      conversions: [`${span(value, upTo)} % × ${fibreGrams} g ÷ 100`],
      ...(absurd && { problem: 'absurd' }),
    };
  }
  if (unit === 'ratio')
    return {
      asUnderstood: `${span(value, upTo)} parts to one of fibre`,
      asPlanned: range(fibreGrams),
      conversions: [`${span(value, upTo)} × ${fibreGrams} g`],
    };
  const [top = '', bottom] = unit.split('/');
  const measure = measureOf(top);
  if (!measure) return { asUnderstood: `“${text}”, a measure that is not converted`, conversions: [], problem: 'unit-unknown' };
  const says = `1 ${measure.name} = ${measure.factor} ${measure.of === 'mass' ? 'g' : 'ml'} (${measure.source})${measure.caution === undefined ? '' : `. ${measure.caution}`}`;
  const planned = measure.of === 'mass' ? 'g' : 'ml';
  if (bottom === undefined)
    return {
      asUnderstood: `${span(value, upTo)} ${measure.name}, whatever the fibre weighs`,
      asPlanned: range(measure.factor, planned),
      conversions: [says],
    };
  if (bottom === 'L') {
    if (!liquor)
      return { asUnderstood: `${span(value, upTo)} ${measure.name} to the litre`, conversions: [says], problem: 'liquor-missing' };
    return {
      asUnderstood: `${span(value, upTo)} ${measure.name} to the litre of bath`,
      asPlanned: { from: (value * measure.factor * liquor.from) / 1000, to: (last * measure.factor * liquor.to) / 1000, unit: planned },
      conversions: [says, `× ${span(liquor.from / 1000, liquor.to === liquor.from ? undefined : liquor.to / 1000)} L of bath`],
    };
  }
  const per = measureOf(bottom);
  if (per?.of !== 'mass') return { asUnderstood: `“${text}”, a measure that is not converted`, conversions: [], problem: 'unit-unknown' };
  return {
    asUnderstood: `${span(value, upTo)} ${measure.name} to the ${per.name} of fibre`,
    asPlanned: range((measure.factor / per.factor) * fibreGrams, planned),
    conversions: [says, `1 ${per.name} = ${per.factor} g (${per.source})`, `× ${fibreGrams} g of fibre`],
  };
}

const span = (from: number, to: number | undefined): string =>
  to === undefined || to === from ? String(round(from)) : `${round(from)}–${round(to)}`;
const round = (value: number): number => Number(value.toPrecision(6));
