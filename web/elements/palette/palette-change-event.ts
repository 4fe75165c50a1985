import type { TypedPalette } from '../../notebook/typed-palette.ts';

/** The reader asks for another palette. `settled` is false while the year is still being dragged. */
export class PaletteChangeEvent extends CustomEvent<{ readonly palette: TypedPalette; readonly settled: boolean }> {
  static readonly type = 'tg-palette-change';
  constructor(palette: TypedPalette, settled: boolean) {
    super(PaletteChangeEvent.type, { detail: { palette, settled }, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-palette-change': PaletteChangeEvent;
  }
}
