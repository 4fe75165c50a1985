import { describe, expect, test } from 'vitest';
import { placeInNote } from '../../../web/domain/naming/place-in-note.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';

const source = `---
kind: text
title: Green, that is: wadX
sources:
- keyX, p. 3
ingredients:
  - { what: alumX, form: "ground: fineX" }
  - what: madX
    note: >
      long words
      and moreX
---
Text bodyX, [labelX](../d/woad.md#aX) and <https://example.org/weldX>.
`;

describe('placeInNote', () => {
  const place = placeInNote(parseNote('a/b.md', source).value);
  const at = (word: string) => place(source.indexOf(word));
  test.each([
    ['wadX', { part: 'front-matter', key: 'title' }],
    ['keyX', { part: 'aside' }],
    ['alumX', { part: 'front-matter', key: 'what' }],
    ['madX', { part: 'front-matter', key: 'what' }],
    ['moreX', { part: 'front-matter', key: 'note' }],
    ['bodyX', { part: 'body' }],
    ['labelX', { part: 'body' }],
    ['woad.md', { part: 'link', stem: 'woad' }],
    ['weldX', { part: 'aside' }],
  ])('%s', (word, expected) => {
    expect(at(word)).toEqual(expected);
  });
});

test('a line of hyphens ends', () => {
  const long = `---\ntitle: x\n  ${'a-'.repeat(100_000)} wordX\n---\n`;
  expect(placeInNote(parseNote('a/b.md', long).value)(long.indexOf('wordX'))).toEqual({ part: 'front-matter', key: 'title' });
});
