/** A source of chance that gives the same run for the same seed (mulberry32, public domain, by Tommy Ettinger). */
export interface Chance {
  /** 0 ≤ x < 1. */
  readonly next: () => number;
  /** A whole number from 0 below `below`. */
  readonly below: (below: number) => number;
  /** True once in `times`. */
  readonly oneIn: (times: number) => boolean;
  readonly pick: <T>(from: readonly T[]) => T;
}

/** Chance from a seed. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const below = (count: number): number => Math.floor(next() * count);
  return {
    next,
    below,
    oneIn: (times) => below(times) === 0,
    pick: (from) => {
      const picked = from[below(from.length)];
      if (picked === undefined) throw new Error('nothing to pick from');
      return picked;
    },
  };
}
