import { describe, expect, test } from 'vitest';
import { parseColourText } from '../../../web/domain/colour/parse-colour.ts';

describe('parseColourText', () => {
  test.each([
    ['40,45,28', [40, 45, 28]],
    [' 40.5, -3 , .5 ', [40.5, -3, 0.5]],
    ['40;−3;5', [40, -3, 5]],
    ['Lab: 40 45 28', [40, 45, 28]],
    ['lab 0, 0, 0', [0, 0, 0]],
  ])('%j is Lab', (text, lab) => expect(parseColourText(text)).toEqual({ kind: 'lab', lab }));

  test.each(['#9b3a2e', '9B3A2E', '#abc', 'darkred', 'rgb(155 58 46)', 'lab(40% 45 28)', 'oklch(50% 0.1 30)', ' #9b3a2e '])(
    '%j is a screen colour',
    (text) => expect(parseColourText(text)?.kind).toBe('screen'),
  );

  test('a bare hex means the same as one with its sign', () => expect(parseColourText('9b3a2e')).toEqual(parseColourText('#9b3a2e')));

  test.each([
    '',
    ' ',
    '40,45',
    '40,45,28,1',
    '101,0,0',
    '-1,0,0',
    '50,300,0',
    '123',
    '1350',
    'abc',
    'murrey',
    '#12345',
    'transparent',
    'oklch(60% 0.1 3A0deg)',
    'x'.repeat(10_000),
  ])('%j is no colour', (text) => expect(parseColourText(text)).toBeUndefined());
});
