import { describe, expect, test } from 'vitest';
import { mergeNote } from '../../../web/domain/merge/merge-note.ts';
import { chosenText, conflictsOf, type NoteMerge } from '../../../web/domain/merge/note-merge.ts';
import { fc, runs } from '../../helpers/property.ts';

const BASE = `---
kind: dyestuff
title: Madder
latin: Rubia tinctorum # as the herbals have it
# where and when
availability:
  - region: england
    when: 1300
    status: imported
    source: a-book, p. 1
tags: [red]
---

First paragraph.

Second paragraph,
on two lines.

Third paragraph.
`;

const edited = (text: string, ...edits: readonly (readonly [string, string])[]): string =>
  edits.reduce((now, [from, to]) => {
    if (!now.includes(from)) throw new Error(`nothing to edit: ${from}`);
    return now.replace(from, to);
  }, text);

const sides = (merge: NoteMerge) => conflictsOf(merge).map(({ in: where, key, mine, theirs }) => ({ in: where, key, mine, theirs }));

describe('mergeNote', () => {
  test('takes both changes when they are in different keys, next to one another', () => {
    const mine = edited(BASE, ['title: Madder', "title: 'Madder root'"]);
    const theirs = edited(BASE, ['latin: Rubia tinctorum #', 'latin:   Rubia tinctorum L. #']);
    const both = edited(mine, ['latin: Rubia tinctorum #', 'latin:   Rubia tinctorum L. #']);
    expect(mergeNote({ base: BASE, mine, theirs }).text).toBe(both);
    expect(mergeNote({ base: BASE, mine: theirs, theirs: mine }).text).toBe(both);
  });

  test('takes both changes when they are in different paragraphs, and in head and body', () => {
    const mine = edited(BASE, ['First paragraph.', 'First, anew.'], ['tags: [red]\n', '']);
    const theirs = edited(BASE, ['Third paragraph.\n', 'Third paragraph.\n\nA fourth.\n']);
    expect(mergeNote({ base: BASE, mine, theirs }).text).toBe(edited(mine, ['Third paragraph.\n', 'Third paragraph.\n\nA fourth.\n']));
  });

  test('puts a key that one side added behind the key it stood behind', () => {
    const mine = edited(BASE, ['kind: dyestuff\n', 'kind: dyestuff\npart: root\n']);
    const theirs = edited(BASE, ['tags: [red]\n', 'tags: [red]\nmatter: plant\n']);
    const merged = mergeNote({ base: BASE, mine, theirs });
    expect(merged.text).toBe(edited(mine, ['tags: [red]\n', 'tags: [red]\nmatter: plant\n']));
  });

  test('takes the order of the keys from the side that changed it', () => {
    const theirs = edited(BASE, ['title: Madder\n', ''], ['tags: [red]\n', 'tags: [red]\ntitle: Madder\n']);
    const mine = edited(BASE, ['tags: [red]', 'tags: [red, root]']);
    expect(mergeNote({ base: BASE, mine, theirs }).text).toBe(edited(theirs, ['tags: [red]', 'tags: [red, root]']));
  });

  test('gives one key changed by both back with both sides', () => {
    const mine = edited(BASE, ['title: Madder', 'title: Garance']);
    const theirs = edited(BASE, ['title: Madder', 'title: Krapp'], ['Third', 'The third']);
    const merge = mergeNote({ base: BASE, mine, theirs });
    expect(merge.text).toBeUndefined();
    expect(sides(merge)).toEqual([{ in: 'key', key: 'title', mine: 'title: Garance\n', theirs: 'title: Krapp\n' }]);
    expect(chosenText(merge, () => 'mine')).toBe(edited(mine, ['Third', 'The third']));
    expect(chosenText(merge, () => 'theirs')).toBe(theirs);
    expect(chosenText(merge, () => 'both')).toBe(
      edited(mine, ['title: Garance\n', 'title: Garance\n# title: Krapp\n'], ['Third', 'The third']),
    );
  });

  test('gives a key that one side removed and the other changed back', () => {
    const mine = edited(BASE, ['tags: [red]\n', '']);
    const theirs = edited(BASE, ['tags: [red]', 'tags: [root]']);
    const merge = mergeNote({ base: BASE, mine, theirs });
    expect(sides(merge)).toEqual([{ in: 'key', key: 'tags', mine: '', theirs: 'tags: [root]\n' }]);
    expect(chosenText(merge, () => 'mine')).toBe(mine);
  });

  test('gives one paragraph changed by both back, and keeps both one after the other', () => {
    const mine = edited(BASE, ['Third paragraph.', 'Mine.']);
    const theirs = edited(BASE, ['Third paragraph.', 'Theirs.']);
    const merge = mergeNote({ base: BASE, mine, theirs });
    expect(sides(merge)).toEqual([{ in: 'body', key: undefined, mine: 'Mine.\n', theirs: 'Theirs.\n' }]);
    expect(chosenText(merge, () => 'both')).toBe(edited(BASE, ['Third paragraph.\n', 'Mine.\n\nTheirs.\n']));
  });

  test('without a common base agrees on what is equal alone', () => {
    expect(mergeNote({ mine: BASE, theirs: BASE }).text).toBe(BASE);
    const theirs = edited(BASE, ['Second', 'The second'], ['tags: [red]\n', '']);
    expect(sides(mergeNote({ mine: BASE, theirs }))).toEqual([
      { in: 'key', key: 'tags', mine: 'tags: [red]\n', theirs: '' },
      { in: 'body', key: undefined, mine: 'Second paragraph,\non two lines.\n', theirs: 'The second paragraph,\non two lines.\n' },
    ]);
  });

  test('keeps a head together that cannot be parted by keys', () => {
    const anchored = '---\nkind: text\nwhen: &w 1300\ncopied: *w\n---\nBody.\n';
    const [mine, theirs] = [anchored.replace('1300', '1310'), anchored.replace('kind: text', 'kind: rule')];
    const merge = mergeNote({ base: anchored, mine, theirs });
    expect(sides(merge).map(({ in: where }) => where)).toEqual(['head']);
    expect(chosenText(merge, () => 'both')).toContain('when: &w 1310');
    expect(chosenText(merge, () => 'both')).toContain('kind: rule');
  });

  test('keeps emphasis in a value apart from anchors', () => {
    const base = '---\nkind: text\ntitle: "the *Plictho*"\nnote: alum & lime\n---\n';
    const [mine, theirs] = [base.replace('kind: text', 'kind: rule'), base.replace('lime', 'chalk')];
    expect(mergeNote({ base, mine, theirs }).text).toBe(mine.replace('lime', 'chalk'));
  });

  test('line ends changed by one side alone are a change of their own', () => {
    const mine = edited(BASE, ['First', 'The first']);
    const theirs = edited(BASE, ['Third', 'The third']).replaceAll('\n', '\r\n');
    const both = edited(mine, ['Third', 'The third']).replaceAll('\n', '\r\n');
    expect(mergeNote({ base: BASE, mine, theirs }).text).toBe(both);
    expect(mergeNote({ base: BASE, mine: theirs, theirs: mine }).text).toBe(both);
  });

  test('broken front matter is merged as text with nothing lost', () => {
    const broken = '---\nkind: [text\n---\nOne.\n\nTwo.\n';
    const merge = mergeNote({ base: broken, mine: broken.replace('One', '1'), theirs: broken.replace('Two', '2') });
    expect(merge.text).toBe('---\nkind: [text\n---\n1.\n\n2.\n');
  });
});

