/** What a palette can be sorted by. */
export const PALETTE_ORDERS = ['hue', 'lightness', 'dyestuff', 'verdict'] as const;
export type PaletteOrder = (typeof PALETTE_ORDERS)[number];
