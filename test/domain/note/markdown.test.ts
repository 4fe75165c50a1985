import { describe, expect, test } from 'vitest';
import { relativeLinks } from '../../../web/domain/note/markdown-links.ts';
import { resolveLink } from '../../../web/domain/note/resolve-link.ts';
import { bodyOf, parseMarkdown, plainText, textRuns } from '../../../web/domain/note/markdown.ts';

const typesOf = (text: string): readonly string[] => (parseMarkdown(text).children ?? []).map(({ type }) => type);

describe('parseMarkdown', () => {
  test('reads CommonMark and tables', () => {
    expect(typesOf('# T\n\nwords\n\n- a\n\n| a |\n|---|\n| b |\n\n> q\n')).toEqual(['heading', 'paragraph', 'list', 'table', 'blockquote']);
  });

  test.each([
    ['quotes', '> '.repeat(5000) + 'a'],
    ['brackets', '['.repeat(50_000)],
    ['pictures', '!['.repeat(50_000)],
    ['lists in one line', '- '.repeat(5000) + 'a'],
    ['lists line by line', Array.from({ length: 300 }, (_, level) => `${'  '.repeat(level)}- a`).join('\n')],
    ['emphasis', '*a '.repeat(50_000)],
    ['list items', '- a\n'.repeat(20_000)],
    ['five million characters', 'words and more\n\n'.repeat(330_000)],
  ])(
    'falls back to plain paragraphs for a mass of %s, with every word kept',
    (_, text) => {
      const root = parseMarkdown(text);
      expect(new Set((root.children ?? []).map(({ type }) => type))).toEqual(new Set(['paragraph']));
      const kept = textRuns(root, 0);
      for (const { text: words, range } of [...kept.slice(0, 50), ...kept.slice(-50)]) expect(text.slice(...range)).toBe(words);
      expect(kept.reduce((sum, { text: words }) => sum + words.replace(/\s/g, '').length, 0)).toBe(text.replace(/\s/g, '').length);
    },
    10_000,
  );

  test('what is too tangled ends its paragraphs at empty lines, however its lines end', () => {
    const lines = ['one', 'two', '', '> '.repeat(40), '', 'three', ' \t', 'four  '];
    const wordsOf = (text: string) => textRuns(parseMarkdown(text), 0).map(({ text: words }) => words.replaceAll('\r', ''));
    expect(wordsOf(lines.join('\n'))).toEqual(['one\ntwo', '> '.repeat(40).trimEnd(), 'three', 'four']);
    expect(wordsOf(lines.join('\r\n'))).toEqual(wordsOf(lines.join('\n')));
  });

  test('openers are counted over a paragraph, however its lines end', () => {
    const many = Array.from({ length: 60 }, () => '['.repeat(20));
    for (const end of ['\n', '\r\n', '\r']) expect(textRuns(parseMarkdown(many.join(end)), 0)).toHaveLength(1);
  });

  test('a mass of blanks within a line ends', () => {
    const text = `${'> '.repeat(40)}a${' '.repeat(200_000)}b`;
    expect(textRuns(parseMarkdown(text), 0).map(({ text: words }) => words)).toEqual([text]);
  });

  test('thirty quotes within one another are still quotes', () => {
    expect(typesOf('> '.repeat(30) + 'a')).toEqual(['blockquote']);
    expect(typesOf('> '.repeat(31) + 'a')).toEqual(['paragraph']);
  });
});

describe('the words of a body', () => {
  const source = '---\nkind: text\n---\n# Heading\n\nSee *madder* and `weld`, ![a skein](x.jpg).\n\n| a | b |\n|---|---|\n| c | d |\n';

  test('stand where they stand in the file', () => {
    const bodyStart = source.indexOf('# Heading');
    const runs = textRuns(bodyOf({ source, bodyStart }), bodyStart);
    expect(runs.map(({ text }) => text)).toEqual(['Heading', 'See ', 'madder', ' and ', 'weld', ', ', 'a skein', '.', 'a', 'b', 'c', 'd']);
    for (const { text, range } of runs) expect(source.slice(...range)).toContain(text);
    expect(source.slice(...(runs[2]?.range ?? [0, 0]))).toBe('madder');
  });

  test('read one paragraph a line', () => {
    expect(plainText(parseMarkdown('# H\n\none\ntwo *three*  \nfour\n\n- x\n- y <b>z</b>\n\n| a | b |\n|---|---|\n| c | d |\n'))).toBe(
      'H\none two three four\nx\ny z\na b\nc d',
    );
  });
});

describe('relativeLinks', () => {
  test('lists what leads to another file of the notebook', () => {
    const text =
      '[a](../dyestuffs/madder.md#use "t") ![b](photos/a%20b.jpg) [c](https://x.org) [d](#here) [e](/top) [f](//host/x) <mailto:a@b.c> [g](x.md?q=1) [h][r] [i](100%.md)\n\n[r]: ./weld.md\n';
    const links = relativeLinks(parseMarkdown(text), 0);
    expect(links.map(({ path, fragment, image }) => [path, fragment, image])).toEqual([
      ['../dyestuffs/madder.md', 'use', false],
      ['photos/a b.jpg', undefined, true],
      ['x.md', undefined, false],
      ['100%.md', undefined, false],
      ['./weld.md', undefined, false],
    ]);
    expect(text.slice(...(links[0]?.range ?? [0, 0]))).toBe('[a](../dyestuffs/madder.md#use "t")');
    expect(relativeLinks(parseMarkdown(text), 40)[0]?.range[0]).toBe(40);
  });

  test.each<[string, string, string | undefined]>([
    ['recipes/a.md', '../dyestuffs/madder.md', 'dyestuffs/madder.md'],
    ['recipes/a.md', './b.md', 'recipes/b.md'],
    ['a.md', 'x/../b.md', 'b.md'],
    ['a.md', '../b.md', undefined],
    ['x/a.md', '../../b.md', undefined],
  ])('from %j, %j leads to %j', (from, path, expected) => {
    expect(resolveLink(from, path)).toBe(expected);
  });
});
