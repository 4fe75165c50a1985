import { describe, expect, test } from 'vitest';
import { whereNamed } from '../../../web/domain/naming/where-named.ts';
import { noteId } from '../../../web/domain/note/note.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const shared = 'names: [{name: brasil, lang: enm}]';
const files = {
  ...aWorld,
  'periods/tudor.md': aNote('kind: period\ntitle: Tudor\nregion: england\nwhen: 1485–1603'),
  'dyestuffs/madder.md': aNote('kind: dyestuff\ntitle: Madder\nlatin: Rubia tinctorum\nnames: [{name: Krapp, lang: de}]'),
  'dyestuffs/sappanwood.md': aNote(
    `kind: dyestuff\ntitle: Sappanwood\n${shared}\navailability:\n  - {region: england, when: 1200–1700, status: imported, known-by: trade, source: book}`,
  ),
  'dyestuffs/american-brazilwood.md': aNote(
    `kind: dyestuff\ntitle: American brazilwood\n${shared}\navailability:\n  - {region: europe, when: until 1500, status: absent, reason: other-continent, source: book}\n  - {region: england, when: 1540–1700, status: imported, known-by: trade, source: book}`,
  ),
};
const named = (id: string, extra: Record<string, string>) => whereNamed(aNotebook({ ...files, ...extra }).base, noteId(id));
const reading = (id: string, extra: Record<string, string>, of: string) => named(id, extra).find(({ note }) => note.id === of)?.reading;

