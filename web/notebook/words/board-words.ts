import type { BoardOrder } from '../../domain/note/display-record.ts';

/** How a board is ordered, as it is chosen. */
export const boardOrderWords = {
  hue: 'hue',
  source: 'dyestuff',
  origin: 'to hand, imported, as cloth',
  route: 'where the dyestuff came from',
  'as-placed': 'the palette’s own order',
} as const satisfies Record<BoardOrder, string>;
