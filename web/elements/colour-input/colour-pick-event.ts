import type { ColourOrigin } from '../../domain/colour/swatch-colour.ts';

/** A colour somebody chose, with where it comes from. */
export interface PickedColour {
  /** As a question's address carries it: a CSS colour, `L,a,b`, words, a note's id, or `L,a,b D65/2 photo`. */
  readonly text: string;
  /** Absent where words or numbers were typed: then whoever reads them decides. */
  readonly by?: ColourOrigin;
  /** The photo the colour was taken from, to be kept beside it. */
  readonly photo?: File;
  /** The file of measurements it is in, to be kept beside it, and the sample's id there. */
  readonly spectrum?: { readonly file: File; readonly sample: string };
}

/** The reader chose a colour. */
export class ColourPickEvent extends CustomEvent<PickedColour> {
  static readonly type = 'tg-colour-pick';
  constructor(picked: PickedColour) {
    super(ColourPickEvent.type, { detail: picked, bubbles: true, composed: true });
  }
}
declare global {
  interface GlobalEventHandlersEventMap {
    'tg-colour-pick': ColourPickEvent;
  }
}
