import type { TypedDyeDay } from '../../notebook/dye-day-address.ts';

/** The reader plans another day. */
export class DyeDayChangeEvent extends CustomEvent<{ readonly day: TypedDyeDay }> {
  static readonly type = 'tg-dye-day-change';
  constructor(day: TypedDyeDay) {
    super(DyeDayChangeEvent.type, { detail: { day }, bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'tg-dye-day-change': DyeDayChangeEvent;
  }
}
