import { describe, expect, test } from 'vitest';
import { askDye } from '../../../web/domain/verdict/ask-dye.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const row = (status: string, when: string, more = '', region = 'england') =>
  `region: ${region}, when: ${JSON.stringify(when)}, status: ${status}, known-by: text, source: "book"${more ? `, ${more}` : ''}`;

const ask = (
  rows: readonly string[],
  {
    from = 1300,
    to = from,
    region = 'england',
    fibre,
    dyedHere = false,
  }: {
    from?: number;
    to?: number;
    region?: string;
    fibre?: string;
    dyedHere?: boolean;
  } = {},
) => {
  const { base } = aNotebook({ ...aWorld, 'dyestuffs/weld.md': aDyestuff('Weld', ...rows) });
  return askDye(base, { dye: 'weld', region, span: { from, to }, dyedHere, ...(fibre === undefined ? {} : { fibre }) });
};
const standing = (...args: Parameters<typeof ask>) => ask(...args).dye.standing;

describe('standing rule 1, contested', () => {
  test('firm local claim and an absence whose cores meet inside the asked span', () => {
    expect(standing([row('grown', '1250–1350'), row('absent', '1290–1400', 'reason: looked-for')])).toBe('contested');
  });
  test('an absence around the place contests too; a narrower claim does not outrank it', () => {
    expect(standing([row('grown', '1250–1350', '', 'york'), row('absent', '1200–1400', '', 'europe')])).toBe('contested');
  });
  test('claims that each meet the span but not each other leave the positive one standing', () => {
    expect(standing([row('imported', '1290–1299'), row('absent', '1301–1310')], { from: 1295, to: 1305 })).toBe('imported');
  });
  test('a doubtful absence is only shown', () => {
    expect(standing([row('grown', '1250–1350'), row('absent', '1250–1350', 'sure: doubtful')])).toBe('local');
  });
  test('an absence within the place, in a part of it, does not contest', () => {
    expect(standing([row('grown', '1250–1350'), row('absent', '1250–1350', '', 'york')])).toBe('local');
  });
  test('a cloth-only claim is not contested by an absence as dyestuff', () => {
    expect(standing([row('cloth-only', '1250–1350'), row('absent', '1250–1350')])).toBe('cloth-only');
  });
});

describe('standing rule 2, firm claims', () => {
  test.each([
    ['wild', 'local'],
    ['grown', 'local'],
    ['made', 'local'],
    ['imported', 'imported'],
    ['cloth-only', 'cloth-only'],
  ])('%s gives %s', (status, expected) => {
    expect(standing([row(status, '1250–1350')])).toBe(expected);
  });
  test('the best status wins and every other origin is listed beside it', () => {
    const { dye } = ask([row('cloth-only', '1250–1350'), row('imported', '1250–1350'), row('grown', '1250–1350')]);
    expect(dye.standing).toBe('local');
    expect(dye.origins).toEqual(['local', 'imported', 'cloth-only']);
  });
  test('time part is firm as well', () => {
    expect(standing([row('imported', '1305–1350')], { from: 1300, to: 1310 })).toBe('imported');
  });
  test('a thread of a textile gives on-cloth', () => {
    const { base } = aNotebook({
      ...aWorld,
      'dyestuffs/weld.md': aDyestuff('Weld'),
      'textiles/hood.md':
        '---\nkind: textile\nregion: york\nwhen: 1290–1310\nthreads: [{where: weft, fibre: wool, dyes: [weld], tested: found}]\n---\n',
    });
    const at = (fibre?: string) =>
      askDye(base, { dye: 'weld', region: 'england', span: { from: 1300, to: 1300 }, dyedHere: false, ...(fibre ? { fibre } : {}) });
    expect(at().dye.standing).toBe('on-cloth');
    expect(at('wool').dye.standing).toBe('on-cloth');
    expect(at('linen').dye.standing).toBe('unrecorded');
    expect(at().judgement.verdict).toBe('attested');
  });
  test('a thread where none was detected makes no claim', () => {
    const { base } = aNotebook({
      ...aWorld,
      'dyestuffs/weld.md': aDyestuff('Weld'),
      'textiles/hood.md':
        '---\nkind: textile\nregion: york\nwhen: 1300\nthreads: [{fibre: wool, dyes: [weld], tested: none-detected}]\n---\n',
    });
    expect(base.claimsOf('weld')).toEqual([]);
  });
});

