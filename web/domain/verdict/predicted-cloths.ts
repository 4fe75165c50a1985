import type { EvidenceBase } from '../claim/evidence-base.ts';
import { perVersionWith } from '../claim/per-version.ts';
import { overDye } from '../colour/kubelka-munk.ts';
import type { Lab10 } from '../colour/lab.ts';
import type { Nearness } from '../colour/nearness.ts';
import { OverDyes } from '../colour/over-dyes.ts';
import type { Spectrum } from '../colour/spectrum.ts';
import { type SwatchColour, swatchFromSpectrum } from '../colour/swatch-colour.ts';
import type { NoteId } from '../note/note.ts';
import { dyedRecipes, type DyedSample, undyedCloths } from './cloths.ts';
import { type Route, routeOf } from './route.ts';
import type { SampleColours } from './sample-colours.ts';

/** A colour nobody dyed yet: two recipes, one over the other, on one fibre. */
export interface PredictedCloth {
  /** `first + second|fibre`, first and second by id: in the model the order makes no difference, in the pot it may. */
  readonly id: string;
  readonly recipes: readonly [NoteId, NoteId];
  readonly samples: readonly [DyedSample, DyedSample];
  readonly fibre: string;
  readonly route: Route;
  /** D65/10°. */
  readonly lab10: Lab10;
  /** The whole colour, worked out when it is wanted. */
  readonly colour: () => SwatchColour;
}

/**
 * The over-dyes that the notebook's trials foretell: for every two single-dye recipes with samples on one fibre, each sample of one
 * over each of the other, by single-constant Kubelka–Munk on the fibre's undyed colour.
 * Two dyes that a recipe of the notebook already brings together are left out: that colour was dyed.
 *
 * @param samplesOf which of a recipe's samples on one fibre to take; every one where it is not said.
 * @param near passes over what is surely not near some colours; what is left may still be farther than asked.
 * @returns by id; several to a pair, one for each two depths.
 */
export function predictedCloths(
  base: EvidenceBase,
  colours: SampleColours,
  fibreAsked?: string,
  samplesOf: (samples: readonly DyedSample[]) => readonly DyedSample[] = (all) => all,
  near?: Nearness,
): readonly PredictedCloth[] {
  const recipes = dyedRecipes(base, colours).map(({ recipe, samples }) => ({
    recipe,
    samples: perFibre(samples, samplesOf),
    route: routeOf(base, recipe, undefined),
  }));
  const made = new Set(recipes.map(({ route }) => route.dyes.join('+')));
  const single = recipes.filter(({ route }) => route.dyes.length === 1);
  const grounds = groundsByFibre(base, colours);
  const wanted = (fibre: string) => fibreAsked === undefined || base.fibreLine(fibre).includes(fibreAsked);
  const lab10Of = foretold(
    grounds,
    single.flatMap(({ samples }) => samples),
  );
  return single.flatMap((first, at) =>
    single.slice(at + 1).flatMap((second): readonly PredictedCloth[] => {
      const dyes = [...first.route.dyes, ...second.route.dyes].sort();
      if (dyes[0] === dyes[1] || made.has(dyes.join('+'))) return [];
      return first.samples.flatMap((one) =>
        second.samples.flatMap((other): readonly PredictedCloth[] => {
          const fibre = one.fibre;
          const ground = fibre === undefined || fibre !== other.fibre || !wanted(fibre) ? undefined : grounds.get(fibre);
          const lab10 = ground && lab10Of(one, other, near);
          if (fibre === undefined || !ground || !lab10) return [];
          return [predicted([first.recipe, second.recipe], [one, other], fibre, joined(first.route, second.route, fibre), ground, lab10)];
        }),
      );
    }),
  );
}

/** Lays samples over each other, those of each fibre on its ground. */
function foretold(grounds: ReadonlyMap<string, Spectrum>, samples: readonly DyedSample[]) {
  const places = new Map<DyedSample, { readonly on: OverDyes; readonly at: number }>();
  for (const [fibre, ground] of grounds) {
    const own = samples.filter((one) => one.fibre === fibre);
    const on = new OverDyes(
      ground,
      own.map(({ colour }) => colour.spectrum),
    );
    own.forEach((one, at) => places.set(one, { on, at }));
  }
  return (one: DyedSample, other: DyedSample, near: Nearness | undefined): Lab10 | undefined => {
    const [first, second] = [places.get(one), places.get(other)];
    return first && second && first.on.lab10(first.at, second.at, near);
  };
}

function perFibre(
  samples: readonly DyedSample[],
  samplesOf: (samples: readonly DyedSample[]) => readonly DyedSample[],
): readonly DyedSample[] {
  const byFibre = new Map<string | undefined, DyedSample[]>();
  for (const sample of samples) byFibre.set(sample.fibre, [...(byFibre.get(sample.fibre) ?? []), sample]);
  return [...byFibre.values()].flatMap(samplesOf);
}

function predicted(
  recipes: PredictedCloth['recipes'],
  samples: PredictedCloth['samples'],
  fibre: string,
  route: Route,
  ground: Spectrum,
  lab10: Lab10,
): PredictedCloth {
  const layers = samples.map(({ colour }) => ({ dyed: colour.spectrum, ground }));
  return {
    id: `${route.id}|${fibre}`,
    recipes,
    samples,
    fibre,
    route,
    lab10,
    colour: () => swatchFromSpectrum(overDye(ground, layers), 'predicted'),
  };
}

/** Every material of both routes, each once, on the fibre. */
function joined(first: Route, second: Route, fibre: string): Route {
  const materials = new Map([...first.materials, ...second.materials].filter(({ role }) => role !== 'fibre').map((one) => [one.id, one]));
  materials.set(fibre, { id: fibre, role: 'fibre' });
  return {
    id: `${first.id} + ${second.id}`,
    materials: [...materials.values()],
    dyes: [...new Set([...first.dyes, ...second.dyes])].sort(),
    fibre,
    inCircle: [...first.inCircle, ...second.inCircle],
  };
}

/** The palest undyed colour of each fibre: what trials are dyed on unless they say otherwise. A kind without one takes its parent's. */
export const groundsByFibre: (base: EvidenceBase, colours: SampleColours) => ReadonlyMap<string, Spectrum> = perVersionWith(
  (base, colours) => {
    const palest = new Map<string, SwatchColour>();
    for (const { fibre, colour } of undyedCloths(base, colours)) {
      const held = palest.get(fibre);
      if (!held || colour.lab10[0] > held.lab10[0]) palest.set(fibre, colour);
    }
    const grounds = new Map<string, Spectrum>();
    for (const { id } of base.ofKind('fibre')) {
      const own = base.fibreLine(id).find((one) => palest.has(one));
      const ground = own === undefined ? undefined : palest.get(own);
      if (ground) grounds.set(id, ground.spectrum);
    }
    return grounds;
  },
  { notes: ['fibre'] },
);
