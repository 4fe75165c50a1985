/** "1 file", "5,000 files". */
export const counted = (count: number, what: string): string => `${count.toLocaleString()} ${what}${count === 1 ? '' : 's'}`;
