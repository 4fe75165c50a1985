import { describe, expect, test } from 'vitest';
import { ok } from '../../web/domain/result.ts';
import { openZip } from '../../web/notebook/import/open-zip.ts';
import { Keeper, type KeeperEvent } from '../../web/notebook/keeper.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';
import { countingSurroundings } from '../contract/note-store.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const note = (path: string, title: string) => ({ path, bytes: bytes(`---\nkind: region\ntitle: ${title}\n---\n`) });
const DEMO = [note('a.md', 'Alum shore'), note('b.md', 'Blue shore')];

class Tab {
  readonly engine = new LocalEngine();
  readonly store: MemoryStore;
  readonly keeper: Keeper;
  readonly events: KeeperEvent[] = [];

  constructor(disk: MemoryDisk) {
    this.store = new MemoryStore(disk, countingSurroundings());
    this.keeper = new Keeper(this.store, this.engine);
    this.keeper.subscribe((event) => this.events.push(event));
  }

  async titles(): Promise<readonly string[]> {
    return (await this.engine.choices()).regions.map(({ title }) => title).filter((title) => title.endsWith('shore'));
  }
}

async function stored(tab: Tab): Promise<readonly string[]> {
  const stamps = await tab.store.stamps();
  return stamps.ok ? stamps.value.map(({ path }) => path) : [];
}

/** Lets messages between tabs arrive and be dealt with. */
const settle = () => new Promise((done) => setTimeout(done, 5));

describe('Keeper, showing a notebook', () => {
  test('keeps nothing until something is changed, and then everything', async () => {
    const tab = new Tab(new MemoryDisk());
    expect(await tab.keeper.openKept()).toEqual(ok(false));
    await tab.keeper.show(DEMO);
    expect(tab.keeper.isKept).toBe(false);
    expect(await stored(tab)).toEqual([]);
    expect((await tab.keeper.read('a.md'))?.bytes).toEqual(DEMO[0]?.bytes);

    const written = await tab.keeper.write([note('a.md', 'Amber shore')]);
    expect(written).toMatchObject({ ok: true, value: [{ path: 'a.md' }] });
    expect(tab.keeper.isKept).toBe(true);
    expect(await stored(tab)).toEqual(['a.md', 'b.md']);
    expect(await tab.titles()).toEqual(['Amber shore', 'Blue shore']);
    // What the demonstration said is its earlier version.
    expect(await tab.keeper.history('a.md')).toMatchObject({ value: [{ ended: 'replaced' }] });
    expect(tab.events.map(({ type }) => type)).toEqual(['kept', 'changed']);
  });

  test('the next start opens what was kept', async () => {
    const disk = new MemoryDisk();
    const tab = new Tab(disk);
    await tab.keeper.show(DEMO);
    await tab.keeper.write([note('c.md', 'Chalk shore'), { path: 'photos/skein.jpg', bytes: bytes('jpg') }]);
    const next = new Tab(disk);
    expect(await next.keeper.openKept()).toEqual(ok(true));
    expect([...(await next.titles())].sort()).toEqual(['Alum shore', 'Blue shore', 'Chalk shore']);
    expect(await next.engine.size()).toEqual({ notes: 3, others: 1 });
    // Photos stay in the store.
    expect(await next.engine.attachment('photos/skein.jpg')).toBeUndefined();
    expect((await next.keeper.read('photos/skein.jpg'))?.bytes).toEqual(bytes('jpg'));
  });

  test('an emptied notebook is a notebook, not a fresh start', async () => {
    const disk = new MemoryDisk();
    const tab = new Tab(disk);
    await tab.keeper.show(DEMO);
    await tab.keeper.beginEmpty();
    expect(await tab.titles()).toEqual([]);
    expect(await new Tab(disk).keeper.openKept()).toEqual(ok(true));
    expect(await stored(tab)).toEqual([]);
  });

  test('a refused write leaves the notebook at hand as it was', async () => {
    const tab = new Tab(new MemoryDisk());
    await tab.keeper.show(DEMO);
    await tab.keeper.keepShown();
    expect(await tab.keeper.write([{ ...note('a.md', 'Amber shore'), basedOn: 4711 }])).toMatchObject({ error: 'conflict' });
    expect(await tab.titles()).toContain('Alum shore');
  });
});

