import { describe, expect, test } from 'vitest';
import { claimKey, type PlacedClaim } from '../../../web/domain/claim/claim.ts';
import { type ClaimFilter, claimsAt, TO_HAND } from '../../../web/domain/claim/claims-at.ts';
import type { EvidenceBase } from '../../../web/domain/claim/evidence-base.ts';
import type { YearSpan } from '../../../web/domain/date/date-span.ts';
import { timeRelation } from '../../../web/domain/date/time-relation.ts';
import { STATUSES } from '../../../web/domain/note/note.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';
import { type Chance, chance } from '../../helpers/random.ts';

const { base } = aNotebook({
  ...aWorld,
  'regions/marches.md': aNote('kind: region\ntitle: Marches\nwithin: [england, ireland]'),
  'dyestuffs/madder.md': aDyestuff(
    'Madder',
    'region: england, when: 1200–1400, status: imported, known-by: trade, source: book',
    'region: marches, when: 1350, status: grown, known-by: text, source: book',
    'region: europe, when: until 1500, status: grown, known-by: text, source: book',
    'region: europe, when: from 1450, status: absent, known-by: text, source: book',
    'region: world, when: c. 900, status: wild, known-by: text, source: book',
    'region: nowhere, when: 1350, status: grown, known-by: text, source: book',
  ),
});
const nths = (filter: ClaimFilter) =>
  claimsAt(base, filter)
    .map(({ claim }) => claim.nth)
    .sort((a, b) => a - b);

describe('claimsAt', () => {
  const at1350 = { from: 1350, to: 1350 };
  test.each<[string, ClaimFilter, number[]]>([
    ['nothing asked: every claim that can be placed', {}, [0, 1, 2, 3, 4]],
    ['a region: its own and those of its parts', { region: 'england' }, [0, 1]],
    ['a region with two regions around it belongs to both', { region: 'ireland' }, [1]],
    ['world holds all', { region: 'world' }, [0, 1, 2, 3, 4]],
    ['years anywhere, an open start reaching back', { span: at1350 }, [0, 1, 2]],
    ['years before all written ones', { span: { from: -800, to: -700 } }, [2]],
    ['years after all written ones, an open end reaching on', { span: { from: 1900, to: null } }, [3]],
    ['the first and the last year count', { region: 'england', span: { from: 1400, to: 1500 } }, [0]],
    ['one year later they are past', { region: 'england', span: { from: 1401, to: 1500 } }, []],
    ['statuses', { statuses: ['wild', 'absent'] }, [3, 4]],
    ['all but absence', { statuses: TO_HAND }, [0, 1, 2, 4]],
    ['an unknown region has none', { region: 'atlantis' }, []],
  ])('%s', (_, filter, wanted) => expect(nths(filter)).toEqual(wanted));

  test('a region that comes to lie elsewhere takes its claims along, though none of them changed', () => {
    const { base: moving } = aNotebook({
      'regions/europe.md': aNote('kind: region\ntitle: Europe'),
      'regions/asia.md': aNote('kind: region\ntitle: Asia'),
      'regions/england.md': aNote('kind: region\ntitle: England\nwithin: europe'),
      'dyestuffs/weld.md': aDyestuff('Weld', 'region: england, when: 1300, status: grown, known-by: text, source: book'),
    });
    const inEurope = () => claimsAt(moving, { region: 'europe' }).length;
    expect(inEurope()).toBe(1);
    moving.put(parseNote('regions/england.md', aNote('kind: region\ntitle: England\nwithin: asia')).value);
    expect(inEurope()).toBe(0);
    moving.put(parseNote('regions/england.md', aNote('kind: region\ntitle: England\nwithin: europe')).value);
    expect(inEurope()).toBe(1);
  });

  test('the same as looking at every claim of the demonstration, for places, years and statuses by chance', async () => {
    const { base: demo } = await demoNotebook();
    const draw = chance(7);
    expect(claimsAt(demo, {}).length).toBeGreaterThan(600);
    const every = everyClaim(demo);
    let found = 0;
    for (let time = 0; time < 2000; time += 1) found += foundAsByLooking(demo, every, aFilter(demo, draw));
    expect(found).toBeGreaterThan(2000);
  });

  test('the same after notes are edited, taken out and put back, few or many between two questions', async () => {
    const { base: demo } = await demoNotebook();
    const draw = chance(11);
    const notes = [...demo.notes()].filter(({ record: { kind } }) => ['dyestuff', 'textile', 'region', 'period'].includes(kind));
    for (let time = 0; time < 60; time += 1) {
      for (let edits = draw.oneIn(4) ? 12 : 1; edits > 0; edits -= 1) {
        const { file, source } = draw.pick(notes);
        if (draw.oneIn(4)) demo.remove(file);
        else demo.put(parseNote(file, draw.oneIn(3) ? source : edited(source, draw)).value);
      }
      const every = everyClaim(demo);
      for (let asked = 0; asked < 20; asked += 1) foundAsByLooking(demo, every, aFilter(demo, draw));
    }
  });
});

/** One word of a note changed for another of its kind, wherever it stands. */
function edited(source: string, { pick }: Chance): string {
  const [from, to] = pick([
    [/status: (grown|imported|wild)/, `status: ${pick(STATUSES)}`],
    [/region: [\w-]+/, `region: ${pick(['england', 'europe', 'hanse-towns', 'world'])}`],
    [/when: [^,}\n]+/, `when: ${pick(['1300', 'until 1400', 'from 1450', '"13th century"'])}`],
    [/within: .+/, `within: ${pick(['[europe]', '[england, europe]'])}`],
  ] as const);
  return source.replace(from, to);
}

function aFilter({ regions }: EvidenceBase, { pick, below, oneIn }: Chance): ClaimFilter {
  const from = below(2300) - 500;
  const span: YearSpan = { from: oneIn(8) ? null : from, to: oneIn(8) ? null : from + below(oneIn(2) ? 5 : 300) };
  return {
    ...(!oneIn(4) && { region: pick(regions.ids) }),
    ...(!oneIn(4) && { span }),
    ...(!oneIn(4) && { statuses: [pick(STATUSES), pick(TO_HAND)] }),
  };
}

/** @returns how many there are. */
function foundAsByLooking(of: EvidenceBase, every: readonly PlacedClaim[], filter: ClaimFilter): number {
  const keys = (claims: readonly PlacedClaim[]) => claims.map(({ claim }) => claimKey(claim)).sort();
  const plain = every.filter((one) => holds(of, one, filter));
  expect(keys(claimsAt(of, filter)), JSON.stringify(filter)).toEqual(keys(plain));
  return plain.length;
}

const everyClaim = (of: EvidenceBase): readonly PlacedClaim[] =>
  [...of.notes()]
    .flatMap(({ file }) => of.claimsIn(file))
    .map((claim) => of.place(claim))
    .filter((one) => 'claim' in one);

/** As the rules have it: where a claim's place and time lie, seen from those asked. */
function holds(of: EvidenceBase, { claim, region, span }: PlacedClaim, asked: ClaimFilter): boolean {
  return (
    (asked.region === undefined || ['here', 'within'].includes(of.regions.relation(region, asked.region))) &&
    (!asked.span || timeRelation(span, asked.span).gapYears === 0) &&
    (!asked.statuses || asked.statuses.includes(claim.status))
  );
}