describe('standing rule 3, absent', () => {
  test('an absence throughout', () => expect(standing([row('absent', '1200–1400')])).toBe('absent'));
  test('an absence around, throughout', () => expect(standing([row('absent', '1200–1400', '', 'europe')])).toBe('absent'));
  test('over part of the span it settles nothing', () => {
    expect(standing([row('absent', '1200–1305')], { from: 1300, to: 1310 })).toBe('unrecorded');
  });
  test('within the region it settles nothing', () => expect(standing([row('absent', '1200–1400', '', 'york')])).toBe('unrecorded'));
  test('doubtful it settles nothing', () => expect(standing([row('absent', '1200–1400', 'sure: doubtful')])).toBe('unrecorded'));
});

describe('standing rule 4, perhaps', () => {
  test('hard, with only the outer years reaching', () => expect(standing([row('grown', 'c. 1320')])).toBe('perhaps'));
  test.each(['sure: likely', 'sure: doubtful', 'use: painting', 'use: not-said'])('soft by %s, in time', (soft) => {
    expect(standing([row('grown', '1250–1350', soft)])).toBe('perhaps');
  });
  test.each(['image', 'trial', 'practice', 'inference'])('soft by %s', (knownBy) => {
    expect(standing([`region: england, when: 1250–1350, status: grown, known-by: ${knownBy}, source: b`])).toBe('perhaps');
  });
  test('comes after an absence throughout', () => {
    expect(standing([row('grown', '1250–1350', 'sure: likely'), row('absent', '1200–1400')])).toBe('absent');
  });
});

describe('standing rule 5, nearby', () => {
  test('within the reach of the asked year', () => {
    expect(standing([row('imported', '1350–1400')])).toBe('nearby');
    expect(standing([row('imported', '1351–1400')])).toBe('unrecorded');
    expect(standing([row('imported', '1200–1250')])).toBe('nearby');
    expect(standing([row('imported', '1200–1249')])).toBe('unrecorded');
  });
  test('wild at any distance', () => expect(standing([row('wild', '1800–1900')])).toBe('nearby'));
  test('not across a known start or end', () => {
    expect(standing([row('imported', '1320–1400', 'start: known')])).toBe('not-yet');
    expect(standing([row('wild', '1100–1250', 'end: known')])).toBe('no-longer');
    expect(standing([row('imported', '1320–1400', 'end: known')])).toBe('nearby');
  });
  test('around with extent somewhere, or a neighbour, in time', () => {
    expect(standing([row('grown', '1250–1350', '', 'europe')])).toBe('nearby');
    expect(standing([row('grown', '1250–1350', 'extent: somewhere', 'england')], { region: 'york' })).toBe('nearby');
    expect(standing([row('grown', '1250–1350', '', 'ireland')])).toBe('nearby');
    expect(standing([row('grown', '1320–1350', '', 'ireland')])).toBe('unrecorded');
  });
  test('extent whole under world counts when it is said, and for wild', () => {
    expect(standing([row('grown', '1250–1350', 'extent: whole', 'europe')])).toBe('local');
    expect(standing([row('wild', '1250–1350', '', 'europe')])).toBe('local');
  });
  test('soft claims are never nearby', () => expect(standing([row('imported', '1310–1400', 'sure: likely')])).toBe('unrecorded'));
});

describe('standing rules 6 and 7', () => {
  test('before a known start, after a known end', () => {
    expect(standing([row('imported', '1607–1700', 'start: known')])).toBe('not-yet');
    expect(standing([row('grown', '1000–1100', 'end: known')])).toBe('no-longer');
  });
  test('only the earliest start and the latest end count', () => {
    expect(standing([row('imported', '1607–1700', 'start: known'), row('imported', '1500–1550')])).toBe('unrecorded');
    expect(standing([row('grown', '1000–1100', 'end: known'), row('grown', '1101–1200')])).toBe('unrecorded');
  });
  test('unrecorded gives the nearest years recorded', () => {
    const { dye } = ask([row('imported', '1000–1100'), row('imported', '1607–1700')]);
    expect(dye.standing).toBe('unrecorded');
    expect(dye.nearest.before?.gapYears).toBe(200);
    expect(dye.nearest.after?.gapYears).toBe(307);
  });
  test('a material without a note or a claim is unrecorded', () => {
    expect(standing([])).toBe('unrecorded');
    const { base } = aNotebook(aWorld);
    expect(askDye(base, { dye: 'nobody-knows', region: 'england', span: { from: 1, to: 1 }, dyedHere: false }).dye.standing).toBe(
      'unrecorded',
    );
  });
  test('a claim of another place says nothing', () => expect(standing([row('grown', '1250–1350', '', 'scotland')])).toBe('unrecorded'));
});

