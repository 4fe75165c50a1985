import type { EvidenceBase } from '../claim/evidence-base.ts';
import { type Closeness, closeness } from '../colour/delta-e.ts';
import type { Lab } from '../colour/lab.ts';
import { Nearness } from '../colour/nearness.ts';
import type { SwatchColour } from '../colour/swatch-colour.ts';
import { type AskedColour, type Difference, differenceFrom, differenceOfLab10, labsAsked } from './asked-colour.ts';
import { dyedRecipes, type DyedSample, judgedFibre, undyedCloths } from './cloths.ts';
import { type Cap, judgeRoute, type RouteJudgement, type RouteQuestion } from './judge-route.ts';
import { mayIllustrate } from './may-illustrate.ts';
import { type PredictedCloth, predictedCloths } from './predicted-cloths.ts';
import { routeOf, undyedRoute } from './route.ts';
import type { SampleColours } from './sample-colours.ts';
import { type Verdict, VERDICTS } from './standing-words.ts';

/** A colour question, understood. */
export interface ColourQuestion extends RouteQuestion {
  readonly colour: AskedColour;
  /** ΔE00 within which a route is a candidate. */
  readonly tolerance: number;
  /** Whether over-dyes that nobody dyed yet are candidates too. Default: they are, never above `plausible`. */
  readonly predictions?: boolean;
  /** Colour-words the question itself uses. */
  readonly colourWords?: readonly string[];
}

/** The tolerance when none is set. Our choice: the upper end of "near". */
export const DEFAULT_TOLERANCE = 6;

/** A way of getting near the asked colour, judged. */
export interface Candidate {
  readonly judgement: RouteJudgement;
  readonly colourFrom: 'measured' | 'predicted' | 'undyed';
  /** The nearest sample; absent for undyed cloth. */
  readonly nearest?: DyedSample;
  /** Every sample of this recipe that was looked at. */
  readonly samples: readonly DyedSample[];
  readonly colour: SwatchColour;
  /** The Lab that was compared. */
  readonly lab: Lab;
  readonly deltaE00: number;
  readonly closeness: Closeness;
  readonly onAnotherFibre: boolean;
  /** The two recipes of a predicted over-dye; either may be dyed first. */
  readonly overDye?: readonly [string, string];
}

/** The answer to a colour question. */
export interface ColourAnswer {
  readonly question: ColourQuestion;
  readonly verdict: Verdict | 'nothing-near';
  /** Routes within the tolerance, by verdict, difference, id. */
  readonly candidates: readonly Candidate[];
  /** The closest colour of all, whatever its verdict. */
  readonly closest?: Candidate;
  /** The nearest attested colour, else the nearest feasible. */
  readonly nearestAttested?: Candidate;
}

/** Is this colour plausible on this fibre, here and then? Every route of the notebook is judged. */
export function askColour(base: EvidenceBase, colours: SampleColours, question: ColourQuestion): ColourAnswer {
  const all = [...dyedCandidates(base, colours, question), ...undyedCandidates(base, colours, question)];
  const candidates = [...all, ...predictedCandidates(base, colours, question)]
    .filter((one) => one.deltaE00 <= question.tolerance)
    .sort(byVerdictThenDifference);
  const byDifference = [...all].sort((a, b) => a.deltaE00 - b.deltaE00 || byId(a, b));
  const closest = byDifference[0];
  const nearestAttested =
    byDifference.find(({ judgement }) => judgement.verdict === 'attested') ??
    byDifference.find(({ judgement }) => judgement.verdict === 'feasible');
  return {
    question,
    verdict: candidates[0]?.judgement.verdict ?? 'nothing-near',
    candidates,
    ...(closest && { closest }),
    ...(nearestAttested && { nearestAttested }),
  };
}

function dyedCandidates(base: EvidenceBase, colours: SampleColours, question: ColourQuestion): readonly Candidate[] {
  return dyedRecipes(base, colours).flatMap(({ recipe, samples }) => {
    const groups = new Map<string, { fibre: string | undefined; other: boolean; samples: DyedSample[] }>();
    for (const sample of samples) {
      const fit = fitOf(base, sample.fibre, question.fibre);
      if (!fit) continue;
      const fibre = question.fibre ?? sample.fibre;
      const key = `${fit} ${fibre ?? ''}`;
      const group = groups.get(key) ?? { fibre, other: fit === 'other', samples: [] };
      group.samples.push(sample);
      groups.set(key, group);
    }
    return [...groups.values()].flatMap((group): Candidate[] => {
      const material = group.other ? question.fibre : judgedFibre(base, recipe, group.samples[0]?.fibre);
      const judged = (cap: Cap | undefined) =>
        judgeRoute(
          base,
          routeOf(base, recipe, material),
          { ...question, fibre: group.fibre },
          { ...(cap && { cap }), ...(question.colourWords && { colourWords: question.colourWords }) },
        );
      const earned = judged(group.other ? 'on-another-fibre' : undefined);
      const fitting = mayIllustrate(base, group.samples, earned.verdict);
      const samples = fitting.length > 0 ? fitting : group.samples;
      const nearest = nearestSample(question.colour, samples);
      if (!nearest) return [];
      const judgement = fitting.length > 0 ? earned : judged('undeclared-deviation');
      return [{ judgement, colourFrom: 'measured', ...nearest, samples, onAnotherFibre: group.other }];
    });
  });
}

