import { JUST_NOTICEABLE } from '../colour/grey-scale.ts';

/** A fade seen on the cloth itself: its change against the master sample, and the light that made it. */
export interface SeenFade {
  /** ΔE_F of the grey-scale method. */
  readonly deltaEF: number;
  /** Lux hours since it was hung. */
  readonly luxHours: number;
}

/** What is left to the first just noticeable fade, once a fade was seen. */
export interface LeftToFade {
  /** Lux hours from the day of the reading; 0 where the first fade is already there. */
  readonly luxHours: number;
  /** `shown`: grade 4 is reached. `faster`: sooner than its class says. `as-published`: no sooner, and the plan stays. */
  readonly because: 'shown' | 'faster' | 'as-published';
}

/** ΔE_F below which no change is graded: grade 5. Less than this is the instrument's own scatter. */
const NO_CHANGE = 0.4;

/**
 * The light a cloth still has before its first just noticeable fade, by what was seen of it.
 *
 * The fade seen so far scales what is left: a change of s after a dose D puts the first fade (ΔE_F 1.7, grade 4) at D × 1.7 / s.
 * Fading slows as it goes, so a straight line from the start is early rather than late. Our choice, and the cautious one: what was
 * seen only ever brings the day nearer, because a small change lies within the scatter of two readings.
 *
 * @param published lux hours to the first fade by its class; absent where the class is unknown.
 * @returns undefined where neither class nor reading says anything.
 */
export function leftToFade(seen: SeenFade, published: number | undefined): LeftToFade | undefined {
  if (seen.deltaEF >= JUST_NOTICEABLE) return { luxHours: 0, because: 'shown' };
  const byClass = published === undefined ? Infinity : Math.max(0, published - seen.luxHours);
  const bySight = seen.deltaEF < NO_CHANGE || seen.luxHours <= 0 ? Infinity : seen.luxHours * (JUST_NOTICEABLE / seen.deltaEF - 1);
  if (bySight < byClass) return { luxHours: bySight, because: 'faster' };
  return byClass === Infinity ? undefined : { luxHours: byClass, because: 'as-published' };
}
