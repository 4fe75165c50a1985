import type { TypedPalette } from '../../notebook/typed-palette.ts';

/** The reader compares two other palettes. */
export class CompareChangeEvent extends CustomEvent<{ readonly before: TypedPalette; readonly now: TypedPalette }> {
  static readonly type = 'tg-compare-change';
  constructor(before: TypedPalette, now: TypedPalette) {
    super(CompareChangeEvent.type, { detail: { before, now }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-compare-change': CompareChangeEvent;
  }
}
