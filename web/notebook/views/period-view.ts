import { noteId } from '../../domain/note/note.ts';
import { judgeRoute } from '../../domain/verdict/judge-route.ts';
import { routeOf } from '../../domain/verdict/route.ts';
import { dyedRecipes, recipeFibres } from '../../domain/verdict/cloths.ts';
import { meanColour } from '../../domain/palette/mean-colour.ts';
import { addressOf } from '../address.ts';
import type { Notebook } from '../notebook.ts';
import { poseCircumstances, type QuestionProblem } from '../pose-question.ts';
import { becauseOfRoute, standingSentence } from '../words/because.ts';
import { shortClaim, titleOf } from '../words/claim-line.ts';
import { verdictWords } from '../words/verdict-words.ts';

/** A material of the recipe's route, and the claims that carry its standing there and then. */
export interface PeriodMaterial {
  readonly id: string;
  readonly title: string;
  /** How it stands there and then, with the first of its claims; that it needs no evidence; or that no claim reaches. */
  readonly stands: string;
  /** Its other claims. */
  readonly claims: readonly string[];
}

/** Whether a recipe fits a place and time, and by which claims. */
export interface PeriodView {
  readonly verdict: string;
  readonly means: string;
  /** What else decided it; what is about one material alone stands with that. */
  readonly because: readonly string[];
  readonly materials: readonly PeriodMaterial[];
  /** Where its colour is asked for, there and then; '' where it has none yet. */
  readonly ask: string;
}

/**
 * Which claims make a recipe right for a place and time: its route judged as worn there, on the first fibre it names.
 *
 * @returns what could not be understood, or undefined for no such recipe.
 */
export function periodView(
  { base, colours }: Notebook,
  recipe: string,
  typed: { readonly region: string; readonly when: string },
): { readonly period?: PeriodView; readonly problems: readonly QuestionProblem[] } | undefined {
  if (base.note(recipe)?.record.kind !== 'recipe') return undefined;
  const [fibre] = recipeFibres(base, recipe);
  const { question, problems } = poseCircumstances(base, { ...typed, ...(fibre === undefined ? {} : { fibre }) });
  if (!question) return { problems };
  const judgement = judgeRoute(base, routeOf(base, noteId(recipe), fibre), question.route);
  const materials = judgement.materials.map((one) => ({
    id: one.material.id,
    title: titleOf(base, one.material.id),
    stands: standingSentence(base, one, question.route),
    claims: one.carriedBy.slice(1).map((judged) => shortClaim(base, judged)),
  }));
  const stands = new Set(materials.map((one) => one.stands));
  const samples = dyedRecipes(base, colours).find((one) => one.recipe === recipe)?.samples ?? [];
  const mean = meanColour(base, fibre === undefined ? samples : samples.filter((one) => one.fibre === fibre)) ?? meanColour(base, samples);
  return {
    problems: [],
    period: {
      verdict: verdictWords[judgement.verdict].word,
      means: verdictWords[judgement.verdict].means,
      because: becauseOfRoute(base, judgement, question.route).filter((sentence) => !stands.has(sentence)),
      materials,
      ask: mean
        ? addressOf({
            view: 'ask',
            settings: {
              colour: mean.lab10.map((value) => value.toFixed(1)).join(','),
              region: typed.region,
              when: typed.when,
              ...(fibre === undefined ? {} : { fibre }),
            },
          })
        : '',
    },
  };
}
