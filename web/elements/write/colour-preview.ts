import { swatchFromStated } from '../../domain/colour/swatch-colour.ts';
import type { StatedColour } from '../../domain/note/note.ts';
import type { FieldView } from '../../notebook/views/form-view.ts';

/** A colour for the screen. */
export interface ColourPreview {
  readonly hex: string;
  readonly inScreenGamut: boolean;
}

/** The cloth of a colour as its fields state it; undefined while they state none. */
export function colourPreview(fields: readonly FieldView[]): ColourPreview | undefined {
  const text = (key: string): string => fields.find((field) => field.key === key)?.value ?? '';
  const three = (key: string): readonly [number, number, number] | undefined => {
    const [a = NaN, b = NaN, c = NaN, ...more] = text(key)
      .split(/[\s,;]+/)
      .map(Number);
    return text(key) === '' || more.length > 0 || ![a, b, c].every(Number.isFinite) ? undefined : [a, b, c];
  };
  const [lab, xyz, hex] = [three('lab'), three('xyz'), text('hex')];
  const observer = /^2\b/.test(text('observer')) ? 2 : 10;
  const stated: StatedColour = {
    range: [0, 0],
    ...(lab && { lab }),
    ...(xyz && { xyz }),
    ...(hex === '' ? {} : { hex }),
    ...(text('illuminant') === '' ? {} : { illuminant: text('illuminant') }),
    ...(text('observer') === '' ? {} : { observer }),
  };
  const swatch = swatchFromStated(stated);
  return swatch.ok ? { hex: swatch.value.hex, inScreenGamut: swatch.value.inScreenGamut } : undefined;
}
