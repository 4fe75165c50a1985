import { describe, expect, test } from 'vitest';
import { STANDINGS, verdictOf, VERDICTS } from '../../../web/domain/verdict/standing-words.ts';
import { standingOf } from '../../../web/domain/verdict/standing.ts';
import { aDyestuff, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { fc, runs } from '../../helpers/property.ts';

const aRow = fc.record({
  region: fc.constantFrom('england', 'york', 'europe', 'ireland', 'scotland'),
  from: fc.integer({ min: 1150, max: 1450 }),
  years: fc.integer({ min: 0, max: 200 }),
  circa: fc.boolean(),
  status: fc.constantFrom('wild', 'grown', 'made', 'imported', 'cloth-only', 'absent'),
  knownBy: fc.constantFrom('analysis', 'text', 'trade', 'inference', 'image'),
  sure: fc.constantFrom('yes', 'likely', 'doubtful'),
  start: fc.boolean(),
  end: fc.boolean(),
});
type Row = typeof aRow extends fc.Arbitrary<infer T> ? T : never;

const written = (row: Row): string =>
  `region: ${row.region}, when: ${row.circa ? 'c. ' : ''}${row.from}–${row.from + row.years}, status: ${row.status}, known-by: ${row.knownBy}, sure: ${row.sure}, source: b` +
  `${row.start ? ', start: known' : ''}${row.end ? ', end: known' : ''}`;

const standingFor = (rows: readonly Row[]) => {
  const { base } = aNotebook({ ...aWorld, 'dyestuffs/weld.md': aDyestuff('Weld', ...rows.map(written)) });
  return standingOf(
    base.claimsOf('weld'),
    { region: 'england', span: { from: 1290, to: 1310 }, fibreLine: [] },
    { regions: base.regions, everyday: false },
  );
};

describe('standingOf, for any claims', () => {
  test('the order of the claims does not matter', () => {
    fc.assert(
      fc.property(fc.array(aRow, { maxLength: 8 }), fc.integer(), (rows, seed) => {
        const mixed = [...rows].sort((a, b) => ((a.from * 31 + seed) % 7) - ((b.from * 17 + seed) % 7));
        const [one, other] = [standingFor(rows), standingFor(mixed)];
        expect(other.standing).toBe(one.standing);
        expect(other.origins).toEqual(one.origins);
      }),
      runs(300),
    );
  });
  test('an absence never improves a verdict', () => {
    fc.assert(
      fc.property(fc.array(aRow, { maxLength: 6 }), aRow, fc.boolean(), (rows, extra, witness) => {
        const rank = (list: readonly Row[]) => VERDICTS.indexOf(verdictOf(standingFor(list).standing, witness));
        expect(rank([...rows, { ...extra, status: 'absent' }])).toBeGreaterThanOrEqual(rank(rows));
      }),
      runs(300),
    );
  });
  test('always gives one of the standings, with claims to carry every one but unrecorded', () => {
    fc.assert(
      fc.property(fc.array(aRow, { maxLength: 8 }), (rows) => {
        const { standing, carriedBy } = standingFor(rows);
        expect(STANDINGS).toContain(standing);
        expect(carriedBy.length === 0).toBe(standing === 'unrecorded');
      }),
      runs(300),
    );
  });
});
