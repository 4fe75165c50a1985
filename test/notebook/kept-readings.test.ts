import { describe, expect, test } from 'vitest';
import { madeNotes } from '../../scripts/bench/made/made-notes.ts';
import { packNotebook } from '../../scripts/demo-plugin.mjs';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { packReadings, unpackReadings } from '../../web/notebook/kept-readings.ts';
import { Keeper } from '../../web/notebook/keeper.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { Notebook, type NotebookFile } from '../../web/notebook/notebook.ts';
import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';
import { countingSurroundings } from '../contract/note-store.ts';
import { arbitraryNote } from '../helpers/arbitrary-note.ts';
import { hostileNotebook } from '../helpers/hostile-notebook.ts';
import { fc } from '../helpers/property.ts';

type Text = { readonly path: string; readonly text: string };
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const asFile = ({ path, text }: Text): NotebookFile => ({ path, bytes: bytes(text) });

const BROKEN: readonly NotebookFile[] = [
  { path: 'broken/yaml.md', bytes: bytes('---\nkind: trial\n  x: [a, b\n---\nwords') },
  { path: 'broken/open.md', bytes: bytes('---\nkind: trial\n') },
  { path: 'broken/empty.md', bytes: bytes('') },
  { path: 'broken/latin.md', bytes: Uint8Array.of(0x6b, 0xe4, 0x72, 0x6d) },
  { path: 'broken/zero.md', bytes: bytes('---\nkind: region\ntitle: Nowhere\npoint: [-0, 1e999]\n---\n') },
  { path: 'broken/half.md', bytes: bytes('---\nkind: region\ntitle: "\\uD800 half"\n---\n') },
];

/** One tab over a disk; `takes` are the notes it put in from readings. */
class Tab {
  readonly engine = new LocalEngine();
  readonly store: MemoryStore;
  readonly keeper: Keeper;
  takes: readonly string[] = [];

  constructor(disk: MemoryDisk, madeBy?: string) {
    this.store = new MemoryStore(disk, countingSurroundings());
    const putReadings = this.engine.putReadings.bind(this.engine);
    this.engine.putReadings = async (...args) => (this.takes = await putReadings(...args));
    this.keeper = new Keeper(this.store, this.engine, madeBy === undefined ? undefined : { madeBy, fromNotes: 1, afterNotes: 1 });
  }
}

const openedTab = async (disk: MemoryDisk, madeBy?: string): Promise<Tab> => {
  const tab = new Tab(disk, madeBy);
  expect(await tab.keeper.openKept()).toEqual({ ok: true, value: true });
  return tab;
};

/** A disk with a notebook on it, and what reading it gave. */
async function keptDisk(files: readonly NotebookFile[], madeBy = 'a'): Promise<MemoryDisk> {
  const disk = new MemoryDisk();
  const writer = new Tab(disk);
  await writer.keeper.beginEmpty();
  await writer.keeper.write(files);
  await (await openedTab(disk, madeBy)).keeper.keepReadings();
  return disk;
}

const QUESTIONS = [
  { dye: 'madder', region: 'england', when: '14th century' },
  { dye: 'woad', region: 'york', when: '900', fibre: 'wool' },
  { dye: 'kermes', region: 'lubeck', when: '1400/1450', wearer: 'burgher', dyedHere: true },
  { colour: '#8a2b2b', region: 'england', when: '1300', tolerance: '8' },
  { dye: 'nothing', region: 'nowhere', when: 'never' },
];
const PALETTES = [
  { region: 'england', when: '14th century', all: true },
  { region: 'york', when: '950', fibre: 'wool', group: 'dyestuff' as const },
];

/** What a notebook answers before any text has to be there. */
async function answersAtOnce(engine: LocalEngine) {
  return {
    size: await engine.size(),
    stamps: await engine.noteStamps(),
    choices: await engine.choices(),
    answers: await Promise.all(QUESTIONS.map((question) => engine.answer(question))),
    palettes: await Promise.all(PALETTES.map((palette) => engine.palette(palette))),
    kept: await engine.keptPalettes(),
  };
}

/** What it answers with its texts, note by note. */
async function answersWhole(engine: LocalEngine) {
  const files = await engine.files();
  const all = [...new Set((await engine.documents()).map(({ id }) => id))].sort();
  // Note by note takes long: some of many.
  const ids = all.filter((_, nth) => nth % Math.ceil(all.length / 6) === 0);
  return {
    files,
    findings: await engine.findings(files.map(({ path }) => path)),
    documents: (await engine.documents()).toSorted((a, b) => (a.file < b.file ? -1 : 1)),
    notes: await Promise.all(ids.map((id) => engine.note(id))),
    texts: await Promise.all(ids.map((id) => engine.noteText(id))),
    recipes: await engine.recipes(),
    trials: await engine.trials(),
    dyestuffs: await engine.dyestuffs(),
    drawer: await engine.drawer('kind'),
    namings: await engine.namings('madder'),
  };
}

