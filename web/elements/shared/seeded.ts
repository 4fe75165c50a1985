/**
 * Numbers that look random and are always the same for the same words, so that a cloth keeps its face.
 *
 * @param seed any text; an id does.
 * @returns a function giving the next number, 0 ≤ n < 1.
 * @source FNV-1a (Fowler, Noll and Vo) hashes the seed; the stepping is a 32-bit Weyl sequence with a mixing function, common practice.
 */
export function seeded(seed: string): () => number {
  let state = 0x811c9dc5;
  for (let i = 0; i < seed.length; i += 1) state = Math.imul(state ^ seed.charCodeAt(i), 0x01000193);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
