import { describe, expect, test } from 'vitest';
import { askDye } from '../../../web/domain/verdict/ask-dye.ts';
import { aDyestuff, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

/** A claim that weld was brought to England then, known from a text. */
const imported = (when: string, more = '') => `region: england, when: "${when}", status: imported, known-by: text, source: book${more}`;

function subSpans(rows: readonly string[], from: number | null, to: number | null) {
  const { base } = aNotebook({ ...aWorld, 'dyestuffs/weld.md': aDyestuff('Weld', ...rows) });
  const { dye } = askDye(base, { dye: 'weld', region: 'england', span: { from, to }, dyedHere: false });
  return dye.subSpans.map((one) => [one.from, one.to, one.standing]);
}

describe('the sub-spans of a long question', () => {
  test('a question of one year, or open on a side, has none', () => {
    const rows = [imported('1290–1310')];
    expect(subSpans(rows, 1300, 1300)).toEqual([]);
    expect(subSpans(rows, null, 1400)).toEqual([]);
    expect(subSpans(rows, 1200, null)).toEqual([]);
    expect(subSpans(rows, null, null)).toEqual([]);
  });
  test('one alone where the standing is the same throughout', () => {
    expect(subSpans([imported('1290–1310')], 1295, 1305)).toEqual([[1295, 1305, 'imported']]);
    expect(subSpans([], 1295, 1305)).toEqual([[1295, 1305, 'unrecorded']]);
  });
  test('what changes in the very last year, or after the very first, is a part of its own', () => {
    expect(subSpans([imported('1310–1320', ', start: known')], 1300, 1310)).toEqual([
      [1300, 1309, 'not-yet'],
      [1310, 1310, 'imported'],
    ]);
    expect(subSpans([imported('1290–1300', ', end: known')], 1300, 1310)).toEqual([
      [1300, 1300, 'imported'],
      [1301, 1310, 'no-longer'],
    ]);
  });

  // The reach: 100 years up to 500, 50 up to 1500, 25 up to 1700, 10 after.
  test.each([
    [100, '400–410', 250, 299],
    [50, '1400–1410', 1300, 1349],
    [25, '1650–1660', 1600, 1624],
    [10, '1850–1860', 1820, 1839],
  ])('nearby begins a reach of %i years before what is recorded, %s', (_reach, when, from, lastUnrecorded) => {
    const first = Number(when.split('–')[0]);
    expect(subSpans([imported(when)], from, first + 5)).toEqual([
      [from, lastUnrecorded, 'unrecorded'],
      [lastUnrecorded + 1, first - 1, 'nearby'],
      [first, first + 5, 'imported'],
    ]);
  });
  test.each([
    [100, '200–300', 400, 450],
    [50, '1200–1300', 1350, 1400],
    [25, '1600–1610', 1635, 1680],
    [10, '1800–1850', 1860, 1900],
  ])('nearby ends a reach of %i years after what is recorded, %s', (_reach, when, lastNearby, to) => {
    const last = Number(when.split('–')[1]);
    expect(subSpans([imported(when)], last, to)).toEqual([
      [last, last, 'imported'],
      [last + 1, lastNearby, 'nearby'],
      [lastNearby + 1, to, 'unrecorded'],
    ]);
  });
  test.each([
    [500, '420–430', 490, 520],
    [1500, '1460–1465', 1495, 1520],
    [1700, '1680–1682', 1695, 1710],
  ])('where the reach itself shortens, after %i, nearby may end', (step, when, from, to) => {
    expect(subSpans([imported(when)], from, to)).toEqual([
      [from, step, 'nearby'],
      [step + 1, to, 'unrecorded'],
    ]);
  });
  test('a claim without a first year cuts nothing, in years around the beginning of the era either', () => {
    const elsewhere = imported('before 50').replace('england', 'scotland');
    const absent = 'region: england, when: "-0200/0020", status: absent, reason: looked-for, known-by: text, source: book';
    expect(subSpans([elsewhere, absent], -100, 100)).toEqual([
      [-100, 20, 'absent'],
      [21, 100, 'unrecorded'],
    ]);
  });
});
