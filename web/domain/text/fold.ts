/** Letters that do not come apart into a base letter and a mark, but that people type as plain letters. */
const LIGATURES: Readonly<Record<string, string>> = { ß: 'ss', æ: 'ae', œ: 'oe', ø: 'o', ð: 'd', þ: 'th', ł: 'l', đ: 'd', ı: 'i' };

/** Most names: nothing of them is folded but their case. */
const PLAIN = /^[\x20-\x7e]*$/;

/** Small letters without marks. */
const plainLetters = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[ßæœøðþłđı]/g, (letter) => LIGATURES[letter] ?? letter);

/**
 * A name as it is compared: case and accents folded, spaces and hyphens alike, ends trimmed.
 *
 * @source our choice, because the rule of the notebook is "case and accents folded".
 */
export const fold = (text: string): string =>
  (PLAIN.test(text) ? text.toLowerCase() : plainLetters(text)).replace(/[\s_‐‑–—-]+/g, ' ').trim();
