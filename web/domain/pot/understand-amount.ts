import type { Amount, Role } from '../note/note.ts';
import { type NamedMeasure, measureOf, possibleMeasures } from './measures.ts';

/** A range of one unit; both ends the same where there is no range. */
export interface Quantity {
  readonly from: number;
  readonly to: number;
  readonly unit: 'g' | 'ml';
}

/** What keeps an amount from being worked out, or should be looked at. */
export type AmountProblem =
  | 'amount-unread'
  | 'amount-negative'
  | 'amount-zero'
  | 'unit-missing'
  | 'unit-unknown'
  | 'measure-ambiguous'
  | 'parts-of-what'
  | 'liquor-missing'
  | 'fibre-mass-missing'
  | 'absurd';

/** What a reader settled where the recipe leaves it open. */
export interface ScaleChoices {
  /** Per cent of the weight of fibre chosen out of a range, by the id of the material. */
  readonly percent?: Readonly<Record<string, number>>;
  /** Which measure a written unit means, such as `lb` → `lb troy`. */
  readonly measures?: Readonly<Record<string, string>>;
  /** Grams of one part, where the recipe counts in parts. */
  readonly partGrams?: number;
}

/** An amount as understood and as planned, with every conversion. */
export interface Understood {
  readonly asUnderstood: string;
  readonly asPlanned?: Quantity;
  readonly conversions: readonly string[];
  readonly problems: readonly AmountProblem[];
  /** Which measures the unit may mean, where that has to be asked. */
  readonly possible?: readonly string[];
}

/** What an amount is worked out against. */
export interface AmountGround {
  /** Air-dry fibre, g; absent where it is not known. */
  readonly fibreGrams?: number;
  readonly liquor?: Quantity;
  readonly choices?: ScaleChoices;
}

/** Above this, % of the fibre, a mordant or dye is more likely a slip than a recipe. Our choice: well above the highest usual figures. */
const ABSURD_PERCENT = { mordant: 100, assistant: 500, dye: 2000, modifier: 100, process: 2000 } as const satisfies Record<Role, number>;

/**
 * Works out one amount.
 *
 * @returns `asPlanned` only where number, unit and ground are all known; ranges stay ranges.
 * @error none thrown: what stands in the way is in `problems`.
 */
export function understandAmount(amount: Amount, role: Role, ground: AmountGround): Understood {
  const { text, value, upTo, unit } = amount;
  if (/^\s*[-−]\s*\d/u.test(text)) return verbatim(text, 'amount-negative');
  if (value === undefined) return verbatim(text, 'amount-unread');
  if ((upTo ?? value) === 0) return verbatim(text, 'amount-zero');
  if (unit === undefined) return verbatim(text, 'unit-missing');
  const fibre = ground.fibreGrams;
  const last = upTo ?? value;
  if (unit === '%' || unit === 'ratio') {
    const percent = unit === '%';
    const written = span(value, upTo);
    const factor = fibre === undefined ? undefined : percent ? fibre / 100 : fibre;
    const absurd = (percent ? last : last * 100) > ABSURD_PERCENT[role];
    return {
      asUnderstood: percent ? `${written} % of the fibre’s weight` : `${written} parts to one of fibre`,
      ...(factor !== undefined && { asPlanned: { from: value * factor, to: last * factor, unit: 'g' } }),
      conversions: fibre === undefined ? [] : [percent ? `${written} % × ${fibre} g ÷ 100` : `${written} × ${fibre} g`],
      problems: [...(fibre === undefined ? (['fibre-mass-missing'] as const) : []), ...(absurd ? (['absurd'] as const) : [])],
    };
  }
  if (/^parts?$/i.test(unit)) return parts(text, value, upTo, ground.choices?.partGrams);
  return inMeasures(text, value, upTo, unit, role, ground);
}

function parts(text: string, value: number, upTo: number | undefined, partGrams: number | undefined): Understood {
  if (partGrams === undefined || !(partGrams > 0)) return verbatim(text, 'parts-of-what');
  return {
    asUnderstood: `${span(value, upTo)} parts of ${partGrams} g`,
    asPlanned: { from: value * partGrams, to: (upTo ?? value) * partGrams, unit: 'g' },
    conversions: [`${span(value, upTo)} × ${partGrams} g`],
    problems: [],
  };
}

