import type { Compound, DyeProfile, Strength } from './compound.ts';
import type { Found } from './findings.ts';
import { goneInTime, type LabFigures, reachInPlenty } from './figures.ts';
import { CARRIES, type LabMethod, METHOD_REACH, PLAINLY } from './tables/methods.ts';

/** The chances of what a report would say of one compound; they add up to 1. */
export interface Chances {
  readonly present: number;
  readonly trace: number;
  readonly absent: number;
}

/**
 * The chance that a method shows a compound that is on the thread in this strength.
 *
 * @returns 0–1; 0 where the method cannot see that kind of compound.
 */
export function reachOf(method: LabMethod, compound: Compound, strength: Strength, figures?: LabFigures): number {
  const reach = METHOD_REACH[method];
  return reachInPlenty(method, compound, figures) * (strength === 'main' ? 1 : strength === 'minor' ? reach.ofMinor : reach.ofTrace);
}

/** The chance that age has left a compound to be found. @param aged 0 new, 1 as old as the table of losses means. */
export const survivalOf = (compound: Compound, aged: number, figures?: LabFigures): number => 1 - goneInTime(compound, figures) * aged;

/** The chance that a dyeing with this strength of a compound still shows it: carried, survived, reached. */
export const detection = (compound: Compound, strength: Strength, method: LabMethod, aged: number, figures?: LabFigures): number =>
  CARRIES[strength] * survivalOf(compound, aged, figures) * reachOf(method, compound, strength, figures);

/**
 * What a report would say of one compound, were these dyes on the thread: each dye may show it by itself, and it may stray in
 * with none (a noisy or). A dye more never makes a compound less likely to be found.
 *
 * @returns chances of present, trace and absent, each 0–1, together 1.
 */
export function chancesOf(compound: Compound, dyes: readonly DyeProfile[], method: LabMethod, aged: number, figures?: LabFigures): Chances {
  let unseen = 1 - compound.stray;
  let notPlain = 1 - compound.stray * PLAINLY.minor;
  for (const { holds } of dyes) {
    const held = holds.find((one) => one.compound === compound.name);
    if (!held) continue;
    const shown = detection(compound, held.strength, method, aged, figures);
    unseen *= 1 - shown;
    notPlain *= 1 - shown * PLAINLY[held.strength];
  }
  return { present: 1 - notPlain, trace: notPlain - unseen, absent: unseen };
}

/** The likelihood of one line of a report; 1 where nothing was tested. */
export const likelihoodOf = (found: Found, chances: Chances): number => (found === 'not-tested' ? 1 : chances[found]);
