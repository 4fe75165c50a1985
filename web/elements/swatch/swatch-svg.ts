import { inXml } from '../../notebook/words/in-xml.ts';
import { BOX } from './cloth-shape.ts';
import type { HemInk } from './hem.ts';
import { type SwatchInput, swatchView } from './swatch-view.ts';

/** Where a cloth is drawn and how wide its whole drawing is, tag and hem included, in the units of the picture. */
export interface SwatchPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Unique in the picture: patterns are named after it. */
  readonly key: string;
}

/** Height of a cloth's whole drawing for its width. */
export const SWATCH_RATIO = BOX.height / BOX.width;

/** The greys a cloth is drawn with: those of paper, or what the page around it says. */
export interface SwatchGreys {
  readonly ink: string;
  readonly paper: string;
}

const ON_PAPER: SwatchGreys = { ink: '#1b1b1b', paper: '#fcfcfc' };

/** The inks of a hem where no style sheet reaches, as in a file. */
function inksOf({ ink, paper }: SwatchGreys): Readonly<Record<HemInk, string>> {
  const line = `stroke="${ink}" stroke-linecap="round" stroke-linejoin="round"`;
  return {
    band: `fill="${ink}" fill-opacity="0.3" ${line} stroke-width="1.2"`,
    fold: `fill="${ink}" fill-opacity="0.09" ${line} stroke-width="1.2"`,
    paper: `fill="${paper}" ${line} stroke-width="1.2"`,
    ink: `fill="${ink}"`,
    line: `fill="none" ${line} stroke-width="1.4"`,
    thin: `fill="none" ${line} stroke-width="1"`,
    cord: `fill="none" stroke="${ink}" stroke-width="4.4"`,
    core: `fill="none" stroke="${paper}" stroke-width="1.9"`,
    halo: `fill="none" stroke="${paper}" stroke-width="6.6"`,
  };
}

/** A cloth as a picture inside another one: its weave, its hem, its tag. */
export function swatchSvg(input: SwatchInput, { x, y, width, key }: SwatchPlace, greys: SwatchGreys = ON_PAPER): string {
  const { ink: dark, paper } = greys;
  const inks = inksOf(greys);
  const view = swatchView(input);
  const id = inXml(key);
  const patterns = view.tiles.map(
    ({ size, paths }, at) =>
      `<pattern id="${id}-${at}" width="${size}" height="${size}" patternUnits="userSpaceOnUse" patternTransform="rotate(${view.lean})">${paths
        .map((path) => `<path d="${path.d}" fill="${path.fill}"/>`)
        .join('')}</pattern>`,
  );
  const sheen = `<linearGradient id="${id}-s">${view.sheen
    .map((stop) => `<stop offset="${stop.at}" stop-color="${stop.colour}" stop-opacity="${stop.opacity}"/>`)
    .join('')}</linearGradient>`;
  const outline = view.outline;
  return `<svg x="${x}" y="${y}" width="${width}" height="${width * SWATCH_RATIO}" viewBox="0 0 ${BOX.width} ${BOX.height}" overflow="visible" role="img" aria-label="${inXml(view.name)}"><title>${inXml(view.name)}</title><defs>${patterns.join('')}${view.sheen.length > 0 ? sheen : ''}</defs><path d="${outline}" fill="${view.fill}"/>${view.tiles
    .map((_, at) => `<path d="${outline}" fill="url(#${id}-${at})"/>`)
    .join(
      '',
    )}${view.sheen.length > 0 ? `<path d="${outline}" fill="url(#${id}-s)" fill-opacity="0.6"/>` : ''}<path d="${outline}" fill="none" stroke="${dark}" stroke-width="0.7" stroke-opacity="0.45"/>${view.hem
    .map(({ d, ink }) => `<path d="${d}" ${inks[ink]}/>`)
    .join(
      '',
    )}<path d="${view.tag.card}" fill="${paper}" stroke="${dark}" stroke-width="0.8"/><circle cx="${view.tag.hole[0]}" cy="${view.tag.hole[1]}" r="2.2" fill="${paper}" stroke="${dark}" stroke-width="0.9"/><path d="${view.tag.thread}" fill="none" stroke="${dark}" stroke-width="0.9"/></svg>`;
}
