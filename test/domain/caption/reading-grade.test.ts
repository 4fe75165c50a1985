import { describe, expect, test } from 'vitest';
import { gradeOfCounts, readingGrade } from '../../../web/domain/caption/reading-grade.ts';
import { syllablesOf } from '../../../web/domain/caption/syllables.ts';
import { wordsOf } from '../../../web/domain/caption/words-and-sentences.ts';

describe('syllablesOf', () => {
  // From any dictionary's hyphenation, from memory.
  const WORDS: Readonly<Record<number, string>> = {
    1: 'wool dyed cloth weld woad green blue red the used fades grown time leaves boiled dried trade house sea whole scale word names made tie',
    2: 'madder sample linen purple modern dyeing being reading people yellow alum colour wanted faded merchant trial little walnut insect saffron likely houses noble layered varied carried creature after only evening something harbour dyer',
    3: 'recorded indigo cochineal evidence imported century violet forbidden merchandise uncertain Australian reptilian passages society natural',
    4: 'medieval material American analysis evidently Armenian imperial',
  };
  const cases = Object.entries(WORDS).flatMap(([count, words]) => words.split(' ').map((word) => [word, Number(count)] as const));
  test.each(cases)('%s has %i', (word, count) => {
    expect(syllablesOf(word)).toBe(count);
  });

  // Wikipedia, "Flesch–Kincaid readability tests": the sentence has 24 syllables in 13 words.
  test('counts a published sentence', () => {
    const words = wordsOf('The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.');
    expect(words).toHaveLength(13);
    expect(words.reduce((sum, word) => sum + syllablesOf(word), 0)).toBe(24);
  });

  test('figures count one a digit, signs nothing', () => {
    expect(syllablesOf('1370')).toBe(4);
    expect(syllablesOf('1301–1500')).toBe(8);
    expect(syllablesOf('–')).toBe(1);
  });
});

describe('readingGrade', () => {
  // The same page gives this sentence grade 11.3; 5.7 words a sentence of 1.02 syllables a word, −1.3; one-syllable sentences of one word, −3.40.
  test('gives the published grades', () => {
    expect(readingGrade('The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.')).toBeCloseTo(11.3, 1);
    expect(gradeOfCounts(570, 100, 581.4)).toBeCloseTo(-1.3, 1);
    expect(readingGrade('Go.')).toBeCloseTo(-3.4, 2);
  });

  test('leaves out terms that must stand there', () => {
    expect(readingGrade('Red from madder (Rubia tinctorum).', ['Rubia tinctorum'])).toBe(readingGrade('Red from madder.'));
  });

  test('no words, no grade', () => {
    expect(readingGrade(' – ')).toBeUndefined();
  });
});
