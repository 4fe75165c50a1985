import { describe, expect, test } from 'vitest';
import { mergeNote } from '../../../web/domain/merge/merge-note.ts';
import { mergeView } from '../../../web/elements/merge/merge-view.ts';

const BODY = Array.from({ length: 12 }, (_, at) => `Line ${at}.\n`).join('');

describe('mergeView', () => {
  test('marks the words that differ, and shortens what is alike', () => {
    const [alike, place] = mergeView(
      mergeNote({ base: `${BODY}\nSown early.\n`, mine: `${BODY}\nSown in March.\n`, theirs: `${BODY}\nSown in late autumn.\n` }),
    );
    expect(alike).toMatchObject({ is: 'alike', beginning: 'Line 0.\nLine 1.\nLine 2.', hidden: 7 });
    expect(place).toEqual({
      is: 'differs',
      at: 0,
      about: 'the text',
      mine: [
        { text: 'Sown in ', differs: false },
        { text: 'March.', differs: true },
      ],
      theirs: [
        { text: 'Sown in ', differs: false },
        { text: 'late autumn.', differs: true },
      ],
    });
  });

  test('names the key, and a side that has nothing there', () => {
    const note = (tags: string) => `---\nkind: text\n${tags}---\n`;
    const rows = mergeView(mergeNote({ base: note('tags: [a]\n'), mine: note(''), theirs: note('tags: [b]\n') }));
    expect(rows.find((row) => row.is === 'differs')).toMatchObject({ about: '“tags”', mine: [] });
  });
});
