/** What has to be said beside a figure of light, where the figure stands. */
export type LightCaveat =
  /** Lux times hours is taken to be all that counts; for sensitive colours in strong light it is not. */
  | 'reciprocity'
  /** Published grades of one dye differ by a class or more. */
  | 'spread-of-grades'
  /** The doses behind the classes are quoted from memory. */
  | 'table-from-memory'
  /** The first fade comes soonest; later ones take longer. */
  | 'not-linear'
  /** Damp, warmth, bad air and oxygen count too. */
  | 'other-causes'
  /** The table knows daylight behind glass; outdoors there is more ultraviolet. */
  | 'no-glass'
  /** The light was estimated, not measured. */
  | 'light-estimated'
  /** The yearly limit is quoted from memory. */
  | 'limit-from-memory';

/** What stands beside every span of years. */
export const YEARS_CAVEATS: readonly LightCaveat[] = ['reciprocity', 'spread-of-grades', 'table-from-memory', 'not-linear', 'other-causes'];
