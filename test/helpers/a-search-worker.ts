import type { SearchReply, SearchRequest } from '../../web/search/messages.ts';
import { searchService } from '../../web/search/search-service.ts';

/** Runs what it is given a turn later, one after another: timers alone may overtake each other, messages never do. */
function inOrder(): (run: () => void) => void {
  let last: Promise<void> = Promise.resolve();
  return (run) => {
    last = last.then(
      () =>
        new Promise((done) => {
          setTimeout(() => {
            run();
            done();
          }, 0);
        }),
    );
  };
}

/** The search worker in this very thread: messages go and come a turn later and in order, as a worker's do. */
export function aSearchWorker(): Worker {
  const listeners: ((event: { data: unknown }) => void)[] = [];
  const [there, back] = [inOrder(), inOrder()];
  const heard = searchService(
    (reply: SearchReply) => back(() => listeners.forEach((listen) => listen({ data: reply }))),
    (run) => setTimeout(run, 0),
  );
  const wire = {
    postMessage: (message: SearchRequest) => there(() => heard(message)),
    terminate: () => undefined,
    addEventListener: (_: 'message', listen: (event: { data: unknown }) => void) => listeners.push(listen),
  };
  return wire as unknown as Worker;
}