/** A fibre asked for keeps what was tried on it or a kind of it; the same class counts as another fibre; never across classes. */
function fitOf(base: EvidenceBase, sampleFibre: string | undefined, asked: string | undefined): 'own' | 'other' | undefined {
  if (asked === undefined) return 'own';
  if (sampleFibre === undefined) return undefined;
  if (base.fibreLine(sampleFibre).includes(asked)) return 'own';
  const askedClass = base.fibreClassOf(asked);
  return askedClass !== undefined && askedClass === base.fibreClassOf(sampleFibre) ? 'other' : undefined;
}

function nearestSample(asked: AskedColour, samples: readonly DyedSample[]) {
  let best: { nearest: DyedSample; colour: SwatchColour; lab: Lab; deltaE00: number } | undefined;
  for (const nearest of samples) {
    const difference = differenceFrom(asked, nearest.colour);
    if (difference && (!best || difference.deltaE00 < best.deltaE00)) best = { nearest, colour: nearest.colour, ...difference };
  }
  return best && { ...best, closeness: closeness(best.deltaE00) };
}

/** Predicted over-dyes within the tolerance: of each pair of recipes on a fibre only the nearest depths. */
function predictedCandidates(base: EvidenceBase, colours: SampleColours, question: ColourQuestion): readonly Candidate[] {
  if (question.predictions === false) return [];
  const nearest = new Map<string, { readonly cloth: PredictedCloth; readonly difference: Difference }>();
  const near = new Nearness(labsAsked(question.colour), question.tolerance);
  for (const cloth of predictedCloths(base, colours, question.fibre, undefined, near)) {
    const difference = differenceOfLab10(question.colour, cloth.lab10);
    if (!difference || difference.deltaE00 > question.tolerance) continue;
    const held = nearest.get(cloth.id);
    if (!held || difference.deltaE00 < held.difference.deltaE00) nearest.set(cloth.id, { cloth, difference });
  }
  return [...nearest.values()].map(({ cloth, difference }): Candidate => ({
    judgement: judgeRoute(base, cloth.route, { ...question, fibre: question.fibre ?? cloth.fibre }, { cap: 'predicted' }),
    colourFrom: 'predicted',
    samples: cloth.samples,
    colour: cloth.colour(),
    ...difference,
    closeness: closeness(difference.deltaE00),
    onAnotherFibre: false,
    overDye: cloth.recipes,
  }));
}

function undyedCandidates(base: EvidenceBase, colours: SampleColours, question: ColourQuestion): readonly Candidate[] {
  return undyedCloths(base, colours).flatMap((cloth): Candidate[] => {
    if (fitOf(base, cloth.fibre, question.fibre) !== 'own') return [];
    const route = undyedRoute(base, cloth.fibre, cloth.name);
    const difference = differenceFrom(question.colour, cloth.colour);
    if (!route || !difference) return [];
    const judgement = judgeRoute(base, route, { ...question, fibre: question.fibre ?? cloth.fibre });
    return [
      {
        judgement,
        colourFrom: 'undyed',
        samples: [],
        colour: cloth.colour,
        ...difference,
        closeness: closeness(difference.deltaE00),
        onAnotherFibre: false,
      },
    ];
  });
}

function byVerdictThenDifference(a: Candidate, b: Candidate): number {
  const rank = ({ judgement }: Candidate) => VERDICTS.indexOf(judgement.verdict);
  return rank(a) - rank(b) || a.deltaE00 - b.deltaE00 || byId(a, b);
}

const idOf = ({ judgement: { route } }: Candidate) => `${route.id} ${route.fibre ?? ''}`;
const byId = (a: Candidate, b: Candidate): number => (idOf(a) < idOf(b) ? -1 : idOf(a) > idOf(b) ? 1 : 0);
