import { steadyChance } from '../../../web/notebook/steady-chance.ts';

/** Draws for one thing of a generated notebook, the same whatever was drawn for any other. */
export interface NoteChance {
  /** 0 ≤ x < 1. */
  readonly next: () => number;
  /** A whole number from 0 below `below`. */
  readonly below: (below: number) => number;
  readonly pick: <T>(from: readonly [T, ...T[]]) => T;
}

/** @param seed of the notebook. @param nth which of its things; neighbours get seeds that lie far apart. */
export function noteChance(seed: number, nth: number): NoteChance {
  const mixed = Math.imul(Math.imul(nth + 1, 0x9e3779b1) ^ Math.imul(seed, 0x85ebca6b), 0xc2b2ae35) >>> 0;
  const next = steadyChance(1 + (mixed % 2147483645));
  const below = (count: number): number => Math.min(count - 1, Math.floor(next() * count));
  // The first draw of this generator still lies near its seed.
  next();
  return { next, below, pick: (from) => from[below(from.length)] ?? from[0] };
}
