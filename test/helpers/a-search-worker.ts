import type { SearchReply, SearchRequest } from '../../web/search/messages.ts';
import { searchService } from '../../web/search/search-service.ts';

/** The search worker in this very thread: messages go and come a turn later, as a worker's do. */
export function aSearchWorker(): Worker {
  const listeners: ((event: { data: unknown }) => void)[] = [];
  const heard = searchService(
    (reply: SearchReply) => setTimeout(() => listeners.forEach((listen) => listen({ data: reply })), 0),
    (run) => setTimeout(run, 0),
  );
  const wire = {
    postMessage: (message: SearchRequest) => setTimeout(() => heard(message), 0),
    terminate: () => undefined,
    addEventListener: (_: 'message', listen: (event: { data: unknown }) => void) => listeners.push(listen),
  };
  return wire as unknown as Worker;
}
