import type { WrittenSide } from './written-side.ts';

/** An era said last counts for all before it; an era said first and in front ("AD 50–100") for all after it. */
function withEras(sides: readonly WrittenSide[]): readonly WrittenSide[] {
  const first = sides[0];
  const lastEra = sides.at(-1)?.era;
  const carried = lastEra ?? (first?.era === 'ce' || first?.eraLeads ? first.era : undefined);
  return sides.map((side) => (side.era === undefined && !side.minus && carried ? { ...side, era: carried } : side));
}

const isDayAlone = ({ kind, digits, month, era, unitYears, share }: WrittenSide): boolean =>
  month === undefined &&
  era === undefined &&
  ((kind === 'year' && (digits?.length ?? 9) <= 2) || (kind === 'ordinal' && !unitYears && !share));

/** What a side leaves out and its right neighbour says: "late 9th–early 10th century", "mid–late 9th century", "12–15 October 1405". */
function fromRight(side: WrittenSide, right: WrittenSide): WrittenSide {
  const { kind, digits, n, unitYears } = right;
  const share = right.share;
  if (right.day !== undefined && isDayAlone(side)) return { ...right, circa: side.circa, query: side.query };
  if (side.kind === 'bare') return { ...side, kind, digits, n, unitYears };
  if (side.kind !== 'ordinal' || side.unitYears || side.n === undefined) return side;
  // "1st–2nd quarter of the 14th century"
  if (!side.share && share && !share.named && side.n > 0 && side.n < share.index) {
    return { ...side, kind, digits, n, unitYears, share: { ...share, index: side.n } };
  }
  return { ...side, unitYears };
}

/**
 * Lets each side of a written date borrow from the others what people say once.
 *
 * @returns as many sides; what nobody says stays left out.
 * @error none.
 */
export function borrowSides(sides: readonly WrittenSide[]): readonly WrittenSide[] {
  const filled: WrittenSide[] = [];
  for (const side of withEras(sides).toReversed()) {
    const right = filled[0];
    filled.unshift(right ? fromRight(side, right) : side);
  }
  // "12th century–13th"
  return filled.map((side, at) => (side.kind === 'ordinal' && !side.unitYears ? { ...side, unitYears: filled[at - 1]?.unitYears } : side));
}
