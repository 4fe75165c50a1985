import type { EvidenceBase } from '../claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { namesOf } from '../claim/name-index.ts';
import { MOST_FIBRE_GRAMS, parseAmount } from '../note/amount.ts';
import type { Amount, Ingredient, NoteId, Role } from '../note/note.ts';
import { type Audience, isStaffOnly, refusalOf, type RefusalReason } from './never-dosed.ts';
import { formShown, withoutDoses } from './without-doses.ts';
import { type AmountProblem, type Quantity, type ScaleChoices, understandAmount } from './understand-amount.ts';

export type { Quantity, ScaleChoices } from './understand-amount.ts';

/** What keeps an ingredient from being worked out, or should be looked at. */
export type ScaleProblem = AmountProblem | 'amount-missing' | 'choice-outside' | 'never-dosed' | 'staff-only';

/** What is amiss with the asking as a whole. */
export type RecipeProblem = 'fibre-mass-missing' | 'fibre-mass-impossible' | 'liquor-unread' | 'chain-in-circle';

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
  /** The first of `problems`. */
  readonly problem?: ScaleProblem;
  readonly problems: readonly ScaleProblem[];
  /** Measures the unit may mean, where the reader has to say. */
  readonly possible?: readonly string[];
  readonly refused?: RefusalReason;
}

/** A recipe for a mass of fibre. Time and temperature are in the steps and never scale. */
export interface ScaledRecipe {
  readonly recipe: NoteId;
  /** As asked; 0 where it was missing. */
  readonly fibreGrams: number;
  readonly ingredients: readonly ScaledIngredient[];
  /** Bath volume, from the liquor ratio. */
  readonly liquor?: Quantity;
  /** The pot that holds it with room to stir. Our choice: a third more than the bath. */
  readonly potMl?: number;
  readonly steps: readonly string[];
  readonly problems: readonly RecipeProblem[];
}

/**
 * Works a recipe out for a mass of fibre.
 *
 * @param fibreGrams air-dry, weighed before wetting; undefined where nobody said.
 * @param audience `staff` may see amounts of tin and copper; nobody sees what is never dosed.
 * @param choices what the reader settled where the recipe leaves a range, a pound or a part open.
 * @returns undefined for no such recipe.
 * @error none thrown: what stands in the way is in `problems`.
 * @source masses by % of the weight of fibre (WOF): common practice; conversions carry their own source.
 */
export function scaleRecipe(
  base: EvidenceBase,
  recipe: NoteId,
  fibreGrams: number | undefined,
  audience: Audience = 'public',
  choices: ScaleChoices = {},
): ScaledRecipe | undefined {
  const record = base.note(recipe)?.record;
  if (record?.kind !== 'recipe') return undefined;
  const usable = fibreGrams !== undefined && fibreGrams > 0 && fibreGrams <= MOST_FIBRE_GRAMS;
  const ratio = record.liquor === undefined ? undefined : parseAmount(record.liquor);
  const liquor = ratio && usable ? litresOf(ratio, fibreGrams) : undefined;
  const problems: RecipeProblem[] = [];
  if (fibreGrams === undefined) problems.push('fibre-mass-missing');
  else if (!usable) problems.push('fibre-mass-impossible');
  if (ratio && usable && !liquor && !/^vat$/i.test(ratio.text)) problems.push('liquor-unread');
  if (followsItself(base, recipe)) problems.push('chain-in-circle');
  return {
    recipe,
    fibreGrams: fibreGrams ?? 0,
    ingredients: record.ingredients.map((one) =>
      scaled(base, one, { ...(usable && { fibreGrams }), ...(liquor && { liquor }), choices }, audience),
    ),
    ...(liquor && { liquor, potMl: liquor.to * (4 / 3) }),
    steps: record.steps.map((step) => withoutDoses(base, step, audience)),
    problems,
  };
}

/** Whether the chain of recipes a recipe starts from comes back to it. */
function followsItself(base: EvidenceBase, recipe: NoteId): boolean {
  const seen = new Set<string>();
  const queue: string[] = [recipe];
  for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
    const record = base.note(id)?.record;
    for (const next of record?.kind === 'recipe' ? record.follows : []) {
      const found = base.resolve(next.text, ['recipe']);
      if (found === recipe) return true;
      if (!seen.has(found)) queue.push(found);
      seen.add(found);
    }
  }
  return false;
}

function litresOf({ value, upTo, unit }: Amount, fibreGrams: number): Quantity | undefined {
  if (value === undefined || unit !== 'ratio' || value <= 0) return undefined;
  return { from: value * fibreGrams, to: (upTo ?? value) * fibreGrams, unit: 'ml' };
}

interface Ground {
  readonly fibreGrams?: number;
  readonly liquor?: Quantity;
  readonly choices: ScaleChoices;
}

function scaled(base: EvidenceBase, one: Ingredient, ground: Ground, audience: Audience): ScaledIngredient {
  const id = one.what ? base.resolve(one.what.text, MATERIAL_KINDS) : '';
  const note = base.note(id);
  const names = note ? [...namesOf(note)] : [id];
  const head = {
    what: id,
    ...(one.role && { role: one.role }),
    ...(one.form === undefined ? {} : { form: formShown(base, one, audience) }),
    ...(one.standsFor && { standsFor: base.resolve(one.standsFor.text, MATERIAL_KINDS) }),
    asWritten: one.amount?.text ?? '',
    conversions: [],
  };
  const halted = (asUnderstood: string, problem: ScaleProblem) => ({ ...head, asUnderstood, problem, problems: [problem] });
  const refused = refusalOf(note, id, one.form);
  // An amount that is not shown is not shown "as written" either.
  if (refused) return { ...halted('named as history, never dosed', 'never-dosed'), asWritten: '', refused };
  if (isStaffOnly([...names, id, one.form ?? '']) && audience !== 'staff')
    return { ...halted('amount for staff only', 'staff-only'), asWritten: '' };
  if (!one.amount) return halted('no amount given', 'amount-missing');
  const { amount, outside } = chosenAmount(one.amount, id, ground.choices);
  const understood = understandAmount(amount, one.role ?? 'dye', ground);
  const problems: readonly ScaleProblem[] = outside ? [...understood.problems, 'choice-outside'] : understood.problems;
  const [problem] = problems;
  return { ...head, ...understood, problems, ...(problem && { problem }) };
}

/** The amount with the reader's choice of per cent put in the place of a range. */
function chosenAmount(amount: Amount, id: string, { percent }: ScaleChoices): { readonly amount: Amount; readonly outside: boolean } {
  const value = percent && Object.hasOwn(percent, id) ? percent[id] : undefined;
  if (value === undefined || !Number.isFinite(value) || value <= 0) return { amount, outside: false };
  const outside = amount.unit === '%' && amount.value !== undefined && (value < amount.value || value > (amount.upTo ?? amount.value));
  return { amount: { text: `${value} %`, value, unit: '%' }, outside };
}
