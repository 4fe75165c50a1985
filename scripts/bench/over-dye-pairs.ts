import { ciede2000Of } from '../../web/domain/colour/ciede2000.ts';
import { TEXTILE } from '../../web/domain/colour/conditions.ts';
import { atDepth } from '../../web/domain/colour/kubelka-munk.ts';
import type { Lab } from '../../web/domain/colour/lab.ts';
import { Nearness } from '../../web/domain/colour/nearness.ts';
import { OverDyes } from '../../web/domain/colour/over-dyes.ts';
import { reconstructFromLab } from '../../web/domain/colour/reconstruct.ts';
import type { Spectrum } from '../../web/domain/colour/spectrum.ts';
import { madeLabs } from './made/made-labs.ts';

/** How many dyes there are, each a second bath. */
export const DYES = 200;
const DEPTHS = [0.25, 0.5, 0.75, 1, 1.5, 2];
/** The cloths that are dyed. */
export const GROUNDS: readonly Lab[] = [
  [90, 0, 8],
  [75, 2, 14],
  [55, 3, 10],
];

const curve = (lab: Lab): Spectrum => reconstructFromLab(lab, TEXTILE).spectrum;
const labs = madeLabs(DYES, 3);
const dyes = Array.from({ length: DYES }, (_, nth) => curve([labs[3 * nth] ?? 0, labs[3 * nth + 1] ?? 0, labs[3 * nth + 2] ?? 0]));
/** On each ground the 1,200 first baths, then the 200 second ones. */
export const sets = GROUNDS.map((lab) => {
  const ground = curve(lab);
  const firsts = dyes.flatMap((dyed) => DEPTHS.map((depth) => atDepth(dyed, ground, depth)));
  return { ground, layers: [...firsts, ...dyes] };
});
/** First baths on one ground: every dye at every depth. */
export const FIRSTS = DYES * DEPTHS.length;

/** Two baths, by where they stand among all, and how far they are from the target. */
export interface Ranked {
  readonly pair: number;
  readonly deltaE00: number;
}
/** Nearest first. */
export const byDifference = (one: Ranked, other: Ranked): number => one.deltaE00 - other.deltaE00 || one.pair - other.pair;

const overDyes = sets.map(({ ground, layers }) => new OverDyes(ground, layers));
/** Every pair of one first bath. */
export function take(first: number, target: Lab, near: Nearness | undefined, found: (one: Ranked) => void): void {
  const set = overDyes[Math.floor(first / FIRSTS)];
  for (let second = 0; second < DYES; second += 1) {
    const lab = set?.lab10(first % FIRSTS, FIRSTS + second, near);
    if (lab) found({ pair: first * DYES + second, deltaE00: ciede2000Of(target[0], target[1], target[2], lab[0], lab[1], lab[2]) });
  }
}
/** Every pair within a ΔE00 of a target, nearest first. */
export function within(target: Lab, limit: number): readonly Ranked[] {
  const near = new Nearness([target], limit);
  const found: Ranked[] = [];
  for (let first = 0; first < GROUNDS.length * FIRSTS; first += 1)
    take(first, target, near, (one) => one.deltaE00 <= limit && found.push(one));
  return found.sort(byDifference);
}
