import type { Lab } from './lab.ts';

const NUMBER = '[-+−]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)';
const TRIPLE = new RegExp(`^(?:lab ?:? ?)?(${NUMBER})(?: ?[,;] ?| )(${NUMBER})(?: ?[,;] ?| )(${NUMBER})$`, 'i');
/** Beyond these no surface colour lies; most likely something else was typed. */
const LARGEST_AB = 200;

/** Three numbers, and whether they can be the L*, a*, b* of a surface: L* 0–100, a* and b* within ±200. */
export interface LabTriple {
  readonly lab: Lab;
  readonly isPossible: boolean;
}

/** Reads `L,a,b`; undefined for what is not three numbers. Spaces are single and trimmed already. */
export function labTriple(text: string): LabTriple | undefined {
  const found = TRIPLE.exec(text);
  if (!found) return undefined;
  const number = (part: string | undefined): number => Number((part ?? '').replace('−', '-'));
  const lab: Lab = [number(found[1]), number(found[2]), number(found[3])];
  return { lab, isPossible: lab[0] >= 0 && lab[0] <= 100 && Math.max(Math.abs(lab[1]), Math.abs(lab[2])) <= LARGEST_AB };
}
