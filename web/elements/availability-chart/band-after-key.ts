import type { DrawnBand, DrawnRow } from './availability-chart-view.ts';

const middle = ({ touch }: DrawnBand): number => touch.x + touch.width / 2;

/**
 * The band a key leads to: arrows along the row and to the nearest one of the next row that has any, Home and End along the row.
 *
 * @returns undefined when the key is not one of these, or leads nowhere.
 */
export function bandAfterKey(key: string, claimKey: string, rows: readonly DrawnRow[]): string | undefined {
  const filled = rows.filter(({ bands }) => bands.length > 0);
  const at = filled.findIndex(({ bands }) => bands.some((band) => band.claimKey === claimKey));
  const along = (filled[at]?.bands ?? []).toSorted((a, b) => a.touch.x - b.touch.x || a.touch.y - b.touch.y);
  const here = along.findIndex((band) => band.claimKey === claimKey);
  const current = along[here];
  if (!current) return undefined;
  const nearest = (row: DrawnRow | undefined) =>
    row?.bands.toSorted((a, b) => Math.abs(middle(a) - middle(current)) - Math.abs(middle(b) - middle(current)))[0];
  const led: Readonly<Record<string, () => DrawnBand | undefined>> = {
    ArrowRight: () => along[here + 1],
    ArrowLeft: () => along[here - 1],
    ArrowDown: () => nearest(filled[at + 1]),
    ArrowUp: () => nearest(filled[at - 1]),
    Home: () => along[0],
    End: () => along.at(-1),
  };
  return led[key]?.()?.claimKey;
}
