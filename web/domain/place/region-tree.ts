/** A region's id; `world` is built in. */
export type RegionId = string;

/** The region that holds every other. */
export const WORLD: RegionId = 'world';

/** What one region note says of its place, by resolved ids; an unknown parent is simply absent. */
export interface RegionEntry {
  readonly id: RegionId;
  readonly parents: readonly RegionId[];
  readonly near: readonly RegionId[];
}

/** Where a claim's region lies, seen from the asked one. */
export type PlaceRelation = 'here' | 'within' | 'around' | 'neighbour' | 'elsewhere';

/**
 * The regions of a notebook as a tree with several parents allowed, and who borders whom.
 * `world` holds every region without a readable parent or in a circle.
 */
export interface RegionTree {
  /** Regions whose `within` leads back to themselves. */
  readonly inCircle: ReadonlySet<RegionId>;
  has(id: RegionId): boolean;
  /** Direct parents; `[world]` at the top, none for world itself. */
  parentsOf(id: RegionId): readonly RegionId[];
  /** Every region that holds this one, world included, itself not. */
  ancestorsOf(id: RegionId): ReadonlySet<RegionId>;
  /** This region and every one it holds. */
  within(id: RegionId): readonly RegionId[];
  /** Place of a claim's region seen from the asked region: the first relation that applies. */
  relation(claim: RegionId, asked: RegionId): PlaceRelation;
  readonly ids: readonly RegionId[];
}

/** Builds the tree from what the region notes say. */
export function regionTree(entries: readonly RegionEntry[]): RegionTree {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const known = (ids: readonly RegionId[]) => ids.filter((id) => id === WORLD || byId.has(id));

  const stated = new Map(entries.map((entry) => [entry.id, known(entry.parents)]));
  const inCircle = new Set(entries.map(({ id }) => id).filter((id) => reaches(id, id, stated)));
  const parents = new Map<RegionId, readonly RegionId[]>([[WORLD, []]]);
  for (const { id, parents: written } of entries) {
    const kept = inCircle.has(id) ? [] : [...new Set(known(written))];
    parents.set(id, kept.length > 0 ? kept : [WORLD]);
  }

  const ancestors = new Map<RegionId, ReadonlySet<RegionId>>();
  const ancestorsOf = (id: RegionId): ReadonlySet<RegionId> => {
    const cached = ancestors.get(id);
    if (cached) return cached;
    const found = new Set<RegionId>();
    const queue = [...(parents.get(id) ?? [])];
    for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
      if (found.has(next)) continue;
      found.add(next);
      queue.push(...(parents.get(next) ?? []));
    }
    ancestors.set(id, found);
    return found;
  };

  const children = new Map<RegionId, RegionId[]>();
  for (const [id, own] of parents)
    for (const parent of own) {
      const siblings = children.get(parent);
      if (siblings) siblings.push(id);
      else children.set(parent, [id]);
    }
  const held = new Map<RegionId, readonly RegionId[]>();
  const within = (id: RegionId): readonly RegionId[] => {
    const known = held.get(id);
    if (known) return known;
    const found = new Set([id]);
    for (const one of found) for (const child of children.get(one) ?? []) found.add(child);
    const all = [...found];
    held.set(id, all);
    return all;
  };

  const links = new Map<RegionId, Set<RegionId>>();
  const link = (a: RegionId, b: RegionId) => links.set(a, (links.get(a) ?? new Set()).add(b));
  for (const { id, near } of entries) {
    for (const other of known(near)) {
      if (other === id || other === WORLD) continue;
      link(id, other);
      link(other, id);
    }
  }
  const withParents = (id: RegionId) => [id, ...(parents.get(id) ?? [])];

  const relations = new Map<RegionId, Map<RegionId, PlaceRelation>>();
  const relate = (claim: RegionId, asked: RegionId): PlaceRelation => {
    if (claim === asked) return 'here';
    if (ancestorsOf(claim).has(asked)) return 'within';
    if (ancestorsOf(asked).has(claim)) return 'around';
    const theirs = withParents(asked);
    const joined = withParents(claim).some((mine) => theirs.some((other) => links.get(mine)?.has(other)));
    return joined ? 'neighbour' : 'elsewhere';
  };

  return {
    inCircle,
    ids: [WORLD, ...byId.keys()],
    has: (id) => parents.has(id),
    parentsOf: (id) => parents.get(id) ?? [],
    ancestorsOf,
    within,
    relation(claim, asked) {
      let seen = relations.get(asked);
      if (!seen) relations.set(asked, (seen = new Map<RegionId, PlaceRelation>()));
      let relation = seen.get(claim);
      if (relation === undefined) seen.set(claim, (relation = relate(claim, asked)));
      return relation;
    },
  };
}

function reaches(from: RegionId, goal: RegionId, parents: ReadonlyMap<RegionId, readonly RegionId[]>): boolean {
  const seen = new Set<RegionId>();
  const queue = [...(parents.get(from) ?? [])];
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    if (next === goal) return true;
    if (seen.has(next)) continue;
    seen.add(next);
    queue.push(...(parents.get(next) ?? []));
  }
  return false;
}