describe('mergeNote, whatever the texts', () => {
  const key = fc.constantFrom('kind', 'title', 'tags', 'note', 'when');
  const value = fc.constantFrom('one', '[a, b]', '"two: three"', '1300 # a remark', '\n  - x\n  - y: z', '|\n  long\n\n  text', '*bad', '');
  const head = fc.uniqueArray(fc.tuple(key, value), { selector: ([name]) => name, maxLength: 5 });
  const body = fc.array(fc.constantFrom('A.\n', 'B,\nb.\n', 'C.\n', 'D.', '\n', '\n\n', '  \n', 'E.\r\n', '---\n'), { maxLength: 8 });
  const note = fc
    .tuple(head, body, fc.boolean())
    .map(
      ([keys, parts, fenced]) => (fenced ? `---\n${keys.map(([name, says]) => `${name}: ${says}\n`).join('')}---\n` : '') + parts.join(''),
    );
  const tried = runs(1500);

  test('a change beside no change is the change', () => {
    fc.assert(
      fc.property(note, note, (base, changed) => {
        expect(mergeNote({ base, mine: changed, theirs: base }).text).toBe(changed);
        expect(mergeNote({ base, mine: base, theirs: changed }).text).toBe(changed);
        expect(mergeNote({ base, mine: changed, theirs: changed }).text).toBe(changed);
      }),
      tried,
    );
  });

  /** Lines of a side that were not in the base, each as often as it is new. */
  const newLines = (side: string, base: string): readonly string[] => {
    const left = lines(base);
    return lines(side).filter((line) => {
      const at = left.indexOf(line);
      if (at >= 0) left.splice(at, 1);
      return at < 0;
    });
  };
  const lines = (text: string): string[] => text.split(/\r\n|\n|\r/).filter((line) => line.trim() !== '');
  const allOf = ({ pieces }: NoteMerge): readonly string[] =>
    lines(pieces.map((piece) => (piece.is === 'agreed' ? piece.text : `${piece.mine}\n${piece.theirs}`)).join('\n'));

  test('every new line of either side is in a piece, in either order of the sides', () => {
    fc.assert(
      fc.property(note, note, note, (base, mine, theirs) => {
        for (const merge of [mergeNote({ base, mine, theirs }), mergeNote({ base, mine: theirs, theirs: mine })]) {
          const found = allOf(merge);
          expect(newLines(mine, base).filter((line) => !found.includes(line))).toEqual([]);
          expect(newLines(theirs, base).filter((line) => !found.includes(line))).toEqual([]);
        }
      }),
      tried,
    );
  });

  test('without a base either side can be had back, line by line', () => {
    fc.assert(
      fc.property(note, note, (a, b) => {
        const [mine, theirs] = [a.replaceAll('\r\n', '\n'), b.replaceAll('\r\n', '\n')];
        const merge = mergeNote({ mine, theirs });
        const back = (side: 'mine' | 'theirs') => merge.pieces.map((piece) => (piece.is === 'agreed' ? piece.text : piece[side])).join('');
        expect(lines(back('mine')).sort()).toEqual(lines(mine).sort());
        expect(lines(back('theirs')).sort()).toEqual(lines(theirs).sort());
      }),
      tried,
    );
  });

  test('keeping both loses nothing that either side wrote', () => {
    fc.assert(
      fc.property(note, note, note, (base, mine, theirs) => {
        const kept = chosenText(mergeNote({ base, mine, theirs }), () => 'both').split(/\r\n|\n|\r/);
        const missing = [...newLines(mine, base), ...newLines(theirs, base)].filter(
          (line) => !kept.includes(line) && !kept.includes(`# ${line}`),
        );
        expect(missing).toEqual([]);
      }),
      tried,
    );
  });

  test('what merges by itself does not depend on the order of the sides, save the order of added keys', () => {
    fc.assert(
      fc.property(note, note, note, (base, mine, theirs) => {
        const [one, other] = [mergeNote({ base, mine, theirs }), mergeNote({ base, mine: theirs, theirs: mine })];
        expect(one.text === undefined).toBe(other.text === undefined);
        if (one.text !== undefined && other.text !== undefined) expect(lines(one.text).sort()).toEqual(lines(other.text).sort());
      }),
      tried,
    );
  });
});
