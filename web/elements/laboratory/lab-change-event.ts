import { settingsOfLab } from '../../notebook/lab-address.ts';
import type { TypedLab } from '../../notebook/typed-lab.ts';

/** The reader changed the laboratory's report; the settings are those of an address that holds it. */
export class LabChangeEvent extends CustomEvent<{ readonly report: TypedLab; readonly settings: Readonly<Record<string, string>> }> {
  static readonly type = 'tg-lab-change';
  constructor(report: TypedLab) {
    super(LabChangeEvent.type, { detail: { report, settings: settingsOfLab(report) }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-lab-change': LabChangeEvent;
  }
}
