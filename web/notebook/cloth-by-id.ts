import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import type { SwatchColour } from '../domain/colour/swatch-colour.ts';
import type { NoteId } from '../domain/note/note.ts';
import { meanColour, usualSamples } from '../domain/palette/mean-colour.ts';
import { dyedRecipes, type DyedSample, judgedFibre, undyedCloths } from '../domain/verdict/cloths.ts';
import { predictedCloths } from '../domain/verdict/predicted-cloths.ts';
import { middleSample } from '../domain/verdict/predicted-pairs.ts';
import { type Route, routeOf } from '../domain/verdict/route.ts';
import type { SampleColours } from '../domain/verdict/sample-colours.ts';
import { readColour } from './pose-question.ts';
import { swatchFromCss } from '../domain/colour/swatch-colour.ts';

/** A cloth, or a bare colour, that was asked for by what stands in an address. */
export interface FoundCloth {
  readonly is: 'recipe' | 'sample' | 'undyed' | 'predicted' | 'colour';
  /** The note it is of; absent for a bare colour. */
  readonly note?: NoteId;
  readonly colour: SwatchColour;
  readonly fibre?: string;
  /** Absent for undyed cloth and bare colours. */
  readonly route?: Route;
  /** What its colour is the mean of; one for a sample. */
  readonly samples: readonly DyedSample[];
  /** The sample that stands for it: itself, or the middle one. */
  readonly sample?: DyedSample;
  /** The name of an undyed colour. */
  readonly undyed?: string;
}

/**
 * Finds a cloth of the notebook.
 *
 * @param id `recipe|fibre`, `fibre/undyed name|fibre` or `recipe + recipe|fibre` as a palette has them; a recipe; a trial, alone or with
 * the number of its sample behind a space; a sample's code; `fibre/undyed name`; or a colour as it may be typed.
 */
export function clothById(base: EvidenceBase, colours: SampleColours, id: string): FoundCloth | undefined {
  const bar = id.lastIndexOf('|');
  const [what, fibre] = bar < 0 ? [id.trim(), undefined] : [id.slice(0, bar).trim(), id.slice(bar + 1).trim() || undefined];
  if (what.includes(' + ')) return predictedById(base, colours, what, fibre);
  return undyedById(base, colours, what) ?? dyedById(base, colours, what, fibre) ?? (bar < 0 ? bareColour(what) : undefined);
}

function undyedById(base: EvidenceBase, colours: SampleColours, what: string): FoundCloth | undefined {
  const found = undyedCloths(base, colours).find(({ fibre, name }) => `${fibre}/${name}` === what);
  return found && { is: 'undyed', note: found.fibre, colour: found.colour, fibre: found.fibre, samples: [], undyed: found.name };
}

function dyedById(base: EvidenceBase, colours: SampleColours, what: string, fibre: string | undefined): FoundCloth | undefined {
  const recipes = dyedRecipes(base, colours);
  const own = recipes.find(({ recipe }) => recipe === what);
  if (own) {
    const on = fibre ?? own.samples[0]?.fibre;
    const samples = usualSamples(
      base,
      own.samples.filter((one) => one.fibre === on),
    );
    const colour = meanColour(base, samples);
    const sample = middleSample(base, samples);
    return (
      colour && {
        is: 'recipe',
        note: own.recipe,
        colour,
        ...onFibre(on),
        route: routed(base, own.recipe, on),
        samples,
        ...(sample && { sample }),
      }
    );
  }
  const [trial = '', nth = '0'] = what.split(/ (?=\d+$)/);
  for (const { recipe, samples } of recipes) {
    const sample = samples.find((one) => one.sample.code === what || (one.trial === trial && one.nth === Number(nth)));
    if (sample)
      return {
        is: 'sample',
        note: sample.trial,
        colour: sample.colour,
        ...onFibre(sample.fibre),
        route: routed(base, recipe, sample.fibre),
        samples: [sample],
        sample,
      };
  }
  return undefined;
}

function predictedById(base: EvidenceBase, colours: SampleColours, what: string, fibre: string | undefined): FoundCloth | undefined {
  const middle = (samples: readonly DyedSample[]) => {
    const one = middleSample(base, samples);
    return one ? [one] : [];
  };
  const found = predictedCloths(base, colours, fibre, middle).find(
    (one) => one.route.id === what && (fibre === undefined || one.fibre === fibre),
  );
  return (
    found && {
      is: 'predicted',
      note: found.recipes[0],
      colour: found.colour(),
      fibre: found.fibre,
      route: found.route,
      samples: found.samples,
    }
  );
}

function bareColour(text: string): FoundCloth | undefined {
  const asked = readColour(text);
  if (!asked) return undefined;
  if (asked.kind === 'swatches') return asked.swatches[0] && { is: 'colour', colour: asked.swatches[0], samples: [] };
  const swatch = swatchFromCss(text);
  return swatch.ok ? { is: 'colour', colour: swatch.value, samples: [] } : undefined;
}

const onFibre = (fibre: string | undefined) => (fibre === undefined ? {} : { fibre });
const routed = (base: EvidenceBase, recipe: NoteId, fibre: string | undefined): Route =>
  routeOf(base, recipe, judgedFibre(base, recipe, fibre));
