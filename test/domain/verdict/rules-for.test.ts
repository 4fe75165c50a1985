import { describe, expect, test } from 'vitest';
import { rulesFor } from '../../../web/domain/verdict/rules-for.ts';
import type { RegionId } from '../../../web/domain/place/region-tree.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const LAW = { region: 'england', when: '1250–1350', concerns: 'madder', source: 'law' };

/** What a law says of madder in England between two years, to a wearer. */
function found(
  fields: Readonly<Record<string, string>>,
  { wearer, from = 1300, to = from }: { wearer?: string | undefined; from?: number; to?: number } = {},
) {
  const lines = Object.entries({ ...LAW, ...fields }).map(([key, value]) => `${key}: ${value}`);
  const { base } = aNotebook({
    ...aWorld,
    'dyestuffs/madder.md': aDyestuff('Common madder'),
    'dyestuffs/weld.md': aDyestuff('Weld'),
    'wearers/peasant.md': aNote('kind: wearer\ntitle: Field hand\nwithin: everyone'),
    'rules/r.md': aNote(`kind: rule\n${lines.join('\n')}`),
  });
  return rulesFor(base, new Set(['madder']), { region: 'england' as RegionId, span: { from, to }, fibreLine: [] }, wearer);
}

describe('rules about a colour (they stand beside a verdict)', () => {
  test('a rule is told with its act, what of the route it concerns, and how it lies', () => {
    expect(found({ act: 'wear', concerns: '[Common madder, weld]', forbids: 'Field hand' }, { wearer: 'peasant' })).toEqual([
      { note: 'r', act: 'wear', concerns: ['madder'], place: 'here', time: 'throughout', touches: 'forbidden' },
    ]);
  });
  test('a rule that names no act is told without one', () => {
    expect(found({ forbids: 'peasant' })).toEqual([
      { note: 'r', concerns: ['madder'], place: 'here', time: 'throughout', touches: 'others' },
    ]);
  });
  test('a rule about other dyes alone is not told', () => expect(found({ concerns: 'weld' })).toEqual([]));

  test.each([
    ['here', 'england'],
    ['within', 'york'],
    ['around', 'europe'],
  ])('a rule %s speaks', (place, region) => expect(found({ region })).toMatchObject([{ place }]));
  test.each(['ireland', 'scotland', 'nowhere-known'])('a rule of a neighbour, elsewhere or a place unknown does not (%s)', (region) => {
    expect(found({ region })).toEqual([]);
  });

  test.each([
    ['throughout', 1300, 1310],
    ['part', 1340, 1360],
  ])('a rule in force %s of the asked years speaks', (time, from, to) => {
    expect(found({}, { from, to })).toMatchObject([{ time }]);
  });
  test('a rule of a doubtful date speaks, perhaps', () => {
    expect(found({ when: 'c. 1310' })).toMatchObject([{ time: 'perhaps' }]);
  });
  test('a rule made later, or out of force before, does not; nor one whose date cannot be read', () => {
    expect(found({ when: '1363' })).toEqual([]);
    expect(found({ when: '1197' })).toEqual([]);
    expect(found({ when: 'once upon a time' })).toEqual([]);
  });

  test.each([
    ['every wearer it allows is free, whichever of them is asked', 'allows', '[noble, Field hand]', 'peasant', 'others'],
    ['those it does not allow are shut out', 'allows', '[noble]', 'peasant', 'not-among-allowed'],
    ['nobody asked about is shut out by what it allows', 'allows', '[noble]', undefined, 'others'],
    ['one of several it forbids is forbidden', 'forbids', '[noble, Field hand]', 'peasant', 'forbidden'],
    ['one who lies within those it forbids is forbidden', 'forbids', '[everyone]', 'lady', 'forbidden'],
  ])('%s', (_rule, key, who, wearer, touches) => {
    expect(found({ [key]: who }, { wearer })).toMatchObject([{ touches }]);
  });
  test('a rule that forbids and allows at once forbids', () => {
    expect(found({ allows: 'everyone', forbids: 'peasant' }, { wearer: 'peasant' })).toMatchObject([{ touches: 'forbidden' }]);
  });
});

test('rules are told once each and in order of their notes, whichever dye each concerns', () => {
  const law = (concerns: string) => aNote(`kind: rule\nregion: england\nwhen: 1250–1350\nconcerns: ${concerns}\nsource: law`);
  const { base } = aNotebook({
    ...aWorld,
    'dyestuffs/madder.md': aDyestuff('Madder'),
    'dyestuffs/weld.md': aDyestuff('Weld'),
    'rules/b.md': law('madder'),
    'rules/c.md': law('[weld, madder]'),
    'rules/a.md': law('weld'),
  });
  const asked = { region: 'england' as RegionId, span: { from: 1300, to: 1300 }, fibreLine: [] };
  const told = rulesFor(base, new Set(['madder', 'weld']), asked, undefined);
  expect(told.map(({ note, concerns }) => [note, concerns])).toEqual([
    ['a', ['weld']],
    ['b', ['madder']],
    ['c', ['weld', 'madder']],
  ]);
});
