import { afterEach, expect, test } from 'vitest';
import { engineOver, serveEngine } from '../../web/app/engine-wire.ts';
import { Keeper } from '../../web/notebook/keeper.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { openIdbStore } from '../../web/store/idb-store.ts';

const name = `readings-${crypto.randomUUID()}`;
const ended: (() => void)[] = [];
afterEach(() => ended.splice(0).forEach((end) => end()));

const bytes = (text: string) => new TextEncoder().encode(text);
const region = (nth: number, title = `Region ${nth}`) => ({
  path: `n${nth}.md`,
  bytes: bytes(`---\nkind: region\ntitle: ${title}\n---\n\nWords of ${nth}.\n`),
});

/** A page over the browser's own database, the engine behind a wire, and which notes it put in as they were read before. */
async function aVisit() {
  const opened = await openIdbStore(name, { now: () => Date.now(), newId: () => crypto.randomUUID() });
  if (!opened.ok) throw new Error(opened.error);
  const { port1, port2 } = new MessageChannel();
  port1.start();
  port2.start();
  ended.push(() => {
    opened.value.close();
    port1.close();
    port2.close();
  });
  serveEngine(port2, new LocalEngine());
  const engine = engineOver(port1);
  const taken: string[] = [];
  const watched = {
    ...engine,
    putReadings: async (...args: Parameters<typeof engine.putReadings>) => {
      const paths = await engine.putReadings(...args);
      taken.push(...paths);
      return paths;
    },
  };
  const keeper = new Keeper(opened.value, watched, { madeBy: 'test', fromNotes: 10, afterNotes: 1 });
  await keeper.openKept();
  return { keeper, engine, taken, store: opened.value };
}

test('the next visit reads only the notes that changed, and shows the text of each', async () => {
  const first = await aVisit();
  await first.keeper.beginEmpty();
  await first.keeper.write(Array.from({ length: 12 }, (_, nth) => region(nth)));
  await first.keeper.keepReadings();

  const second = await aVisit();
  expect(second.taken).toHaveLength(12);
  expect((await second.engine.noteText('n4'))?.text).toContain('Words of 4.');
  const { version } = (await second.keeper.read('n4.md')) ?? {};
  await second.keeper.write([{ ...region(4, 'Elsewhere'), ...(version !== undefined && { basedOn: version }) }]);

  const third = await aVisit();
  expect(third.taken.toSorted()).toEqual([0, 1, 2, 3, 5, 6, 7, 8, 9, 10, 11].map((nth) => `n${nth}.md`).sort());
  expect((await third.engine.choices()).regions.map(({ title }) => title)).toContain('Elsewhere');
  expect((await third.engine.files()).map(({ path, bytes: held }) => [path, new TextDecoder().decode(held)])).toEqual(
    (await second.engine.files()).map(({ path, bytes: held }) => [path, new TextDecoder().decode(held)]),
  );
});

test('a small notebook keeps none', async () => {
  const visit = await aVisit();
  const { keeper, store } = visit;
  const files = await visit.engine.files();
  for (const { path } of files.slice(0, 5)) {
    const { version } = (await keeper.read(path)) ?? {};
    await keeper.write([{ path, removed: true, ...(version !== undefined && { basedOn: version }) }]);
  }
  await store.keepDerived('readings:0', { madeBy: 'none', bytes: new Uint8Array() });
  await keeper.keepReadings();
  expect(await store.derived('readings:0', 'test')).toEqual({ ok: true, value: undefined });
});
