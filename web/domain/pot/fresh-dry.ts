import type { SourcedRange } from './conversion.ts';
import { twelveDigits } from './conversion.ts';

/** What a ratio of fresh to dried speaks of: the mass lost in drying, or how much colour a dyer reckons with. */
export type FreshDryClaim = 'mass' | 'dye-power';

/** A ratio fresh : dried, of a part of a plant. A starting point to put one's own figure in the place of. */
export interface FreshDryRatio extends SourcedRange {
  /** The dyestuff, where the figure is of one. */
  readonly dyestuff?: string;
  readonly part: 'root' | 'flower' | 'whole-plant' | 'leaf' | 'bark' | 'husk' | 'berry';
  readonly claims: FreshDryClaim;
}

/** Figures in print and from memory. They depend on plant, season and grower; none is a law. */
export const FRESH_DRY_RATIOS: readonly FreshDryRatio[] = [
  { dyestuff: 'madder', part: 'root', claims: 'mass', from: 7, to: 7, source: 'suzi-madder-2013: 700 g fresh gave 100 g dry, one grower' },
  { dyestuff: 'madder', part: 'root', claims: 'mass', from: 3, to: 5, source: 'from memory' },
  { dyestuff: 'weld', part: 'whole-plant', claims: 'mass', from: 3, to: 4, source: 'from memory' },
  { part: 'flower', claims: 'mass', from: 5, to: 8, source: 'from memory' },
  {
    part: 'flower',
    claims: 'dye-power',
    from: 2,
    to: 2,
    source: 'a plant dyer’s page (hellobotanika.com): half as much dried as fresh',
    caution: 'A rule for recipes, not what drying takes away.',
  },
  { part: 'leaf', claims: 'mass', from: 4, to: 6, source: 'from memory' },
  { part: 'bark', claims: 'mass', from: 2, to: 2, source: 'from memory' },
  { dyestuff: 'walnut', part: 'husk', claims: 'mass', from: 4, to: 5, source: 'from memory' },
  { part: 'berry', claims: 'mass', from: 4, to: 5, source: 'from memory' },
];

/** Grams at least and at most. */
export interface GramRange {
  readonly from: number;
  readonly to: number;
}

/** Fresh mass that dries to a mass; undefined unless the ratio is at least 1 at both ends. */
export function freshOf(dryGrams: number, { from, to }: Pick<SourcedRange, 'from' | 'to'>): GramRange | undefined {
  if (!(from >= 1) || !(to >= from) || !(dryGrams >= 0)) return undefined;
  return { from: twelveDigits(dryGrams * from), to: twelveDigits(dryGrams * to) };
}

/** Dried mass of a fresh one: the higher ratio leaves the less. Undefined unless the ratio is at least 1 at both ends. */
export function dryOf(freshGrams: number, { from, to }: Pick<SourcedRange, 'from' | 'to'>): GramRange | undefined {
  if (!(from >= 1) || !(to >= from) || !(freshGrams >= 0)) return undefined;
  return { from: twelveDigits(freshGrams / to), to: twelveDigits(freshGrams / from) };
}

/** Every ratio that may speak for a dyestuff or a part of a plant, its own first; which one holds is the reader's to say. */
export const ratiosFor = (dyestuff: string, part?: FreshDryRatio['part']): readonly FreshDryRatio[] => {
  const own = FRESH_DRY_RATIOS.filter((one) => one.dyestuff === dyestuff);
  return [...own, ...FRESH_DRY_RATIOS.filter((one) => one.dyestuff === undefined && (part === undefined ? false : one.part === part))];
};
