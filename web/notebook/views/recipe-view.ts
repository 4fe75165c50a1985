import { type OnScreen, onScreen, swatchFromSpectrum } from '../../domain/colour/swatch-colour.ts';
import { type Amount, noteId } from '../../domain/note/note.ts';
import { predictedPairs, type DyedOverDye } from '../../domain/verdict/predicted-pairs.ts';
import { deltaText } from '../words/because.ts';
import { closeness, deltaE00 } from '../../domain/colour/delta-e.ts';
import { meanColour, usualSamples } from '../../domain/palette/mean-colour.ts';
import { withoutDoses } from '../../domain/pot/without-doses.ts';
import { recipeCautions } from '../../domain/pot/cautions-for.ts';
import type { Audience } from '../../domain/pot/never-dosed.ts';
import { type CurvePoint, temperatureCurve } from '../../domain/pot/step-figures.ts';
import { type ScaleChoices, scaleRecipe, type ScaledIngredient } from '../../domain/pot/scale-recipe.ts';
import { type FreshDryRatio, ratiosFor } from '../../domain/pot/fresh-dry.ts';
import { possibleMeasures } from '../../domain/pot/measures.ts';
import { repeatability, type SpreadGroup } from '../../domain/pot/repeatability.ts';
import { dyedRecipes, type DyedSample } from '../../domain/verdict/cloths.ts';
import { routeOf } from '../../domain/verdict/route.ts';
import type { Notebook } from '../notebook.ts';
import { inSentence, sourceText, titleOf } from '../words/claim-line.ts';
import { quantityText, SCALE_CAUTION, scaleProblemWords, spreadGroupText } from '../words/pot-words.ts';
import { lookAddress, lookedSample } from '../looking-address.ts';
import { weaveOf } from './cloth-view.ts';
import { cautionsAtStep, type StepView } from './dye-day-view.ts';
import { MOST_LOOKED_AT } from './looking-view.ts';

/** A recipe in the index. */
export interface RecipeEntry {
  readonly id: string;
  readonly title: string;
  readonly dyes: string;
  readonly fibre: string;
  readonly weave: string;
  readonly hex?: string;
  readonly trials: number;
}

/** One ingredient, as written, as understood, as planned. */
export interface IngredientView {
  readonly what: string;
  readonly id: string;
  readonly role: string;
  readonly form: string;
  readonly standsFor: string;
  readonly asWritten: string;
  readonly asUnderstood: string;
  readonly asPlanned: string;
  readonly conversions: readonly string[];
  readonly problem: string;
  readonly cautions: readonly string[];
  /** The unit as written, and the measures it may mean, where the reader has to say which. */
  readonly unit?: { readonly written: string; readonly means: string; readonly possible: readonly { name: string; says: string }[] };
  /** True where the recipe counts in parts. */
  readonly inParts: boolean;
  /** Per cent of the fibre's weight, and figures for fresh to dried, of a dyestuff that is weighed dry. */
  readonly dye?: {
    readonly percent: { readonly from: number; readonly to: number };
    readonly grams: { readonly from: number; readonly to: number };
    readonly ratios: readonly FreshDryRatio[];
  };
}

/** The dyeings that share a fibre, a water or a person, and how they scatter. */
export interface SpreadLine {
  readonly by: 'fibre' | 'water' | 'person';
  readonly key: string;
  readonly says: string;
}

/** A skein the recipe gave. */
export interface GivenSkein extends OnScreen {
  readonly trial: string;
  readonly code: string;
  readonly weave: string;
  readonly text: string;
}

/** An over-dye that was dyed, beside what its single dyes foretold. */
export interface ForetoldSkein {
  readonly trial: string;
  readonly weave: string;
  readonly predicted: OnScreen;
  readonly made: OnScreen;
  /** How far the two lie apart, and what it was foretold from. */
  readonly text: string;
}

/** Everything on one recipe, for a mass of fibre. */
export interface RecipeView {
  readonly id: string;
  readonly title: string;
  readonly fibreGrams: number;
  readonly liquor: string;
  readonly ingredients: readonly IngredientView[];
  readonly steps: readonly StepView[];
  /** Corners of the temperature curve the steps state. */
  readonly curve: readonly CurvePoint[];
  readonly cautions: readonly string[];
  readonly follows: readonly { readonly id: string; readonly title: string }[];
  readonly basedOn: readonly { readonly id: string; readonly title: string }[];
  readonly asWritten: string;
  readonly skeins: readonly GivenSkein[];
  /** Where its skeins lie side by side; '' where there are none. */
  readonly look: string;
  /** Of an over-dye: what was predicted beside what was made. */
  readonly foretold: readonly ForetoldSkein[];
  /** How the repeats scatter, in a sentence; empty below two. */
  readonly spread: string;
  /** The same by fibre, water and person; empty where nothing was dyed. */
  readonly spreadBy: readonly SpreadLine[];
  readonly source: string;
  readonly note: string;
}

