import { solveLinear } from './solve-linear.ts';

/** Below this a gradient counts as zero, relative to the right side. */
const TOLERANCE = 1e-12;

/**
 * Non-negative least squares: min ‖A x − b‖ with every x ≥ 0.
 *
 * @param columns the columns of A, each as long as `b`.
 * @returns one number ≥ 0 for each column; 0 for a column that is all zero.
 * @source Lawson & Hanson 1974, algorithm NNLS, on the normal equations: few columns, so their condition is no concern.
 */
export function nonNegativeLeastSquares(columns: readonly (readonly number[])[], b: readonly number[]): readonly number[] {
  const n = columns.length;
  // Columns of length 1: how strong a dye is must not decide what counts as singular.
  const norms = columns.map((column) => Math.sqrt(dot(column, column)));
  const unit = columns.map((column, j) => column.map((value) => (norms[j] ? value / norms[j] : 0)));
  const gram = unit.map((one) => unit.map((other) => dot(one, other)));
  const target = unit.map((column) => dot(column, b));
  const scale = TOLERANCE * Math.max(1e-300, ...target.map(Math.abs));
  const x = new Array<number>(n).fill(0);
  const free = new Set<number>();
  const gradient = (j: number): number => (target[j] ?? 0) - x.reduce((sum, value, i) => sum + value * (gram[j]?.[i] ?? 0), 0);
  for (let round = 0; round < 3 * n + 3; round++) {
    let best = -1;
    let steepest = scale;
    for (let j = 0; j < n; j++)
      if (!free.has(j) && gradient(j) > steepest) {
        steepest = gradient(j);
        best = j;
      }
    if (best < 0) break;
    free.add(best);
    if (!settle(x, free, gram, target)) {
      free.delete(best);
      break;
    }
  }
  return x.map((value, j) => (norms[j] ? value / norms[j] : 0));
}

/** Solves on the free columns, stepping back to the border and dropping a column whenever one would turn negative. */
function settle(x: number[], free: Set<number>, gram: readonly (readonly number[])[], target: readonly number[]): boolean {
  while (free.size > 0) {
    const order = [...free];
    const matrix = Float64Array.from(order.flatMap((i) => order.map((j) => gram[i]?.[j] ?? 0)));
    const wanted = Float64Array.from(order.map((i) => target[i] ?? 0));
    if (!solveLinear(matrix, wanted)) return false;
    let step = 1;
    order.forEach((j, k) => {
      const here = x[j] ?? 0;
      const there = wanted[k] ?? 0;
      if (there < 0) step = Math.min(step, here / Math.max(here - there, 1e-300));
    });
    order.forEach((j, k) => (x[j] = Math.max(0, (x[j] ?? 0) + step * ((wanted[k] ?? 0) - (x[j] ?? 0)))));
    if (step === 1) return true;
    const border = order.filter((j, k) => (wanted[k] ?? 0) < 0 && (x[j] ?? 0) <= 1e-12);
    for (const j of border.length > 0 ? border : order.slice(-1)) {
      x[j] = 0;
      free.delete(j);
    }
  }
  return true;
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
