import type { Page } from 'playwright-core';

/** A tab with a program of years ago: the first schema, with notes in it, and an ear deaf to whoever asks it to let go. */
export const holdOlderNotebook = (page: Page, notes: Readonly<Record<string, string>>): Promise<void> =>
  page.evaluate((written) => {
    const opening = indexedDB.open('tenterground', 1);
    opening.addEventListener('upgradeneeded', () => {
      const made = (name: string, keyPath?: string | string[]) => opening.result.createObjectStore(name, keyPath ? { keyPath } : {});
      const texts = Object.entries(written).map(([path, text]) => [path, new TextEncoder().encode(text)] as const);
      const [counters, files] = [made('counters'), made('files', 'path')];
      made('earlier', ['path', 'version']);
      const blocks = made('blocks');
      made('settings');
      made('derived');
      counters.put({ notebookId: 'old', lastVersion: 1, lastBlock: texts.length }, 'counters');
      for (const [at, [path, bytes]] of texts.entries()) {
        const place = { block: at + 1, offset: 0, length: bytes.length };
        files.put({ path, version: 1, byteCount: bytes.length, savedAt: 1, modifiedAt: 1, place });
        blocks.put(bytes, at + 1);
      }
    });
    return new Promise<void>((open, failed) => {
      opening.addEventListener('success', () => open());
      opening.addEventListener('error', () => failed(new Error('not opened')));
    });
  }, notes);
