import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';
import { countingSurroundings, noteStoreContract } from '../contract/note-store.ts';

noteStoreContract('MemoryStore', () => {
  const disk = new MemoryDisk();
  const around = countingSurroundings();
  return Promise.resolve({
    tab: () => Promise.resolve(new MemoryStore(disk, around)),
    kill: (tab) => Promise.resolve(tab.close()),
  });
});
