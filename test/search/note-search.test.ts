import { describe, expect, test } from 'vitest';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { noteDocument } from '../../web/search/note-documents.ts';
import { IndexBuilder } from '../../web/search/frozen/index-builder.ts';
import type { NoteDocument } from '../../web/search/note-documents.ts';
import { NoteSearch } from '../../web/search/note-search.ts';
import { SEARCH_VERSION } from '../../web/search/search-options.ts';

const doc = (file: string, text: string) => noteDocument(parseNote(file, text).value);
const searchOf = (files: Readonly<Record<string, string>>) => {
  const search = new NoteSearch();
  for (const [file, text] of Object.entries(files)) search.put(doc(file, text));
  return search;
};
const frozenOf = (documents: readonly NoteDocument[]) => {
  const builder = new IndexBuilder();
  for (const document of documents) builder.add(document);
  return builder.freeze();
};
const ids = (search: NoteSearch, words: string) => search.query(words).map(({ id, near }) => (near ? `~${id}` : id));

const files = {
  'dyestuffs/madder.md':
    '---\nkind: dyestuff\ntitle: Madder\nlatin: Rubia tinctorum\nnames: [{name: Krapp, lang: de}]\ntags: [red]\n---\nA root.',
  'texts/petty.md':
    '---\nkind: text\ntitle: Petty on dyeing\nsource: petty-1662, p. 3\nsays: of Färberröte and maddering\n---\nBran and madder.',
  'reading/page.md': 'The guède of Picardy, see [woad](dyestuffs/waid.md).',
};

describe('NoteSearch', () => {
  const search = searchOf(files);

  test('finds by id, title, name, tag, source, front matter and body, case and accents folded', () => {
    for (const [words, id] of [
      ['KRAPP', 'madder'],
      ['tinctorum', 'madder'],
      ['petty-1662', 'petty'],
      ['farberrote', 'petty'],
      ['guede', 'page'],
      ['picardy', 'page'],
    ] as const) {
      expect(ids(search, words), words).toContain(id);
    }
  });

  test('puts whole words before beginnings and says which it was and where', () => {
    const [first, second] = search.query('madder');
    expect([first?.id, second?.id]).toEqual(['madder', 'petty']);
    expect(second?.why).toEqual([
      { typed: 'madder', term: 'madder', how: 'whole', fields: ['body'] },
      { typed: 'madder', term: 'maddering', how: 'beginning', fields: ['words'] },
    ]);
    expect(second?.marks).toEqual(['madder', 'maddering']);
  });

  test('wants every word', () => {
    expect(ids(search, 'bran madder')).toEqual(['petty']);
    expect(ids(search, 'bran picardy')).toEqual([]);
  });

  test('shows near spellings apart: a letter more, less, other or swapped, from five letters on', () => {
    for (const slip of ['maddder', 'mader', 'maddar', 'amdder'])
      expect(ids(search, slip), slip).toEqual(expect.arrayContaining(['~madder', '~petty']));
    expect(ids(search, 'krpap')).toEqual(['~madder']);
    expect(search.query('maddar')[0]?.why[0]).toMatchObject({ typed: 'maddar', term: 'madder', how: 'near' });
    expect(ids(search, 'madxxr')).toEqual([]);
    // Four letters: no slip is forgiven.
    expect(ids(searchOf({ 'a.md': 'woad' }), 'wood')).toEqual([]);
  });

  test('keeps exact answers before near ones and never lists a note twice', () => {
    const two = searchOf({ 'a.md': 'madder', 'b.md': 'madden' });
    expect(ids(two, 'madder')).toEqual(['a', '~b']);
  });

  test('takes the place of a note, removes one, and minds an unknown file', () => {
    const own = searchOf(files);
    own.put(doc('reading/page.md', 'Now it says weld.'));
    expect(ids(own, 'guède')).toEqual([]);
    expect(ids(own, 'weld')).toEqual(['page']);
    own.remove('reading/page.md');
    own.remove('nowhere.md');
    expect(ids(own, 'weld')).toEqual([]);
    expect(own.size).toBe(2);
  });

  test('keeps two notes of one id apart by their files', () => {
    const two = searchOf({ 'a/x.md': 'woad blue', 'b/x.md': 'woad green' });
    expect(
      two
        .query('woad')
        .map(({ file }) => file)
        .sort(),
    ).toEqual(['a/x.md', 'b/x.md']);
  });

  test('gives nothing for no words, and at most what is asked for', () => {
    expect(search.query(' … ')).toEqual([]);
    expect(search.query('madder', 1)).toHaveLength(1);
  });

  test('takes an index that was kept, and not one of another version or cut short', () => {
    const notes = Object.entries(files).map(([file, text], nth) => ({ ...doc(file, text), version: nth + 1 }));
    const bytes = frozenOf(notes);
    const stamps = notes.map(({ file, version }) => [file, version] as const);
    const own = new NoteSearch();
    expect(own.open(bytes.slice(0), stamps)).toEqual([]);
    expect(ids(own, 'krapp')).toEqual(['madder']);
    expect(own.open(bytes.slice(0, bytes.byteLength - 8), stamps)).toBeUndefined();
    const older = bytes.slice(0);
    new Uint32Array(older)[2] = SEARCH_VERSION + 1;
    expect(own.open(older, stamps)).toBeUndefined();
    // What could not be read changed nothing.
    expect(ids(own, 'krapp')).toEqual(['madder']);
  });

  test('wants what a kept index has in another version, or in one nobody knows, and drops what is gone', () => {
    const notes = [doc('a.md', 'weld one'), { ...doc('b.md', 'weld two'), version: 2 }, { ...doc('c.md', 'weld three'), version: 3 }];
    const own = new NoteSearch();
    const stamps = [['a.md', undefined] as const, ['b.md', 4] as const, ['d.md', 5] as const];
    expect(own.open(frozenOf([...notes, { ...doc('e.md', 'weld'), version: 6 }]), [...stamps, ['e.md', 6]])).toEqual([
      'a.md',
      'b.md',
      'd.md',
    ]);
    expect(ids(own, 'weld')).toEqual(['e']);
  });
});
