import type { SheetMm } from './sheet-size.ts';

/** A rectangle on a sheet in mm, from its upper left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Something to be laid on a board. */
export interface BoardItem {
  readonly id: string;
  /** The group it hangs in; a new one gets a heading where it begins. */
  readonly group: string;
  /** Characters of its caption and headline; 0 for none. */
  readonly captionLength: number;
  /** Where the note puts it: then it is not moved. */
  readonly fixed?: Partial<Box>;
  readonly captionSpot: 'below' | 'beside' | 'none';
}

/** An item with its place on the sheet. */
export interface LaidItem {
  readonly id: string;
  readonly cloth: Box;
  readonly caption?: Box;
  readonly fixed: boolean;
}

/** A board laid out. */
export interface LaidBoard {
  readonly items: readonly LaidItem[];
  readonly headings: readonly (Box & { readonly group: string })[];
  /** Items that found no room. */
  readonly overflow: readonly string[];
  /** Placed items that lie over one another, or (without `with`) over the edge of the sheet. */
  readonly clashes: readonly { readonly id: string; readonly with?: string }[];
}

/** Measures of a board in mm. Our choice, drawn up on A3 and tried at the other sizes. */
export const BOARD = { margin: 14, gap: 8, top: 30, bottom: 16, heading: 7, leastCloth: 24, most: 90, captionGap: 2 } as const;

/** Cloth is taller than wide, as it hangs. */
const CLOTH_RATIO = 1.25;
/** Mean width of a character and height of a line, in sizes of type. */
const CHARACTER = 0.5;
const LINE = 1.35;

/** Height in mm that a caption needs at a width. */
export function captionHeightMm(characters: number, widthMm: number, typeMm: number): number {
  if (characters === 0) return 0;
  const perLine = Math.max(6, Math.floor(widthMm / (CHARACTER * typeMm)));
  // A line is filled to about nine tenths, because words are not broken.
  return Math.ceil(characters / (perLine * 0.9)) * typeMm * LINE;
}

/**
 * Lays items on a sheet: those with a place stay there, the others hang in rows from left to right in their order, as large as fits.
 *
 * @param typeMm size of the captions' type.
 * @returns what found no room in `overflow`: nothing is made too small to see.
 */
export function layOut(items: readonly BoardItem[], sheet: SheetMm, typeMm: number): LaidBoard {
  const isFixed = ({ fixed }: BoardItem) => fixed?.x !== undefined && fixed.y !== undefined;
  const fixed = items.filter(isFixed);
  const cloths = fixed.map(fixedCloth);
  const words = Math.min(MOST_CHARACTERS * CHARACTER * typeMm, ...fixed.map((item) => roomBelow(item, cloths, sheet, typeMm)));
  const placed = fixed.map((item) => placeFixed(item, words, typeMm));
  const flowing = items.filter((item) => !isFixed(item));
  const under = Math.max(BOARD.top, ...placed.map(bottomOf).map((bottom) => bottom + BOARD.gap));
  const widest = Math.max(1, Math.floor((sheet.widthMm - 2 * BOARD.margin + BOARD.gap) / (BOARD.leastCloth + BOARD.gap)));
  let best: ReturnType<typeof flow> | undefined;
  for (let columns = 1; columns <= widest && (best === undefined || best.overflow.length > 0); columns += 1) {
    const tried = flow(flowing, sheet, typeMm, columns, under);
    if (best === undefined || tried.overflow.length < best.overflow.length) best = tried;
  }
  const laid = [...placed, ...(best?.items ?? [])];
  const flowed = best?.headings ?? [];
  const headings = [...placedHeadings(fixed, placed, flowed), ...flowed];
  return { items: laid, headings, overflow: best?.overflow ?? [], clashes: clashesOf(placed, sheet) };
}

/** Headings of groups whose cloths lie where the note puts them: above the one that is read first. */
function placedHeadings(items: readonly BoardItem[], placed: readonly LaidItem[], flowed: LaidBoard['headings']): LaidBoard['headings'] {
  const groups = new Set(items.map(({ group }) => group).filter((group) => group !== '' && !flowed.some((one) => one.group === group)));
  return [...groups].flatMap((group) => {
    const [first] = placed.filter((_, at) => items[at]?.group === group).sort((a, b) => a.cloth.y - b.cloth.y || a.cloth.x - b.cloth.x);
    if (!first) return [];
    const { x, y, widthMm } = first.cloth;
    const below = first.caption && first.caption.x === x ? first.caption.widthMm : widthMm;
    return [{ group, x, y: Math.max(0, y - BOARD.heading), widthMm: below, heightMm: BOARD.heading }];
  });
}

