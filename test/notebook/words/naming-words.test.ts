import { describe, expect, test } from 'vitest';
import { whereNamed } from '../../../web/domain/naming/where-named.ts';
import { noteId } from '../../../web/domain/note/note.ts';
import { whyFound, whyNamed } from '../../../web/notebook/words/naming-words.ts';
import { aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

describe('whyNamed', () => {
  const { base } = aNotebook({
    ...aWorld,
    'dyestuffs/a.md': aNote('kind: dyestuff\ntitle: Sappanwood\nnames: [brasil]'),
    'dyestuffs/b.md': aNote('kind: dyestuff\ntitle: American brazilwood\nnames: [brasil]'),
    'p.md': 'Dyed with brasil; brasil again, Sappanwood not.',
    'q.md': 'Dyed with brasil.',
  });
  const why = (of: string) => {
    const one = whereNamed(base, noteId('a')).find(({ note }) => note.id === of);
    return one && whyNamed(base, one);
  };

  test('tells each name once, with its line and the words around it, and how many more there are', () => {
    expect(why('p')).toMatch(/^“Sappanwood” in line 1: .*brasil again, Sappanwood not.*; 2 more$/);
    expect(why('a')).toBe('the note on it');
  });

  test('tells who shares a name', () => {
    expect(why('q')).toContain('“brasil” may mean Sappanwood or American brazilwood');
  });
});

describe('whyFound', () => {
  test('tells whole words, beginnings and near spellings apart', () => {
    expect(
      whyFound([
        { typed: 'krapp', term: 'krapp', how: 'whole', fields: ['names', 'body'] },
        { typed: 'ma', term: 'madder', how: 'beginning', fields: ['title'] },
        { typed: 'maddar', term: 'madder', how: 'near', fields: ['words'] },
      ]),
    ).toBe('“krapp” in names and text; “madder” begins with “ma”, in title; “madder” is nearly “maddar”, in front matter');
  });
});
