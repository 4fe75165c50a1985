import { WEIGHTS } from '../search-options.ts';
import { endLength, endPlace, isNear, SHORTEST_NEAR } from './near-terms.ts';
import type { TermDictionary, TermEntry } from './term-dictionary.ts';

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

/** A term that answers a wanted word. */
export interface MatchingTerm extends TermEntry {
  readonly term: string;
  readonly weight: number;
  /** Which spelling it answers: 0 for the word itself, then its swaps. */
  readonly spelling: number;
}

/** Terms by their ends, as `tableOfEnds` makes them. */
export interface EndsTable {
  readonly starts: Uint32Array;
  readonly terms: Uint32Array;
}

/**
 * The terms of an index that answer a word, spelling by spelling; no term twice for one of them. Weights fall with the letters a term has
 * beyond the word, as minisearch's do.
 */
export function matchingTerms(dictionary: TermDictionary, ends: EndsTable, word: WantedWord): readonly MatchingTerm[] {
  const found: MatchingTerm[] = [];
  const { term, swaps } = word;
  const exact = dictionary.find(term);
  if (exact) found.push({ ...exact, term, weight: 1, spelling: 0 });
  if (word.beginning) {
    for (const entry of dictionary.beginningWith(term)) {
      const length = dictionary.termLength;
      const beyond = length - term.length;
      if (beyond > 0)
        found.push({ ...entry, term: dictionary.term, weight: (WEIGHTS.prefix * length) / (length + 0.3 * beyond), spelling: 0 });
    }
  }
  if (word.near) {
    for (const near of nearTerms(dictionary, ends, term)) {
      if (word.beginning && near.term.startsWith(term)) continue;
      found.push({ ...near, weight: (WEIGHTS.fuzzy * near.term.length) / (near.term.length + 1), spelling: 0 });
    }
  }
  for (const [nth, swap] of swaps.entries()) {
    const swapped = dictionary.find(swap);
    if (swapped) found.push({ ...swapped, term: swap, weight: 1, spelling: nth + 1 });
  }
  return found;
}

/** Terms one letter off, each once. */
function nearTerms(dictionary: TermDictionary, ends: EndsTable, term: string): Iterable<TermEntry & { readonly term: string }> {
  const found = new Map<string, TermEntry & { readonly term: string }>();
  const take = (entry: TermEntry): void => {
    if (Math.abs(dictionary.termLength - term.length) > 1) return;
    const other = dictionary.term;
    if (isNear(term, other)) found.set(other, { ...entry, term: other });
  };
  const kept = Math.min(...[-1, 0, 1].map((more) => term.length - endLength(term.length + more)));
  for (const entry of dictionary.beginningWith(term.slice(0, kept))) take(entry);
  for (let length = Math.max(SHORTEST_NEAR, term.length - 1); length <= term.length + 1; length += 1) {
    const place = endPlace(term.slice(-endLength(length)), length, ends.starts.length - 1);
    for (let at = ends.starts[place] ?? 0; at < (ends.starts[place + 1] ?? 0); at += 1) {
      dictionary.goTo(ends.terms[at] ?? 0);
      take(dictionary.entry);
    }
  }
  return found.values();
}
