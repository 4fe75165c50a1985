import { type EvidenceBase, MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { perVersion } from '../claim/per-version.ts';
import type { Ingredient, NoteId, Role } from '../note/note.ts';

/** An ingredient whose `what` is missing: nothing can speak for it. */
export const UNNAMED = '(unnamed)';

/** What a material does in a route; the fibre and an undyed colour's own claims are materials too. */
export type RouteRole = Role | 'fibre' | 'undyed';

/** One material of a route, judged as the historic material it is or stands for. */
export interface RouteMaterial {
  readonly id: string;
  readonly role: RouteRole;
  /** What was really used, where it stands in for `id`. */
  readonly usedInstead?: string;
  /** The recipe that asks for it. */
  readonly recipe?: NoteId;
}

/** Every material one way of getting a colour needs, each once. */
export interface Route {
  /** The recipe's id, or `fibre/undyed name`; with the fibre behind it where a recipe is judged on several. */
  readonly id: string;
  readonly recipe?: NoteId;
  readonly undyed?: string;
  readonly materials: readonly RouteMaterial[];
  /** The dyestuffs, sorted by id. */
  readonly dyes: readonly string[];
  readonly fibre?: string;
  /** Recipes that follow themselves: the chain was cut where it closed. */
  readonly inCircle: readonly NoteId[];
}

const routes = perVersion(() => new Map<string, Route>(), { notes: ['recipe'], names: MATERIAL_KINDS });

/**
 * The route of a recipe on a fibre: its ingredients and those of the recipes it follows, each material once.
 *
 * @param fibre the fibre it is judged on; absent when neither question nor recipe names one.
 */
export function routeOf(base: EvidenceBase, recipe: NoteId, fibre: string | undefined): Route {
  const known = routes(base);
  const key = `${recipe}\n${fibre ?? ''}`;
  const route = known.get(key) ?? findRoute(base, recipe, fibre);
  known.set(key, route);
  return route;
}

function findRoute(base: EvidenceBase, recipe: NoteId, fibre: string | undefined): Route {
  const materials = new Map<string, RouteMaterial>();
  const inCircle: NoteId[] = [];
  const visit = (id: NoteId, path: readonly NoteId[]) => {
    if (path.includes(id)) {
      inCircle.push(id);
      return;
    }
    const record = base.note(id)?.record;
    if (record?.kind !== 'recipe') return;
    for (const next of record.follows) visit(base.resolve(next.text, ['recipe']) as NoteId, [...path, id]);
    for (const ingredient of record.ingredients) add(materialOf(base, ingredient, id));
  };
  const add = (material: RouteMaterial) => {
    const held = materials.get(material.id);
    if (!held || (held.role !== 'dye' && material.role === 'dye')) materials.set(material.id, { ...held, ...material });
  };
  visit(recipe, []);
  if (fibre !== undefined) add({ id: fibre, role: 'fibre' });
  return {
    id: recipe,
    recipe,
    materials: [...materials.values()],
    dyes: [...materials.values()]
      .filter(({ role }) => role === 'dye')
      .map(({ id }) => id)
      .sort(),
    ...(fibre === undefined ? {} : { fibre }),
    inCircle,
  };
}

function materialOf(base: EvidenceBase, ingredient: Ingredient, recipe: NoteId): RouteMaterial {
  const used = ingredient.what ? base.resolve(ingredient.what.text, MATERIAL_KINDS) : UNNAMED;
  const id = ingredient.standsFor ? base.resolve(ingredient.standsFor.text, MATERIAL_KINDS) : used;
  return { id, role: ingredient.role ?? roleByKind(base, id), recipe, ...(id === used ? {} : { usedInstead: used }) };
}

/** An ingredient without a role does what its note's kind does. */
function roleByKind(base: EvidenceBase, id: string): Role {
  const kind = base.note(id)?.record.kind;
  if (kind === 'dyestuff') return 'dye';
  return kind === 'mordant' || kind === 'process' ? kind : 'assistant';
}

/** The route of an undyed colour: the fibre, and the colour's own claims where it has any, alone. */
export function undyedRoute(base: EvidenceBase, fibre: NoteId, undyed: string): Route | undefined {
  const record = base.note(fibre)?.record;
  const entry = record?.kind === 'fibre' ? record.undyed.find(({ name }) => name === undyed) : undefined;
  if (!entry) return undefined;
  const id = `${fibre}/${undyed}`;
  const own: readonly RouteMaterial[] = entry.availability.length > 0 ? [{ id, role: 'undyed' }] : [];
  return { id, undyed, materials: [{ id: fibre, role: 'fibre' }, ...own], dyes: [], fibre, inCircle: [] };
}

/** The recipes whose routes hang on a material, by id. */
export function recipesHangingOn(base: EvidenceBase, material: string): readonly NoteId[] {
  return base
    .ofKind('recipe')
    .map(({ id }) => id)
    .filter((id) => routeOf(base, id, undefined).materials.some((one) => one.id === material));
}
