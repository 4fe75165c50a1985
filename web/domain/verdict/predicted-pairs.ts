import type { EvidenceBase } from '../claim/evidence-base.ts';
import { deltaE00 } from '../colour/delta-e.ts';
import { overDye } from '../colour/kubelka-munk.ts';
import type { PredictedPair } from '../colour/spread.ts';
import type { Spectrum } from '../colour/spectrum.ts';
import type { SwatchColour } from '../colour/swatch-colour.ts';
import { spectrumToLab10 } from '../colour/xyz-lab.ts';
import type { NoteId } from '../note/note.ts';
import { meanColour, usualSamples } from '../palette/mean-colour.ts';
import { dyedRecipes, type DyedSample } from './cloths.ts';
import { groundsByFibre } from './predicted-cloths.ts';
import { type Route, routeOf } from './route.ts';
import type { SampleColours } from './sample-colours.ts';

/** An over-dye that was dyed, beside what its single dyes foretold. */
export interface DyedOverDye extends PredictedPair {
  readonly recipe: NoteId;
  readonly trial: NoteId;
  readonly fibre: string;
  /** The trials of the single dyes it was foretold from. */
  readonly from: readonly NoteId[];
  /** What was foretold, as a curve. */
  readonly spectrum: Spectrum;
  /** What was made. */
  readonly colour: SwatchColour;
}

interface Single {
  readonly recipe: NoteId;
  readonly route: Route;
  readonly samples: readonly DyedSample[];
}

/**
 * Every trial of a recipe of several dyes, with the colour that trials of the single dyes on the same fibre foretell: the trial it was
 * dyed onto where it names one, else the middle sample of the recipe it follows, or of the one that shares most materials.
 * First baths on the usual ground only, as for a recipe's own colour.
 *
 * @returns by recipe and trial; nothing for an over-dye with a dye that was never dyed alone on that fibre.
 */
export function predictedPairs(base: EvidenceBase, colours: SampleColours): readonly DyedOverDye[] {
  const recipes = dyedRecipes(base, colours).map(({ recipe, samples }): Single => ({
    recipe,
    samples,
    route: routeOf(base, recipe, undefined),
  }));
  const singles = recipes.filter(({ route }) => route.dyes.length === 1);
  const grounds = groundsByFibre(base, colours);
  return recipes
    .filter(({ route }) => route.dyes.length > 1)
    .flatMap((over) =>
      usualSamples(base, over.samples).flatMap((sample): readonly DyedOverDye[] => {
        const fibre = sample.fibre;
        const ground = fibre === undefined ? undefined : grounds.get(fibre);
        const layers = over.route.dyes.map((dye) => layerOf(base, singles, over, sample, dye));
        if (fibre === undefined || !ground || layers.some((layer) => layer === undefined)) return [];
        const known = layers.filter((layer) => layer !== undefined);
        const spectrum = overDye(
          ground,
          known.map(({ colour }) => ({ dyed: colour.spectrum, ground })),
        );
        return [
          {
            recipe: over.recipe,
            trial: sample.trial,
            fibre,
            from: known.map(({ trial }) => trial),
            spectrum,
            colour: sample.colour,
            predicted: spectrumToLab10(spectrum),
            dyed: sample.colour.lab10,
          },
        ];
      }),
    );
}

/** The sample of one dye alone that stands for its layer. */
function layerOf(
  base: EvidenceBase,
  singles: readonly Single[],
  over: Single,
  { fibre, sample }: DyedSample,
  dye: string,
): DyedSample | undefined {
  const own = singles
    .filter(({ route }) => route.dyes[0] === dye)
    .map((single) => ({ ...single, samples: single.samples.filter((one) => one.fibre === fibre) }))
    .filter(({ samples }) => samples.length > 0);
  const dyedOnto = own.flatMap(({ samples }) => samples).find(({ trial }) => trial === sample.onto);
  if (dyedOnto) return dyedOnto;
  const record = base.note(over.recipe)?.record;
  const follows = record?.kind === 'recipe' ? record.follows.map(({ text }) => base.resolve(text, ['recipe'])) : [];
  const shared = ({ route }: Single) =>
    route.materials.filter(({ id }) => over.route.materials.some((material) => material.id === id)).length;
  const rank = (single: Single) => (follows.includes(single.recipe) ? 1000 : 0) + shared(single);
  const best = [...own].sort((a, b) => rank(b) - rank(a) || (a.recipe < b.recipe ? -1 : 1))[0];
  return best && middleSample(base, best.samples);
}

/** The sample nearest to the mean of a recipe's usual ones. */
export function middleSample(base: EvidenceBase, samples: readonly DyedSample[]): DyedSample | undefined {
  const mean = meanColour(base, samples)?.lab10;
  return mean && [...samples].sort((a, b) => deltaE00(a.colour.lab10, mean) - deltaE00(b.colour.lab10, mean))[0];
}