describe('standing by fibre', () => {
  const rows = [row('grown', '1250–1350', 'on: [wool]')];
  test('a claim on a fibre speaks for it and its kinds', () => {
    expect(standing(rows, { fibre: 'wool' })).toBe('local');
    expect(standing(rows, { fibre: 'fine-wool' })).toBe('local');
    expect(standing(rows, { fibre: 'linen' })).toBe('unrecorded');
    expect(standing(rows)).toBe('local');
  });
  test('a claim on a kind does not speak for the whole fibre', () => {
    expect(standing([row('grown', '1250–1350', 'on: [fine-wool]')], { fibre: 'wool' })).toBe('unrecorded');
  });
});

describe('standing by fibre, absences', () => {
  const linen = row('absent', '1200–1400', 'on: [linen]');
  test('an absence on one fibre settles nothing for another, nor when no fibre is asked', () => {
    expect(standing([row('grown', '1250–1350'), linen])).toBe('local');
    expect(standing([row('grown', '1250–1350'), linen], { fibre: 'wool' })).toBe('local');
    expect(standing([row('grown', '1250–1350'), linen], { fibre: 'linen' })).toBe('contested');
    expect(standing([linen])).toBe('unrecorded');
  });
});

describe('standing dyed here', () => {
  test('cloth claims are left out, and what came only as cloth stands at absent', () => {
    expect(standing([row('cloth-only', '1250–1350')], { dyedHere: true })).toBe('absent');
    expect(standing([row('cloth-only', '1250–1350'), row('imported', '1250–1350')], { dyedHere: true })).toBe('imported');
    expect(standing([row('cloth-only', '1000–1100')], { dyedHere: true })).toBe('unrecorded');
  });
});

describe('standing sub-spans', () => {
  test('lists where the standing differs, without gaps', () => {
    const { dye } = ask([row('imported', '1290–1310'), row('absent', '1320–1340', 'reason: looked-for')], { from: 1280, to: 1340 });
    expect(dye.subSpans.map(({ from, to, standing: one }) => [from, to, one])).toEqual([
      [1280, 1289, 'nearby'],
      [1290, 1310, 'imported'],
      [1311, 1319, 'nearby'],
      [1320, 1340, 'absent'],
    ]);
  });
});

describe('standing, the edges of its rules', () => {
  test('what is everyday is local first, and every other origin stands behind it once', () => {
    const everyday = (...rows: string[]) => {
      const lines = rows.map((one) => `  - {${one}}`).join('\n');
      const { base } = aNotebook({
        ...aWorld,
        'dyestuffs/weld.md': aNote(`kind: dyestuff\ntitle: Weld\neveryday: true\navailability:\n${lines}`),
      });
      return askDye(base, { dye: 'weld', region: 'england', span: { from: 1300, to: 1300 }, dyedHere: false }).dye;
    };
    expect(everyday(row('imported', '1250–1350'))).toMatchObject({ standing: 'local', origins: ['local', 'imported'] });
    expect(everyday(row('imported', '1250–1350'), row('grown', '1250–1350')).origins).toEqual(['local', 'imported']);
  });
  test('a claim on several fibres speaks of each of them', () => {
    expect(standing([row('grown', '1250–1350', 'on: [linen, wool]')], { fibre: 'wool' })).toBe('local');
  });
  test('not yet counts from the earliest claim that is hard and speaks, and one known start is enough', () => {
    const known = row('imported', '1400–1450', 'start: known');
    expect(standing([known, row('imported', '1360–1380', 'sure: likely')])).toBe('not-yet');
    expect(standing([known, row('imported', '1310–1360', '', 'scotland')])).toBe('not-yet');
    expect(standing([known, row('imported', '1400–1460')])).toBe('not-yet');
  });
});

