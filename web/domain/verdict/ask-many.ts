import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { Lab10 } from '../colour/lab.ts';
import { NearestLabs } from '../colour/nearest-labs.ts';
import { askColour, type Candidate, type ColourQuestion } from './ask.ts';
import { judgeRoute, type RouteJudgement } from './judge-route.ts';
import { type PredictedCloth, predictedCloths } from './predicted-cloths.ts';
import type { SampleColours } from './sample-colours.ts';
import { type Verdict, VERDICTS } from './standing-words.ts';

/** The answer to one of many colours: its verdict, and what it rests on where anything comes near. */
export interface BriefAnswer {
  readonly verdict: Verdict | 'nothing-near';
  readonly best?: { readonly judgement: RouteJudgement; readonly deltaE00: number; readonly predicted: boolean };
}

/** So far apart are no two colours: every route is judged. */
const EVERY_COLOUR = 1000;
/** A prediction never stands better. */
const BEST_PREDICTED = VERDICTS.indexOf('plausible');

/**
 * Asks for many colours at one place and date: every route is judged once, the colours only choose among them.
 *
 * @returns a function from a colour to the verdict that `askColour` gives for it.
 */
export function askMany(
  base: EvidenceBase,
  colours: SampleColours,
  question: Omit<ColourQuestion, 'colour' | 'predictions'>,
): (lab10: Lab10) => BriefAnswer {
  const { candidates } = askColour(base, colours, {
    ...question,
    colour: { kind: 'bare-lab', lab: [50, 0, 0] },
    tolerance: EVERY_COLOUR,
    predictions: false,
  });
  const predicted = predictedCloths(base, colours, question.fibre);
  const samples = candidates.flatMap((candidate) => labsOf(candidate).map((lab10) => ({ lab10, judgement: candidate.judgement })));
  const nearDyed = nearestAmong(samples);
  const nearPredicted = nearestAmong(predicted);
  const judged = new Map<string, RouteJudgement>();
  const judge = ({ id, route, fibre }: PredictedCloth): RouteJudgement => {
    const known = judged.get(id) ?? judgeRoute(base, route, { ...question, fibre: question.fibre ?? fibre }, { cap: 'predicted' });
    judged.set(id, known);
    return known;
  };
  return (lab10) => {
    let best: BriefAnswer['best'];
    const rank = (judgement: RouteJudgement): number => VERDICTS.indexOf(judgement.verdict);
    const take = (judgement: RouteJudgement, difference: number, isPredicted: boolean) => {
      const order = best ? rank(judgement) - rank(best.judgement) || difference - best.deltaE00 : -1;
      if (order < 0) best = { judgement, deltaE00: difference, predicted: isPredicted };
    };
    for (const { one, deltaE00 } of nearDyed(lab10, question.tolerance)) take(one.judgement, deltaE00, false);
    if (!best || rank(best.judgement) >= BEST_PREDICTED)
      for (const { one, deltaE00 } of nearPredicted(lab10, question.tolerance)) take(judge(one), deltaE00, true);
    return best ? { verdict: best.judgement.verdict, best } : { verdict: 'nothing-near' };
  };
}

const labsOf = ({ samples, colour }: Candidate): readonly Lab10[] =>
  samples.length > 0 ? samples.map((one) => one.colour.lab10) : [colour.lab10];

/** Finds those whose colours lie within a tolerance, nearest first. */
function nearestAmong<T extends { readonly lab10: Lab10 }>(all: readonly T[]) {
  const near = new NearestLabs(Float64Array.from(all.flatMap(({ lab10 }) => [...lab10])));
  return (lab10: Lab10, tolerance: number) =>
    near.within(lab10, tolerance).flatMap(({ at, deltaE00 }) => {
      const one = all[at];
      return one ? [{ one, deltaE00 }] : [];
    });
}
