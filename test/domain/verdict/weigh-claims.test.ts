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
function weighed(files: Readonly<Record<string, string>>, id = 'red', region = 'england', when = 1350) {
  const { base } = aNotebook({ ...aWorld, ...files });
  const route = routeOf(base, id as Note['id'], 'wool');
  const judgement = judgeRoute(base, route, { region, span: { from: when, to: when }, fibre: 'wool', dyedHere: false });
  const { speaksFor, speaksAgainst, nearest, others } = weighClaims(judgement);
  const keys = (claims: typeof speaksFor) => claims.map(({ placed }) => claimKey(placed.claim));
  return { speaksFor: keys(speaksFor), speaksAgainst: keys(speaksAgainst), nearest: keys(nearest), others };
}

describe('weighClaims', () => {
  test('parts what speaks for it, against it, and elsewhere or otherwise', () => {
    const files = {
      ...recipe('red', 'madder'),
      'dyestuffs/madder.md': aDyestuff(
        'Madder',
        row('england', '1300–1400', 'imported'),
        row('england', '1300–1400', 'absent', 'known-by: inference, reason: stated, sure: doubtful'),
        row('scotland', '1300–1400', 'grown'),
        row('england', '1600–1700', 'grown'),
      ),
    };
    expect(weighed(files)).toEqual({ speaksFor: ['madder#0'], speaksAgainst: ['madder#1'], nearest: [], others: 2 });
  });

  test('shows the nearest records before and after where nothing meets the asked years', () => {
    const files = {
      ...recipe('red', 'madder'),
      'dyestuffs/madder.md': aDyestuff(
        'Madder',
        row('england', '900–1000', 'grown'),
        row('england', '1000–1100', 'grown'),
        row('england', '1500–1600', 'grown'),
        row('england', '1700–1800', 'grown'),
      ),
    };
    expect(weighed(files)).toEqual({ speaksFor: [], speaksAgainst: [], nearest: ['madder#1', 'madder#2'], others: 2 });
  });

  test('puts what carries the standing first, then firm before soft', () => {
    const files = {
      ...recipe('red', 'madder'),
      'dyestuffs/madder.md': aDyestuff(
        'Madder',
        row('england', '1300–1400', 'imported', 'known-by: inference'),
        row('england', '1300–1400', 'imported'),
        row('england', '1300–1400', 'grown'),
      ),
    };
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
});
