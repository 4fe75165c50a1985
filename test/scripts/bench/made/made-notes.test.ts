import { describe, expect, test } from 'vitest';
import { madeNote, madeNotes } from '../../../../scripts/bench/made/made-notes.ts';
import { Notebook } from '../../../../web/notebook/notebook.ts';

const notebookOf = (count: number, seed?: number) => {
  const notebook = new Notebook();
  for (const { path, text } of madeNotes(count, { short: true, ...(seed !== undefined && { seed }) }))
    notebook.put({ path, bytes: new TextEncoder().encode(text) });
  return notebook;
};

describe('madeNotes', () => {
  const notebook = notebookOf(1000);
  const notes = [...notebook.base.notes()];

  test('are notes of the notebook’s own kinds that are read without a fault, each under a path of its own', () => {
    expect(notes).toHaveLength(1000);
    expect(new Set(notes.map(({ record }) => record.kind)).size).toBeGreaterThan(9);
    const errors = notes.flatMap(({ file }) => notebook.foundInText(file)).filter(({ severity }) => severity === 'error');
    expect(errors).toEqual([]);
  });

  test('hold two and a half claims and three tenths of a coloured sample each', () => {
    const claims = notes.reduce((sum, { file }) => sum + notebook.base.claimsIn(file).length, 0);
    expect(claims / notes.length).toBeCloseTo(2.5, 0);
    const samples = notebook.base.ofKind('trial').flatMap(({ record }) => record.samples);
    expect(samples.filter(({ colour }) => colour !== undefined).length / notes.length).toBeCloseTo(0.3, 1);
  });

  test('are the same each time, other for another seed, and a smaller notebook is the head of a larger one', () => {
    expect(madeNote(777)).toEqual(madeNote(777));
    expect(madeNote(777, { seed: 2 }).text).not.toBe(madeNote(777).text);
    expect([...madeNotes(20)]).toEqual([...madeNotes(40)].slice(0, 20));
  });

  test('have bodies of 300 to 1500 words', () => {
    const lengths = Array.from(
      { length: 60 },
      (_, at) =>
        (
          madeNote(at * 13)
            .text.split('\n---\n')
            .at(-1) ?? ''
        ).split(/\s+/).length,
    );
    expect(Math.min(...lengths)).toBeGreaterThanOrEqual(300);
    expect(Math.max(...lengths)).toBeLessThan(1800);
  });
});
