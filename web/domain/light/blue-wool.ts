/** A span of ISO blue wool classes, 1 (fades first) to 8 (last), both ends in it: "3-4" is a doubt, not a mean. */
export interface BlueWoolRange {
  readonly from: number;
  readonly to: number;
}

/** Why a published grade gives no blue wool class. */
export type NoBlueWool = 'other-scale' | 'unreadable' | 'no-grade';

/**
 * The blue wool classes a published grade speaks of.
 *
 * Only the European set 1–8 is read. No reliable conversion from the American L2–L9 was found, so none is made;
 * grey-scale grades (ISO 105-A02) run the other way and are no light fastness at all.
 *
 * @param grade "4", "3-4", "3–6", "5 to 6".
 * @param scale as the note writes it: "ISO 105-B02", "blue wool, BS 1–8".
 * @source ISO 105-B02:2014 holds two sets, 1–8 and L2–L9, whose results need not agree.
 */
export function readBlueWool(grade: string | undefined, scale = ''): BlueWoolRange | NoBlueWool {
  if (grade === undefined || grade.trim() === '') return 'no-grade';
  if (/\bL\s?[2-9]\b/i.test(grade) || /\bL\s?[2-9]\b|AATCC|gr[ae]y.?scale|105-?\s?[ACDEPX]\d/i.test(scale)) return 'other-scale';
  if (scale.trim() !== '' && !/blue.?wool|B0[1-8]|\bBS\b|ISO/i.test(scale)) return 'other-scale';
  const found = /^(?:BW\s?|class\s?)?([1-8])(?:\s*(?:-|–|to|\/)\s*(?:BW\s?)?([1-8]))?$/i.exec(grade.trim());
  if (!found) return 'unreadable';
  const first = Number(found[1]);
  const last = Number(found[2] ?? found[1]);
  return { from: Math.min(first, last), to: Math.max(first, last) };
}

/** The span that holds all of some spans; undefined for none. */
export const hullOf = (ranges: readonly BlueWoolRange[]): BlueWoolRange | undefined =>
  ranges.length === 0 ? undefined : { from: Math.min(...ranges.map(({ from }) => from)), to: Math.max(...ranges.map(({ to }) => to)) };
