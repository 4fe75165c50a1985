import { describe, expect, test } from 'vitest';
import { conflictCopies } from '../../web/notebook/conflict-copies.ts';

const TEXT = '---\nkind: dyestuff\ntitle: Weld\nlatin: Reseda luteola\n---\nYellow.\n\nSown in spring.\n';
const OTHER = TEXT.replace('spring', 'autumn');
const pair = (copy: string, text = OTHER, original = 'dyestuffs/weld.md') =>
  conflictCopies([
    { path: original, text: TEXT },
    { path: copy, text },
  ]);

describe('conflictCopies', () => {
  test.each([
    'dyestuffs/weld (Anna’s conflicted copy 2024-05-01).md',
    'dyestuffs/weld (conflict).md',
    'dyestuffs/weld.sync-conflict-20240501-101500-ABCDEFG.md',
    'dyestuffs/weld_conflict-1.md',
    'dyestuffs/weld (1).md',
    'dyestuffs/weld 2.md',
    'dyestuffs/weld - Copy.md',
    'dyestuffs/weld copy.md',
    'dyestuffs/Copy of weld.md',
    'dyestuffs/weld~HEAD.md',
  ])('knows %s by its name', (copy) => {
    expect(pair(copy)).toEqual([{ original: 'dyestuffs/weld.md', copy, by: 'name' }]);
  });

  test('knows a copy whose name says so whatever it holds, one that only has a number by its title and text', () => {
    expect(pair('dyestuffs/weld (conflicted copy).md', 'nothing alike')).toHaveLength(1);
    expect(pair('dyestuffs/weld (2).md', 'nothing alike')).toEqual([]);
    expect(pair('dyestuffs/weld 2.md', TEXT.replace('title: Weld', 'title: Weld, second crop'))).toEqual([]);
  });

  test('needs the original beside it', () => {
    expect(pair('trials/weld (conflicted copy).md')).toEqual([]);
    expect(conflictCopies([{ path: 'a (1).md', text: TEXT }])).toEqual([]);
  });

  test('knows the same id over much the same text, and not over another text', () => {
    const withId = (text: string) => text.replace('kind:', 'id: weld\nkind:');
    const named = (text: string) =>
      conflictCopies([
        { path: 'dyestuffs/weld-laptop.md', text: withId(text) },
        { path: 'dyestuffs/weld.md', text: withId(TEXT) },
      ]);
    expect(named(OTHER)).toEqual([{ original: 'dyestuffs/weld.md', copy: 'dyestuffs/weld-laptop.md', by: 'content' }]);
    expect(named('---\ntitle: A text\n---\nQuite another matter.\n')).toEqual([]);
  });

  test('numbered notes with titles of their own are no copies', () => {
    const trial = (number: number) => ({ path: `trials/bath ${number}.md`, text: TEXT.replace('Weld', `Bath ${number}`) });
    expect(conflictCopies([{ path: 'trials/bath.md', text: TEXT }, trial(2), trial(3)])).toEqual([]);
  });
});
