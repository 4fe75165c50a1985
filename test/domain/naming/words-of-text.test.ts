import { describe, expect, test } from 'vitest';
import { wordsOfText } from '../../../web/domain/naming/words-of-text.ts';

const keys = (text: string) => wordsOfText(text).map(({ key }) => key);

describe('wordsOfText', () => {
  test('folds case, accents and modifier letters', () => {
    expect(keys('GUÈDE ḥinnāʾ Färberröte mædere')).toEqual(['guede', 'hinna', 'farberrote', 'maedere']);
  });

  test('takes letters with combining marks as one word', () => {
    expect(keys('guède')).toEqual(['guede']);
  });

  test('parts what French and Italian shorten, and keeps an English possessive with its stem', () => {
    expect(keys('l’indigo d’Avignon')).toEqual(['l', 'indigo', 'd', 'avignon']);
    const [word] = wordsOfText("woad's");
    expect(word).toMatchObject({ key: 'woads', stem: { key: 'woad', end: 4 }, start: 0, end: 6 });
  });

  test('keeps an underscore inside a word and leaves it out around one', () => {
    expect(keys('_woad_ snake_weld')).toEqual(['woad', 'snake weld']);
  });

  test('gives offsets in UTF-16 code units', () => {
    const text = '🐚 murex';
    const [word] = wordsOfText(text);
    expect(text.slice(word?.start, word?.end)).toBe('murex');
  });

  test('leaves a soft hyphen inside its word', () => {
    expect(keys('mad\u00ADder')).toEqual(['madder']);
  });
});
