import { describe, expect, test } from 'vitest';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { bodyView, wordsOf } from '../../../web/notebook/views/body-view.ts';

const targets = {
  noteAt: (path: string) => (path === 'dyestuffs/madder.md' ? 'madder' : undefined),
  hasFile: (path: string) => path === 'photos/pot one.jpg',
};
const view = (body: string, file = 'recipes/red.md') =>
  bodyView(parseNote(file, `---\nkind: recipe\ntitle: Red\n---\n${body}`).value, targets);
const inline = (body: string) => {
  const [first] = view(body);
  return first?.is === 'paragraph' ? first.words : [];
};

describe('bodyView', () => {
  test('reads paragraphs, emphasis, lists, quotes, code and tables', () => {
    const blocks = view(
      'One *two* **three** `four`\n\n- a\n- b\n\n3. c\n\n> said\n\n```\nx < y\n```\n\n| a | b |\n| - | - |\n| 1 | 2 |\n\n---\n',
    );
    expect(blocks.map(({ is }) => is)).toEqual(['paragraph', 'list', 'list', 'quote', 'code', 'table', 'rule']);
    expect(blocks[0]).toEqual({
      is: 'paragraph',
      words: [
        { is: 'text', text: 'One ' },
        { is: 'emphasis', words: [{ is: 'text', text: 'two' }] },
        { is: 'text', text: ' ' },
        { is: 'strong', words: [{ is: 'text', text: 'three' }] },
        { is: 'text', text: ' ' },
        { is: 'code', text: 'four' },
      ],
    });
    expect(blocks[2]).toMatchObject({ ordered: true, start: 3 });
    expect(blocks[5]).toMatchObject({ head: [[{ text: 'a' }], [{ text: 'b' }]], rows: [[[{ text: '1' }], [{ text: '2' }]]] });
  });

  test('a heading that repeats the title is left out, any other stays', () => {
    expect(view('# Red\n\ntext').map(({ is }) => is)).toEqual(['paragraph']);
    expect(view('# Blue\n\ntext').map(({ is }) => is)).toEqual(['heading', 'paragraph']);
  });

  test('links lead to notes, files of the notebook and the web', () => {
    expect(inline('[m](../dyestuffs/madder.md#part)')).toEqual([{ is: 'note', id: 'madder', words: [{ is: 'text', text: 'm' }] }]);
    expect(inline('[f](../photos/pot%20one.jpg)')).toMatchObject([{ is: 'file', path: 'photos/pot one.jpg' }]);
    expect(inline('[w](https://example.org/a)')).toMatchObject([{ is: 'web', address: 'https://example.org/a' }]);
    expect(inline('[r][1]\n\n[1]: ../dyestuffs/madder.md')).toMatchObject([{ is: 'note', id: 'madder' }]);
  });

  test.each([
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    'data:text/html;base64,PHNjcmlwdD4=',
    'vbscript:x',
    'file:///etc/passwd',
    '//evil.example/a',
    '/demo.json',
    '../../../../etc/passwd.md',
    '../dyestuffs/unknown.md',
  ])('%s leads nowhere', (address) => {
    expect(inline(`[x](${address})`)).toMatchObject([{ is: 'lost' }]);
  });

  test('pictures come from the notebook alone', () => {
    expect(inline('![pot](<../photos/pot one.jpg>)')).toEqual([{ is: 'picture', path: 'photos/pot one.jpg', words: 'pot' }]);
    expect(inline('![spy](https://evil.example/a.png)')).toEqual([
      { is: 'picture-lost', address: 'https://evil.example/a.png', words: 'spy' },
    ]);
  });

  test('HTML stays text', () => {
    expect(view('<script>alert(1)</script>')).toEqual([{ is: 'code', text: '<script>alert(1)</script>' }]);
    expect(wordsOf(inline('a <img src=x onerror=alert(1)> b'))).toBe('a <img src=x onerror=alert(1)> b');
  });
});