describe('standing, what carries it and what only looks like it', () => {
  const carriers = (rows: readonly string[], asked: Parameters<typeof ask>[1] = {}) =>
    ask(rows, asked).dye.carriedBy.map(({ placed }) => placed.claim.nth);
  const nearest = (rows: readonly string[]) => {
    const { before, after } = ask(rows).dye.nearest;
    return [before?.placed.claim.nth, after?.placed.claim.nth];
  };

  test('rule 1 rests on both sides, and on those alone that meet each other', () => {
    const rows = [
      row('grown', '1250–1295'),
      row('imported', '1301–1350'),
      row('absent', '1310–1400', 'reason: looked-for'),
      row('absent', '1296–1300', 'reason: looked-for'),
    ];
    expect(standing(rows, { from: 1290, to: 1320 })).toBe('contested');
    expect(carriers(rows, { from: 1290, to: 1320 })).toEqual([1, 2]);
  });
  test('rule 1: an absence over part of the span contests, and sides without a first year do', () => {
    expect(standing([row('grown', '1250–1350'), row('absent', '1320–1400')], { from: 1290, to: 1340 })).toBe('contested');
    expect(standing([row('grown', '../1350'), row('absent', '../1400')])).toBe('contested');
  });
  test('rule 1: an absence later than the span contests nothing', () => {
    expect(standing([row('grown', '1250–1350'), row('absent', '1320–1400')])).toBe('local');
  });
  test.each([
    ['throughout', '1250–1350'],
    ['part', '1305–1350'],
    ['perhaps', 'c. 1320'],
  ])('rule 4: a soft claim is perhaps with time %s', (_time, when) => {
    expect(standing([row('imported', when, 'sure: likely')], { from: 1295, to: 1310 })).toBe('perhaps');
  });
  test('rule 5: only the end that lies between may not be known', () => {
    expect(standing([row('imported', '1310–1400', 'end: known')])).toBe('nearby');
    expect(standing([row('imported', '1200–1290', 'start: known')])).toBe('nearby');
  });
  test('rule 5: the reach is that of the asked year nearest to the claim', () => {
    // 50 years up to 1500, 25 after.
    expect(standing([row('imported', '1540–1550')], { from: 1490, to: 1510 })).toBe('unrecorded');
    expect(standing([row('imported', '1450–1455')], { from: 1490, to: 1510 })).toBe('nearby');
  });
  test('rule 5: a neighbour in part of the span counts; another place does not, however its claim is meant', () => {
    expect(standing([row('imported', '1320–1400', '', 'ireland')], { from: 1290, to: 1340 })).toBe('nearby');
    expect(standing([row('imported', '1250–1350', 'extent: somewhere', 'scotland')])).toBe('unrecorded');
  });
  test('rule 6 rests on the claims whose start or end is known', () => {
    const later = [row('imported', '1400–1450'), row('imported', '1400–1460', 'start: known')];
    expect([standing(later), carriers(later)]).toEqual(['not-yet', [1]]);
    const earlier = [row('imported', '1100–1200'), row('imported', '1150–1200', 'end: known')];
    expect([standing(earlier), carriers(earlier)]).toEqual(['no-longer', [1]]);
  });
  test('rule 6: a known start says nothing of what came after, nor a known end of what went before', () => {
    expect(standing([row('imported', '900–1000', 'start: known')])).toBe('unrecorded');
    expect(standing([row('imported', '1600–1700', 'end: known')])).toBe('unrecorded');
  });
  test('rule 6: what was had since nobody knows when is earlier than any known start', () => {
    const rows = [row('imported', '../-0600', 'end: known'), row('imported', '-0300/-0200', 'start: known')];
    expect(standing(rows, { from: -500 })).toBe('unrecorded');
  });
  test('rule 7: the nearest years are those of hard claims that speak and say it was there', () => {
    const rows = [
      row('imported', '900–1000'),
      row('imported', '1000–1100', 'sure: likely'),
      row('absent', '1000–1150'),
      row('imported', '1000–1200', '', 'scotland'),
      row('imported', '1700–1800'),
      row('imported', '1500–1600'),
      row('imported', '1500–1550'),
    ];
    expect(nearest(rows)).toEqual([0, 5]);
  });
});