function flow(items: readonly BoardItem[], sheet: SheetMm, typeMm: number, columns: number, top: number) {
  const cell = (sheet.widthMm - 2 * BOARD.margin - (columns - 1) * BOARD.gap) / columns;
  const cloth = { widthMm: Math.min(cell, BOARD.most), heightMm: Math.min(cell, BOARD.most) * CLOTH_RATIO };
  const words = Math.min(cell, MOST_CHARACTERS * CHARACTER * typeMm);
  const laid: LaidItem[] = [];
  const headings: (Box & { group: string })[] = [];
  const overflow: string[] = [];
  let y = top;
  for (let at = 0; at < items.length; at += columns) {
    const row = items.slice(at, at + columns);
    const opens = row.map(({ group }, column) => group !== '' && group !== items[at + column - 1]?.group);
    const head = opens.some(Boolean) ? BOARD.heading : 0;
    const captions = row.map(({ captionLength, captionSpot }) =>
      captionSpot === 'none' ? 0 : captionHeightMm(captionLength, words, typeMm),
    );
    const height = head + cloth.heightMm + BOARD.captionGap + Math.max(...captions);
    if (y + height > sheet.heightMm - BOARD.bottom) {
      overflow.push(...items.slice(at).map(({ id }) => id));
      break;
    }
    row.forEach((item, column) => {
      const x = BOARD.margin + column * (cell + BOARD.gap);
      if (opens[column]) headings.push({ group: item.group, x, y, widthMm: words, heightMm: BOARD.heading });
      const caption = captions[column] ?? 0;
      laid.push({
        id: item.id,
        fixed: false,
        cloth: { x, y: y + head, ...cloth },
        ...(caption > 0 ? { caption: { x, y: y + head + cloth.heightMm + BOARD.captionGap, widthMm: words, heightMm: caption } } : {}),
      });
    });
    y += height + BOARD.gap;
  }
  return { items: laid, headings, overflow };
}

function fixedCloth({ fixed }: BoardItem): Box {
  const widthMm = fixed?.widthMm ?? 50;
  return { x: fixed?.x ?? 0, y: fixed?.y ?? 0, widthMm, heightMm: fixed?.heightMm ?? widthMm * CLOTH_RATIO };
}

/** An item where the note puts it; its caption to its right, or below it and so wide. */
function placeFixed(item: BoardItem, words: number, typeMm: number): LaidItem {
  const { id, captionLength, captionSpot } = item;
  const cloth = fixedCloth(item);
  if (captionSpot === 'none' || captionLength === 0) return { id, cloth, fixed: true };
  const { widthMm } = cloth;
  const width = Math.max(widthMm, captionSpot === 'beside' ? BESIDE_MM : words);
  const heightMm = captionHeightMm(captionLength, width, typeMm);
  const caption =
    captionSpot === 'beside'
      ? { x: cloth.x + widthMm + BOARD.captionGap, y: cloth.y, widthMm: width, heightMm }
      : { x: cloth.x, y: cloth.y + cloth.heightMm + BOARD.captionGap, widthMm: width, heightMm };
  return { id, cloth, caption, fixed: true };
}

/** Characters on a line at most: longer ones nobody follows. Our choice. */
const MOST_CHARACTERS = 80;

/**
 * How wide the caption below a cloth may be: up to the next cloth on its right, or the margin. The narrowest serves the whole board,
 * so that its columns of words are as even as where they were laid out.
 */
function roomBelow(item: BoardItem, cloths: readonly Box[], sheet: SheetMm, typeMm: number): number {
  if (item.captionSpot !== 'below' || item.captionLength === 0) return Infinity;
  const { x, y, widthMm, heightMm } = fixedCloth(item);
  const deepest = y + heightMm + BOARD.captionGap + captionHeightMm(item.captionLength, widthMm, typeMm);
  const stops = cloths.filter((other) => other.x > x && other.y < deepest && other.y + other.heightMm > y);
  return Math.min(sheet.widthMm - BOARD.margin, ...stops.map((other) => other.x - BOARD.gap)) - x;
}

/** A caption beside a cloth is at least so wide: about 25 characters on a line. */
const BESIDE_MM = 45;

const bottomOf = ({ cloth, caption }: LaidItem): number =>
  Math.max(cloth.y + cloth.heightMm, caption === undefined ? 0 : caption.y + caption.heightMm);

const boxesOf = ({ cloth, caption }: LaidItem): readonly Box[] => (caption ? [cloth, caption] : [cloth]);

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.widthMm && b.x < a.x + a.widthMm && a.y < b.y + b.heightMm && b.y < a.y + a.heightMm;

const leaves = (box: Box, { widthMm, heightMm }: SheetMm): boolean =>
  box.x < 0 || box.y < 0 || box.x + box.widthMm > widthMm || box.y + box.heightMm > heightMm;

function clashesOf(placed: readonly LaidItem[], sheet: SheetMm): LaidBoard['clashes'] {
  return placed.flatMap((one, at) => [
    ...(boxesOf(one).some((box) => leaves(box, sheet)) ? [{ id: one.id }] : []),
    ...placed
      .slice(at + 1)
      .filter((other) => boxesOf(one).some((box) => boxesOf(other).some((another) => overlap(box, another))))
      .map((other) => ({ id: one.id, with: other.id })),
  ]);
}
