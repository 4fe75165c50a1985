import { coreOf } from '../../web/domain/date/date-span.ts';
import { noteId } from '../../web/domain/note/note.ts';
import { askDye } from '../../web/domain/verdict/ask-dye.ts';
import { recipeFibres } from '../../web/domain/verdict/cloths.ts';
import { judgeRoute, type RouteJudgement, type RouteQuestion } from '../../web/domain/verdict/judge-route.ts';
import { routeOf } from '../../web/domain/verdict/route.ts';
import { demoNotebook } from './demo-notebook.ts';

/** A question of the reference files, in their own words. */
export interface ReferenceQuestion {
  readonly dye?: string;
  readonly material?: string;
  readonly recipe?: string;
  readonly region: string;
  readonly when: string;
  readonly fibre?: string;
  readonly wearer?: string;
  readonly dyedHere?: boolean;
}

/** Judges one dyestuff, other material, or recipe of the demonstration. */
export function judgeDemo({ dye, material, recipe, region, when, fibre, wearer, dyedHere = false }: ReferenceQuestion): RouteJudgement {
  const { base } = demoNotebook();
  const span = base.spanOfText(when);
  if (!span) throw new Error(`the reference file asks a date that cannot be read: ${when}`);
  const question: RouteQuestion = {
    region,
    span: coreOf(span),
    dyedHere,
    ...(fibre === undefined ? {} : { fibre }),
    ...(wearer === undefined ? {} : { wearer }),
  };
  const single = dye ?? material;
  if (single !== undefined) return askDye(base, { ...question, dye: single }).judgement;
  const asked = fibre ?? recipeFibres(base, recipe ?? '')[0];
  return judgeRoute(base, routeOf(base, noteId(recipe ?? ''), asked), { ...question, ...(asked === undefined ? {} : { fibre: asked }) });
}
