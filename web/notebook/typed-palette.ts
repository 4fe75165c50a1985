import type { PaletteOrder } from '../domain/palette/palette-order.ts';

/** What the gaps on the line part. */
export const PALETTE_GROUPINGS = ['family', 'origin', 'dyestuff', 'verdict', 'none'] as const;
export type PaletteGrouping = (typeof PALETTE_GROUPINGS)[number];

/** A palette as it is asked for. */
export interface TypedPalette {
  readonly region: string;
  readonly when: string;
  readonly fibre?: string;
  readonly wearer?: string;
  readonly dyedHere?: boolean;
  readonly sort?: PaletteOrder;
  readonly group?: PaletteGrouping;
  /** Show plausible and weaker colours too. */
  readonly all?: boolean;
  /** Hang what could be tried, in a row of its own: predicted over-dyes. */
  readonly tryOverDyes?: boolean;
  /** The date the words compare with. */
  readonly since?: string;
}
