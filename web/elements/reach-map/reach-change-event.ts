import type { TypedReach } from '../../notebook/views/reach-map-view.ts';

/** The reader asks for another source or date on the map. */
export class ReachChangeEvent extends CustomEvent<{ readonly reach: TypedReach }> {
  static readonly type = 'tg-reach-change';
  constructor(reach: TypedReach) {
    super(ReachChangeEvent.type, { detail: { reach }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-reach-change': ReachChangeEvent;
  }
}
