import { ciede2000 } from '../colour/ciede2000.ts';
import { CLOSENESS_LIMITS } from '../colour/delta-e.ts';
import type { SwatchColour } from '../colour/swatch-colour.ts';
import { COLOUR_VISIONS, type ColourVision, differenceSeenBy } from './colour-vision.ts';
import type { Box, LaidItem } from './lay-out.ts';

/** Two cloths that lie side by side and are hard to tell apart. */
export interface AlikePair {
  readonly one: string;
  readonly other: string;
  /** ΔE00 of the cloths (D65/10°). */
  readonly deltaE00: number;
  /** Who finds them alike: everybody, or people without one kind of cone. */
  readonly to: 'everybody' | readonly ColourVision[];
}

/** ΔE00 under which two neighbours count as alike. Our choice: the upper end of "near". */
export const ALIKE = CLOSENESS_LIMITS.near;

/**
 * The neighbours on a board that look alike, to everybody or to people who lack one kind of cone.
 *
 * @param colours by item id; an item without a colour has no neighbours.
 */
export function alikeNeighbours(items: readonly LaidItem[], colours: ReadonlyMap<string, SwatchColour>): readonly AlikePair[] {
  return items.flatMap((one, at) =>
    items.slice(at + 1).flatMap((other): AlikePair[] => {
      const [a, b] = [colours.get(one.id), colours.get(other.id)];
      if (!a || !b || !areNeighbours(one.cloth, other.cloth)) return [];
      const deltaE00 = ciede2000([a.lab10[0], a.lab10[1], a.lab10[2]], [b.lab10[0], b.lab10[1], b.lab10[2]]);
      if (deltaE00 < ALIKE) return [{ one: one.id, other: other.id, deltaE00, to: 'everybody' }];
      const to = COLOUR_VISIONS.filter((vision) => differenceSeenBy(vision, a.lab2, b.lab2) < ALIKE);
      return to.length > 0 ? [{ one: one.id, other: other.id, deltaE00, to }] : [];
    }),
  );
}

/** Side by side: their edges are no farther apart than the smaller of them is wide, and they share a stretch across or down. */
function areNeighbours(a: Box, b: Box): boolean {
  const reach = Math.min(a.widthMm, b.widthMm);
  const across = gap(a.x, a.widthMm, b.x, b.widthMm);
  const down = gap(a.y, a.heightMm, b.y, b.heightMm);
  return (across <= reach && down < 0) || (down <= reach * 2 && across < 0);
}

/** Space between two stretches; negative where they share one. */
const gap = (from: number, length: number, otherFrom: number, otherLength: number): number =>
  Math.max(otherFrom - (from + length), from - (otherFrom + otherLength));
