import { describe, expect, test } from 'vitest';
import { noteId } from '../../../web/domain/note/note.ts';
import type { NotebookStore } from '../../../web/domain/ports.ts';
import { failed, ok } from '../../../web/domain/result.ts';
import type { FoundFile, FoundFiles } from '../../../web/notebook/import/found-files.ts';
import { importFiles, type ImportProgress } from '../../../web/notebook/import/import-files.ts';
import { openZip } from '../../../web/notebook/import/open-zip.ts';
import { MemoryDisk, MemoryStore } from '../../../web/store/memory-store.ts';
import { countingSurroundings } from '../../contract/note-store.ts';
import { notebookFindings } from '../../../web/notebook/check-notebook.ts';
import { wordsFor } from '../../../web/notebook/words/diagnostic-words.ts';
import { aNotebook } from '../../helpers/a-notebook.ts';
import { makeZip } from '../../helpers/make-zip.ts';

const text = (words: string): Uint8Array => new TextEncoder().encode(words);

const file = (path: string, words = path): FoundFile => ({
  path,
  byteCount: words.length,
  modifiedAt: 5,
  read: () => Promise.resolve(ok(text(words))),
});

const folder = (files: readonly FoundFile[], mayBeWrapped = false): FoundFiles => ({ from: 'my notes', files, mayBeWrapped });

const fresh = () => {
  const disk = new MemoryDisk();
  return { disk, store: new MemoryStore(disk, countingSurroundings()) };
};

async function texts(store: NotebookStore): Promise<Record<string, string>> {
  const all: Record<string, string> = {};
  for await (const batch of store.loadAll()) {
    if (batch.ok) for (const { path, bytes } of batch.value) all[path] = new TextDecoder().decode(bytes);
  }
  return all;
}