/** The recipes of the notebook, by title. */
export function recipeIndex({ base, colours }: Notebook): readonly RecipeEntry[] {
  const dyed = new Map(dyedRecipes(base, colours).map(({ recipe, samples }) => [String(recipe), samples]));
  return base
    .ofKind('recipe')
    .map(({ id, title, record }): RecipeEntry => {
      const samples = dyed.get(id) ?? [];
      const fibre = record.fibre[0] && base.resolve(record.fibre[0].text, ['fibre']);
      const hex = meanColour(
        base,
        samples.filter((one) => one.fibre === samples[0]?.fibre),
      )?.hex;
      return {
        id,
        title,
        dyes: routeOf(base, id, undefined)
          .dyes.map((dye) => titleOf(base, dye))
          .join(' + '),
        fibre: record.fibre.map(({ text }) => titleOf(base, base.resolve(text, ['fibre']))).join(', '),
        weave: weaveOf(base, fibre),
        ...(hex === undefined ? {} : { hex }),
        trials: new Set(samples.map(({ trial }) => trial)).size,
      };
    })
    .sort((a, b) => a.title.localeCompare(b.title, 'en'));
}

/** One recipe worked out for a mass of fibre; undefined when the notebook has none of that id. */
export function recipeView(
  { base, colours }: Notebook,
  id: string,
  fibreGrams: number,
  audience: Audience = 'public',
  choices: ScaleChoices = {},
): RecipeView | undefined {
  const note = base.note(id);
  const scaled = scaleRecipe(base, noteId(id), fibreGrams, audience, choices);
  if (note?.record.kind !== 'recipe' || !scaled) return undefined;
  const { record } = note;
  const cautions = recipeCautions(base, note.id);
  const samples = dyedRecipes(base, colours).find(({ recipe }) => recipe === note.id)?.samples ?? [];
  const named = (refs: typeof record.follows, kind: 'recipe' | 'text') =>
    refs.map(({ text }) => base.resolve(text, [kind])).map((one) => ({ id: one, title: titleOf(base, one) }));
  return {
    id: note.id,
    title: note.title,
    fibreGrams,
    liquor: scaled.liquor
      ? `${quantityText(scaled.liquor)} of bath, in a pot that holds ${quantityText({ from: scaled.potMl ?? 0, to: scaled.potMl ?? 0, unit: 'ml' })}`
      : '',
    ingredients: scaled.ingredients.map((one, nth) => ingredientView(base, one, record.ingredients[nth]?.amount, choices)),
    steps: scaled.steps.map((text, step) => ({ text, cautions: cautionsAtStep(cautions, note.id, step) })),
    curve: temperatureCurve(scaled.steps),
    cautions: [...record.cautions, SCALE_CAUTION],
    follows: named(record.follows, 'recipe'),
    basedOn: named(record.basedOn, 'text'),
    asWritten: withoutDoses(base, record.asWritten ?? ''),
    skeins: samples.map(({ trial, sample, colour, fibre }) => ({
      trial,
      code: sample.code ?? trial,
      ...onScreen(colour),
      weave: weaveOf(base, fibre),
      text: [
        fibre === undefined ? undefined : inSentence(base, fibre),
        sample.note === undefined ? undefined : withoutDoses(base, sample.note),
        sample.onto === undefined ? undefined : `onto ${sample.onto}`,
      ]
        .filter((part) => part !== undefined)
        .join(', '),
    })),
    look: samples.length === 0 ? '' : lookAddress(samples.slice(0, MOST_LOOKED_AT).map(lookedSample)),
    foretold: predictedPairs(base, colours)
      .filter(({ recipe }) => recipe === note.id)
      .map((pair) => foretoldSkein(base, pair)),
    spread: spreadText(base, samples),
    spreadBy: spreadLines(base, samples),
    source: sourceText(note.sources),
    note: note.id,
  };
}

