/** A word, number or mark of a written date. */
export type DateToken =
  | { readonly kind: 'number'; readonly digits: string }
  | { readonly kind: 'decade'; readonly digits: string }
  /** `word`: spelled out, so that "third" can also be a fraction. */
  | { readonly kind: 'ordinal'; readonly n: number; readonly word: boolean }
  | { readonly kind: 'third'; readonly index: 1 | 2 | 3 }
  | { readonly kind: 'fraction'; readonly of: 2 | 3 | 4 }
  | { readonly kind: 'unit'; readonly years: 100 | 1000 }
  | { readonly kind: 'era'; readonly era: 'bce' | 'ce' }
  | { readonly kind: 'bound'; readonly bound: 'before' | 'after' | 'until' | 'from' | 'between' | 'onwards' }
  | { readonly kind: 'join'; readonly sign: '-' | '–' | '/' | 'and' }
  | { readonly kind: 'month'; readonly month: number }
  | Mark<'circa' | 'query' | 'last' | 'season' | 'minus' | 'unknown'>;

/** A token that says no more than its kind; one type for each kind. */
type Mark<K extends string> = K extends string ? { readonly kind: K } : never;

const ones = 'first second third fourth fifth sixth seventh eighth ninth'.split(' ');
const teens = 'tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth'.split(' ');
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const ordinalWords = new Map([...ones, ...teens].map((word, at) => [word, at + 1]));
tens.forEach((word, at) => ordinalWords.set(word.replace(/y$/, 'ieth'), (at + 2) * 10));
const tensWords = new Map(tens.map((word, at) => [word, (at + 2) * 10]));
const monthNames = 'january february march april may june july august september october november december'.split(' ');

const words = new Map<string, DateToken>();
const say = (token: DateToken, list: string): void => list.split(' ').forEach((word) => words.set(word, token));
say({ kind: 'circa' }, 'ca circa cca about around approx approximately roughly');
say({ kind: 'era', era: 'bce' }, 'bc bce');
say({ kind: 'era', era: 'ce' }, 'ad ce');
say({ kind: 'third', index: 1 }, 'early');
say({ kind: 'third', index: 2 }, 'mid middle');
say({ kind: 'third', index: 3 }, 'late');
say({ kind: 'fraction', of: 2 }, 'half halves');
say({ kind: 'fraction', of: 3 }, 'thirds');
say({ kind: 'fraction', of: 4 }, 'quarter quarters');
say({ kind: 'last' }, 'last final latter');
say({ kind: 'unit', years: 100 }, 'century centuries cent cents cen');
say({ kind: 'unit', years: 1000 }, 'millennium millennia millenium');
say({ kind: 'bound', bound: 'before' }, 'before pre');
say({ kind: 'bound', bound: 'after' }, 'after post');
say({ kind: 'bound', bound: 'until' }, 'until till til');
say({ kind: 'bound', bound: 'from' }, 'from since');
say({ kind: 'bound', bound: 'between' }, 'between');
say({ kind: 'bound', bound: 'onwards' }, 'on onward onwards');
say({ kind: 'join', sign: '–' }, 'to through – — ‒ ―');
say({ kind: 'join', sign: 'and' }, 'and &');
say({ kind: 'join', sign: '-' }, '-');
say({ kind: 'join', sign: '/' }, '/');
say({ kind: 'query' }, '? ~ %');
say({ kind: 'season' }, 'spring summer autumn fall winter');
monthNames.forEach((name, at) => say({ kind: 'month', month: at + 1 }, `${name} ${name.slice(0, 3)}`));
say({ kind: 'month', month: 9 }, 'sept');

const passedOver = new Set(['the', 'of', 'in', 'year', 'years', '.', ',', '(', ')']);
const scan = /(\d+)(?:\s?(?:(st|nd|rd|th)|(s))(?![a-z\d]))?|\.{2,}|[a-z]+|[^\sa-z\d]/g;

/** One spelling for the signs people mix: dashes, spaces, eras with stops, thousands with commas or spaces. */
function evenOut(text: string): string {
  const even = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\u2010\u2011\u2212]/g, '-')
    .replace(/(?<![a-z])(pre|post)-/g, '$1 ')
    .replace(/(?<![a-z])up to(?![a-z])/g, 'until')
    .replace(/(?<![a-z])prior to(?![a-z])/g, 'before')
    .replace(/(\d)['’]s(?![a-z])/g, '$1s')
    .replace(/(?<![a-z])b\.?\s?c(?:\.?\s?e)?(?![a-z])\.?/g, ' bce ')
    .replace(/(?<![a-z])(?:a\.?\s?d|c\.?\s?e)(?![a-z])\.?/g, ' ce ')
    .replace(/(?<![\d,])(\d{1,3}(?:[ ,]\d{3})+)(?![\d,])/g, (run) => run.replace(/[ ,]/g, ''));
  // "1200--1300" is a typed dash; beside a minus sign it is a hyphen and another minus.
  return even.startsWith('-') ? even : even.replace(/--+/g, '–');
}

/**
 * Cuts a written date into words, numbers and marks; words that say nothing ("the", "of") fall away.
 *
 * @param text short: the caller bounds its length.
 * @returns tokens in reading order; what is not known stays, as `unknown`.
 * @error none.
 */
export function dateTokens(text: string): readonly DateToken[] {
  const tokens: DateToken[] = [];
  let tensBefore = 0;
  for (const [piece, digits, suffix, s] of evenOut(text).matchAll(scan)) {
    if (digits !== undefined) {
      if (suffix) tokens.push({ kind: 'ordinal', n: Number(digits), word: false });
      else tokens.push({ kind: s ? 'decade' : 'number', digits });
      tensBefore = 0;
    } else if (tensWords.has(piece)) {
      tensBefore = tensWords.get(piece) ?? 0;
    } else if (piece === '-' && tensBefore > 0) {
      // the hyphen of "twenty-first"
    } else if (ordinalWords.has(piece)) {
      tokens.push({ kind: 'ordinal', n: tensBefore + (ordinalWords.get(piece) ?? 0), word: true });
      tensBefore = 0;
    } else if (piece === 'c') {
      tokens.push(tokens.at(-1)?.kind === 'ordinal' ? { kind: 'unit', years: 100 } : { kind: 'circa' });
    } else if (!passedOver.has(piece)) {
      if (tensBefore > 0) tokens.push({ kind: 'unknown' });
      tokens.push(words.get(piece) ?? { kind: 'unknown' });
      tensBefore = 0;
    }
  }
  if (tensBefore > 0) tokens.push({ kind: 'unknown' });
  return tokens;
}
