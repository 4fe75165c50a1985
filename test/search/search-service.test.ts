import { describe, expect, test } from 'vitest';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import type { SearchReply } from '../../web/search/messages.ts';
import { noteDocument } from '../../web/search/note-documents.ts';
import { searchService } from '../../web/search/search-service.ts';

const doc = (file: string, text: string) => noteDocument(parseNote(file, text).value);

function aService() {
  const replies: SearchReply[] = [];
  const waiting: (() => void)[] = [];
  const ask = searchService(
    (reply) => replies.push(reply),
    (run) => waiting.push(run),
  );
  return { ask, replies, run: () => waiting.splice(0).forEach((one) => one()) };
}

describe('searchService', () => {
  test('answers only the latest of the queries that wait', () => {
    const { ask, replies, run } = aService();
    ask({ id: 1, do: 'put', documents: [doc('a.md', 'weld')] });
    ask({ id: 2, do: 'query', text: 'we' });
    ask({ id: 3, do: 'query', text: 'wel' });
    ask({ id: 4, do: 'query', text: 'weld' });
    run();
    expect(replies.map(({ id, is }) => [id, is])).toEqual([
      [1, 'done'],
      [2, 'overtaken'],
      [3, 'overtaken'],
      [4, 'found'],
    ]);
    ask({ id: 5, do: 'query', text: 'weld' });
    run();
    expect(replies.at(-1)).toMatchObject({ id: 5, is: 'found', notes: [{ id: 'a' }] });
  });

  test('says what failed and goes on', () => {
    const { ask, replies } = aService();
    ask({ id: 1, do: 'put', documents: [undefined] as unknown as [] });
    ask({ id: 2, do: 'put', documents: [doc('a.md', 'weld')] });
    expect(replies.map(({ is }) => is)).toEqual(['failed', 'done']);
  });

  test('removes and clears', () => {
    const { ask, replies } = aService();
    ask({ id: 1, do: 'put', documents: [doc('a.md', 'weld'), doc('b.md', 'woad')] });
    ask({ id: 2, do: 'remove', files: ['a.md'] });
    ask({ id: 3, do: 'clear' });
    expect(replies).toEqual([
      { id: 1, is: 'done', size: 2, edited: 2 },
      { id: 2, is: 'done', size: 1, edited: 1 },
      { id: 3, is: 'done', size: 0, edited: 0 },
    ]);
  });
});
