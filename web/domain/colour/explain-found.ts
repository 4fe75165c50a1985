import type { Spectrum } from './spectrum.ts';
import { unmix } from './unmix.ts';

/** One dyeing alone, on the ground that is assumed. */
export interface KnownDyeing {
  readonly id: string;
  readonly dyed: Spectrum;
}

/** Dyeings that a found colour may be made of. */
export interface FoundExplanation {
  readonly ids: readonly string[];
  /** Depth of each in the cloth as found; 1 = as deep as its own sample. */
  readonly depths: readonly number[];
  /** ΔE00 between the found colour and the one these depths give. */
  readonly deltaE00: number;
}

/** A dye thinner than this explains noise. Our choice: a thirtieth of a usual dyeing. */
const THINNEST = 0.03;
/** A second dye must bring the colour nearer by so much ΔE00, or one dye is said. Our choice: what an eye just sees. */
const WORTH_A_DYE = 1.5;
/** One dyeing may stand in so many explanations. Our choice: for the sake of unlike ones. */
const MOST_NAMED = 2;
/** Beyond this a dye does not explain a colour. Our choice: another family of colour. */
const FARTHEST = 10;

/**
 * Which one or two of the known dyeings come nearest to a found colour, fewer dyes before more.
 * Says what colours allow, never what is in the cloth.
 *
 * @param most how many are wanted.
 * @returns the nearest first; the single nearest even where it explains badly, nothing of no dyeings.
 */
export function explainFound(
  found: Spectrum,
  ground: Spectrum,
  dyeings: readonly KnownDyeing[],
  most: number,
): readonly FoundExplanation[] {
  const of = (...some: readonly KnownDyeing[]): FoundExplanation => {
    const { depths, deltaE00 } = unmix(
      found,
      ground,
      some.map(({ dyed }) => dyed),
    );
    return { ids: some.map(({ id }) => id), depths, deltaE00 };
  };
  const singles = new Map(dyeings.map((one) => [one.id, of(one)]));
  const alone = (id: string): number => singles.get(id)?.deltaE00 ?? Infinity;
  const pairs = dyeings
    .flatMap((one, at) => dyeings.slice(at + 1).map((other) => of(one, other)))
    .filter(
      ({ ids, depths, deltaE00 }) => depths.every((depth) => depth >= THINNEST) && deltaE00 + WORTH_A_DYE < Math.min(...ids.map(alone)),
    );
  const rank = ({ ids, deltaE00 }: FoundExplanation): number => deltaE00 + (ids.length - 1) * WORTH_A_DYE;
  const all = [...singles.values(), ...pairs].sort((a, b) => rank(a) - rank(b) || (a.ids.join() < b.ids.join() ? -1 : 1));
  const fitting = all.filter(({ deltaE00 }) => deltaE00 <= FARTHEST);
  return unlike(fitting.length > 0 ? fitting : all.slice(0, 1)).slice(0, most);
}

/** The list without explanations that only change the partner of a dyeing named twice already: reds of one kind are much alike. */
function unlike(explanations: readonly FoundExplanation[]): readonly FoundExplanation[] {
  const named = new Map<string, number>();
  return explanations.filter(({ ids }) => {
    if (ids.some((id) => (named.get(id) ?? 0) >= MOST_NAMED)) return false;
    for (const id of ids) named.set(id, (named.get(id) ?? 0) + 1);
    return true;
  });
}
