import type { Asked } from './judge-claim.ts';
import type { JudgedMaterial } from './judge-route.ts';

/** Materials judged for one place, fibre and way of dyeing. */
interface KnownHere {
  get(id: string): JudgedMaterial | undefined;
  keep(judged: JudgedMaterial): void;
}

/**
 * Materials already judged for one span of years, over many routes. One of which no claim speaks of certain fibres stands
 * alike on every fibre, and is judged once.
 */
export class KnownMaterials {
  readonly #onAnyFibre = new Map<string, Map<string, JudgedMaterial>>();
  readonly #onFibre = new Map<string, Map<string, JudgedMaterial>>();

  /** What is known of materials asked for like this; the years are those of all. */
  at({ region, fibreLine }: Asked, dyedHere: boolean): KnownHere {
    const where = `${dyedHere ? 'dyed' : 'worn'}\n${region}`;
    const onAnyFibre = within(this.#onAnyFibre, where);
    const onFibre = within(this.#onFibre, `${where}\n${fibreLine.join('\n')}`);
    return {
      get: (id) => onAnyFibre.get(id) ?? onFibre.get(id),
      keep(judged) {
        const speaksOfFibres = judged.claims.some(({ placed }) => placed.on.length > 0);
        (speaksOfFibres ? onFibre : onAnyFibre).set(judged.material.id, judged);
      },
    };
  }
}

function within(maps: Map<string, Map<string, JudgedMaterial>>, key: string): Map<string, JudgedMaterial> {
  const known = maps.get(key) ?? new Map<string, JudgedMaterial>();
  maps.set(key, known);
  return known;
}
