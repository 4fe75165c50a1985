import type { Compound } from './compound.ts';
import { GONE, type LabMethod, METHOD_REACH } from './tables/methods.ts';

/** A reader's own figures in place of the tables', each 0–1. */
export interface LabFigures {
  /** The chance that a method shows a compound that is there in plenty: by method, then by compound. */
  readonly reach?: Readonly<Partial<Record<LabMethod, Readonly<Record<string, number>>>>>;
  /** The chance that a compound is gone after about 250 years, by compound. */
  readonly gone?: Readonly<Record<string, number>>;
}

const isChance = (figure: number | undefined): figure is number => figure !== undefined && figure >= 0 && figure <= 1;

/** The reader's figure for a compound and method; undefined where the tables' counts. */
export function ownReach(method: LabMethod, compound: Compound, figures: LabFigures | undefined): number | undefined {
  const own = figures?.reach?.[method]?.[compound.name];
  return isChance(own) ? own : undefined;
}

/** The reader's figure for the loss of a compound; undefined where the tables' counts. */
export function ownGone(compound: Compound, figures: LabFigures | undefined): number | undefined {
  const own = figures?.gone?.[compound.name];
  return isChance(own) ? own : undefined;
}

/** The chance that a method shows a compound that is there in plenty. */
export const reachInPlenty = (method: LabMethod, compound: Compound, figures?: LabFigures): number =>
  ownReach(method, compound, figures) ?? METHOD_REACH[method].but[compound.family] ?? METHOD_REACH[method].usual;

/** The chance that a compound is gone after about 250 years. */
export const goneInTime = (compound: Compound, figures?: LabFigures): number => ownGone(compound, figures) ?? GONE[compound.loss];
