import { describe, expect, test } from 'vitest';
import type { Bound, DateSpan } from '../../../web/domain/date/date-span.ts';
import { timeRelation } from '../../../web/domain/date/time-relation.ts';
import { fc } from '../../helpers/property.ts';

const claim = (earliestStart: Bound, latestStart: Bound, earliestEnd: Bound, latestEnd: Bound): DateSpan => ({
  earliestStart,
  latestStart,
  earliestEnd,
  latestEnd,
  text: '',
});
const firm = (from: Bound, to: Bound): DateSpan => claim(from, from, to, to);

describe('timeRelation', () => {
  test.each([
    ['covers the asked years exactly', firm(880, 960), 880, 960, 'throughout', 0],
    ['covers them with room', firm(850, 1100), 880, 960, 'throughout', 0],
    ['covers one year', firm(1350, 1350), 1350, 1350, 'throughout', 0],
    ['starts inside', firm(900, 1000), 880, 960, 'part', 0],
    ['ends inside', firm(800, 880), 880, 960, 'part', 0],
    ['lies inside', firm(900, 910), 880, 960, 'part', 0],
    ['touches with its last year', firm(800, 880), 880, 880, 'throughout', 0],
    ['starts in the last asked year', firm(960, 1000), 880, 960, 'part', 0],
    ['ends its outer years in the first asked one', claim(1300, 1325, 1350, 1375), 1375, 1380, 'perhaps', 0],
    ['meets by its outer bounds before', claim(1325, 1350, 1350, 1375), 1370, 1370, 'perhaps', 0],
    ['meets by its outer bounds after', claim(1325, 1350, 1350, 1375), 1325, 1325, 'perhaps', 0],
    ['misses by one year', claim(1325, 1350, 1350, 1375), 1376, 1376, 'earlier', 1],
    ['is later', firm(1400, 1450), 1300, 1370, 'later', 30],
    ['is earlier', firm(1200, 1250), 1300, 1370, 'earlier', 50],
    ['is earlier across the turn of the era', firm(-99, 0), 1, 50, 'earlier', 1],
    ['open to the left covers', firm(null, 1000), 900, 999, 'throughout', 0],
    ['open to the left is earlier', firm(null, 1000), 1100, 1200, 'earlier', 100],
    ['open to the right covers', firm(1607, null), 1660, 1669, 'throughout', 0],
    ['open to the right is later', firm(1607, null), 1500, 1600, 'later', 7],
    ['open both ways covers anything', firm(null, null), -5000, 2000, 'throughout', 0],
    ['with an end does not cover an open question', firm(1200, 1300), 1250, null, 'part', 0],
    ['open does cover an open question', firm(1200, null), 1250, null, 'throughout', 0],
    ['meets an open question', firm(1200, 1300), null, null, 'part', 0],
    ['has an empty core', claim(1200, 1300, 1250, 1350), 1275, 1275, 'perhaps', 0],
    ['has an empty core, asked over all of it', claim(1200, 1300, 1250, 1350), 1100, 1400, 'perhaps', 0],
    ['has an empty core and lies later', claim(1200, 1300, 1250, 1350), 1100, 1150, 'later', 50],
  ] as const)('a claim that %s', (_, span, from, to, relation, gapYears) => {
    expect(timeRelation(span, { from, to })).toEqual({ relation, gapYears });
  });

  test('has a gap exactly when no asked year lies in the outer span', () => {
    const year = fc.integer({ min: -200, max: 200 });
    const ordered = fc.tuple(year, year, year, year).map((years) => years.toSorted((a, b) => a - b) as [number, number, number, number]);
    fc.assert(
      fc.property(ordered, year, fc.nat(80), ([a, b, c, d], from, length) => {
        const { relation, gapYears } = timeRelation(claim(a, b, c, d), { from, to: from + length });
        const asked = Array.from({ length: length + 1 }, (_, at) => from + at);
        const inCore = asked.filter((y) => b <= y && y <= c).length;
        const nearest = Math.min(...asked.map((y) => Math.max(a - y, y - d, 0)));
        expect(gapYears).toBe(nearest);
        const word =
          inCore === asked.length ? 'throughout' : inCore > 0 ? 'part' : nearest === 0 ? 'perhaps' : a > from ? 'later' : 'earlier';
        expect(relation).toBe(word);
      }),
    );
  });
});
