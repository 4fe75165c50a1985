import type { Box } from '../../domain/display/lay-out.ts';

/** The reader moved a cloth on the board, in mm. */
export class BoardMoveEvent extends CustomEvent<{ readonly what: string; readonly box: Box }> {
  static readonly type = 'tg-board-move';
  constructor(what: string, box: Box) {
    super(BoardMoveEvent.type, { detail: { what, box }, bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-board-move': BoardMoveEvent;
  }
}
