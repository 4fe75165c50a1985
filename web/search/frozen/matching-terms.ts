import { WEIGHTS } from '../search-options.ts';
import { endLength, type EndsTable, isNear, mayBeginNear, SHORTEST_NEAR, termsEndingLike } from './near-terms.ts';
import type { TermDictionary } from './term-dictionary.ts';

/** One word of a query. */
export interface WantedWord {
  readonly term: string;
  /** Also where it only begins a term. */
  readonly beginning: boolean;
  /** Also where a term is one letter off. */
  readonly near: boolean;
  /** Other spellings of it that count as words of their own. */
  readonly swaps: readonly string[];
}

/**
 * Called while the dictionary stands at a term that answers.
 *
 * @param weight how much the term counts beside the word itself.
 * @param spelling which spelling it answers: 0 for the word itself, then its swaps.
 */
export type VisitTerm = (weight: number, spelling: number) => void;

/** How much a term counts that a word is the beginning of. */
export const beginningWeight = (length: number, beyond: number): number => (WEIGHTS.prefix * length) / (length + 0.3 * beyond);

/** How much a term counts that is one letter off. */
export const nearWeight = (length: number): number => (WEIGHTS.fuzzy * length) / (length + 1);

/**
 * Stands at the terms that answer a word one by one, spelling by spelling, at none twice for one of them. Weights fall with the
 * letters a term has beyond the word, as minisearch's do.
 */
export function eachMatchingTerm(dictionary: TermDictionary, ends: EndsTable, word: WantedWord, visit: VisitTerm): void {
  const { term } = word;
  if (dictionary.goToTerm(term)) visit(1, 0);
  if (word.beginning)
    dictionary.eachBeginningWith(term, () => {
      const length = dictionary.termLength;
      const beyond = length - term.length;
      if (beyond > 0) visit(beginningWeight(length, beyond), 0);
    });
  if (word.near) {
    for (const [nth, near] of nearTerms(dictionary, ends, term)) {
      if (word.beginning && near.startsWith(term)) continue;
      dictionary.goTo(nth);
      visit(nearWeight(near.length), 0);
    }
  }
  for (const [nth, swap] of word.swaps.entries()) if (dictionary.goToTerm(swap)) visit(1, nth + 1);
}

/** Terms one letter off, each once, by their place in the dictionary. */
function nearTerms(dictionary: TermDictionary, ends: EndsTable, term: string): ReadonlyMap<number, string> {
  const found = new Map<number, string>();
  const take = (): void => {
    if (Math.abs(dictionary.termLength - term.length) > 1) return;
    const other = dictionary.term;
    if (isNear(term, other)) found.set(dictionary.nth, other);
  };
  const kept = Math.min(...[-1, 0, 1].map((more) => term.length - endLength(term.length + more)));
  dictionary.eachBeginningWith(term.slice(0, kept), take);
  for (let length = Math.max(SHORTEST_NEAR, term.length - 1); length <= term.length + 1; length += 1) {
    for (const nth of termsEndingLike(ends, term.slice(-endLength(length)), length)) {
      // The way to a term leads past those before it in its block; most need not be gone to at all.
      if (!mayBeginNear(term, dictionary.beginningOf(nth))) continue;
      dictionary.goTo(nth);
      take();
    }
  }
  return found;
}