function foretoldSkein(base: Notebook['base'], { trial, fibre, from, predicted, dyed, colour, spectrum }: DyedOverDye): ForetoldSkein {
  const apart = deltaE00(predicted, dyed);
  return {
    trial,
    weave: weaveOf(base, fibre),
    predicted: onScreen(swatchFromSpectrum(spectrum, 'predicted')),
    made: onScreen(colour),
    text: `ΔE00 ${deltaText(apart)} apart (${closeness(apart).replace('-', ' ')}); foretold from ${from.join(' and ')}`,
  };
}

/** @param written the amount as the note has it; nothing of it is told where the scaled ingredient keeps it back. */
function ingredientView(base: Notebook['base'], one: ScaledIngredient, written: Amount | undefined, choices: ScaleChoices): IngredientView {
  const amount = one.asWritten === '' ? undefined : written;
  const unit = amount?.unit === undefined ? undefined : askedUnit(amount.unit, choices);
  const dye = one.role === 'dye' && amount?.unit === '%' ? dyeMass(base, one, amount) : undefined;
  const record = base.note(one.what)?.record;
  return {
    what: titleOf(base, one.what),
    id: one.what,
    role: one.role ?? '',
    form: one.form ?? '',
    standsFor: one.standsFor === undefined ? '' : inSentence(base, one.standsFor),
    asWritten: one.asWritten,
    asUnderstood: one.asUnderstood,
    asPlanned: one.asPlanned ? quantityText(one.asPlanned) : '',
    conversions: one.conversions,
    problem: one.problem ? scaleProblemWords[one.problem] : '',
    cautions: record && 'cautions' in record ? record.cautions : [],
    inParts: /^parts?$/i.test(amount?.unit ?? ''),
    ...(unit && { unit }),
    ...(dye && { dye }),
  };
}

/** The part of a unit that several measures share; in "oz to the lb" it is the pound, whose ounce goes with it. */
function askedUnit(unit: string, { measures = {} }: ScaleChoices): IngredientView['unit'] {
  const [top = '', bottom] = unit.split('/');
  const written = bottom === undefined || bottom === 'L' ? top : bottom;
  const possible = possibleMeasures(written).map(({ name, factor, of, ounces }) => ({
    name,
    says: `${name}, ${Number(factor.toPrecision(4))} ${of === 'mass' ? 'g' : 'ml'}${ounces === undefined ? '' : `, ${ounces} ounces to the pound`}`,
  }));
  if (possible.length < 2) return undefined;
  return { written, means: (Object.hasOwn(measures, written) ? measures[written] : undefined) ?? '', possible };
}

function dyeMass(base: Notebook['base'], { what, asPlanned }: ScaledIngredient, { value, upTo }: Amount): IngredientView['dye'] {
  const record = base.note(what)?.record;
  if (record?.kind !== 'dyestuff' || value === undefined || value <= 0 || asPlanned?.unit !== 'g') return undefined;
  return { percent: { from: value, to: upTo ?? value }, grams: { from: asPlanned.from, to: asPlanned.to }, ratios: ratiosFor(what) };
}

/** How the dyeings scatter by what they share. */
function spreadLines(base: Notebook['base'], samples: readonly DyedSample[]): readonly SpreadLine[] {
  const { byFibre, byWater, byPerson } = repeatability(base, samples);
  const lines = (by: SpreadLine['by'], groups: readonly SpreadGroup[]) =>
    groups.map((group): SpreadLine => ({
      by,
      key: group.key === undefined ? 'not said' : by === 'fibre' ? inSentence(base, group.key) : group.key,
      says: spreadGroupText(group),
    }));
  return [...lines('fibre', byFibre), ...lines('water', byWater), ...lines('person', byPerson)];
}

/** The mean colour difference from the mean, over first baths on the usual ground of the fibre most often dyed. */
function spreadText(base: Notebook['base'], samples: readonly DyedSample[]): string {
  const byFibre = new Map<string | undefined, DyedSample[]>();
  for (const sample of usualSamples(base, samples)) byFibre.set(sample.fibre, [...(byFibre.get(sample.fibre) ?? []), sample]);
  const [fibre, most] = [...byFibre].sort((a, b) => b[1].length - a[1].length)[0] ?? [undefined, []];
  const mean = meanColour(base, most)?.lab10;
  if (!mean || most.length < 2) return '';
  const distances = most.map(({ colour }) => deltaE00(colour.lab10, mean));
  const average = distances.reduce((sum, one) => sum + one, 0) / distances.length;
  return `${most.length} samples on ${fibre === undefined ? 'one fibre' : inSentence(base, fibre)} lie ΔE00 ${average.toFixed(1)} from their mean on average, the farthest ${Math.max(...distances).toFixed(1)}; depths and repeats together.`;
}
