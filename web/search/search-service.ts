import type { SearchReply, SearchRequest } from './messages.ts';
import { NoteSearch } from './note-search.ts';

/**
 * The search behind the wire. Changes are made in the order they come; of queries that wait, only the latest is answered
 * with notes, each other with `overtaken`.
 *
 * @param reply where answers go.
 * @param later runs something once the messages that wait already have been read.
 */
export function searchService(reply: (message: SearchReply) => void, later: (run: () => void) => void): (request: SearchRequest) => void {
  const search = new NoteSearch();
  let waiting: Extract<SearchRequest, { do: 'query' }> | undefined;

  const answer = () => {
    const query = waiting;
    waiting = undefined;
    if (query) guarded(query.id, () => ({ id: query.id, is: 'found', notes: search.query(query.text, query.most) }));
  };
  const guarded = (id: number, work: () => SearchReply) => {
    try {
      reply(work());
    } catch (fault) {
      reply({ id, is: 'failed', why: fault instanceof Error ? fault.message : String(fault) });
    }
  };

  return (request) => {
    switch (request.do) {
      case 'query':
        if (waiting) reply({ id: waiting.id, is: 'overtaken' });
        else later(answer);
        waiting = request;
        return;
      case 'put':
        guarded(request.id, () => {
          for (const document of request.documents) search.put(document);
          return { id: request.id, is: 'done', size: search.size };
        });
        return;
      case 'remove':
        guarded(request.id, () => {
          for (const file of request.files) search.remove(file);
          return { id: request.id, is: 'done', size: search.size };
        });
        return;
      case 'clear':
        guarded(request.id, () => {
          search.clear();
          return { id: request.id, is: 'done', size: 0 };
        });
    }
  };
}