describe('Keeper and versions', () => {
  const known = async (tab: Tab) => Object.fromEntries(await tab.engine.noteStamps());
  const kept = async (tab: Tab) => {
    const stamps = await tab.store.stamps();
    return Object.fromEntries(stamps.ok ? stamps.value.map(({ path, version }) => [path, version]) : []);
  };

  test('every note at hand is known by the version it is kept under, whoever wrote it', async () => {
    const disk = new MemoryDisk();
    const tab = new Tab(disk);
    await tab.keeper.beginEmpty();
    await tab.keeper.write(DEMO);
    const other = new Tab(disk);
    await other.keeper.openKept();
    expect(await known(other)).toEqual(await kept(tab));
    await other.keeper.write([{ ...note('a.md', 'Amber shore'), basedOn: (await kept(tab))['a.md'] ?? 0 }]);
    await settle();
    for (const one of [tab, other]) expect(await known(one)).toEqual(await kept(tab));
    const found = { ...note('c.md', 'Chalk shore'), read: () => Promise.resolve(ok(note('c.md', 'Chalk shore').bytes)) };
    await tab.keeper.importFiles({ from: 'a folder', files: [{ ...found, byteCount: found.bytes.length }], mayBeWrapped: false });
    expect(Object.keys(await known(tab))).toEqual(['a.md', 'b.md', 'c.md']);
    expect(await known(tab)).toEqual(await kept(tab));
  });

  test('what is only shown has none', async () => {
    const tab = new Tab(new MemoryDisk());
    await tab.keeper.show(DEMO);
    expect(await known(tab)).toEqual({ 'a.md': undefined, 'b.md': undefined });
  });
});

describe('Keeper, with two tabs', () => {
  const two = async () => {
    const disk = new MemoryDisk();
    const [mine, theirs] = [new Tab(disk), new Tab(disk)];
    await mine.keeper.show(DEMO);
    await theirs.keeper.show(DEMO);
    return { mine, theirs };
  };

  test('what one writes the other sees, and says that it was another tab', async () => {
    const { mine, theirs } = await two();
    await mine.keeper.write([note('a.md', 'Amber shore')]);
    await settle();
    expect(theirs.keeper.isKept).toBe(true);
    expect([...(await theirs.titles())].sort()).toEqual(['Amber shore', 'Blue shore']);
    expect(theirs.events.filter(({ type }) => type === 'kept')).toHaveLength(1);
    expect(theirs.events.at(-1)).toEqual({ type: 'changed', paths: ['a.md'], by: 'another-tab' });
    const opened = await mine.keeper.read('b.md');
    await mine.keeper.write([{ path: 'b.md', removed: true, ...(opened?.version !== undefined && { basedOn: opened.version }) }]);
    await settle();
    expect(await theirs.titles()).toEqual(['Amber shore']);
  });

  test('both write in the same note of the demonstration: the later one is told', async () => {
    const { mine, theirs } = await two();
    expect(await mine.keeper.write([note('a.md', 'Amber shore')])).toMatchObject({ ok: true });
    await settle();
    expect(await theirs.keeper.write([note('a.md', 'Ash shore')])).toMatchObject({ error: 'conflict', conflicts: [{ path: 'a.md' }] });
  });

  test('they write in different notes of the demonstration: both are saved', async () => {
    const { mine, theirs } = await two();
    expect(await mine.keeper.write([note('a.md', 'Amber shore')])).toMatchObject({ ok: true });
    await settle();
    expect(await theirs.keeper.write([note('b.md', 'Bog shore')])).toMatchObject({ ok: true });
    await settle();
    expect([...(await mine.titles())].sort()).toEqual(['Amber shore', 'Bog shore']);
  });

  test('they begin at the same moment: one demonstration is kept, once', async () => {
    const { mine, theirs } = await two();
    const results = await Promise.all([
      mine.keeper.write([note('c.md', 'Chalk shore')]),
      theirs.keeper.write([note('d.md', 'Dune shore')]),
    ]);
    await settle();
    expect(results).toMatchObject([{ ok: true }, { ok: true }]);
    expect(await stored(mine)).toEqual(['a.md', 'b.md', 'c.md', 'd.md']);
  });

  test('a folder read in by one does not mix with the demonstration the other shows', async () => {
    const { mine, theirs } = await two();
    await mine.keeper.importFiles({ from: 'x', mayBeWrapped: false, files: [found('own.md', 'Own shore')] });
    await theirs.keeper.write([note('new.md', 'New shore')]);
    await settle();
    expect(await stored(mine)).toEqual(['new.md', 'own.md']);
    expect([...(await theirs.titles())].sort()).toEqual(['New shore', 'Own shore']);
  });

  test('the end of the store is passed on', async () => {
    const disk = new MemoryDisk();
    const tab = new Tab(disk);
    tab.store.close();
    expect(await tab.keeper.openKept()).toEqual({ ok: false, error: 'closed' });
    expect(await tab.keeper.write([note('a.md', 'x')])).toEqual({ ok: false, error: 'closed' });
  });
});

