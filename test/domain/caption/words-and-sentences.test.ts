import { describe, expect, test } from 'vitest';
import { clausesOf, sentencesOf, wordsOf } from '../../../web/domain/caption/words-and-sentences.ts';

describe('wordsOf', () => {
  test.each([
    ['Red wool, c. 1370.', ['Red', 'wool', 'c', '1370']],
    ['well-made – 1301–1500 (Färberwau)', ['well-made', '1301–1500', 'Färberwau']],
    ['wool/silk', ['wool', 'silk']],
    ['cloth—and thread', ['cloth', 'and', 'thread']],
    [' … ', []],
  ])('%s', (text, words) => {
    expect(wordsOf(text)).toEqual(words);
  });
});

describe('sentencesOf', () => {
  test('an abbreviation, an initial and a small letter end nothing', () => {
    const text = 'Dyed c. 1370 by J. Smith at St. Ives with Roccella spp. from afar. “Red!” 12 skeins?\nLast';
    expect(sentencesOf(text).map((one) => one.text)).toEqual([
      'Dyed c. 1370 by J. Smith at St. Ives with Roccella spp. from afar.',
      '“Red!”',
      '12 skeins?',
      'Last',
    ]);
  });

  test('ranges cut the text itself', () => {
    const text = '  One.  Two. ';
    expect(sentencesOf(text).map(({ range: [from, to] }) => text.slice(from, to))).toEqual(['One.', 'Two.']);
  });
});

describe('clausesOf', () => {
  test('parts at semicolons, dashes and joining words, not at every comma', () => {
    const text = 'Weld, a herb, grew here; alum came by sea, and madder followed – from Zeeland.';
    expect(clausesOf(text).map((one) => one.text)).toEqual([
      'Weld, a herb, grew here;',
      'alum came by sea,',
      'and madder followed –',
      'from Zeeland.',
    ]);
    expect(clausesOf(text).every(({ text: clause, range: [from, to] }) => text.slice(from, to) === clause)).toBe(true);
  });
});
