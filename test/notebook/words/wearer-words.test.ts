import { describe, expect, test } from 'vitest';
import { byWearer } from '../../../web/notebook/words/wearer-words.ts';

describe('byWearer', () => {
  test.each([
    ['Merchant', 'a merchant'],
    ['Abbess', 'an abbess'],
    ['Everyone', 'everyone'],
    ['Clergy', 'the clergy'],
    ['Royal family', 'the royal family'],
    ['Monk or nun', 'a monk or nun'],
    ['Sailors', 'the sailors'],
  ])('%s: %s', (title, words) => {
    expect(byWearer(title)).toBe(words);
  });
});
