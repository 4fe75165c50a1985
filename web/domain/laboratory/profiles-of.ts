import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { Basis, DyeProfile } from './compound.ts';
import { findCompound } from './find-compound.ts';
import { DYE_PROFILES } from './tables/dye-profiles.ts';

const OF_NOTE: Basis = { source: 'the dyestuff’s own note; how much of it is not said there, so it counts as minor (our judgement)' };

/**
 * What each dyestuff of a notebook gives a laboratory to find: the tables, and every further marker its note names.
 * A dyestuff the tables do not know is known by its note alone; one without a note takes no part.
 */
export function profilesOf(base: EvidenceBase): readonly DyeProfile[] {
  const byDye = new Map(DYE_PROFILES.map((profile) => [profile.dye, profile]));
  return base.ofKind('dyestuff').flatMap(({ id, record }): readonly DyeProfile[] => {
    const holds = byDye.get(id)?.holds ?? [];
    const further = record.markers
      .flatMap((text) => findCompound(text)?.name ?? [])
      .filter((compound) => !holds.some((one) => one.compound === compound))
      .map((compound) => ({ compound, strength: 'minor' as const, basis: OF_NOTE }));
    const all = [...holds, ...further];
    return all.length > 0 ? [{ dye: id, holds: all }] : [];
  });
}
