import { describe, expect, test } from 'vitest';
import { askToPersist, storageRoom } from '../../web/store/storage-room.ts';

const manager = (parts: Partial<StorageManager>): StorageManager => parts as StorageManager;

describe('askToPersist', () => {
  test('says what the browser answered', async () => {
    expect(await askToPersist(manager({ persist: () => Promise.resolve(true) }))).toBe('granted');
    expect(await askToPersist(manager({ persist: () => Promise.resolve(false) }))).toBe('refused');
    expect(await askToPersist(manager({ persist: () => Promise.reject(new TypeError()) }))).toBe('refused');
    expect(await askToPersist(manager({}))).toBe('unknown');
  });
});

describe('storageRoom', () => {
  test('gives the estimate and the promise', async () => {
    const storage = manager({
      estimate: () => Promise.resolve({ usage: 3, quota: 10 }),
      persisted: () => Promise.resolve(true),
    });
    expect(await storageRoom(storage)).toEqual({ usedBytes: 3, quotaBytes: 10, persistence: 'granted' });
  });

  test('gives nothing where the browser does not say', async () => {
    expect(await storageRoom(manager({}))).toBeUndefined();
    expect(await storageRoom(manager({ estimate: () => Promise.resolve({ usage: 3 }) }))).toBeUndefined();
    expect(await storageRoom(manager({ estimate: () => Promise.reject(new TypeError()) }))).toBeUndefined();
  });

  test('does not claim a promise that was never asked about', async () => {
    const storage = manager({ estimate: () => Promise.resolve({ usage: 3, quota: 10 }) });
    expect(await storageRoom(storage)).toEqual({ usedBytes: 3, quotaBytes: 10, persistence: 'unknown' });
  });
});
