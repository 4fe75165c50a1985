import { type OnScreen, onScreen, swatchFromSpectrum } from '../../domain/colour/swatch-colour.ts';
import { noteId } from '../../domain/note/note.ts';
import { predictedPairs, type DyedOverDye } from '../../domain/verdict/predicted-pairs.ts';
import { deltaText } from '../words/because.ts';
import { closeness, deltaE00 } from '../../domain/colour/delta-e.ts';
import { meanColour, usualSamples } from '../../domain/palette/mean-colour.ts';
import { withoutDoses } from '../../domain/pot/without-doses.ts';
import { recipeCautions } from '../../domain/pot/cautions-for.ts';
import type { Audience } from '../../domain/pot/never-dosed.ts';
import { type CurvePoint, temperatureCurve } from '../../domain/pot/step-figures.ts';
import { scaleRecipe, type ScaledIngredient } from '../../domain/pot/scale-recipe.ts';
import { dyedRecipes, type DyedSample } from '../../domain/verdict/cloths.ts';
import { routeOf } from '../../domain/verdict/route.ts';
import type { Notebook } from '../notebook.ts';
import { inSentence, sourceText, titleOf } from '../words/claim-line.ts';
import { quantityText, SCALE_CAUTION, scaleProblemWords } from '../words/pot-words.ts';
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
): RecipeView | undefined {
  const note = base.note(id);
  const scaled = scaleRecipe(base, noteId(id), fibreGrams, audience);
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
    ingredients: scaled.ingredients.map((one) => ingredientView(base, one)),
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
        sample.note,
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

function ingredientView(base: Notebook['base'], one: ScaledIngredient): IngredientView {
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
  };
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
