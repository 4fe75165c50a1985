import { describe, expect, test } from 'vitest';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { fc } from '../helpers/property.ts';

const text = (words: string): Uint8Array => new TextEncoder().encode(words);
const region = (id: string, within?: string) => ({
  path: `regions/${id}.md`,
  bytes: text(`---\nkind: region\ntitle: ${id}\n${within ? `within: ${within}\n` : ''}---\n`),
});

describe('LocalEngine', () => {
  test('puts and removes files, and says how many there are', async () => {
    const engine = new LocalEngine();
    expect(await engine.open([region('england')])).toEqual({ notes: 1, others: 0 });
    await engine.put([region('york', 'england'), { path: 'spectra/a.csv', bytes: text('380,1\n') }]);
    await engine.mention(['photos/skein.jpg', 'photos/gone.jpg']);
    expect(await engine.size()).toEqual({ notes: 2, others: 3 });
    expect((await engine.choices()).regions.map(({ id }) => id)).toContain('york');
    await engine.remove(['regions/york.md', 'photos/gone.jpg', 'never/there.md']);
    expect(await engine.size()).toEqual({ notes: 1, others: 2 });
    expect((await engine.choices()).regions.map(({ id }) => id)).not.toContain('york');
  });

  test('a file put again takes the place of the one before', async () => {
    const engine = new LocalEngine();
    await engine.open([region('england')]);
    await engine.put([{ ...region('england'), bytes: text('---\nkind: region\ntitle: Albion\n---\n') }]);
    expect(await engine.size()).toEqual({ notes: 1, others: 0 });
    expect((await engine.choices()).regions.map(({ title }) => title)).toContain('Albion');
  });

  test('says what is wrong in the files put', async () => {
    const engine = new LocalEngine();
    const files = [region('england'), { path: 'broken.md', bytes: text('---\nkind: recipie\n---\n') }];
    await engine.put(files);
    const findings = await engine.findings(files.map(({ path }) => path));
    expect(findings.map(({ file, diagnostic }) => [file, diagnostic.code])).toEqual([['broken.md', 'kind-unknown']]);
  });

  test('gives every file back byte for byte, also what is no UTF-8 and no note', async () => {
    const files = fc.uniqueArray(
      fc.record({
        path: fc.constantFrom('a.md', 'b/c.md', 'd.csv', 'e.bin', 'f.markdown'),
        bytes: fc.oneof(
          fc.uint8Array({ maxLength: 60 }),
          fc.string({ unit: 'binary' }).map(text),
          fc.constant(text('\uFEFF---\r\nkind: recipe\r\n---\r\n')),
        ),
      }),
      { selector: ({ path }) => path },
    );
    await fc.assert(
      fc.asyncProperty(files, async (given) => {
        const engine = new LocalEngine();
        await engine.open(given);
        const inOrder = [...given].sort((a, b) => (a.path < b.path ? -1 : 1));
        const back = await engine.files();
        expect(back.map(({ path }) => path)).toEqual(inOrder.map(({ path }) => path));
        expect(back.every(({ bytes }, at) => Buffer.compare(bytes, inOrder[at]?.bytes ?? new Uint8Array()) === 0)).toBe(true);
      }),
    );
  });

  test('knows the sources of BibTeX and RIS files, whichever call comes first and whenever they came', async () => {
    const note = (key: string) => `---\nkind: text\ntitle: A text\nsource: ${key}, p. 3\n---\n`;
    const unknown = async (engine: LocalEngine, key: string) =>
      (await engine.checkText('texts/a.md', note(key))).filter(({ code }) => code === 'source-unknown').length;
    const engine = new LocalEngine();
    void engine.open([
      { path: 'texts/a.md', bytes: text(note('aspley-1600')) },
      { path: 'more.bib', bytes: text('@book{aspley-1600, title={A booke}, year=1600}') },
    ]);
    expect(await unknown(engine, 'aspley-1600')).toBe(0);
    expect(await unknown(engine, 'nobody-1601')).toBe(1);
    expect((await engine.note('a'))?.sources.map((source) => JSON.stringify(source))).toEqual([expect.stringContaining('A booke')]);
    expect(await unknown(engine, 'later-1602')).toBe(1);
    await engine.put([{ path: 'more.ris', bytes: text('TY  - BOOK\nID  - later-1602\nTI  - Later\nPY  - 1602\nER  - \n') }]);
    expect(await unknown(engine, 'later-1602')).toBe(0);
    expect((await engine.writingChoices()).sources.map(({ value }) => value).sort()).toEqual(['aspley-1600', 'later-1602']);
  });
});
