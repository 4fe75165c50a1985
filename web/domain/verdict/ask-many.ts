import type { EvidenceBase } from '../claim/evidence-base.ts';
import { deltaE00 } from '../colour/delta-e.ts';
import type { Lab10 } from '../colour/lab.ts';
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
    for (const candidate of candidates) {
      const nearest = nearestOf(lab10, candidate);
      if (nearest <= question.tolerance) take(candidate.judgement, nearest, false);
    }
    if (!best || rank(best.judgement) >= BEST_PREDICTED) {
      for (const cloth of predicted) {
        const difference = deltaE00(lab10, cloth.lab10);
        if (difference <= question.tolerance) take(judge(cloth), difference, true);
      }
    }
    return best ? { verdict: best.judgement.verdict, best } : { verdict: 'nothing-near' };
  };
}

const nearestOf = (lab10: Lab10, { samples, colour }: Candidate): number =>
  Math.min(...(samples.length > 0 ? samples.map((one) => one.colour.lab10) : [colour.lab10]).map((lab) => deltaE00(lab10, lab)));
