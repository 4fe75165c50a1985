import type { Sheet } from '../note/display-record.ts';

/** A sheet in millimetres. */
export interface SheetMm {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Upright sizes in mm. @source ISO 216. */
const SIZES: Readonly<Record<Exclude<Sheet['size'], 'free'>, readonly [number, number]>> = {
  a4: [210, 297],
  a3: [297, 420],
  a2: [420, 594],
  a1: [594, 841],
};

/** What a display without a sheet lies on. Our choice: the board most halls can hang. */
export const USUAL_SHEET: Sheet = { size: 'a3', orientation: 'portrait' };

/** The size of a sheet; a free one without numbers is as A3. The orientation turns named sizes, a free sheet is as it is written. */
export function sheetMm(sheet: Sheet = USUAL_SHEET): SheetMm {
  if (sheet.size === 'free') {
    const [widthMm, heightMm] = SIZES.a3;
    return { widthMm: sheet.widthMm ?? widthMm, heightMm: sheet.heightMm ?? heightMm };
  }
  const [short, long] = SIZES[sheet.size];
  return sheet.orientation === 'landscape' ? { widthMm: long, heightMm: short } : { widthMm: short, heightMm: long };
}

/** Type on a sheet in mm: the bigger the sheet, the farther off it is read. Our choice: 9, 10, 12 and 14 points. */
export function captionTypeMm({ widthMm, heightMm }: SheetMm): number {
  const side = Math.max(widthMm, heightMm);
  return side <= 300 ? 3.2 : side <= 425 ? 3.5 : side <= 600 ? 4.2 : 4.9;
}
