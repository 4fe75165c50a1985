/** The chemical families whose members a method reaches alike. */
export const COMPOUND_FAMILIES = [
  'anthraquinone',
  'insect-red',
  'flavonoid',
  'isoflavone',
  'indigoid',
  'bromoindigoid',
  'indigo-sulfonate',
  'redwood',
  'logwood',
  'lichen-purple',
  'lichen-acid',
  'tannin',
  'naphthoquinone',
  'carotenoid',
  'curcuminoid',
  'alkaloid',
  'safflower',
  'aurone',
  'synthetic',
  'element',
] as const;
export type CompoundFamily = (typeof COMPOUND_FAMILIES)[number];

/** Where a figure or a statement comes from; `our judgement` is said in so many words. */
export interface Basis {
  /** A citation as the project's history of dyestuffs gives it, or `our judgement`. */
  readonly source: string;
  readonly fromMemory?: boolean;
}

/** How readily light and burial take a compound away. */
export type Loss = 'steady' | 'some' | 'much' | 'most';

/** A compound a laboratory may report. */
export interface Compound {
  /** The usual name, as reports print it; also its id here. */
  readonly name: string;
  /** Other usual names. */
  readonly names: readonly string[];
  /** CAS Registry Number; from memory, its check digit tested; absent where not sure. */
  readonly cas?: string;
  readonly family: CompoundFamily;
  readonly loss: Loss;
  readonly lossBasis: Basis;
  /**
   * How readily it turns up without any dyestuff of the tables behind it, as the chance in one report:
   * tannins from soil and linen, indigotin carried over from the next thread.
   */
  readonly stray: number;
}

/** How much of a compound a dyestuff gives. */
export const STRENGTHS = ['main', 'minor', 'trace'] as const;
export type Strength = (typeof STRENGTHS)[number];

/** One compound held by one dyestuff. */
export interface Holding {
  readonly compound: string;
  readonly strength: Strength;
  readonly basis: Basis;
}

/** What a dyestuff gives a laboratory to find. */
export interface DyeProfile {
  readonly dye: string;
  readonly holds: readonly Holding[];
}
