import { type SwatchColour, swatchFromLab } from '../domain/colour/swatch-colour.ts';
import type { CarriedColour } from './typed-colour.ts';

/** A carried colour itself; undefined where no surface has such numbers. */
export function swatchOfCarried({ lab, illuminant, observer, by }: CarriedColour): SwatchColour | undefined {
  const swatch = swatchFromLab(lab, { illuminant, observer }, by ?? 'lab', { illuminant, observer, lab });
  return swatch.ok ? swatch.value : undefined;
}