describe('importFiles', () => {
  test('writes what it finds, with its dates, and says so', async () => {
    const { store } = fresh();
    const report = await importFiles(store, folder([file('b/weld.md'), file('a.md')]));
    expect(report).toEqual({
      from: 'my notes',
      planned: 2,
      added: ['a.md', 'b/weld.md'],
      replaced: [],
      unchanged: [],
      skipped: [],
      hiddenCount: 0,
      problems: [],
      missing: [],
    });
    expect(await texts(store)).toEqual({ 'a.md': 'a.md', 'b/weld.md': 'b/weld.md' });
    const stamps = await store.stamps();
    expect(stamps.ok && stamps.value.map(({ modifiedAt }) => modifiedAt)).toEqual([5, 5]);
  });

  test('a wrapper folder falls away, litter is counted and not named', async () => {
    const { store } = fresh();
    const files = ['notes/a.md', 'notes/b/c.md', 'notes/.DS_Store', '__MACOSX/notes/._a.md', 'notes/.git/config', 'notes/Thumbs.db'];
    const report = await importFiles(
      store,
      folder(
        files.map((path) => file(path)),
        true,
      ),
    );
    expect(report.added).toEqual(['a.md', 'b/c.md']);
    expect(report.hiddenCount).toBe(4);
    expect(report.skipped).toEqual([]);
  });

  test('a folder handed over as such keeps its only folder', async () => {
    const { store } = fresh();
    expect((await importFiles(store, folder([file('recipes/a.md')]))).added).toEqual(['recipes/a.md']);
  });

  test('hostile names write nothing, and each is named with its reason', async () => {
    const { store } = fresh();
    const names = ['../up.md', 'x/../../up.md', '/root.md', 'C:/win.md', 'a\\b.md', 'a\u0000b.md', 'good.md'];
    const report = await importFiles(
      store,
      folder(
        names.map((path) => file(path)),
        true,
      ),
    );
    expect(Object.keys(await texts(store))).toEqual(['good.md']);
    expect(report.skipped.map(({ path, reason }) => `${path} ${reason}`)).toEqual([
      '../up.md climbs',
      'x/../../up.md climbs',
      '/root.md absolute',
      'C:/win.md drive',
      'a\\b.md backslash',
      'a\u0000b.md control-character',
    ]);
  });

  test('a zip with everything wrong in it gives what is good in it', async () => {
    const { store } = fresh();
    const zip = makeZip([
      { path: '../../evil.md', bytes: text('evil') },
      { path: 'notes/link.md', bytes: text('/etc/passwd'), options: { os: 3, attrs: 0o120777 << 16 } },
      { path: 'notes/bomb.md', bytes: new Uint8Array(4 * 1024 * 1024) },
      { path: 'notes/__proto__', bytes: text('just a file') },
      { path: 'notes/madder.md', bytes: text('red') },
    ]);
    const opened = openZip('notes.zip', zip);
    if (!opened.ok) throw new Error(opened.error);
    const report = await importFiles(store, opened.value);
    expect(report.added).toEqual(['__proto__', 'madder.md']);
    expect(report.skipped).toEqual([
      { path: '../../evil.md', reason: 'climbs' },
      { path: 'link.md', reason: 'link' },
      { path: 'bomb.md', reason: 'bomb' },
    ]);
  });

  test('the same name twice is read once', async () => {
    const { store } = fresh();
    const report = await importFiles(store, folder([file('a.md', 'first'), file('a.md', 'second')]));
    expect(report.skipped).toEqual([{ path: 'a.md', reason: 'twice' }]);
    expect(await texts(store)).toEqual({ 'a.md': 'first' });
  });

  test('a name whose accents are taken apart is the same name, and stays as it came first', async () => {
    const [apart, whole] = ['fa\u0308rber.md', 'f\u00e4rber.md'];
    const { store } = fresh();
    await importFiles(store, folder([file(apart, 'first')]));
    expect(await texts(store)).toEqual({ [apart]: 'first' });
    expect((await importFiles(store, folder([file(whole, 'first')]))).unchanged).toEqual([apart]);
    expect((await importFiles(store, folder([file(whole, 'second')]))).replaced).toEqual([apart]);
    expect(await texts(store)).toEqual({ [apart]: 'second' });
  });

  describe('a zip whose names have their accents taken apart, as some systems write them', () => {
    const [apart, whole] = ['dyestuffs/fa\u0308rberwaid.md', 'dyestuffs/f\u00e4rberwaid.md'];
    const zipped = (entries: Readonly<Record<string, string>>) => {
      const opened = openZip('notes.zip', makeZip(Object.entries(entries).map(([path, words]) => ({ path, bytes: text(words) }))));
      if (!opened.ok) throw new Error(opened.error);
      return opened.value;
    };
    const waid = (words: string) => `---\nkind: dyestuff\ntitle: F\u00e4rberwaid\n---\n${words}\n`;
    const withWaid = async () => {
      const { store } = fresh();
      await importFiles(store, folder([file(whole, waid('one')), file('a.md')]));
      return store;
    };

    test('keeps them as they came where they are new', async () => {
      const { store } = fresh();
      const report = await importFiles(store, zipped({ [apart]: waid('one'), 'a.md': 'a.md' }));
      expect(report.added).toEqual(['a.md', apart]);
      expect(await texts(store)).toEqual({ 'a.md': 'a.md', [apart]: waid('one') });
      expect((await importFiles(store, zipped({ [apart]: waid('one'), 'a.md': 'a.md' }))).unchanged).toEqual(['a.md', apart]);
    });

    test('is the notebook’s own notes: unchanged ones are left alone, changed ones replaced, and none stands twice', async () => {
      const store = await withWaid();
      const again = await importFiles(store, zipped({ [apart]: waid('one'), 'a.md': 'a.md' }));
      expect([again.unchanged, again.added, again.replaced, again.skipped]).toEqual([['a.md', whole], [], [], []]);
      const changed = await importFiles(store, zipped({ [apart]: waid('two'), 'a.md': 'a.md' }));
      expect([changed.unchanged, changed.added, changed.replaced, changed.skipped]).toEqual([['a.md'], [], [whole], []]);
      expect(await texts(store)).toEqual({ 'a.md': 'a.md', [whole]: waid('two') });
      expect(await store.history(whole)).toMatchObject({ value: [{ ended: 'replaced' }] });
      expect(aNotebook(await texts(store)).base.note(noteId(apart.slice('dyestuffs/'.length, -3)))?.file).toBe(whole);
    });

    test('differs from mine only in what it says, where mine is to be kept', async () => {
      const store = await withWaid();
      const report = await importFiles(store, zipped({ [apart]: waid('two'), 'a.md': 'a.md' }), { whereDifferent: 'keep-mine' });
      expect([report.skipped, report.added, report.unchanged]).toEqual([[{ path: whole, reason: 'kept-mine' }], [], ['a.md']]);
      expect(await texts(store)).toEqual({ 'a.md': 'a.md', [whole]: waid('one') });
    });

    test.each([
      ['into an empty notebook', () => Promise.resolve(fresh().store)],
      ['into one that has either', withWaid],
    ])('that holds both spellings loses neither, and the notebook says so: %s', async (_, made) => {
      const store = await made();
      await importFiles(store, zipped({ [whole]: waid('of one'), [apart]: waid('of the other'), 'a.md': 'a.md' }));
      const kept = await texts(store);
      expect(kept).toEqual({ 'a.md': 'a.md', [whole]: waid('of one'), [apart]: waid('of the other') });
      const clashes = notebookFindings(aNotebook(kept)).filter(({ diagnostic }) => diagnostic.code === 'id-clash');
      expect(clashes).toHaveLength(1);
      expect(clashes.map(({ diagnostic }) => wordsFor(diagnostic).says).join()).toContain('the same to the eye');
    });
  });

  test('one unreadable file does not keep the others out', async () => {
    const { store } = fresh();
    const broken: FoundFile = { path: 'b.md', byteCount: 1, read: () => Promise.resolve(failed('unreadable')) };
    const report = await importFiles(store, folder([file('a.md'), broken, file('c.md')]));
    expect(report.added).toEqual(['a.md', 'c.md']);
    expect(report.skipped).toEqual([{ path: 'b.md', reason: 'unreadable' }]);
  });

  test('read again, unchanged files are left alone and changed ones keep their earlier version', async () => {
    const { store } = fresh();
    await importFiles(store, folder([file('a.md', 'one'), file('b.md', 'two')]));
    const report = await importFiles(store, folder([file('a.md', 'one'), file('b.md', 'new'), file('c.md')]));
    expect([report.unchanged, report.replaced, report.added]).toEqual([['a.md'], ['b.md'], ['c.md']]);
    expect(await store.history('a.md')).toMatchObject({ value: [] });
    expect(await store.history('b.md')).toMatchObject({ value: [{ ended: 'replaced' }] });
  });

  test('mine can be kept where they differ', async () => {
    const { store } = fresh();
    await importFiles(store, folder([file('a.md', 'mine'), file('b.md', 'same')]));
    const report = await importFiles(store, folder([file('a.md', 'theirs'), file('b.md', 'same'), file('c.md')]), {
      whereDifferent: 'keep-mine',
    });
    expect(report.skipped).toEqual([{ path: 'a.md', reason: 'kept-mine' }]);
    expect([report.unchanged, report.added]).toEqual([['b.md'], ['c.md']]);
    expect((await texts(store))['a.md']).toBe('mine');
  });

  test('what another tab writes meanwhile is not overwritten', async () => {
    const { disk, store } = fresh();
    const other = new MemoryStore(disk, countingSurroundings());
    const slow: FoundFile = {
      ...file('a.md', 'theirs'),
      read: async () => {
        await other.put([{ path: 'a.md', bytes: text('written meanwhile') }]);
        return ok(text('theirs'));
      },
    };
    const report = await importFiles(store, folder([slow, file('b.md')]));
    expect(report.skipped).toEqual([{ path: 'a.md', reason: 'changed-meanwhile' }]);
    expect(report.added).toEqual(['b.md']);
    expect((await texts(store))['a.md']).toBe('written meanwhile');
  });

  test('progress counts only what is on disk, and never goes back', async () => {
    const { disk, store } = fresh();
    const seen: ImportProgress[] = [];
    const files = Array.from({ length: 450 }, (_, at) => file(`n${String(at).padStart(3, '0')}.md`));
    await importFiles(store, folder(files), {
      onProgress: (progress) => {
        expect(progress.saved).toBe(disk.files.size);
        seen.push(progress);
      },
    });
    expect(seen.length).toBeGreaterThan(4);
    expect(seen.at(-1)).toEqual({ planned: 450, saved: 450 });
  });

  test('stopped, it says what is missing and leaves no plan behind', async () => {
    const { disk, store } = fresh();
    const files = Array.from({ length: 250 }, (_, at) => file(`n${String(at).padStart(3, '0')}.md`));
    const report = await importFiles(store, folder(files), { isStopped: () => disk.files.size >= 100 });
    expect(report.endedBy).toBe('stopped');
    expect(report.added.length + report.missing.length).toBe(250);
    expect(report.added).toHaveLength(100);
    expect(disk.imports.size).toBe(0);
  });

  test('a store that fails half way ends it, with the reason and what is missing', async () => {
    const { store } = fresh();
    const files = Array.from({ length: 250 }, (_, at) => file(`n${String(at).padStart(3, '0')}.md`));
    let batches = 0;
    const report = await importFiles(store, folder(files), {
      onProgress: () => {
        if ((batches += 1) === 2) store.close();
      },
    });
    expect(report.endedBy).toBe('closed');
    expect(report.added).toHaveLength(100);
    expect(report.missing).toHaveLength(150);
  });

  test('passes on what the notebook finds wrong in the files written', async () => {
    const { store } = fresh();
    const read: string[] = [];
    const asked: string[] = [];
    const finding = {
      file: 'a.md',
      text: 'x',
      diagnostic: { code: 'file-empty', severity: 'warning', range: [0, 0], about: [] },
    } as const;
    const report = await importFiles(store, folder([file('a.md'), file('b.md')]), {
      readIn: (files) => {
        read.push(...files.map(({ path }) => path));
        return Promise.resolve();
      },
      findings: (paths) => {
        asked.push(...paths);
        return Promise.resolve([finding]);
      },
    });
    expect(read).toEqual(['a.md', 'b.md']);
    expect(asked).toEqual(['a.md', 'b.md']);
    expect(report.problems).toEqual([finding]);
  });

  test('an empty folder is an empty report', async () => {
    expect(await importFiles(fresh().store, folder([]))).toMatchObject({ planned: 0, added: [], missing: [] });
  });
});
