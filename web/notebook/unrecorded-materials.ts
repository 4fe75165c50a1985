import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { routeOf } from '../domain/verdict/route.ts';

/** A material nothing speaks for, and the recipes that hang on it. */
export interface UnrecordedMaterial {
  readonly material: string;
  readonly recipes: readonly string[];
}

/** Materials of recipes that have no note or no claim and are not everyday, by id. */
export function unrecordedMaterials(base: EvidenceBase): readonly UnrecordedMaterial[] {
  const recipesOf = new Map<string, string[]>();
  for (const { id, record } of base.ofKind('recipe')) {
    const fibres = record.fibre.map(({ text }) => base.resolve(text, ['fibre']));
    const materials = [...routeOf(base, id, undefined).materials.map((one) => one.id), ...fibres];
    for (const material of new Set(materials)) {
      if (base.isEveryday(material) || base.claimsOf(material).length > 0) continue;
      recipesOf.set(material, [...(recipesOf.get(material) ?? []), id]);
    }
  }
  return [...recipesOf].map(([material, recipes]) => ({ material, recipes })).sort((a, b) => (a.material < b.material ? -1 : 1));
}
