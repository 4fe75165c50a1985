import { describe, expect, test } from 'vitest';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { capturedNote } from '../../web/notebook/captured-note.ts';
import { bodyView } from '../../web/notebook/views/body-view.ts';

describe('capturedNote', () => {
  test('words, a source with a page and a photo become a reading note that shows the photo', () => {
    const made = capturedNote(
      { words: 'Blue: darker than I thought\nRoom 4.', source: 'hanse-2019, p. 12', photoEnding: '.JPG' },
      '2026-05-14',
    );
    expect(made.path).toBe('reading/2026-05-14-blue-darker-than-i-thought.md');
    expect(made.photoPath).toBe('photos/2026-05-14-blue-darker-than-i-thought.jpg');
    const { value, diagnostics } = parseNote(made.path, made.text);
    expect(diagnostics).toEqual([]);
    expect(value).toMatchObject({
      title: 'Blue: darker than I thought',
      tags: ['to sort'],
      sources: [{ key: 'hanse-2019', locator: 'p. 12' }],
    });
    const body = bodyView(value, { noteAt: () => undefined, hasFile: (path) => path === made.photoPath });
    expect(JSON.stringify(body)).toContain(`"picture","path":"${made.photoPath}"`);
  });

  test('a source in words is kept as words', () => {
    const { value } = parseNote('a.md', capturedNote({ words: 'Red', source: 'the label in room 4' }, '2026-05-14').text);
    expect(value.sources).toEqual([]);
    expect(value.source).toContain('the label in room 4');
  });

  test('a photo alone is enough; the second of a day is told apart', () => {
    const made = capturedNote({ words: '', source: '', photoEnding: '.png' }, '2026-05-14', 2);
    expect(made.path).toBe('reading/2026-05-14-seen-on-2026-05-14-2.md');
    expect(parseNote(made.path, made.text).value.title).toBe('Seen on 2026-05-14');
  });

  test('hostile words stay words', () => {
    const words = '"]: x\n--- \n[a](javascript:alert(1)) ![x](http://e.example)';
    const made = capturedNote({ words, source: '"]\n---' }, '2026-05-14');
    const { value, diagnostics } = parseNote(made.path, made.text);
    expect(diagnostics).toEqual([]);
    expect(value.title).toBe('"]: x');
    expect(value.source.slice(value.bodyStart)).toContain('javascript:alert(1)');
  });
});