const found = (path: string, title: string) => {
  const file = note(path, title);
  return { path, byteCount: file.bytes.length, read: () => Promise.resolve(ok(file.bytes)) };
};

describe('Keeper, in and out', () => {
  test('reading a folder in takes the place of what was only shown, and reports problems', async () => {
    const tab = new Tab(new MemoryDisk());
    await tab.keeper.show(DEMO);
    const broken = { path: 'broken.md', byteCount: 9, read: () => Promise.resolve(ok(bytes('---\nkind: recipie\n---\n'))) };
    const report = await tab.keeper.importFiles({ from: 'x', mayBeWrapped: false, files: [found('own.md', 'Own shore'), broken] });
    expect(report.added).toEqual(['broken.md', 'own.md']);
    expect(report.problems.map(({ file, diagnostic }) => [file, diagnostic.code])).toEqual([['broken.md', 'kind-unknown']]);
    expect(await tab.titles()).toEqual(['Own shore']);
    expect(await stored(tab)).toEqual(['broken.md', 'own.md']);
  });

  test('reports what is wrong between notes, once all of them are read', async () => {
    const tab = new Tab(new MemoryDisk());
    const one = (path: string, text: string) => ({ path, byteCount: text.length, read: () => Promise.resolve(ok(bytes(text))) });
    const report = await tab.keeper.importFiles({
      from: 'x',
      mayBeWrapped: false,
      files: [
        one('a.md', '---\nkind: region\ntitle: A\nwithin: b\nsource: k\n---\n'),
        one('b.md', '---\nkind: region\ntitle: B\nwithin: nowhere-known\nsource: k\n---\n'),
      ],
    });
    const told = report.problems.map(({ file, id, text, diagnostic }) => [file, id, text.slice(...diagnostic.range)]);
    expect(told).toContainEqual(['b.md', 'b', 'nowhere-known']);
    // B came in after A, which lies within it.
    expect(told.filter(([, , at]) => at === 'b')).toEqual([]);
  });

  test('an earlier version comes back into the notebook at hand', async () => {
    const tab = new Tab(new MemoryDisk());
    await tab.keeper.show(DEMO);
    await tab.keeper.write([note('a.md', 'Amber shore')]);
    const history = await tab.keeper.history('a.md');
    const [now, earlier] = [await tab.keeper.read('a.md'), history.ok ? history.value[0] : undefined];
    await tab.keeper.restore('a.md', earlier?.version ?? -1, now?.version);
    expect(await tab.titles()).toContain('Alum shore');
  });

  test.each([true, false])('exports every file, whether it is kept or not (%s)', async (isKept) => {
    const tab = new Tab(new MemoryDisk());
    await tab.keeper.show(DEMO);
    if (isKept) await tab.keeper.keepShown();
    const pieces: Uint8Array[] = [];
    for await (const piece of tab.keeper.export('demo')) if (piece.ok) pieces.push(piece.value);
    const zip = openZip('demo.zip', new Uint8Array(Buffer.concat(pieces)));
    if (!zip.ok) throw new Error(zip.error);
    const contents = await Promise.all(zip.value.files.map(async (file) => [file.path, await file.read()]));
    expect(contents).toEqual(DEMO.map((file) => [`demo/${file.path}`, ok(file.bytes)]));
  });
});
