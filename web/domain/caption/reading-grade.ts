import { syllablesOf } from './syllables.ts';
import { sentencesOf, wordsOf } from './words-and-sentences.ts';

/** The school grade most captions should stay within: readers of about 12 to 14, the aim that label guides state (common practice). */
export const HIGHEST_GRADE = 8;

/**
 * Flesch–Kincaid grade from counts.
 *
 * @returns a grade of United States schools; may be negative.
 * @source Kincaid, Fishburne, Rogers & Chissom 1975: 0.39 words/sentence + 11.8 syllables/word − 15.59.
 */
export const gradeOfCounts = (words: number, sentences: number, syllables: number): number =>
  0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;

/**
 * Flesch–Kincaid grade of an English text. Bare numbers are left out, as Flesch advises for texts with many of them
 * (How to Write Plain English, 1979, from memory): a caption's years would make it look harder than it reads.
 *
 * @param leaveOut terms that must stand there and are not read as words, such as Latin names.
 * @returns undefined for a text without words.
 */
export function readingGrade(text: string, leaveOut: readonly string[] = []): number | undefined {
  const read = leaveOut.filter((one) => one !== '').reduce((left, one) => left.replaceAll(one, ''), text);
  const words = wordsOf(read).filter((word) => /\p{L}/u.test(word));
  if (words.length === 0) return undefined;
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return gradeOfCounts(words.length, Math.max(1, sentencesOf(read).length), syllables);
}
