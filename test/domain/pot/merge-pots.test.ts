import { describe, expect, test } from 'vitest';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { mergePots } from '../../../web/domain/pot/merge-pots.ts';

const note = (keys: string, body = 'Planned for 100 g of fibre.\n') =>
  `---\nkind: trial\ntitle: Pot 26-001\nrecipe: red\ndate: 2026-11-28\n${keys}---\n\n${body}`;
const mine = note(
  'actual:\n  - { what: alum, role: mordant, amount: 15 % }\n  - { what: madder, role: dye }\nlog:\n  - 10:00 in\n  - 12:00 out\nsamples:\n  - { code: 26-001-1-K, fibre: wool, colour: { lab: [45, 40, 28] } }\n',
);
const record = (text: string) => {
  const { record: read } = parseNote('trials/26-001.md', text).value;
  if (read.kind !== 'trial') throw new Error('no trial');
  return read;
};

describe('mergePots', () => {
  test('log by time, amounts by material, samples by code, deviations and paragraphs of both', () => {
    const theirs = note(
      'vessel: copper pan\nactual:\n  - { what: alum, role: mordant }\n  - { what: madder, role: dye, amount: 50 % }\nlog:\n  - 10:00 in\n  - 11:00 70 °C\ndeviations:\n  - lid off\nsamples:\n  - { code: 26-001-1-K, fibre-mass: 50 g }\n  - { code: 26-001-2-A, fibre: wool }\n',
      'Planned for 100 g of fibre.\n\nA second paragraph.\n',
    );
    const merged = mergePots(mine, theirs);
    expect(merged?.differ).toEqual([]);
    const read = record(merged?.text ?? '');
    expect(read.log).toEqual(['10:00 in', '11:00 70 °C', '12:00 out']);
    expect(read.actual.map(({ amount }) => amount?.text)).toEqual(['15 %', '50 %']);
    expect(read.samples.map(({ code, fibreGrams, colour }) => [code, fibreGrams, colour?.lab?.[0]])).toEqual([
      ['26-001-1-K', 50, 45],
      ['26-001-2-A', undefined, undefined],
    ]);
    expect(read.deviations).toEqual(['lid off']);
    expect(read.vessel).toBe('copper pan');
    expect(merged?.text).toContain('A second paragraph.');
  });

  test('what both say differently stays as mine says it and is named', () => {
    const theirs = mine.replace('recipe: red', 'recipe: scarlet').replace('amount: 15 %', 'amount: 20 %');
    const merged = mergePots(mine, theirs);
    expect(merged).toEqual({ text: mine, differ: ['recipe', 'actual'] });
  });

  test('the same note, or one with less in it, changes nothing', () => {
    expect(mergePots(mine, mine)).toEqual({ text: mine, differ: [] });
    expect(mergePots(mine, note('log: []\n'))).toEqual({ text: mine, differ: [] });
  });

  test('a note that cannot be taken apart is refused', () => {
    expect(mergePots(mine, 'no front matter')).toBeUndefined();
    expect(mergePots('---\nlog: [\n---\n', mine)).toBeUndefined();
  });
});
