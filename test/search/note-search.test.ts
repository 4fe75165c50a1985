import { describe, expect, test } from 'vitest';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { noteDocument } from '../../web/search/note-documents.ts';
import { NoteSearch } from '../../web/search/note-search.ts';
import { SEARCH_VERSION } from '../../web/search/search-options.ts';

const doc = (file: string, text: string) => noteDocument(parseNote(file, text).value);
const searchOf = (files: Readonly<Record<string, string>>) => {
  const search = new NoteSearch();
  for (const [file, text] of Object.entries(files)) search.put(doc(file, text));
  return search;
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

  test('comes back from a saved index, and not from one of another version or one cut short', () => {
    const saved = search.save();
    expect(saved.version).toBe(SEARCH_VERSION);
    expect(
      NoteSearch.restore(saved)
        ?.query('krapp')
        .map(({ id }) => id),
    ).toEqual(['madder']);
    expect(NoteSearch.restore({ ...saved, version: SEARCH_VERSION + 1 })).toBeUndefined();
    expect(NoteSearch.restore({ ...saved, index: saved.index.slice(0, 50) })).toBeUndefined();
  });
});
