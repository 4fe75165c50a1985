import type { Random } from '../domain/colour/spread.ts';

/**
 * Chance that is the same on every visit, so that a figure worked out by it does not flicker.
 *
 * @source the minimal standard generator, Park & Miller 1988, with their later multiplier 48271.
 */
export function steadyChance(seed = 1): Random {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
