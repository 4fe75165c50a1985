import { deleteDB } from 'idb';
import { onTestFinished } from 'vitest';
import { openIdbStore } from '../../web/store/idb-store.ts';
import { countingSurroundings, noteStoreContract } from '../contract/note-store.ts';

let disks = 0;

noteStoreContract('IndexedDB', () => {
  const name = `contract-${(disks += 1)}`;
  const around = countingSurroundings();
  onTestFinished(() => deleteDB(name));
  return Promise.resolve({
    tab: async () => {
      const opened = await openIdbStore(name, around);
      if (!opened.ok) throw new Error(opened.error);
      return opened.value;
    },
    kill: (tab) => Promise.resolve(tab.close()),
  });
});
