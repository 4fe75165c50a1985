/** "1 file", "5,000 files". */
export const counted = (count: number, what: string): string => `${count.toLocaleString('en')} ${what}${count === 1 ? '' : 's'}`;
