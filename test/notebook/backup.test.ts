import { beforeEach, describe, expect, test } from 'vitest';
import { Backup } from '../../web/notebook/backup.ts';
import { backupWords } from '../../web/notebook/words/backup-words.ts';
import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';

const DAY = 24 * 60 * 60 * 1000;
const START = Date.UTC(2024, 0, 1);
let now = START;
let ids = 0;
let store: MemoryStore;
let backup: Backup;

beforeEach(() => {
  now = START;
  store = new MemoryStore(new MemoryDisk(), { now: () => now, newId: () => `id-${(ids += 1)}` });
  backup = new Backup(store, () => now);
});

async function write(path: string, text: string): Promise<void> {
  const found = await store.read([path]);
  const version = found.ok ? found.value[0]?.version : undefined;
  await store.put([{ path, bytes: new TextEncoder().encode(text), ...(version !== undefined && { basedOn: version }) }]);
  await backup.changed();
}

describe('Backup', () => {
  test('nothing written, nothing due, however long ago', async () => {
    now += 1000 * DAY;
    expect(await backup.due()).toBeUndefined();
  });

  test('due fourteen days after the first change, not a moment before, and a daily writer is reminded too', async () => {
    for (let day = 0; day < 14; day += 1) {
      await write('a.md', `day ${day}`);
      expect(await backup.due()).toBeUndefined();
      now += DAY;
    }
    expect(await backup.due()).toEqual({ notes: 1, days: 14 });
    now -= 1;
    expect(await backup.due()).toBeUndefined();
  });

  test('by a clock that was set back years the reminder comes all the same, and counts what was written since', async () => {
    await write('a.md', 'a');
    await backup.exported(now);
    now -= 2000 * DAY;
    await write('b.md', 'b');
    now += 14 * DAY;
    expect(await backup.due()).toMatchObject({ days: 14 });
    // Written before it was set back, a.md may count too; b.md must.
    expect((await backup.due())?.notes).toBeGreaterThanOrEqual(1);
    now -= 3000 * DAY;
    await write('b.md', 'b again');
    now += 14 * DAY;
    expect((await backup.due())?.notes).toBeGreaterThanOrEqual(1);
  });

  test('an export settles it; only what was written after it began waits again', async () => {
    await write('a.md', 'a');
    await write('b.md', 'b');
    now += 20 * DAY;
    const began = now;
    now += 1000;
    await write('b.md', 'b, during the export');
    await backup.exported(began);
    expect(await backup.due()).toBeUndefined();
    now = began + 1000 + 14 * DAY;
    expect(await backup.due()).toEqual({ notes: 1, days: 14, exportedAt: began });
    await backup.exported(now);
    now += 100 * DAY;
    expect(await backup.due()).toBeUndefined();
  });

  test('a deletion waits too, photos are not counted as notes', async () => {
    await write('a.md', 'a');
    await backup.exported(now + 1);
    now += DAY;
    await write('photo.jpg', 'x');
    now += 14 * DAY;
    expect((await backup.due())?.notes).toBe(0);
  });

  test('the reader chooses other days, or never', async () => {
    await write('a.md', 'a');
    await backup.remindAfter(30);
    now += 29 * DAY;
    expect(await backup.due()).toBeUndefined();
    now += DAY;
    expect(await backup.due()).toEqual({ notes: 1, days: 30 });
    await backup.remindAfter(0);
    now += 1000 * DAY;
    expect(await backup.due()).toBeUndefined();
  });

  test('it is remembered with the notebook', async () => {
    await write('a.md', 'a');
    now += 14 * DAY;
    expect(await new Backup(store, () => now).due()).toEqual({ notes: 1, days: 14 });
  });
});

describe('backupWords', () => {
  const exportedAt = Date.UTC(2024, 4, 9, 12);
  const day = new Date(exportedAt).toLocaleDateString(undefined, { dateStyle: 'long' });
  test.each([
    [{ notes: 3, days: 14, exportedAt }, `3 notes changed since the last export on ${day}.`],
    [{ notes: 1, days: 14, exportedAt }, `1 note changed since the last export on ${day}.`],
    [{ notes: 0, days: 14, exportedAt }, `The notebook changed since the last export on ${day}.`],
    [{ notes: 1, days: 14 }, '1 note of this notebook was never exported.'],
    [{ notes: 1200, days: 14 }, '1,200 notes of this notebook were never exported.'],
  ])('%j', (due, words) => expect(backupWords(due)).toBe(words));
});
