import { describe, expect, test } from 'vitest';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { noteDocument } from '../../web/search/note-documents.ts';

const doc = (file: string, text: string) => noteDocument(parseNote(file, text).value);
const text = '---\nkind: text\ntitle: Petty on dyeing\nsource: petty-1662, p. 3\nsays: of Färberröte and maddering\n---\nBran and madder.';

describe('noteDocument', () => {
  test('keeps words of the front matter and leaves out its keys and addresses of links', () => {
    const { words, body, names, sources } = doc('a.md', text);
    expect(words).toContain('of Färberröte');
    expect(words).not.toMatch(/says|kind/);
    expect(body).toBe('Bran and madder.');
    expect([names, sources]).toEqual(['', 'petty-1662, p. 3']);
    expect(doc('b.md', 'See [woad](dyestuffs/waid.md).').body).not.toContain('waid');
  });
});
