import type { Moment } from '../../domain/pot/pot-log.ts';

/** Now, by the reader's own clock and calendar. */
export function thisMoment(now = new Date()): Moment {
  const two = (value: number) => String(value).padStart(2, '0');
  return {
    day: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    clock: `${two(now.getHours())}:${two(now.getMinutes())}`,
  };
}
