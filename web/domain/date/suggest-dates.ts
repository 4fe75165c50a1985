import { formatYears } from './format-years.ts';

type Two = readonly [string, string];

const ordinal = (n: number): string => {
  const suffix = n % 100 >= 11 && n % 100 <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${suffix}`;
};

/** "13th century". */
export const centuryName = (n: number): string => `${ordinal(n)} century`;

/** Two readings of a span that runs backwards: the years turned round, and the other era. */
export function reversedSuggestions(from: number, to: number): Two {
  const [low, high] = from < to ? [from, to] : [to, from];
  const turned = formatYears({ from: low, to: high });
  if (from > 0 && to > 0) return [turned, formatYears({ from: 1 - from, to: 1 - to })];
  if (from <= 0 && to <= 0) return [turned, formatYears({ from, to: 1 - to })];
  const [a, b] = [from, 1 - to].sort((x, y) => x - y) as [number, number];
  return [turned, formatYears({ from: a, to: b })];
}

/** Two readings of a round number of years with an s: the hundred, and the ten. */
export const roundSuggestions = (year: number, bce: boolean): Two => {
  const reach = (years: number) => (bce ? { from: 1 - (year + years - 1), to: 1 - year } : { from: year, to: year + years - 1 });
  return [formatYears(reach(100)), formatYears(reach(10))];
};

/**
 * Two texts that can be read, as near as may be to one that cannot: built on the first number in it that looks like a year, else on the first.
 *
 * @param text short: the caller bounds its length.
 * @returns two different texts that `parseDate` reads.
 * @error none.
 */
export function nearestSuggestions(text: string): Two {
  const digits = (/\d{3,}/.exec(text) ?? /\d+/.exec(text))?.[0] ?? '';
  const number = Number(digits.slice(0, 4));
  if (!number) return ['c. 1350', 'late 9th century'];
  const bce = /b\.?\s?c/i.test(text);
  const era = bce ? ' BCE' : '';
  const name = number <= 21 ? centuryName(number) : centuryName(Math.ceil(number / 100));
  if (/\b(?:end|close|later)\b/i.test(text)) return [`late ${name}${era}`, `last quarter of the ${name}${era}`];
  if (/\b(?:beginning|start|opening|earlier)\b/i.test(text)) return [`early ${name}${era}`, `first quarter of the ${name}${era}`];
  if (/^\s*by\b/i.test(text) && number > 31) return [`until ${number}${era}`, `from ${number}${era}`];
  if (number <= 21) return [name + era, bce ? `c. ${number} BCE` : `c. AD ${number}`];
  return [`c. ${number}${era}`, name + era];
}
