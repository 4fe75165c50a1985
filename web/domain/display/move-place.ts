import type { Box } from './lay-out.ts';
import type { SheetMm } from './sheet-size.ts';

/** Keys that move a cloth on the board. */
export type MoveKey = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown';

const STEPS: Readonly<Record<MoveKey, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Whether a key moves a cloth. */
export const isMoveKey = (key: string): key is MoveKey => Object.hasOwn(STEPS, key);

/** A cloth moved by a key: 5 mm, or 1 mm when fine. It stays on the sheet. */
export function movedByKey(box: Box, key: MoveKey, fine: boolean, sheet: SheetMm): Box {
  const [dx, dy] = STEPS[key];
  const step = fine ? 1 : GRID_MM;
  return kept({ ...box, x: box.x + dx * step, y: box.y + dy * step }, sheet);
}

/** A cloth moved by a pointer, laid on the nearest line of a grid of 5 mm. It stays on the sheet. */
export const movedBy = (box: Box, dx: number, dy: number, sheet: SheetMm): Box =>
  kept({ ...box, x: onGrid(box.x + dx), y: onGrid(box.y + dy) }, sheet);

const GRID_MM = 5;
const onGrid = (mm: number): number => Math.round(mm / GRID_MM) * GRID_MM;
const between = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), Math.max(least, most));

const kept = (box: Box, { widthMm, heightMm }: SheetMm): Box => ({
  ...box,
  x: round(between(box.x, 0, widthMm - box.widthMm)),
  y: round(between(box.y, 0, heightMm - box.heightMm)),
});

/** A tenth of a millimetre is fine enough for cloth. */
const round = (mm: number): number => Math.round(mm * 10) / 10;
