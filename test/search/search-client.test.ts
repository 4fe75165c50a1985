import { describe, expect, test } from 'vitest';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import type { SearchRequest, SearchWire } from '../../web/search/messages.ts';
import { noteDocument } from '../../web/search/note-documents.ts';
import { SearchClient } from '../../web/search/search-client.ts';
import { searchService } from '../../web/search/search-service.ts';

const doc = (file: string, text: string) => noteDocument(parseNote(file, text).value);

/** A client and a service joined by a wire that carries copies, one message a turn, as a worker's does. */
function joined() {
  let hear: (event: { readonly data: unknown }) => void = () => undefined;
  const service = searchService(
    (reply) => setTimeout(() => hear({ data: structuredClone(reply) }), 0),
    (run) => setTimeout(run, 5),
  );
  const sent: SearchRequest[] = [];
  const wire: SearchWire = {
    postMessage: (message) => {
      sent.push(message as SearchRequest);
      setTimeout(() => service(structuredClone(message) as SearchRequest), 0);
    },
    addEventListener: (_, listener) => (hear = listener),
  };
  return { client: new SearchClient(wire), sent };
}

describe('SearchClient', () => {
  test('sends notes in parts and resolves with how many are held', async () => {
    const { client, sent } = joined();
    expect(await client.put(Array.from({ length: 120 }, (_, i) => doc(`n${i}.md`, `weld ${i}`)))).toBe(120);
    expect(sent).toHaveLength(3);
    expect(await client.put([])).toBe(0);
  });

  test('gives undefined for a query that a later one overtook', async () => {
    const { client } = joined();
    await client.put([doc('a.md', 'weld')]);
    const [first, second] = await Promise.all([client.query('wel'), client.query('weld')]);
    expect(first).toBeUndefined();
    expect(second?.map(({ id }) => id)).toEqual(['a']);
  });

  test('rejects with what failed', async () => {
    const { client } = joined();
    await expect(client.put([undefined] as unknown as [])).rejects.toThrow();
  });
});
