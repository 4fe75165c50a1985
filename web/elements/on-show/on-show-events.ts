import type { Box } from '../../domain/display/lay-out.ts';
import type { DisplayEdit } from '../../notebook/display-edit.ts';
import { RequestEvent } from '../shared/request-event.ts';

/** The reader moved a cloth on the board, in mm. */
export class BoardMoveEvent extends CustomEvent<{ readonly what: string; readonly box: Box }> {
  static readonly type = 'tg-board-move';
  constructor(what: string, box: Box) {
    super(BoardMoveEvent.type, { detail: { what, box }, bubbles: true, composed: true });
  }
}

/** The writer wants something of a display written into its note. Answered with '' once it is saved, else with why not. */
export class DisplayEditEvent extends RequestEvent<DisplayEdit, string> {
  static readonly type = 'tg-display-edit';
  constructor(edit: DisplayEdit) {
    super(DisplayEditEvent.type, edit);
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-board-move': BoardMoveEvent;
    'tg-display-edit': DisplayEditEvent;
  }
}
