import { describe, expect, test } from 'vitest';
import { claimKey } from '../../../web/domain/claim/claim.ts';
import { judgeRoute } from '../../../web/domain/verdict/judge-route.ts';
import { weighClaims } from '../../../web/domain/verdict/weigh-claims.ts';
import type { Note } from '../../../web/domain/note/note.ts';
import { routeOf } from '../../../web/domain/verdict/route.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const row = (region: string, when: string, status: string, more = 'known-by: text') =>
  `region: ${region}, when: ${when}, status: ${status}, ${more}, source: book`;
const recipe = (id: string, ...dyes: readonly string[]): Record<string, string> => ({
  [`recipes/${id}.md`]: aNote(`kind: recipe\nfibre: wool\ningredients: [${dyes.map((dye) => `{what: ${dye}, role: dye}`).join(', ')}]`),
});

/** The claims of a recipe weighed for England in 1350, each as its source note and number. */
function weighed(files: Readonly<Record<string, string>>, id = 'red', region = 'england', when = 1350, to = when) {
  const { base } = aNotebook({ ...aWorld, ...files });
  const route = routeOf(base, id as Note['id'], 'wool');
  const judgement = judgeRoute(base, route, { region, span: { from: when, to }, fibre: 'wool', dyedHere: false });
  const { speaksFor, speaksAgainst, nearest, others } = weighClaims(judgement);
  const keys = (claims: typeof speaksFor) => claims.map(({ placed }) => claimKey(placed.claim));
  return { speaksFor: keys(speaksFor), speaksAgainst: keys(speaksAgainst), nearest: keys(nearest), others };
}

/** A red of madder, of which these claims speak. */
const madderRed = (...rows: readonly string[]) => ({ ...recipe('red', 'madder'), 'dyestuffs/madder.md': aDyestuff('Madder', ...rows) });

describe('weighClaims', () => {
  test('parts what speaks for it, against it, and elsewhere or otherwise', () => {
    const files = madderRed(
      row('england', '1300–1400', 'imported'),
      row('england', '1300–1400', 'absent', 'known-by: inference, reason: stated, sure: doubtful'),
      row('scotland', '1300–1400', 'grown'),
      row('england', '1600–1700', 'grown'),
    );
    expect(weighed(files)).toEqual({ speaksFor: ['madder#0'], speaksAgainst: ['madder#1'], nearest: [], others: 2 });
  });

  test('shows the nearest records before and after where nothing meets the asked years', () => {
    const files = madderRed(
      row('england', '900–1000', 'grown'),
      row('england', '1000–1100', 'grown'),
      row('england', '1500–1600', 'grown'),
      row('england', '1700–1800', 'grown'),
    );
    expect(weighed(files)).toEqual({ speaksFor: [], speaksAgainst: [], nearest: ['madder#1', 'madder#2'], others: 2 });
  });

  test('puts what carries the standing first, then firm before soft', () => {
    const files = madderRed(
      row('england', '1300–1400', 'imported', 'known-by: inference'),
      row('england', '1300–1400', 'imported'),
      row('england', '1300–1400', 'grown'),
    );
    // Grown here is the better origin, so it carries; the imports stand behind it, the text before the inference.
    expect(weighed(files).speaksFor).toEqual(['madder#2', 'madder#1', 'madder#0']);
  });

  test('tells of every material before it tells of one at length, the weakest first', () => {
    const files = {
      ...recipe('green', 'weld', 'woad'),
      'dyestuffs/weld.md': aDyestuff('Weld', row('england', '1300–1400', 'grown'), row('england', '1310–1390', 'grown')),
      'dyestuffs/woad.md': aDyestuff('Woad', row('england', '1300–1400', 'imported'), row('england', '1310–1390', 'imported')),
    };
    expect(weighed(files, 'green').speaksFor).toEqual(['woad#0', 'weld#0', 'woad#1', 'weld#1']);
  });

  test('leaves everyday materials out, and counts every other claim once', () => {
    const files = {
      ...recipe('red', 'madder', 'water'),
      'assistants/water.md': aNote(`kind: assistant\neveryday: true\navailability:\n  - {${row('england', '1300–1400', 'wild')}}`),
      'dyestuffs/madder.md': aDyestuff('Madder', row('england', '1300–1400', 'imported'), row('europe', '1300–1400', 'grown')),
    };
    const { speaksFor, speaksAgainst, nearest, others } = weighed(files);
    expect(speaksFor.length + speaksAgainst.length + nearest.length + others).toBe(2);
  });

  test('of materials that stand alike a dye is told of before what helps it', () => {
    const files = {
      'recipes/red.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: alum, role: mordant}, {what: madder, role: dye}]'),
      'mordants/alum.md': aNote(`kind: mordant\navailability:\n  - {${row('england', '1300–1400', 'imported')}}`),
      'dyestuffs/madder.md': aDyestuff('Madder', row('england', '1300–1400', 'imported')),
    };
    expect(weighed(files).speaksFor).toEqual(['madder#0', 'alum#0']);
  });

  test('beside what carries the standing: hard before soft, both before what lies only near; in part and perhaps are in time too', () => {
    const files = madderRed(
      row('ireland', '1300–1400', 'grown'),
      row('england', '1300–1400', 'imported', 'known-by: inference'),
      row('england', 'c. 1400', 'imported'),
      row('england', '1370–1400', 'imported'),
      row('england', '1300–1400', 'grown'),
    );
    expect(weighed(files, 'red', 'england', 1350, 1390)).toEqual({
      speaksFor: ['madder#4', 'madder#3', 'madder#2', 'madder#1', 'madder#0'],
      speaksAgainst: [],
      nearest: [],
      others: 0,
    });
  });

  test('what carries “nearby” speaks for it though its years are others, and is not told again as the nearest', () => {
    const files = madderRed(row('england', '1380–1400', 'imported'));
    expect(weighed(files)).toEqual({ speaksFor: ['madder#0'], speaksAgainst: [], nearest: [], others: 0 });
  });

  test('one nearest record alone is told alone', () => {
    const files = madderRed(row('england', '1000–1100', 'imported'));
    expect(weighed(files).nearest).toEqual(['madder#0']);
  });

  test('of two materials that stand alike each is told of once before either twice, however hard the second one’s claims are', () => {
    const soft = row('england', '1300–1400', 'grown', 'known-by: inference');
    const doubtfulTime = row('england', 'c. 1360', 'grown');
    const files = {
      ...recipe('green', 'weld', 'woad'),
      'dyestuffs/weld.md': aDyestuff('Weld', soft, soft),
      'dyestuffs/woad.md': aDyestuff('Woad', doubtfulTime, doubtfulTime),
    };
    expect(weighed(files, 'green').speaksFor).toEqual(['weld#0', 'woad#0', 'weld#1', 'woad#1']);
  });
});
