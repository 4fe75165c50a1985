import { stemFrom } from './starters.ts';
import type { PaletteCloth, PaletteView } from './views/palette-view.ts';
import { csvCell } from './words/csv-cell.ts';
import { inXml } from './words/in-xml.ts';

/** The part of a palette that goes into a file. */
export type PaletteToFile = Pick<PaletteView, 'place' | 'reading' | 'cloths' | 'couldBeTried'>;

/** A file's name for a palette, without its ending: "palette-england-1370". */
export const paletteFileStem = ({ place, reading }: PaletteToFile): string => `palette-${stemFrom(`${place} ${reading}`, 'colours')}`;

const clothsOf = ({ cloths, couldBeTried }: PaletteToFile): readonly PaletteCloth[] => [...cloths, ...couldBeTried];

/**
 * The palette as comma-separated values, a line a cloth.
 *
 * L*, a*, b* are CIELAB under D65 for the 10° observer, as the notes give them; hex is what a screen shows of it. A cell a
 * spreadsheet would run as a formula is made text.
 */
export function paletteCsv(palette: PaletteToFile): string {
  const head = 'place,date,colour,dyes,fibre,origin,verdict,predicted,samples,L* (D65/10°),a* (D65/10°),b* (D65/10°),hex,within sRGB';
  const lines = clothsOf(palette).map(({ title, dyes, fibre, origin, verdictWord, predicted, samples, lab, hex, inScreenGamut }) =>
    [
      ...[palette.place, palette.reading, title, dyes, fibre, origin, verdictWord, yesNo(predicted)].map(csvCell),
      String(samples),
      ...lab.map(twoPlaces),
      csvCell(hex),
      csvCell(yesNo(inScreenGamut)),
    ].join(','),
  );
  return `${[head, ...lines].join('\r\n')}\r\n`;
}

/**
 * The palette as CSS Color Level 4: a custom property a cloth.
 *
 * The colour is the sRGB hex of the screen. `lab()` is not used: it is defined for D50, while the notes are D65 for the 10°
 * observer; those numbers stand in the comment as they are.
 */
export function paletteCss(palette: PaletteToFile): string {
  const taken = new Map<string, number>();
  const lines = clothsOf(palette).map((cloth) => {
    const stem = stemFrom(cloth.title, 'colour');
    const nth = (taken.get(stem) ?? 0) + 1;
    taken.set(stem, nth);
    return `  --${stem}${nth === 1 ? '' : `-${nth}`}: ${cloth.hex}; /* ${inComment(remarkOn(cloth))} */`;
  });
  const from = inComment(`The colours of ${palette.place}, ${palette.reading}.`);
  return `/* ${from}\n   Hex is sRGB. In comments: CIELAB, D65, 10° observer, which is not the D50 of lab(). */\n:root {\n${lines.map((line) => `${line}\n`).join('')}}\n`;
}

const remarkOn = ({ title, verdictWord, lab, inScreenGamut, predicted }: PaletteCloth): string =>
  [
    title,
    verdictWord.toLowerCase(),
    ...(predicted ? ['predicted'] : []),
    `L* ${twoPlaces(lab[0])} a* ${twoPlaces(lab[1])} b* ${twoPlaces(lab[2])}`,
    ...(inScreenGamut ? [] : ['outside sRGB: the nearest a screen can show']),
  ].join(', ');

/** Distances of the picture, in its own units (our choice: names readable when it fills a page's width). */
const SHEET = { width: 640, margin: 32, clothWidth: 112, clothHeight: 64, step: 84, top: 84 } as const;

/** Height and width of the palette's picture, in its own units. */
export const paletteSvgSize = (palette: PaletteToFile): { readonly width: number; readonly height: number } => ({
  width: SHEET.width,
  height: SHEET.top + SHEET.step * Math.max(1, clothsOf(palette).length) + SHEET.margin,
});

/** The palette as a picture: each cloth a piece on a grey ground, its name and standing as text beside it, on a ruled line. */
export function paletteSvg(palette: PaletteToFile): string {
  const { width, height } = paletteSvgSize(palette);
  const { margin, clothWidth, clothHeight, step, top } = SHEET;
  const title = inXml(`The colours of ${palette.place}, ${palette.reading}`);
  const rows = clothsOf(palette).map((cloth, at) => {
    const y = top + at * step;
    const beside = margin + clothWidth + 20;
    const quiet = [cloth.verdictWord, cloth.predicted ? 'predicted' : '', cloth.fibre, cloth.dyes]
      .filter((word) => word !== '')
      .join(' · ');
    const numbers = `L* ${cloth.lab[0].toFixed(0)}  a* ${cloth.lab[1].toFixed(0)}  b* ${cloth.lab[2].toFixed(0)}  ${cloth.hex}`;
    return `  <g>
    <rect x="${margin}" y="${y}" width="${clothWidth}" height="${clothHeight}" fill="${inXml(cloth.hex)}"/>
    <path d="M${beside} ${y + 0.5}H${width - margin}" stroke="#1b1b1b"/>
    <text x="${beside}" y="${y + 22}" font-weight="bold">${inXml(cloth.title)}</text>
    <text x="${beside}" y="${y + 41}" font-size="13">${inXml(quiet)}</text>
    <text x="${beside}" y="${y + 59}" font-size="12">${inXml(numbers)}</text>
  </g>\n`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${title}" font-family="sans-serif" font-size="16" fill="#1b1b1b">
  <title>${title}</title>
  <rect width="${width}" height="${height}" fill="#f2f2f2"/>
  <text x="${margin}" y="44" font-family="serif" font-size="22">${title}</text>
  <text x="${margin}" y="66" font-size="12">CIELAB numbers: D65, 10° observer. Colours as an sRGB screen shows them.</text>
${rows.join('')}</svg>\n`;
}

const yesNo = (is: boolean): string => (is ? 'yes' : 'no');

/** Without a minus before zero. */
const twoPlaces = (value: number): string => (Math.abs(value) < 0.005 ? '0.00' : value.toFixed(2));

/** Text that cannot end the comment it stands in. */
const inComment = (text: string): string => text.replaceAll('*/', '* /').replace(/[\r\n\f]+/g, ' ');
