/** For each token of `from`, the place of the equal token of `to` it is paired with; pairs never cross. */
export type Alignment = readonly (number | undefined)[];

/** Comparisons beyond which two texts are held to have nothing in common between their like ends (our choice: a quarter of a second). */
const MOST_COMPARED = 16_000_000;

/**
 * Pairs as many equal tokens of two texts as can be paired without crossing.
 *
 * Like beginnings and endings are paired first, then the longest common run of tokens in order between them.
 */
export function alignTokens(from: readonly string[], to: readonly string[]): Alignment {
  const pairs: (number | undefined)[] = Array.from(from, () => undefined);
  let start = 0;
  while (start < from.length && start < to.length && from[start] === to[start]) {
    pairs[start] = start;
    start += 1;
  }
  let [fromEnd, toEnd] = [from.length, to.length];
  while (fromEnd > start && toEnd > start && from[fromEnd - 1] === to[toEnd - 1]) {
    fromEnd -= 1;
    toEnd -= 1;
    pairs[fromEnd] = toEnd;
  }
  const [rows, columns] = [fromEnd - start, toEnd - start];
  if (rows === 0 || columns === 0 || rows * columns > MOST_COMPARED) return pairs;
  // lengths[row][column]: how many can be paired from there on.
  const width = columns + 1;
  const lengths = new Uint32Array((rows + 1) * width);
  const lengthAt = (row: number, column: number): number => lengths[row * width + column] ?? 0;
  for (let row = rows - 1; row >= 0; row--)
    for (let column = columns - 1; column >= 0; column--)
      lengths[row * width + column] =
        from[start + row] === to[start + column]
          ? lengthAt(row + 1, column + 1) + 1
          : Math.max(lengthAt(row + 1, column), lengthAt(row, column + 1));
  for (let row = 0, column = 0; row < rows && column < columns;) {
    if (from[start + row] === to[start + column]) {
      pairs[start + row] = start + column;
      row += 1;
      column += 1;
    } else if (lengthAt(row + 1, column) >= lengthAt(row, column + 1)) row += 1;
    else column += 1;
  }
  return pairs;
}
