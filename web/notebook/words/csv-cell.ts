/** A cell of comma-separated values: always quoted; one that a spreadsheet would run as a formula is made text by an apostrophe. */
export const csvCell = (text: string): string => `"${(/^[=+\-@\t\r]/.test(text) ? `'${text}` : text).replaceAll('"', '""')}"`;
