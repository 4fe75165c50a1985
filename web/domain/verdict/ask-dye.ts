import type { EvidenceBase } from '../claim/evidence-base.ts';
import { type JudgedMaterial, judgeRoute, type RouteJudgement, type RouteQuestion } from './judge-route.ts';
import type { Route } from './route.ts';

/** How one material stands, asked alone. */
export interface DyeAnswer {
  readonly question: RouteQuestion & { readonly dye: string };
  readonly judgement: RouteJudgement;
  readonly dye: JudgedMaterial;
}

/** The standing of a dyestuff (or any material) at a place and time, with no recipe around it. */
export function askDye(base: EvidenceBase, question: RouteQuestion & { readonly dye: string }): DyeAnswer {
  const role = dyeRole(base, question.dye);
  const route: Route = {
    id: question.dye,
    materials: [{ id: question.dye, role }],
    dyes: role === 'dye' ? [question.dye] : [],
    inCircle: [],
  };
  const judgement = judgeRoute(base, route, question);
  const dye = judgement.materials[0];
  if (!dye) throw new Error('a route of one material has one judgement');
  return { question, judgement, dye };
}

function dyeRole(base: EvidenceBase, id: string): 'dye' | 'mordant' | 'assistant' | 'process' | 'fibre' {
  const kind = base.note(id)?.record.kind;
  return kind === 'mordant' || kind === 'assistant' || kind === 'process' || kind === 'fibre' ? kind : 'dye';
}
