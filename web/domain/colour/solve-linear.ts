/** A pivot below this share of the largest entry is rounding. */
const SINGULAR = 1e-13;

/**
 * Solves A x = b by Gaussian elimination with partial pivoting, in place.
 *
 * @param a square matrix, row by row, n × n; overwritten.
 * @param b right side, n values; becomes x.
 * @returns false when the matrix is singular; then `b` is of no use.
 */
export function solveLinear(a: Float64Array, b: Float64Array): boolean {
  const n = b.length;
  const at = (row: number, column: number): number => a[row * n + column] as number;
  let largest = 0;
  for (const value of a) largest = Math.max(largest, Math.abs(value));
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let row = column + 1; row < n; row++) if (Math.abs(at(row, column)) > Math.abs(at(pivot, column))) pivot = row;
    const head = at(pivot, column);
    if (!(Math.abs(head) > SINGULAR * largest)) return false;
    if (pivot !== column) {
      for (let k = column; k < n; k++) {
        const kept = at(column, k);
        a[column * n + k] = at(pivot, k);
        a[pivot * n + k] = kept;
      }
      const kept = b[column] as number;
      b[column] = b[pivot] as number;
      b[pivot] = kept;
    }
    for (let row = column + 1; row < n; row++) {
      const factor = at(row, column) / head;
      if (factor === 0) continue;
      for (let k = column + 1; k < n; k++) a[row * n + k] = at(row, k) - factor * at(column, k);
      b[row] = (b[row] as number) - factor * (b[column] as number);
    }
  }
  for (let row = n - 1; row >= 0; row--) {
    let value = b[row] as number;
    for (let k = row + 1; k < n; k++) value -= at(row, k) * (b[k] as number);
    b[row] = value / at(row, row);
  }
  return true;
}
