import type { NoteDocument } from '../../web/domain/note/note-document.ts';
import { termOf, wordsOf } from '../../web/search/search-options.ts';
import { noteChance } from './made/note-chance.ts';

/** What people type, drawn once from the notes themselves. */
export interface TypedQueries {
  /** One or two words as they are typed, letter by letter from the second on. */
  readonly keystrokes: readonly string[];
  /** Words with one letter missing, added or wrong. */
  readonly slips: readonly string[];
}

/** @param documents of the smallest size, so that every size is asked the same. */
export function typedQueries(documents: readonly NoteDocument[], seed = 1): TypedQueries {
  const draw = noteChance(seed, 1_000_003);
  const wordsIn = ({ body }: NoteDocument): string[] =>
    wordsOf(body)
      .map(termOf)
      .filter((term) => term.length >= 5);
  const drawn = (): string[] => wordsIn(documents[draw.below(documents.length)] ?? fail());
  const one = (from: readonly string[]): string => from[draw.below(from.length)] ?? fail();
  const keystrokes = Array.from({ length: 24 }, (_, nth) => {
    const words = drawn();
    const typed = one(words);
    const other = one(words.filter((word) => word !== typed));
    const before = nth % 2 === 0 ? '' : `${other} `;
    return Array.from({ length: typed.length - 1 }, (__, at) => before + typed.slice(0, at + 2));
  }).flat();
  const slips = Array.from({ length: 60 }, () => {
    const word = one(drawn());
    const at = draw.below(word.length);
    return word.slice(0, at) + ['', 'e', `a${word[at]}`][draw.below(3)] + word.slice(at + 1);
  });
  return { keystrokes: [...new Set(keystrokes)], slips: [...new Set(slips.filter((slip) => slip.length >= 5))] };
}

function fail(): never {
  throw new Error('the notes hold too few words');
}
