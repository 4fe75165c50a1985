import { afterAll, describe, expect, test } from 'vitest';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { noteDocument } from '../../../web/search/note-documents.ts';
import { SearchClient } from '../../../web/search/search-client.ts';
import address from '../../../web/search/worker/entry.ts?worker&url';

const worker = new Worker(address, { type: 'module' });
afterAll(() => worker.terminate());

describe('the search worker', () => {
  const client = new SearchClient(worker);
  const doc = (file: string, text: string) => noteDocument(parseNote(file, text).value);

  test('indexes notes and finds them, near spellings apart', async () => {
    expect(await client.put([doc('a.md', '# Krapp\nof Zeeland'), doc('b.md', 'Waid')])).toBe(2);
    expect((await client.query('krapp'))?.map(({ id, title, near }) => [id, title, near])).toEqual([['a', 'Krapp', false]]);
    expect((await client.query('krpap'))?.map(({ id, near }) => [id, near])).toEqual([['a', true]]);
  });

  test('lets the latest query win', async () => {
    const answers = await Promise.all([client.query('w'), client.query('wa'), client.query('waid')]);
    expect(answers.slice(0, 2)).toEqual([undefined, undefined]);
    expect(answers[2]?.map(({ id }) => id)).toEqual(['b']);
  });

  test('forgets a note', async () => {
    await client.remove(['b.md']);
    expect(await client.query('waid')).toEqual([]);
  });
});
