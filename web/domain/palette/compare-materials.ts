import type { EvidenceBase } from '../claim/evidence-base.ts';
import { askDye } from '../verdict/ask-dye.ts';
import type { JudgedMaterial, RouteQuestion } from '../verdict/judge-route.ts';
import { ORIGINS } from '../verdict/standing-words.ts';

/** One side of a comparison of materials: a notebook's evidence, asked for a place and time. */
export interface MaterialSide {
  readonly base: EvidenceBase;
  readonly question: RouteQuestion;
}

/** A material that does not stand alike on both sides. */
export interface MaterialChange {
  readonly kind: 'came' | 'went' | 'origin';
  readonly id: string;
  readonly before: JudgedMaterial;
  readonly now: JudgedMaterial;
}

/**
 * What came to hand, what went, and what came from elsewhere, between two sides: dyestuffs, mordants, assistants, processes and fibres.
 *
 * @returns by id; a material that was to hand on neither side is left out, whatever else is said of it.
 */
export function compareMaterials(before: MaterialSide, now: MaterialSide): readonly MaterialChange[] {
  const ids = [...new Set([...materialsOf(before.base), ...materialsOf(now.base)])].sort();
  return ids.flatMap((id): MaterialChange[] => {
    const [was, is] = [standingOf(before, id), standingOf(now, id)];
    const [wasThere, isThere] = [isToHand(was), isToHand(is)];
    if (!wasThere && !isThere) return [];
    if (wasThere && isThere && was.standing === is.standing) return [];
    return [{ kind: isThere ? (wasThere ? 'origin' : 'came') : 'went', id, before: was, now: is }];
  });
}

const materialsOf = (base: EvidenceBase): readonly string[] =>
  (['dyestuff', 'mordant', 'assistant', 'process', 'fibre'] as const)
    .flatMap((kind) => base.ofKind(kind))
    .filter(({ id }) => !base.isEveryday(id))
    .map(({ id }) => String(id));

const standingOf = ({ base, question }: MaterialSide, id: string): JudgedMaterial => askDye(base, { ...question, dye: id }).dye;

const isToHand = ({ standing }: JudgedMaterial): boolean => ORIGINS.some((origin) => origin === standing);
