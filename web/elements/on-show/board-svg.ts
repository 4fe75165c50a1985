import type { Box } from '../../domain/display/lay-out.ts';
import type { BoardColour, DisplayView } from '../../notebook/views/display-view.ts';
import { boardAltText, boardFoot, tagLine, windowLines } from '../../notebook/words/board-words.ts';
import { inXml } from '../../notebook/words/in-xml.ts';
import { swatchSvg } from '../swatch/swatch-svg.ts';
import { captionRuns } from './caption-runs.ts';
import { textLines } from './text-lines.ts';

/** How a board is drawn. */
export interface BoardDrawing {
  /** The language of its captions. */
  readonly language: string;
  /** Windows where real cloth hangs; the cloth drawn in them otherwise. */
  readonly windows: boolean;
  /** The day on its foot; '' for none. */
  readonly day: string;
}

const INK = '#1b1b1b';
const QUIET = '#595959';
/** Of a place's width: leaves room beside the cloth for its tag and below it for a seal. */
const CLOTH_SHARE = 0.64;
const MARGIN = 14;
const LEADING = 1.35;

/** The board as a picture at its true size: one unit is a millimetre. Type is the reader's own serif, since a picture carries no typeface. */
export function boardSvg(display: DisplayView, drawing: BoardDrawing): string {
  const { widthMm: w, heightMm: h } = display.sheet;
  const type = display.typeMm;
  const foot = boardFoot(display, drawing.day);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}" role="img" font-family="Literata, Georgia, 'Times New Roman', serif" font-size="${type}" fill="${INK}">
<title>${inXml(display.title)}</title>
<desc>${inXml(boardAltText(display))}</desc>
<rect width="${w}" height="${h}" fill="#ffffff"/>
<text x="${MARGIN}" y="${8 + type * 2}" font-size="${type * 2}" font-weight="600">${inXml(display.title)}</text>
<text x="${MARGIN}" y="${19 + type}" fill="${QUIET}">${inXml(display.question)}</text>
${display.headings.map((heading) => headingSvg(heading, type)).join('\n')}
${display.colours.map((colour, at) => colourSvg(colour, at, type, drawing)).join('\n')}
<g font-family="sans-serif" font-size="${type * 0.8}" fill="${QUIET}"><text x="${MARGIN}" y="${h - 6}">${inXml(foot[0])}</text><text x="${w - MARGIN}" y="${h - 6}" text-anchor="end">${inXml(foot[1])}</text></g>
</svg>
`;
}

const headingSvg = ({ x, y, widthMm, heightMm, text }: Box & { readonly text: string }, type: number): string =>
  `<g><text x="${x}" y="${y + type}" font-family="sans-serif" font-weight="700">${inXml(text)}</text><path d="M${x} ${y + heightMm}h${widthMm}" stroke="${INK}" stroke-width="0.3"/></g>`;

function colourSvg(colour: BoardColour, at: number, type: number, { language, windows }: BoardDrawing): string {
  const { box, captionBox } = colour;
  if (!box) return '';
  const caption = colour.captions.find(({ lang }) => lang === language) ?? colour.captions[0];
  const cloth =
    windows && colour.material === 'real'
      ? windowSvg(colour, box, type)
      : swatchSvg(
          {
            hex: colour.hex,
            fibre: colour.cloth?.weave ?? 'wool',
            verdict: colour.cloth?.verdict,
            classes: colour.cloth?.classes ?? 0,
            wide: '',
            predicted: false,
            outOfGamut: false,
            seed: colour.code || colour.what,
            label: colour.title,
          },
          { x: box.x, y: box.y, width: (box.widthMm * CLOTH_SHARE * 134) / 96, key: `c${at}` },
        );
  return `<g>${cloth}${captionBox ? captionSvg(colour, caption?.headline ?? '', caption?.text ?? '', caption?.lang ?? 'en', captionBox, type) : ''}</g>`;
}

const windowSvg = (colour: BoardColour, { x, y, widthMm, heightMm }: Box, type: number): string =>
  `<rect x="${x}" y="${y}" width="${widthMm}" height="${heightMm}" fill="none" stroke="${INK}" stroke-width="0.25" stroke-dasharray="1.5 1"/><g font-family="sans-serif" font-size="${type * 0.85}" text-anchor="middle">${windowLines(
    colour,
  )
    .map((line, at) => `<text x="${x + widthMm / 2}" y="${y + heightMm - type * (2.4 - at * 1.2)}">${inXml(line)}</text>`)
    .join('')}</g>`;

function captionSvg(colour: BoardColour, headline: string, text: string, lang: string, box: Box, type: number): string {
  const heads = textLines(headline || colour.title, box.widthMm / (type * 1.1));
  const lines = textLines(text, box.widthMm / type);
  let y = box.y;
  const row = (height: number): number => {
    y += height;
    return y - height * 0.25;
  };
  const head = heads.map(
    (line) => `<text x="${box.x}" y="${row(type * 1.05 * 1.25)}" font-size="${type * 1.05}" font-weight="700">${inXml(line)}</text>`,
  );
  const body = lines.map((line) => `<text x="${box.x}" y="${row(type * LEADING)}">${slanted(line, colour.latin)}</text>`);
  const tag = `<text x="${box.x}" y="${row(type * 0.8 * LEADING)}" font-family="sans-serif" font-size="${type * 0.8}" fill="${QUIET}" xml:lang="en">${inXml(tagLine(colour))}</text>`;
  return `<g xml:lang="${inXml(lang)}">${head.join('')}${body.join('')}${tag}</g>`;
}

/** Latin names slanted; a name that is broken over two lines is slanted in each by its own words. */
const slanted = (line: string, latin: readonly string[]): string =>
  captionRuns(
    { text: line, bound: [], notices: [] },
    latin.flatMap((name) => (line.includes(name) ? [name] : name.split(' ').filter((word) => word.length > 3))),
  )
    .map((run) => (run.latin ? `<tspan font-style="italic">${inXml(run.text)}</tspan>` : inXml(run.text)))
    .join('');
