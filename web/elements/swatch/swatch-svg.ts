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

const INK = '#1b1b1b';
const PAPER = '#fcfcfc';
const LINE = `stroke="${INK}" stroke-linecap="round" stroke-linejoin="round"`;

/** The inks of a hem where no style sheet reaches, as on paper. */
const INKS: Readonly<Record<HemInk, string>> = {
  band: `fill="#b4b4b4" ${LINE} stroke-width="1.2"`,
  fold: `fill="#e4e4e4" ${LINE} stroke-width="1.2"`,
  paper: `fill="${PAPER}" ${LINE} stroke-width="1.2"`,
  ink: `fill="${INK}"`,
  line: `fill="none" ${LINE} stroke-width="1.4"`,
  thin: `fill="none" ${LINE} stroke-width="1"`,
  cord: `fill="none" stroke="${INK}" stroke-width="4.4"`,
  core: `fill="none" stroke="${PAPER}" stroke-width="1.9"`,
  halo: `fill="none" stroke="${PAPER}" stroke-width="6.6"`,
};

/** A cloth as a picture inside another one: its weave, its hem, its tag. */
export function swatchSvg(input: SwatchInput, { x, y, width, key }: SwatchPlace): string {
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
    )}${view.sheen.length > 0 ? `<path d="${outline}" fill="url(#${id}-s)" fill-opacity="0.6"/>` : ''}<path d="${outline}" fill="none" stroke="${INK}" stroke-width="0.7" stroke-opacity="0.45"/>${view.hem
    .map(({ d, ink }) => `<path d="${d}" ${INKS[ink]}/>`)
    .join(
      '',
    )}<path d="${view.tag.card}" fill="${PAPER}" stroke="${INK}" stroke-width="0.8"/><circle cx="${view.tag.hole[0]}" cy="${view.tag.hole[1]}" r="2.2" fill="${PAPER}" stroke="${INK}" stroke-width="0.9"/><path d="${view.tag.thread}" fill="none" stroke="${INK}" stroke-width="0.9"/></svg>`;
}