/** A measure alone, to the litre of bath, or to a weight of fibre. */
function inMeasures(text: string, value: number, upTo: number | undefined, unit: string, role: Role, ground: AmountGround): Understood {
  const [top = '', bottom] = unit.split('/');
  const upper = chosenMeasure(top, ground.choices);
  const lower = bottom === undefined || bottom === 'L' ? undefined : chosenMeasure(bottom, ground.choices);
  const { measure } = upper;
  // Four ounces to the pound are 25 % in a pound of sixteen and 33 % in one of twelve: which pound is asked here too.
  const ask = lower ? lower.possible : bottom === undefined ? upper.possible : [];
  const asked: Pick<Understood, 'possible'> = ask.length > 1 ? { possible: ask } : {};
  const ambiguous: readonly AmountProblem[] = ask.length > 1 ? ['measure-ambiguous'] : [];
  if (!measure)
    return {
      ...verbatim(text, upper.possible.length > 0 ? 'measure-ambiguous' : 'unit-unknown'),
      ...(upper.possible.length > 0 && { possible: upper.possible }),
    };
  const planned: Quantity['unit'] = measure.of === 'mass' ? 'g' : 'ml';
  const last = upTo ?? value;
  const absurd = (grams: number): readonly AmountProblem[] =>
    ground.fibreGrams !== undefined && (100 * grams) / ground.fibreGrams > ABSURD_PERCENT[role] ? ['absurd'] : [];
  if (bottom === undefined)
    return {
      asUnderstood: `${span(value, upTo)} ${measure.name}, whatever the fibre weighs`,
      asPlanned: { from: value * measure.factor, to: last * measure.factor, unit: planned },
      conversions: [says(measure)],
      problems: ambiguous,
      ...asked,
    };
  if (bottom === 'L') {
    const { liquor } = ground;
    const asUnderstood = `${span(value, upTo)} ${measure.name} to the litre of bath`;
    if (!liquor) return { asUnderstood, conversions: [says(measure)], problems: ['liquor-missing'] };
    const to = (last * measure.factor * liquor.to) / 1000;
    return {
      asUnderstood,
      asPlanned: { from: (value * measure.factor * liquor.from) / 1000, to, unit: planned },
      conversions: [says(measure), `× ${span(liquor.from / 1000, liquor.to === liquor.from ? undefined : liquor.to / 1000)} L of bath`],
      problems: planned === 'g' ? absurd(to) : [],
    };
  }
  const per = lower?.measure;
  if (per?.of !== 'mass') return verbatim(text, 'unit-unknown');
  const asUnderstood = `${span(value, upTo)} ${measure.name} to the ${per.name} of fibre`;
  const conversions = [says(measure), says(per)];
  const fibre = ground.fibreGrams;
  if (fibre === undefined) return { asUnderstood, conversions, problems: ['fibre-mass-missing'] };
  // Once the pound is settled its own ounce goes with it.
  const ounce = measure.name === 'oz' && upper.possible.length > 1 && per.ounces !== undefined ? per.factor / per.ounces : measure.factor;
  const factor = (ounce / per.factor) * fibre;
  return {
    asUnderstood,
    asPlanned: { from: value * factor, to: last * factor, unit: planned },
    conversions: [
      ...(ounce === measure.factor ? conversions : [`1 oz = 1/${per.ounces} of the ${per.name}`, says(per)]),
      `× ${fibre} g of fibre`,
    ],
    problems: [...ambiguous, ...(planned === 'g' ? absurd(last * factor) : [])],
    ...asked,
  };
}

/** The measure a unit means, and what else it may mean while nobody has said. */
function chosenMeasure(
  unit: string,
  choices: ScaleChoices | undefined,
): { readonly measure?: NamedMeasure; readonly possible: readonly string[] } {
  const possible = possibleMeasures(unit);
  const table = choices?.measures;
  const wanted = table && Object.hasOwn(table, unit) ? table[unit] : undefined;
  const chosen = wanted === undefined ? undefined : possible.find(({ name }) => name === wanted);
  if (chosen) return { measure: chosen, possible: [chosen.name] };
  const usual = measureOf(unit);
  return { ...(usual && { measure: usual }), possible: possible.map(({ name }) => name) };
}

const verbatim = (text: string, problem: AmountProblem): Understood => ({
  asUnderstood: problem === 'unit-unknown' ? `“${text}”, a measure that is not converted` : `“${text}”, kept as it stands`,
  conversions: [],
  problems: [problem],
});

const says = (measure: NamedMeasure): string =>
  `1 ${measure.name} = ${round(measure.factor)} ${measure.of === 'mass' ? 'g' : 'ml'} (${measure.source})${measure.caution === undefined ? '' : `. ${measure.caution}`}`;

const span = (from: number, to: number | undefined): string =>
  to === undefined || to === from ? String(round(from)) : `${round(from)}–${round(to)}`;
const round = (value: number): number => Number(value.toPrecision(6));
