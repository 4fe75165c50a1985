import { fold } from '../text/fold.ts';
import { nearestNames } from '../text/nearest-names.ts';
import type { Compound } from './compound.ts';
import { COMPOUNDS } from './tables/compounds.ts';

const plain = (text: string): string =>
  fold(text)
    .replace(/[’′`´]/g, "'")
    .replace(/\s+/g, ' ')
    .trim();

const BY_NAME = new Map<string, Compound>();
for (const compound of COMPOUNDS) for (const name of compound.names) BY_NAME.set(plain(name), compound);
for (const compound of COMPOUNDS) {
  if (compound.cas) BY_NAME.set(plain(compound.cas), compound);
  BY_NAME.set(plain(compound.name), compound);
}

/** A compound under its usual name, any other name or its CAS number; case, accents and kinds of prime are all one. */
export const findCompound = (text: string): Compound | undefined => BY_NAME.get(plain(text));

/** Known names near a text that names no compound. */
export const nearestCompounds = (text: string): readonly string[] => [
  ...new Set(nearestNames(text, [...BY_NAME.keys()], 6).map((name) => BY_NAME.get(name)?.name ?? name)),
];

/**
 * Whether a CAS Registry Number's check digit fits.
 *
 * @source the registry's rule: digits from the right times 1, 2, 3 …, modulo 10.
 */
export function isCasNumber(text: string): boolean {
  const match = /^(\d{2,7})-(\d{2})-(\d)$/.exec(text);
  if (!match) return false;
  const digits = [...`${match[1]}${match[2]}`].reverse().map(Number);
  return digits.reduce((sum, digit, i) => sum + digit * (i + 1), 0) % 10 === Number(match[3]);
}