async function expectSame(disk: MemoryDisk, madeBy = 'a'): Promise<Tab> {
  const taken = await openedTab(disk, madeBy);
  const read = await openedTab(disk);
  expect(await answersAtOnce(taken.engine)).toEqual(await answersAtOnce(read.engine));
  expect(await answersWhole(taken.engine)).toEqual(await answersWhole(read.engine));
  return taken;
}

/** Some of a notebook: every note would take long. */
const someOf = (files: readonly Text[], each: number): readonly NotebookFile[] =>
  files.filter(({ path }, nth) => nth % each === 0 || path.startsWith('regions/') || !path.endsWith('.md')).map(asFile);
const DEMO = someOf(packNotebook().files, 4);

describe('a notebook opened from what was read before', () => {
  test.each([
    ['the demonstration', DEMO],
    ['a generated one', [...madeNotes(150, { short: true })].map(asFile)],
    ['a hostile one', someOf(hostileNotebook(), 30).slice(-40)],
    ['one of broken notes', BROKEN],
  ])('answers as one that read everything: %s', async (_, files) => {
    const disk = await keptDisk(files);
    const taken = await expectSame(disk);
    const notes = (await taken.engine.noteStamps()).length;
    expect(taken.takes.length).toBeGreaterThan(notes * 0.9 - 1);
  });

  test('answers the same whatever the notes and whatever was written since', async () => {
    const names = fc.nat({ max: 11 }).map((nth) => `n/${nth}.md`);
    const note = fc.record({ path: names, text: arbitraryNote.map(({ text }) => text) });
    const edit = fc.oneof(
      note.map(asFile),
      names.map((path) => ({ path, removed: true as const })),
    );
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(note, { selector: ({ path }) => path, minLength: 2 }),
        fc.array(edit, { maxLength: 6 }),
        async (notes, edits) => {
          const disk = await keptDisk([...notes.map(asFile), ...BROKEN]);
          const writer = await openedTab(disk);
          for (const change of edits) {
            const now = await writer.keeper.read(change.path);
            if (now?.version !== undefined) await writer.keeper.write([{ ...change, basedOn: now.version }]);
            else if (!('removed' in change)) await writer.keeper.write([change]);
          }
          await expectSame(disk);
        },
      ),
      { numRuns: 12, seed: 4 },
    );
  });

  test('reads again what was changed, and only that', async () => {
    const disk = await keptDisk([{ path: 'a.md', bytes: bytes('---\nkind: region\ntitle: Alum\n---\n') }, ...BROKEN]);
    const writer = await openedTab(disk);
    const [path, version] = ['a.md', (await writer.keeper.read('a.md'))?.version ?? 0];
    await writer.keeper.write([{ path, bytes: bytes('---\nkind: region\ntitle: Amber\n---\n'), basedOn: version }]);
    const tab = await openedTab(disk, 'a');
    expect(tab.takes).not.toContain('a.md');
    expect(tab.takes).toContain('broken/yaml.md');
    expect((await tab.engine.choices()).regions.map(({ title }) => title)).toContain('Amber');
    await expectSame(disk);
  });

  test('reads everything where the code that reads is another, or what was kept is not whole', async () => {
    const disk = await keptDisk(BROKEN);
    expect((await expectSame(disk, 'b')).takes).toEqual([]);
    const kept = disk.derived.get('readings:0');
    if (!kept) throw new Error('nothing was kept');
    const ways: readonly ((whole: Uint8Array) => Uint8Array)[] = [
      (whole) => whole.slice(0, whole.length >> 1),
      (whole) => whole.slice(0, 3),
      (whole) => whole.map((byte, at) => (at === whole.length >> 1 ? byte ^ 1 : byte)),
      () => bytes('something else altogether'),
      () => new Uint8Array(),
    ];
    for (const way of ways) {
      disk.derived.set('readings:0', { ...kept, bytes: way(kept.bytes) });
      expect((await expectSame(disk)).takes).toEqual([]);
    }
    disk.derived.delete('readings:0');
    expect((await expectSame(disk)).takes).toEqual([]);
  });
});

