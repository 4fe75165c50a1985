/** What a spreadsheet would run as a formula: these signs, as wide as a CJK letter too, or a tab or line break, at the start; apostrophes before it count as none. */
const RUNS = /^(?:'*[\t\r\n]|[\s']*[=+\-@＝＋－＠])/;
/** A negative number is no formula, and stays one. */
const NUMBER = /^-?\d+(?:\.\d+)?$/;

/** A cell of comma-separated values: always quoted; one that a spreadsheet would run as a formula is made text by an apostrophe. */
export const csvCell = (text: string): string => `"${(RUNS.test(text) && !NUMBER.test(text) ? `'${text}` : text).replaceAll('"', '""')}"`;

/** The words of a cell as it came: trimmed, and without the apostrophe that keeps a spreadsheet from running it. */
export function wordsOfCell(cell: string): string {
  const trimmed = cell.trim();
  return trimmed.startsWith("'") && RUNS.test(trimmed.slice(1)) ? trimmed.slice(1) : trimmed;
}
