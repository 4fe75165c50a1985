import { describe, expect, test } from 'vitest';
import { markedSides } from '../../../web/domain/merge/marked-sides.ts';

const PLAIN = 'a\n<<<<<<< HEAD\nmine\n=======\ntheirs\n>>>>>>> other\nb\n';

describe('markedSides', () => {
  test('reads both sides', () => {
    expect(markedSides(PLAIN)).toEqual({ mine: 'a\nmine\nb\n', theirs: 'a\ntheirs\nb\n' });
  });

  test('reads the common text too, and several places, whatever the line ends', () => {
    const text = '<<<<<<< a\n1\n||||||| b\n0\n=======\n2\n>>>>>>> c\n-\n<<<<<<< a\n||||||| b\nx\n=======\ny\n>>>>>>> c\n';
    const sides = { mine: '1\n-\n', base: '0\n-\nx\n', theirs: '2\n-\ny\n' };
    expect(markedSides(text)).toEqual(sides);
    const crlf = (words: string) => words.replaceAll('\n', '\r\n');
    expect(markedSides(crlf(text))).toEqual({ mine: crlf(sides.mine), base: crlf(sides.base), theirs: crlf(sides.theirs) });
  });

  test('a heading underlined with equals signs is no mark', () => {
    expect(markedSides('Heading\n=======\n')).toBeUndefined();
    expect(markedSides(`Heading\n=======\n${PLAIN}`)?.mine).toBe('Heading\n=======\na\nmine\nb\n');
  });

  test.each([
    '<<<<<<< a\nb\n',
    '<<<<<<< a\n=======\n',
    '>>>>>>> a\n',
    '<<<<<<< a\n>>>>>>> b\n',
    '<<<<<<< a\n<<<<<<< a\n=======\n>>>>>>> b\n',
  ])('is silent where the marks are out of order: %j', (text) => expect(markedSides(text)).toBeUndefined());
});
