import type { TypedComparison } from '../../notebook/address.ts';

/** The reader compares two other palettes. */
export class CompareChangeEvent extends CustomEvent<{ readonly comparison: TypedComparison }> {
  static readonly type = 'tg-compare-change';
  constructor(comparison: TypedComparison) {
    super(CompareChangeEvent.type, { detail: { comparison }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-compare-change': CompareChangeEvent;
  }
}
