/** Prints rows as a table with aligned columns, numbers to the right. */
export function printTable(title: string, head: readonly string[], rows: readonly (readonly (string | number)[])[]): void {
  const cells = [head, ...rows.map((row) => row.map((cell) => (typeof cell === 'number' ? formatNumber(cell) : cell)))];
  const widths = head.map((_, at) => Math.max(...cells.map((row) => (row[at] ?? '').length)));
  console.log(`\n${title}`);
  for (const row of cells)
    console.log(`  ${row.map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0))).join('  ')}`);
}

const formatNumber = (value: number): string =>
  Math.abs(value) >= 100 ? value.toFixed(0) : Math.abs(value) >= 1 ? value.toFixed(2) : value.toPrecision(2);

/** The value a share of the sorted values lies at or below. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
}
