import { describe, expect, test } from 'vitest';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { readTextiles } from '../../../web/notebook/import/read-textiles.ts';
import { gatheredSentence } from '../../../web/notebook/words/gathered-words.ts';
import { aDyestuff, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { fc } from '../../helpers/property.ts';

const { base } = aNotebook({ ...aWorld, 'dyestuffs/madder.md': aDyestuff('Madder'), 'dyestuffs/woad.md': aDyestuff('Woad') });
const read = (text: string, chosen = {}) => readTextiles(base, text, chosen);
const note = (text: string, nth = 0) => {
  const draft = read(text).notes[nth];
  if (!draft) throw new Error('no note');
  return parseNote(draft.path, draft.text);
};

describe('readTextiles', () => {
  const TABLE = `Object;Site;Dating;Thread;Fiber;Identification;Compounds;Reference
Band 1;York;c. 950;warp;wool;Madder;alizarin, purpurin;walton-1989, p. 3
Band 1;York;c. 950;weft;wool;woad + Madder;;walton-1989, p. 3
Sock;Albion;10th century;;Wool;;;`;

  test('columns are matched by their headings, lines of one textile are its threads', () => {
    const gathered = read(TABLE);
    expect(gathered.columns).toEqual({ title: 0, region: 1, when: 2, where: 3, fibre: 4, dyes: 5, markers: 6, source: 7 });
    expect(gathered.notes.map(({ id }) => id)).toEqual(['band-1', 'sock']);
    const { value, diagnostics } = note(TABLE);
    expect(diagnostics).toEqual([]);
    expect(value.record).toMatchObject({
      kind: 'textile',
      region: { text: 'york' },
      when: { span: { latestStart: 950 } },
      threads: [
        { where: 'warp', dyes: [{ text: 'madder' }], markers: ['alizarin', 'purpurin'], tested: 'found' },
        { where: 'weft', dyes: [{ text: 'woad' }, { text: 'madder' }], tested: 'found' },
      ],
    });
    expect(value.sources).toMatchObject([{ key: 'walton-1989', locator: 'p. 3' }]);
    expect(note(TABLE, 1).value.record).toMatchObject({ region: { text: 'england' }, threads: [{ tested: 'no' }] });
    expect(gathered.rows.map(({ row, path }) => [row, path])).toEqual([
      [2, 'textiles/band-1.md'],
      [3, 'textiles/band-1.md'],
      [4, 'textiles/sock.md'],
    ]);
  });

  test('a column matched by hand goes before its heading', () => {
    const gathered = read('title,a,b\nSock,York,900', { region: 1, when: 2 });
    expect(gathered.notes[0]?.text).toContain('region: york');
    expect(gathered.messages.map(({ code }) => code)).toEqual([]);
  });

  test('unknown words are kept and told with their line', () => {
    const { messages, notes } = read('title,place,date,dyes,tested\nSock,Atlantis,yore,unobtainium,yes');
    expect(messages.map(({ row, code, about }) => [row, code, about])).toEqual([
      [2, 'date-unreadable', 'yore'],
      [2, 'place-unknown', 'Atlantis'],
      [2, 'word-unknown', 'unobtainium'],
      [2, 'word-unknown', 'yes'],
    ]);
    expect(notes[0]?.text).toContain('region: Atlantis');
    for (const message of messages) expect(gatheredSentence(message)).toContain(message.about);
  });

  test.each([
    ['', ['0 nothing-inside']],
    ['title,place', ['0 nothing-inside']],
    ['a,b\n1,2', ['0 column-missing']],
    ['title,odd\n,x', ['1 column-unmatched', '2 no-name']],
  ])('%j gives messages and no note', (text, expected) => {
    expect(read(text).messages.map(({ row, code }) => `${row} ${code}`)).toEqual(expected);
    expect(read(text).notes).toEqual([]);
  });

  test('quotes, line breaks and a byte order mark are read; a guarded cell loses its apostrophe', () => {
    const { value } = note(`\uFEFFtitle,note\n"A ""fine"" sock","'=1+1\nsecond line"`);
    expect(value.title).toBe('A "fine" sock');
    expect(value.source).toContain('=1+1');
  });

  test('whatever the text, it is read without a throw and every note parses', () => {
    fc.assert(
      fc.property(fc.array(fc.array(fc.string(), { minLength: 1, maxLength: 5 }), { maxLength: 6 }), (cells) => {
        const text = [
          'title,place,date,dyes,note',
          ...cells.map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(',')),
        ].join('\n');
        for (const { path, text: written } of read(text).notes) {
          const { value, diagnostics } = parseNote(path, written);
          expect(value.record.kind).toBe('textile');
          expect(diagnostics.filter(({ code }) => code.startsWith('yaml') || code.startsWith('front-matter'))).toEqual([]);
        }
      }),
    );
  });
});
