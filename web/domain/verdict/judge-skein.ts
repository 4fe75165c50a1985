import type { EvidenceBase } from '../claim/evidence-base.ts';
import { judgeRoute, type RouteJudgement, type RouteQuestion } from './judge-route.ts';
import type { Route, RouteMaterial } from './route.ts';

/** A skein of somebody's own table, its materials resolved to ids where the notebook knows them. */
export interface Skein {
  readonly name: string;
  readonly dyes: readonly string[];
  readonly helpers: readonly { readonly id: string; readonly role: 'mordant' | 'assistant' | 'modifier' | 'process' }[];
  readonly fibre?: string;
}

/** Judges a skein by what it says it was made of; no recipe is looked up. */
export function judgeSkein(base: EvidenceBase, skein: Skein, question: Omit<RouteQuestion, 'fibre'>): RouteJudgement {
  const materials: readonly RouteMaterial[] = [
    ...skein.dyes.map((id): RouteMaterial => ({ id, role: 'dye' })),
    ...skein.helpers,
    ...(skein.fibre === undefined ? [] : [{ id: skein.fibre, role: 'fibre' } as const]),
  ];
  const route: Route = {
    id: skein.name,
    materials,
    dyes: [...new Set(skein.dyes)].sort(),
    ...(skein.fibre === undefined ? {} : { fibre: skein.fibre }),
    inCircle: [],
  };
  return judgeRoute(base, route, { ...question, ...(skein.fibre === undefined ? {} : { fibre: skein.fibre }) });
}
