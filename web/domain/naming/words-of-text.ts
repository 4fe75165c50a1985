import { fold } from '../text/fold.ts';

/** One word of a text, with where it stands. */
export interface TextWord {
  /** UTF-16 code units of the text, half open. */
  readonly start: number;
  readonly end: number;
  /** Folded, apostrophes left out: `dyers` for "Dyer’s". */
  readonly key: string;
  /** The word without a possessive 's, folded, and where it ends: `woad` for "woad's". */
  readonly stem?: { readonly key: string; readonly end: number };
}

/** Letters, marks and digits; parts joined by an underscore or an apostrophe are one word. Soft hyphens do not part a word. */
const WORD = /[\p{L}\p{M}\p{Nd}\p{Nl}\u00AD]+(?:(?:_+|['’‘])[\p{L}\p{M}\p{Nd}\p{Nl}\u00AD]+)*/gu;

/** Little words that French and Italian shorten before a vowel: what follows them is a word of its own. */
const SHORTENED = new Set(['l', 'd', 'qu', 's', 'n', 'm', 'dell', 'all', 'nell', 'sull', 'dall', 'un']);

/** Modifier letters of transliterated names, left out of keys as accents are. */
const MODIFIERS = /[\u02B0-\u02FF\u00AD'’‘]/g;

const known = new Map<string, string>();
const MOST_KNOWN = 200_000;

/** A word as names are compared: case, accents, apostrophes and modifier letters folded. */
export function wordKey(word: string): string {
  const cached = known.get(word);
  if (cached !== undefined) return cached;
  // Modifier letters go first: the fold would turn some of them into plain letters.
  const key = fold(word.replace(MODIFIERS, ''));
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(word, key);
  return key;
}

/**
 * The words of a text in order, in time linear in its length.
 *
 * @returns `l’indigo` as two words, `woad’s` as one with a stem, `welded` as one.
 */
export function wordsOfText(text: string): readonly TextWord[] {
  const words: TextWord[] = [];
  for (const match of text.matchAll(WORD)) {
    const whole = match[0];
    let start = match.index;
    const end = start + whole.length;
    let rest = whole;
    for (let at = rest.search(/['’‘]/); at > 0; at = rest.search(/['’‘]/)) {
      const left = wordKey(rest.slice(0, at));
      if (!SHORTENED.has(left)) break;
      words.push({ start, end: start + at, key: left });
      start += at + 1;
      rest = rest.slice(at + 1);
    }
    const possessive = /['’‘][sS]$/.test(rest) ? rest.slice(0, -2) : undefined;
    const key = wordKey(rest);
    words.push(possessive === undefined ? { start, end, key } : { start, end, key, stem: { key: wordKey(possessive), end: end - 2 } });
  }
  return words;
}

/** A name's words as keys. */
export const keysOfName = (name: string): readonly string[] =>
  wordsOfText(name)
    .map(({ key }) => key)
    .filter((key) => key !== '');
