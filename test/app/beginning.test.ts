import { describe, expect, test } from 'vitest';
import { beginNotebook } from '../../web/app/beginning.ts';
import { Keeper } from '../../web/notebook/keeper.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';
import { aNote } from '../helpers/a-notebook.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const MADDER = aNote('kind: dyestuff\ntitle: Madder\navailability:\n  - { region: york, when: 1300/, status: grown }');
const notePaths = async (engine: LocalEngine) => (await engine.noteStamps()).map(([path]) => path);
const demonstration = () =>
  Promise.resolve([
    { path: 'd/madder.md', bytes: bytes(MADDER) },
    { path: 'r/red.md', bytes: bytes(aNote('kind: recipe\ntitle: Red')) },
  ]);

async function aShownNotebook() {
  const disk = new MemoryDisk();
  let ids = 0;
  const surroundings = { now: () => 0, newId: () => `id-${(ids += 1)}` };
  const open = () => new Keeper(new MemoryStore(disk, surroundings), new LocalEngine());
  const engine = new LocalEngine();
  const keeper = new Keeper(new MemoryStore(disk, surroundings), engine);
  await keeper.show(await demonstration());
  return { keeper, engine, open };
}

describe('beginNotebook', () => {
  test('an empty one is kept as empty: the next visit does not show the demonstration', async () => {
    const { keeper, engine, open } = await aShownNotebook();
    expect(await beginNotebook(keeper, { with: 'nothing' }, demonstration)).toEqual({ is: 'begun' });
    expect((await engine.size()).notes).toBe(0);
    expect(await open().openKept()).toEqual({ ok: true, value: true });
  });

  test('a kept notebook is never emptied', async () => {
    const { keeper, engine } = await aShownNotebook();
    await keeper.keepShown();
    expect(await beginNotebook(keeper, { with: 'nothing' }, demonstration)).toEqual({ is: 'failed' });
    expect((await engine.size()).notes).toBe(2);
  });

  test.each([true, false])('a starter shelf (claims: %s) takes the place of what was shown', async (claims) => {
    const { keeper, engine } = await aShownNotebook();
    const begun = await beginNotebook(keeper, { with: 'shelf', claims }, demonstration);
    expect(begun.is === 'begun' && begun.report?.added).toEqual(['d/madder.md']);
    expect(await notePaths(engine)).toEqual(['d/madder.md']);
    expect(new TextDecoder().decode((await keeper.read('d/madder.md'))?.bytes).includes('availability')).toBe(claims);
  });

  test('the demonstration comes back to an emptied notebook, and own notes of the same name stay', async () => {
    const { keeper, engine } = await aShownNotebook();
    await keeper.beginEmpty();
    await keeper.write([{ path: 'd/madder.md', bytes: bytes('mine') }]);
    await beginNotebook(keeper, { with: 'demonstration' }, demonstration);
    expect(await notePaths(engine)).toEqual(['d/madder.md', 'r/red.md']);
    expect(new TextDecoder().decode((await keeper.read('d/madder.md'))?.bytes)).toBe('mine');
  });

  test('what cannot be fetched changes nothing', async () => {
    const { keeper, engine } = await aShownNotebook();
    expect(await beginNotebook(keeper, { with: 'shelf', claims: true }, () => Promise.reject(new Error('offline')))).toEqual({
      is: 'failed',
    });
    expect(keeper.isKept).toBe(false);
    expect((await engine.size()).notes).toBe(2);
  });
});
