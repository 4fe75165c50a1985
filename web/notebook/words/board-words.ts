import type { BoardOrder } from '../../domain/note/display-record.ts';
import type { BoardColour, DisplayView } from '../views/display-view.ts';
import { counted } from './counted.ts';
import { dayInPrint } from './day-words.ts';

/** How a board is ordered, as it is chosen. */
export const boardOrderWords = {
  hue: 'hue',
  source: 'dyestuff',
  origin: 'to hand, imported, as cloth',
  route: 'where the dyestuff came from',
  'as-placed': 'the palette’s own order',
} as const satisfies Record<BoardOrder, string>;

/** The small line under a caption: code, verdict, fibre, and that printed colour is approximate. */
export const tagLine = ({ code, cloth, material }: BoardColour): string =>
  [code, cloth?.verdictWord, cloth?.fibre, material === 'printed' ? 'printed colour, approximate' : ''].filter((part) => part).join(' · ');

/** What stands in the window for a real cloth: which one it is for, and its size. */
export const windowLines = ({ form, code, box }: BoardColour): readonly [string, string] => [
  `Window for the ${form} ${code}`.trim(),
  box ? `${Math.round(box.widthMm)} × ${Math.round(box.heightMm)} mm` : '',
];

/** The foot of a board: how near its colours are, and which version it is. */
export function boardFoot({ version, colours }: DisplayView, day: string): readonly [string, string] {
  const hangs = colours.some(({ material }) => material === 'real');
  return [
    `Printed colour is near, never exact${hangs ? '; the cloth hangs in the windows' : ''}.`,
    `Version ${version}${day === '' ? '' : `, ${dayInPrint(day)}`}`,
  ];
}

/** A board in words, for whoever cannot see it: what it shows, then each cloth in reading order. */
export function boardAltText({ title, place, reading, colours }: DisplayView): string {
  const laid = colours.filter(({ box }) => box).sort((a, b) => rowOf(a) - rowOf(b) || (a.box?.x ?? 0) - (b.box?.x ?? 0));
  const asked = [place, reading].filter((part) => part !== '').join(', ');
  const cloths = laid.map(({ title: name, cloth, material, form }) =>
    [name, cloth?.verdictWord.toLowerCase() ?? 'not judged', material === 'real' ? `a ${form} in a window` : 'printed'].join(', '),
  );
  return `${title}. A board of ${counted(laid.length, 'cloth')}${asked === '' ? '' : ` for ${asked}`}, row by row: ${cloths.join('; ')}.`;
}

/** Cloths whose upper edges are within 2 cm of one another hang in one row. Our choice. */
const rowOf = ({ box }: BoardColour): number => Math.round((box?.y ?? 0) / 20);
