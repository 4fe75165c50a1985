import { noteChance } from './note-chance.ts';

/** How many of a hundred swatches lie close to a few favourite colours, as a dyer's do. */
const CLUSTERED = 70;
const CLUSTERS = 60;

/** CIELAB values of swatches, L*, a* and b* of one after the other: most in clusters, the rest all over what cloth can be. */
export function madeLabs(count: number, seed = 1): Float64Array {
  const draw = noteChance(seed, count);
  const anywhere = (): [number, number, number] => [15 + draw.next() * 75, draw.next() * 85 - 20, draw.next() * 105 - 35];
  const centres = Array.from({ length: CLUSTERS }, anywhere);
  const spread = (): number => (draw.next() + draw.next() + draw.next() - 1.5) * 8;
  const labs = new Float64Array(3 * count);
  for (let nth = 0; nth < count; nth += 1) {
    const centre = draw.below(100) < CLUSTERED ? centres[draw.below(CLUSTERS)] : undefined;
    labs.set(centre ? centre.map((part) => part + spread()) : anywhere(), 3 * nth);
  }
  return labs;
}
