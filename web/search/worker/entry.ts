import type { SearchRequest, SearchWire } from '../messages.ts';
import { searchService } from '../search-service.ts';

const wire = self as unknown as SearchWire;
const heard = searchService(
  (reply, transfer) => wire.postMessage(reply, transfer),
  (run) => setTimeout(run, 0),
);
wire.addEventListener('message', ({ data }) => heard(data as SearchRequest));
