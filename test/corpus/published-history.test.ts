import { describe, expect, test } from 'vitest';
import changes from '../reference/changes-1370-1670.json' with { type: 'json' };
import houses from '../reference/house-colours.json' with { type: 'json' };
import history from '../reference/published-history.json' with { type: 'json' };
import tables from '../reference/table-of-skeins.json' with { type: 'json' };
import { coreOf } from '../../web/domain/date/date-span.ts';
import { judgeSkein } from '../../web/domain/verdict/judge-skein.ts';
import { readSkeins } from '../../web/notebook/read-skeins.ts';
import { demoNotebook } from './demo-notebook.ts';
import { judgeDemo, type ReferenceQuestion } from './judge-demo.ts';

describe('the demonstration against published history', () => {
  test.each(history.checks.map((check) => [check.id, check] as const))('%s', (_id, check) => {
    expect(check.expectStanding).toContain(judgeDemo(check as ReferenceQuestion).standing);
  });
  test('no check allows so much that it cannot fail, and each has its source', () => {
    for (const { expectStanding, source } of history.checks) {
      expect(expectStanding.length).toBeLessThanOrEqual(3);
      expect(source).not.toBe('');
    }
    expect(history.checks.length).toBeGreaterThanOrEqual(50);
  });
});

describe('the colours of the three houses', () => {
  const rows = houses.houses.flatMap(({ house, region, when, expected, forbidden }) =>
    [...expected, ...forbidden].map(
      (entry) => [`house ${house}: ${'recipe' in entry ? entry.recipe : entry.dye}`, { region, when, ...entry }] as const,
    ),
  );
  test.each(rows)('%s', (_name, entry) => {
    expect(entry.verdicts).toContain(judgeDemo(entry as ReferenceQuestion).verdict);
  });
  test('ten are expected and five refused at each', () => {
    expect(houses.houses.map(({ expected, forbidden }) => [expected.length, forbidden.length])).toEqual([
      [10, 5],
      [10, 5],
      [10, 5],
    ]);
  });
});

describe('published changes between 1370 and 1670', () => {
  test.each(changes.changes.map((change) => [change.id, change] as const))('%s', (_id, change) => {
    const at = (when: string) => judgeDemo({ ...(change as object), region: change.region, when }).standing;
    expect(change.standing1370).toContain(at('1370'));
    expect(change.standing1670).toContain(at('1670'));
  });
});

describe("a dyer's own table of twenty skeins", () => {
  test.each(
    tables.tables.flatMap((table) => table.lines.map((line) => [`${line.name}, ${table.region} ${table.when}`, table, line] as const)),
  )('%s', (_name, table, line) => {
    const { base } = demoNotebook();
    const [read] = readSkeins(
      base,
      `name;dyestuffs;mordant;fibre\n${line.name};${line.dyestuffs.join(' + ')};${line.mordant};${line.fibre}`,
    );
    expect(read?.problems).toEqual([]);
    const span = base.spanOfText(table.when);
    if (!read || !span) throw new Error('the table cannot be read');
    const { verdict, witnesses } = judgeSkein(base, read.skein, {
      region: table.region,
      span: coreOf(span),
      dyedHere: (table as { dyedHere?: boolean }).dyedHere ?? false,
    });
    const whenWitnessed = (line as { orWhenWitnessed?: string }).orWhenWitnessed;
    expect(verdict).toBe(witnesses.length > 0 && whenWitnessed !== undefined ? whenWitnessed : line.verdict);
  });
});