describe('texts that come later', () => {
  /** An engine with the notes of a notebook and none of their texts. */
  async function textless(files: readonly NotebookFile[]) {
    const versioned = files.map((file) => ({ ...file, version: 1 }));
    const read = new LocalEngine();
    await read.open(versioned);
    const engine = new LocalEngine();
    await engine.open(versioned.filter(({ path }) => !path.endsWith('.md')));
    await engine.putReadings(await read.readings(), new Map(versioned.map(({ path, version }) => [path, version])));
    return { read, engine, versioned };
  }
  const hasAnswered = async (asked: Promise<unknown>): Promise<boolean> =>
    Promise.race([asked.then(() => true), new Promise<false>((done) => setTimeout(() => done(false), 0))]);

  test('a first answer needs none of them, and everything else waits', async () => {
    const { read, engine, versioned } = await textless(DEMO);
    expect(await answersAtOnce(engine)).toEqual(await answersAtOnce(read));
    const waiting = [engine.note('madder'), engine.files(), engine.documents(), engine.noteText('madder'), engine.findings([])];
    expect(await Promise.all(waiting.map(hasAnswered))).toEqual(waiting.map(() => false));
    await engine.putTexts(versioned);
    await engine.endTexts(true);
    expect(await answersWhole(engine)).toEqual(await answersWhole(read));
    expect(await Promise.all(waiting)).toHaveLength(waiting.length);
  });

  test('a text that came too late is passed over, one of another version is read, and a note without one is gone', async () => {
    const region = (path: string, title: string, version: number) => ({
      path,
      version,
      bytes: bytes(`---\nkind: region\ntitle: ${title}\n---\n`),
    });
    const { engine } = await textless([region('a.md', 'Alum', 1), region('b.md', 'Blue', 1), region('c.md', 'Chalk', 1)]);
    await engine.put([region('a.md', 'Amber', 2)]);
    await engine.putTexts([region('a.md', 'Alum', 1), region('b.md', 'Brown', 2)]);
    await engine.endTexts(true);
    const versions = new Map((await engine.documents()).map(({ title, version }) => [title, version]));
    expect(versions).toEqual(
      new Map([
        ['Amber', 2],
        ['Brown', 2],
      ]),
    );
  });

  test('where the store fails, what needs a text fails too, and what is at hand can be taken out', async () => {
    const { engine, versioned } = await textless(BROKEN);
    const asked = engine.note('yaml');
    await engine.putTexts(versioned.slice(0, 1));
    await engine.endTexts(false);
    await expect(asked).rejects.toThrow('could not be read');
    expect((await engine.files()).map(({ path }) => path)).toEqual(['broken/yaml.md']);
    expect(await engine.size()).toMatchObject({ notes: BROKEN.length });
  });

  test('another notebook opened meanwhile answers for itself', async () => {
    const { engine } = await textless(BROKEN);
    const asked = engine.documents();
    await engine.open([{ path: 'a.md', bytes: bytes('words') }]);
    expect((await asked).map(({ file }) => file)).toEqual(['a.md']);
  });
});

describe('readings', () => {
  test('that JSON has no form for are not kept', () => {
    const { value: note, diagnostics } = parseNote('a.md', '---\nkind: region\npoint: [1, 2]\n---\n');
    const reading = { version: 1, note, diagnostics, readOnly: false };
    const at = (latitude: number) => ({
      ...reading,
      note: { ...note, record: { ...note.record, point: [latitude, 2] } as typeof note.record },
    });
    expect(packReadings([at(-0), at(Infinity), at(NaN), reading]).flatMap(unpackReadings)).toHaveLength(1);
  });

  test('come back from a packet as they were', () => {
    fc.assert(
      fc.property(fc.array(arbitraryNote, { maxLength: 5 }), (made) => {
        const notebook = new Notebook();
        made.forEach(({ text }, nth) => notebook.put({ path: `${nth}.md`, bytes: bytes(text), version: nth + 1 }));
        const readings = packReadings(notebook.readings()).flatMap(unpackReadings);
        expect(readings.map(({ note }) => note.file)).toEqual(made.map((_, nth) => `${nth}.md`));
        for (const [nth, { note, diagnostics, version }] of readings.entries()) {
          const read = parseNote(`${nth}.md`, made[nth]?.text ?? '');
          expect({ ...note, source: made[nth]?.text, diagnostics, version }).toEqual({
            ...read.value,
            diagnostics: read.diagnostics,
            version: nth + 1,
          });
        }
      }),
      { numRuns: 150, seed: 5 },
    );
  });
});
