import type { Amount } from './note.ts';

const NUMBER = String.raw`(?:\d+[.,]\d+|\d+ \d+/\d+|\d+/\d+|\d+ ?[½¼¾⅓⅔⅛]|[½¼¾⅓⅔⅛]|\d+)`;
const AMOUNT = new RegExp(String.raw`^(${NUMBER})(?:\s*(?:–|—|-|to)\s*(${NUMBER}))?\s*(:\s*(?:${NUMBER}))?\s*([^]*)$`, 'u');
const PARTS: Readonly<Record<string, number>> = { '½': 1 / 2, '¼': 1 / 4, '¾': 3 / 4, '⅓': 1 / 3, '⅔': 2 / 3, '⅛': 1 / 8 };

/**
 * Reads an amount such as `15 %`, `15% WOF`, `3–5 g/L`, `2 oz`, `1/2 lb` or `1:4`.
 *
 * @returns always the text; `value`, `upTo` (the upper end of a range) and `unit` only where the whole of it was understood.
 *   The unit `%` is % of the fibre's weight; a ratio `30:1` is the quotient, unit `ratio`; a bare number has no unit.
 *   Words of doubt (`about 15 %`) leave it unread: the doubt must not vanish.
 */
export function parseAmount(written: string): Amount {
  const text = written.trim();
  const [, first, second, against, rest] = AMOUNT.exec(text) ?? [];
  const value = numberOf(first);
  const upTo = numberOf(second);
  if (rest !== undefined && /[\n\r\u2028\u2029]/.test(rest)) return { text };
  if (value === undefined || (second !== undefined && upTo === undefined)) return { text };
  if (upTo !== undefined && upTo < value) return { text };
  const range = upTo === undefined ? {} : { upTo };
  if (against !== undefined) {
    const divisor = numberOf(against.slice(1).trim());
    if (rest !== '' || divisor === undefined || !Number.isFinite((upTo ?? value) / divisor)) return { text };
    return { text, value: value / divisor, ...(upTo === undefined ? {} : { upTo: upTo / divisor }), unit: 'ratio' };
  }
  if (rest === undefined || rest === '') return { text, value, ...range };
  const unit = unitOf(rest);
  return unit === undefined ? { text } : { text, value, ...range, unit };
}

function unitOf(rest: string): string | undefined {
  if (/^%(?:\s*\(?(?:wof|w\.o\.f\.|owf|o\.w\.f\.|of (?:the )?(?:weight of )?fib(?:re|er))\)?)?$/iu.test(rest)) return '%';
  const rate = /^(\p{L}+)\s*(?:\/|per)\s*(l|litre|liter|ml|kg|g|lb|oz|gallon|gal)$/iu.exec(rest);
  if (rate?.[1] !== undefined && rate[2] !== undefined) return `${rate[1]}/${/^(?:l|litre|liter)$/iu.test(rate[2]) ? 'L' : rate[2]}`;
  return /^\p{L}[\p{L} .]{0,30}$/u.test(rest) && !/\b(?:or|and|to|of|per)\b/iu.test(rest) ? rest : undefined;
}

/** A comma before exactly three digits may be a thousands mark or a decimal one: not read. */
function numberOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const value = figureOf(text);
  return Number.isFinite(value) ? value : undefined;
}

/** NaN or infinite where it is no number, or one too long for any. */
function figureOf(text: string): number {
  const part = PARTS[text.slice(-1)];
  if (part !== undefined) return Number(text.slice(0, -1).trim() || 0) + part;
  const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text);
  if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  return /,\d{3}$/.test(text) ? NaN : Number(text.replace(',', '.'));
}

/**
 * Grams to one of each unit.
 *
 * @source International Yard and Pound agreement of 1959: 1 lb = 0.45359237 kg exactly; 16 oz to the pound.
 */
const GRAMS: Readonly<Record<string, number>> = {
  mg: 0.001,
  g: 1,
  gram: 1,
  grams: 1,
  kg: 1000,
  kilo: 1000,
  kilos: 1000,
  oz: 28.349523125,
  ounce: 28.349523125,
  ounces: 28.349523125,
  lb: 453.59237,
  lbs: 453.59237,
  pound: 453.59237,
  pounds: 453.59237,
};

/** Grams: nobody dyes more than this in one pot (our choice: far above a workshop's vat, low enough to catch a slipped unit). */
export const MOST_FIBRE_GRAMS = 100_000;

/**
 * Reads a mass of fibre: `50 g`, `0.5 kg`, `2 oz`.
 *
 * @returns grams; `unreadable` where number or unit is missing; `out-of-range` where not above 0 and at most 100 kg.
 */
export function parseFibreGrams(text: string): number | 'unreadable' | 'out-of-range' {
  const negative = /^\s*[-−]\s*\d/.test(text);
  const { value, upTo, unit } = parseAmount(negative ? text.replace(/[-−]/, '') : text);
  if (value === undefined || upTo !== undefined || unit === undefined || !Object.hasOwn(GRAMS, unit.toLowerCase())) return 'unreadable';
  const grams = value * (GRAMS[unit.toLowerCase()] ?? 0);
  // Twelve digits are kept: more would only show how binary fractions multiply.
  return negative || grams <= 0 || grams > MOST_FIBRE_GRAMS ? 'out-of-range' : Number(grams.toPrecision(12));
}
