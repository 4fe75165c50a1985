/** The year a shortened one stands for beside a full one: 1405 and 10 give 1410. Digits only; nothing to fill gives the short one. */
export const filledYear = (full: string, short: string): number => Number(full.slice(0, Math.max(0, full.length - short.length)) + short);
