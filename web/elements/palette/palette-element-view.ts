import type { PaletteOrder } from '../../domain/palette/palette-order.ts';
import type { PaletteGrouping } from '../../notebook/typed-palette.ts';
import type { PaletteCloth } from '../../notebook/views/palette-view.ts';
import type { ClothItem } from '../cloth-line/cloth-line-view.ts';

/** The orders of a line, as they stand in the sentence. */
export const ORDER_WORDS: Readonly<Record<PaletteOrder, string>> = {
  hue: 'by hue',
  lightness: 'from light to dark',
  dyestuff: 'by dyestuff',
  verdict: 'by verdict',
};

/** What the gaps part, as it stands in the sentence. */
export const GROUPING_WORDS: Readonly<Record<PaletteGrouping, string>> = {
  family: 'between families of colour',
  origin: 'between origins',
  dyestuff: 'between dyestuffs',
  verdict: 'between verdicts',
  none: 'nowhere',
};

/** A palette's cloth as the line takes it. */
export function clothItem(cloth: PaletteCloth): ClothItem {
  return {
    id: cloth.id,
    name: cloth.title,
    hex: cloth.hex,
    wide: cloth.wide,
    fibre: cloth.weave,
    verdict: cloth.verdict,
    verdictWord: cloth.verdictWord,
    classes: cloth.classes,
    predicted: cloth.predicted,
    outOfGamut: !cloth.inScreenGamut,
    detail: [cloth.origin, cloth.ruled ? 'a rule forbids it' : ''].filter((part) => part !== '').join(', '),
    ...(cloth.group === '' ? {} : { group: cloth.group }),
  };
}