describe('whereNamed', () => {
  test('puts the dyestuff’s own note first', () => {
    const list = named('madder', { 'a.md': 'Krapp' });
    expect(list.map(({ note, own }) => [note.id, own])).toEqual([
      ['madder', true],
      ['a', false],
    ]);
  });

  test('finds references, words of front matter and of the body, with key, line and what stands around', () => {
    const [, one] = named('madder', {
      'texts/t.md':
        '---\nkind: text\ntitle: A page\ndyes: [madder]\nsays: "Red: with Krapp."\n---\n\nFirst line.\n\nThen the *Rubia tinctorum* of Zeeland.\n',
    });
    expect(one?.namings.map(({ where, key, text, line, name }) => ({ where, key, text, line, name }))).toEqual([
      { where: 'front-matter', key: 'dyes', text: 'madder', line: 4, name: 'Madder' },
      { where: 'front-matter', key: 'says', text: 'Krapp', line: 5, name: 'Krapp' },
      { where: 'body', key: undefined, text: 'Rubia tinctorum', line: 10, name: 'Rubia tinctorum' },
    ]);
    expect(one?.namings[2]?.excerpt).toEqual({ before: 'Then the ', found: 'Rubia tinctorum', after: ' of Zeeland.' });
  });

  test('takes no notice of citation keys, files and web addresses, and takes a link to the note', () => {
    const list = named('madder', {
      'a.md': '---\nkind: text\ntitle: A\nsource: madder-2020, p. 3\n---\nhttps://example.org/madder [x](https://example.org/madder.md)',
      'b.md': 'See [the red root](dyestuffs/madder.md).',
      'c.md': '---\nkind: trial\ntitle: C\nphoto: madder.jpg\n---\n',
    });
    expect(list.map(({ note }) => note.id)).toEqual(['madder', 'b']);
    expect(list[1]?.namings.map(({ where }) => where)).toEqual(['link']);
  });

  test('tells a shared name apart by the note’s own place and date', () => {
    const at = (when: string) => ({
      't.md': `---\nkind: text\ntitle: T\nregion: england\nwhen: ${when}\nsays: brasil for red cloth\n---\n`,
    });
    expect(reading('sappanwood', at('1370'), 't')).toBe('ambiguous');
    expect(reading('american-brazilwood', at('1370'), 't')).toBe('ruled-out');
    expect(reading('sappanwood', at('1600'), 't')).toBe('ambiguous');
    expect(reading('american-brazilwood', at('1600'), 't')).toBe('ambiguous');
    const [, one] = named('sappanwood', at('1370'));
    expect(one?.namings[0]?.candidates.map(({ id, possible, standing }) => [id, possible, standing])).toEqual([
      ['american-brazilwood', false, 'absent'],
      ['sappanwood', true, 'imported'],
    ]);
  });

  test('takes place and date of a reading note from its tags, and leaves everything possible without them', () => {
    const page = (tags: string) => ({ 'p.md': `---\nkind: plain\ntitle: P\ntags: [${tags}]\n---\nbrasil for red` });
    expect(reading('american-brazilwood', page('tudor'), 'p')).toBe('ambiguous');
    expect(reading('american-brazilwood', page('red'), 'p')).toBe('ambiguous');
    expect(named('american-brazilwood', page('red'))[1]?.namings[0]?.candidates.every(({ standing }) => standing === undefined)).toBe(true);
    const early = { ...page('high'), 'periods/high.md': aNote('kind: period\ntitle: High\nregion: england\nwhen: 1200–1300') };
    expect(reading('american-brazilwood', early, 'p')).toBe('ruled-out');
  });

  test('follows the note’s own reference where one of the sharers is referred to', () => {
    const trial = { 't.md': '---\nkind: recipe\ntitle: Brasil red\ningredients: [{what: sappanwood, role: dye}]\n---\nBrasil chips.' };
    expect(reading('sappanwood', trial, 't')).toBe('certain');
    expect(reading('american-brazilwood', trial, 't')).toBeUndefined();
  });

  test('a colour-word shares a dyestuff’s name only where and when it was in use', () => {
    const extra = {
      'dyestuffs/saffron.md': aDyestuff('Saffron', 'region: europe, when: 1000–1800, status: imported, known-by: trade, source: book'),
      'dyestuffs/weld.md': aDyestuff('Weld', 'region: europe, when: 1000–1800, status: grown, known-by: text, source: book'),
      'words/saffron-yellow.md': aNote(
        'kind: colour-word\ntitle: Saffron\nregion: ireland\nwhen: 1500–1600\nmeans: [{shade: yellow, dyes: [saffron, weld]}]',
      ),
      'irish.md': '---\nkind: text\ntitle: I\nregion: ireland\nwhen: 1550\nsays: shirts of saffron\n---\n',
      'english.md': '---\nkind: text\ntitle: E\nregion: england\nwhen: 1300\nsays: silk dyed with saffron\n---\n',
    };
    expect([reading('saffron', extra, 'irish'), reading('weld', extra, 'irish')]).toEqual(['ambiguous', 'ambiguous']);
    expect([reading('saffron', extra, 'english'), reading('weld', extra, 'english')]).toEqual(['certain', undefined]);
  });

  test('doubts an ordinary word unless the note names the dyestuff otherwise', () => {
    const extra = { 'dyestuffs/orchil.md': aNote('kind: dyestuff\ntitle: Orchil\nnames: [cork]') };
    expect(reading('orchil', { ...extra, 'p.md': 'They had cork in the loft.' }, 'p')).toBe('doubtful');
    expect(reading('orchil', { ...extra, 'p.md': 'They had cork in the loft. Orchil, that is.' }, 'p')).toBe('certain');
  });

  test('finds a mordant too, and gives nothing for an unknown id', () => {
    const extra = {
      'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\nnames: [{name: Alaun, lang: de}]'),
      'p.md': 'mit Alaun gebeizt',
    };
    expect(named('alum', extra).map(({ note }) => note.id)).toEqual(['alum', 'p']);
    expect(named('nobody', extra)).toEqual([]);
  });

  test('follows an edit of a note and of a name', () => {
    const notebook = aNotebook({ ...files, 'p.md': 'Krapp' });
    const ids = () => whereNamed(notebook.base, noteId('madder')).map(({ note }) => String(note.id));
    const put = (path: string, text: string) => notebook.put({ path, bytes: new TextEncoder().encode(text) });
    expect(ids()).toContain('p');
    put('p.md', 'meekrap');
    expect(ids()).not.toContain('p');
    put('dyestuffs/madder.md', aNote('kind: dyestuff\ntitle: Madder\nnames: [{name: meekrap, lang: nl}]'));
    expect(ids()).toContain('p');
  });
});
