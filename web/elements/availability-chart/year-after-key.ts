import type { Years } from './chart-scale.ts';

/**
 * The year a key on the thread leads to: arrows by one year, with Shift by ten, Page keys by fifty, Home and End to the ends.
 *
 * @returns undefined when the key is not one of these.
 */
export function yearAfterKey(key: string, shift: boolean, year: number, { from, to }: Years): number | undefined {
  const step = shift ? 10 : 1;
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return Math.min(to, year + step);
    case 'ArrowLeft':
    case 'ArrowDown':
      return Math.max(from, year - step);
    case 'PageUp':
      return Math.min(to, year + 50);
    case 'PageDown':
      return Math.max(from, year - 50);
    case 'Home':
      return from;
    case 'End':
      return to;
    default:
      return undefined;
  }
}
