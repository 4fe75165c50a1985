import type { TypedLab } from '../../notebook/typed-lab.ts';

/** The reader changed the laboratory's report. */
export class LabChangeEvent extends CustomEvent<{ readonly report: TypedLab }> {
  static readonly type = 'tg-lab-change';
  constructor(report: TypedLab) {
    super(LabChangeEvent.type, { detail: { report }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-lab-change': LabChangeEvent;
  }
}
