import { type EvidenceBase, MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { perVersionWith } from '../claim/per-version.ts';
import { deltaE00 } from '../colour/delta-e.ts';
import { labToLch } from '../colour/lab.ts';
import type { SwatchColour } from '../colour/swatch-colour.ts';
import { type DyedRecipe, dyedRecipes, type DyedSample, judgedFibre, undyedCloths } from '../verdict/cloths.ts';
import { type Cap, judgeRoute, type RouteJudgement, type RouteQuestion } from '../verdict/judge-route.ts';
import { KnownMaterials } from '../verdict/known-materials.ts';
import { mayIllustrate } from '../verdict/may-illustrate.ts';
import { predictedCloths } from '../verdict/predicted-cloths.ts';
import { type Route, routeOf, undyedRoute } from '../verdict/route.ts';
import type { SampleColours } from '../verdict/sample-colours.ts';
import { type Origin, ORIGINS, type Verdict, VERDICTS } from '../verdict/standing-words.ts';
import { hueFamily, HUE_FAMILIES, type HueFamily } from './hue-family.ts';
import { meanColour } from './mean-colour.ts';
import type { PaletteOrder } from './palette-order.ts';

/** What a palette shows unless more is asked for. */
export const USUAL_VERDICTS: readonly Verdict[] = ['attested', 'attested-as-cloth', 'feasible'];

/** Where a colour came from, as cloth. */
export type ColourOriginWord = Origin | 'undyed';

/** One colour that could have been there, as cloth. */
export interface PaletteColour {
  /** `recipe|fibre`, or `fibre/undyed name|fibre`: the same at every place and date. */
  readonly id: string;
  readonly judgement: RouteJudgement;
  readonly colour: SwatchColour;
  readonly samples: readonly DyedSample[];
  /** Absent where the dyes are not firmly to hand. */
  readonly origin?: ColourOriginWord;
  readonly family: HueFamily;
  readonly fibre?: string;
}

/** Every colour of the notebook judged for a place and span, by id. Other fibres of a class do not count: a palette is of what was made. */
export function paletteOf(base: EvidenceBase, colours: SampleColours, question: RouteQuestion): readonly PaletteColour[] {
  const known = new KnownMaterials();
  const dyed = dyedRows(base, colours).flatMap((row): PaletteColour[] => {
    const { id, route, fibre, samples } = row;
    if (!fits(base, fibre, question.fibre)) return [];
    const asked = withFibre(question, question.fibre ?? fibre);
    const judged = (cap?: Cap) => judgeRoute(base, route, asked, { brief: true, known, ...(cap && { cap }) });
    const earned = judged();
    const fitting = mayIllustrate(base, samples, earned.verdict);
    const shown = fitting.length > 0 && fitting.length < samples.length ? fitting : samples;
    const colour = shown === samples ? row.mean() : meanColour(base, shown);
    if (!colour) return [];
    const judgement = fitting.length > 0 ? earned : judged('undeclared-deviation');
    return [entry(id, judgement, colour, shown, fibre)];
  });
  const undyed = undyedCloths(base, colours).flatMap(({ fibre, name, colour }): PaletteColour[] => {
    const route = fits(base, fibre, question.fibre) ? undyedRoute(base, fibre, name) : undefined;
    if (!route) return [];
    return [
      entry(
        `${route.id}|${fibre}`,
        judgeRoute(base, route, withFibre(question, question.fibre ?? fibre), { brief: true, known }),
        colour,
        [],
        fibre,
      ),
    ];
  });
  return [...dyed, ...undyed].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** What was made of one recipe on one fibre, before anything is asked of it. */
interface DyedRow {
  readonly id: string;
  readonly route: Route;
  readonly fibre: string | undefined;
  readonly samples: readonly DyedSample[];
  /** The mean colour of its samples, worked out when it is first wanted. */
  readonly mean: () => SwatchColour | undefined;
}

/** The same at every place and date: a palette whose year is dragged only judges. */
const dyedRows = perVersionWith((base, colours: SampleColours) => dyedRecipes(base, colours).flatMap((one) => rowsOf(base, one)), {
  notes: ['trial', 'recipe', 'fibre'],
  names: MATERIAL_KINDS,
});

function rowsOf(base: EvidenceBase, { recipe, samples }: DyedRecipe): readonly DyedRow[] {
  const byFibre = new Map<string | undefined, DyedSample[]>();
  for (const sample of samples) byFibre.set(sample.fibre, [...(byFibre.get(sample.fibre) ?? []), sample]);
  return [...byFibre].map(([fibre, own]) => {
    let mean: { readonly colour: SwatchColour | undefined } | undefined;
    return {
      id: `${recipe}|${fibre ?? ''}`,
      route: routeOf(base, recipe, judgedFibre(base, recipe, fibre)),
      fibre,
      samples: own,
      mean: () => (mean ??= { colour: meanColour(base, own) }).colour,
    };
  });
}

/**
 * What could be tried: over-dyes nobody dyed yet, each of the samples nearest to their recipes' means, that stand at plausible.
 * None of them stands better: a prediction is no cloth.
 */
export function couldBeTried(base: EvidenceBase, colours: SampleColours, question: RouteQuestion): readonly PaletteColour[] {
  const known = new KnownMaterials();
  const middle = (samples: readonly DyedSample[]): readonly DyedSample[] => {
    const mean = meanColour(base, samples)?.lab10;
    const nearest = mean && [...samples].sort((a, b) => deltaE00(a.colour.lab10, mean) - deltaE00(b.colour.lab10, mean))[0];
    return nearest ? [nearest] : [];
  };
  return predictedCloths(base, colours, question.fibre, middle).flatMap(({ id, route, fibre, samples, colour }): PaletteColour[] => {
    const judgement = judgeRoute(base, route, withFibre(question, question.fibre ?? fibre), { brief: true, known, cap: 'predicted' });
    return judgement.verdict === 'plausible' ? [entry(id, judgement, colour(), samples, fibre)] : [];
  });
}

const withFibre = (question: RouteQuestion, fibre: string | undefined): RouteQuestion => ({
  ...question,
  ...(fibre === undefined ? {} : { fibre }),
});

const fits = (base: EvidenceBase, fibre: string | undefined, asked: string | undefined): boolean =>
  asked === undefined || (fibre !== undefined && base.fibreLine(fibre).includes(asked));

function entry(
  id: string,
  judgement: RouteJudgement,
  colour: SwatchColour,
  samples: readonly DyedSample[],
  fibre: string | undefined,
): PaletteColour {
  const origin = originOfColour(judgement);
  return {
    id,
    judgement,
    colour,
    samples,
    ...(origin === undefined ? {} : { origin }),
    family: hueFamily(colour.lab10),
    ...(fibre === undefined ? {} : { fibre }),
  };
}

/** The worst origin among the dyes of a colour; undefined when one of them is not firmly there. */
function originOfColour({ route, materials }: RouteJudgement): ColourOriginWord | undefined {
  if (route.dyes.length === 0) return 'undyed';
  const standings = materials
    .filter(({ material }) => material.role === 'dye')
    .map(({ standing }) => ORIGINS.findIndex((origin) => origin === standing));
  return standings.includes(-1) ? undefined : ORIGINS[Math.max(...standings)];
}

/** Sorted for hanging; equal ones stay by id. */
export function sortPalette(colours: readonly PaletteColour[], by: PaletteOrder): readonly PaletteColour[] {
  const key: Readonly<Record<PaletteOrder, (one: PaletteColour) => readonly (number | string)[]>> = {
    hue: ({ family, colour }) => [HUE_FAMILIES.indexOf(family), -colour.lab10[0]],
    lightness: ({ colour }) => [-colour.lab10[0]],
    dyestuff: ({ judgement, colour }) => [judgement.route.dyes.join(' '), -colour.lab10[0]],
    verdict: ({ judgement, family, colour }) => [
      VERDICTS.indexOf(judgement.verdict),
      HUE_FAMILIES.indexOf(family),
      labToLch(colour.lab10).h ?? 0,
    ],
  };
  return [...colours].sort((a, b) => compareKeys(key[by](a), key[by](b)) || (a.id < b.id ? -1 : 1));
}

function compareKeys(a: readonly (number | string)[], b: readonly (number | string)[]): number {
  for (const [at, one] of a.entries()) {
    const other = b[at];
    if (other === undefined || one === other) continue;
    return one < other ? -1 : 1;
  }
  return 0;
}

/** The families of colour that a palette does not reach. */
export const gapsIn = (colours: readonly PaletteColour[]): readonly HueFamily[] =>
  HUE_FAMILIES.filter((family) => !colours.some((one) => one.family === family));
