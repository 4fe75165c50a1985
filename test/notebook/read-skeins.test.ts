import { describe, expect, test } from 'vitest';
import { readSkeins, withSkein } from '../../web/notebook/read-skeins.ts';
import { sampleLines } from '../../web/notebook/views/sample-lines.ts';
import { demoNotebook } from '../corpus/demo-notebook.ts';

const cells = { name: 'Red; no. 2', dyestuffs: 'madder + weld', mordant: 'alum', fibre: 'wool', colour: '45,40,25 D65/10' };

describe('withSkein', () => {
  test.each([
    ['an empty list', '', 1],
    ['lines divided by semicolons', 'Yellow; weld; alum; wool; #cfc84a', 2],
    ['CSV', 'Yellow,weld,alum,wool,#cfc84a\n', 2],
    ['a spreadsheet’s tabs', 'Yellow\tweld\talum\twool\t#cfc84a', 2],
    ['columns in another order', 'fibre,colour,name,dyestuffs,mordant\nwool,#cfc84a,Yellow,weld,alum', 2],
  ])('is read back from %s', (_what, list, count) => {
    const read = readSkeins(demoNotebook().base, withSkein(list, cells));
    expect(read).toHaveLength(count);
    expect(read.flatMap(({ problems }) => problems)).toEqual([]);
    expect(read.at(-1)).toMatchObject({
      skein: { name: 'Red; no. 2', dyes: ['madder', 'weld'], helpers: [{ id: 'alum', role: 'mordant' }], fibre: 'wool' },
      colour: '45,40,25 D65/10',
    });
  });
});

test('every sample of the demonstration can be judged as a line of a table', () => {
  const samples = sampleLines(demoNotebook());
  expect(samples.length).toBeGreaterThan(100);
  expect(new Set(samples.map(({ id }) => id)).size).toBe(samples.length);
  const list = samples.reduce((text, sample) => withSkein(text, sample.cells), '');
  expect(readSkeins(demoNotebook().base, list).flatMap(({ problems, line }) => problems.map((problem) => `${line}: ${problem}`))).toEqual(
    [],
  );
});
