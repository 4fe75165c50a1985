import { IndexBuilder } from './frozen/index-builder.ts';
import type { SearchReply, SearchRequest, Unnumbered } from './messages.ts';
import { NoteSearch } from './note-search.ts';

/**
 * The search behind the wire. Changes are made in the order they come; of queries that wait, only the latest is answered
 * with notes, each other with `overtaken`.
 *
 * @param reply where answers go, with the buffers that are given away.
 * @param later runs something once the messages that wait already have been read.
 */
export function searchService(
  reply: (message: SearchReply, transfer: ArrayBuffer[]) => void,
  later: (run: () => void) => void,
): (request: SearchRequest) => void {
  const search = new NoteSearch();
  let making = new IndexBuilder();
  let waiting: Extract<SearchRequest, { do: 'query' }> | undefined;

  const answer = () => {
    const query = waiting;
    waiting = undefined;
    if (query) guarded(query.id, () => ({ is: 'found', notes: search.query(query.text, query.most) }));
  };
  const guarded = (id: number, work: () => Unnumbered<SearchReply>) => {
    try {
      const said = work();
      reply({ ...said, id }, said.is === 'frozen' ? [...said.copies] : []);
    } catch (fault) {
      reply({ id, is: 'failed', why: fault instanceof Error ? fault.message : String(fault) }, []);
    }
  };
  const freeze = (copies: number): Unnumbered<SearchReply> => {
    const frozen = making.freeze();
    making = new IndexBuilder();
    return { is: 'frozen', copies: [frozen, ...Array.from({ length: copies - 1 }, () => frozen.slice(0))] };
  };
  const change = (request: Exclude<SearchRequest, { do: 'query' }>): Unnumbered<SearchReply> => {
    switch (request.do) {
      case 'open': {
        const lacking = search.open(request.bytes, request.notebook);
        return { is: 'opened', ...(lacking && { lacking }) };
      }
      case 'freeze':
        return freeze(request.copies);
      case 'adopt':
        if (!search.adopt(request.bytes, request.since)) throw new Error('The index that was made cannot be read.');
        break;
      case 'take':
        for (const document of request.documents) making.add(document);
        break;
      case 'put':
        for (const document of request.documents) search.put(document);
        break;
      case 'remove':
        for (const file of request.files) search.remove(file);
        break;
      case 'clear':
        search.clear();
    }
    return { is: 'done', size: search.size, edited: search.editedCount };
  };

  return (request) => {
    if (request.do !== 'query') {
      guarded(request.id, () => change(request));
      return;
    }
    if (waiting) reply({ id: waiting.id, is: 'overtaken' }, []);
    else later(answer);
    waiting = request;
  };
}
