import { describe, expect, test } from 'vitest';
import { askColour } from '../../../web/domain/verdict/ask.ts';
import { askDye } from '../../../web/domain/verdict/ask-dye.ts';
import { whatWouldChange } from '../../../web/domain/verdict/what-would-change.ts';
import type { Notebook } from '../../../web/notebook/notebook.ts';
import { becauseOfColour, becauseOfDye, changeSentence, deltaText, ruleSentence } from '../../../web/notebook/words/because.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const row = (region: string, when: string, status: string, more = 'known-by: text') =>
  `region: ${region}, when: ${when}, status: ${status}, ${more}, source: "book-${status}, p. 7"`;
const trial = (recipe: string, lab: string, more = '') =>
  aNote(`kind: trial\nrecipe: ${recipe}\nfibre: wool\ncolour: {lab: [${lab}], illuminant: D65, observer: 10}${more}`);
const recipe = (dye: string, more = '') =>
  aNote(`kind: recipe\ntitle: ${dye} on wool\nfibre: wool\ningredients: [{what: alum, role: mordant}, {what: ${dye}, role: dye${more}}]`);

const notebook = (...rows: readonly string[]): Notebook =>
  aNotebook({
    ...aWorld,
    'mordants/alum.md': aNote(
      `kind: mordant\ntitle: Alum\navailability:\n  - {${row('england', '1000–1800', 'imported', 'known-by: trade')}}`,
    ),
    'dyestuffs/madder.md': aDyestuff('Madder', ...rows),
    'recipes/red.md': recipe('madder'),
    'trials/t1.md': trial('red', '45, 45, 25'),
  });
const SPAN = { from: 1350, to: 1350 };
const reasonsFor = ({ base }: Notebook, dyedHere = false, span = SPAN) =>
  becauseOfDye(base, askDye(base, { dye: 'madder', region: 'england', span, dyedHere }));
const reasonsOfColour = ({ base, colours }: Notebook, lab: readonly [number, number, number], tolerance = 6) =>
  becauseOfColour(
    base,
    askColour(base, colours, {
      colour: { kind: 'bare-lab', lab },
      region: 'england',
      span: SPAN,
      fibre: 'wool',
      dyedHere: false,
      tolerance,
    }),
  );

describe('becauseOfDye', () => {
  test.each([
    ['local', [row('england', '1300–1400', 'grown')], ['1300–1400', 'book-grown, p. 7']],
    ['imported', [row('england', '1300–1400', 'imported')], ['1300–1400', 'book-imported, p. 7']],
    ['cloth-only', [row('england', '1300–1400', 'cloth-only')], ['1300–1400', 'book-cloth-only, p. 7']],
    ['perhaps', [row('england', '1300–1400', 'grown', 'known-by: inference')], ['1300–1400', 'inference']],
    ['nearby', [row('ireland', '1300–1400', 'grown')], ['Ireland', '1300–1400']],
    ['not-yet', [row('england', '1600–1700', 'imported', 'known-by: trade, start: known')], ['1600–1700']],
    ['no-longer', [row('england', '900–1000', 'imported', 'known-by: trade, end: known')], ['900–1000']],
    ['absent', [row('england', '1300–1400', 'absent', 'known-by: text, reason: stated')], ['1300–1400', 'book-absent, p. 7']],
    ['unrecorded', [row('england', '900–1000', 'grown'), row('england', '1600–1700', 'grown')], ['900–1000', '1600–1700', '1350']],
  ] as const)('%s: the first sentence names the material and the claim behind it', (_, rows, parts) => {
    const [first] = reasonsFor(notebook(...rows));
    expect(first?.toLowerCase()).toContain('madder');
    const all = reasonsFor(notebook(...rows)).join(' ');
    for (const part of parts) expect(all).toContain(part);
  });

  test('a dispute names both sides', () => {
    const [first] = reasonsFor(
      notebook(row('england', '1300–1400', 'imported'), row('england', '1300–1400', 'absent', 'known-by: text, reason: stated')),
    );
    expect(first).toContain('book-imported');
    expect(first).toContain('book-absent');
  });

  test('a material nobody makes a claim about is told apart from one recorded elsewhere', () => {
    const silent = reasonsFor(notebook()).join(' ');
    const elsewhere = reasonsFor(notebook(row('scotland', '1300–1400', 'grown'))).join(' ');
    expect(silent).not.toBe(elsewhere);
  });

  test('over a long span it tells the years in which the standing differs', () => {
    const all = reasonsFor(notebook(row('england', '1300–1400', 'imported')), false, { from: 1250, to: 1700 }).join(' ');
    expect(all).toContain('imported 1300–1400');
  });

  test('of cloth only, asked as dyed here, it says that the cloth came', () => {
    const all = reasonsFor(notebook(row('england', '1300–1400', 'cloth-only')), true).join(' ');
    expect(all).toContain('book-cloth-only');
    expect(all).toMatch(/cloth/);
  });
});

describe('becauseOfColour', () => {
  test('names the weakest material, the nearest cloth and its difference, and the conditions', () => {
    const all = reasonsOfColour(notebook(row('england', '1350–1400', 'grown', 'known-by: inference')), [46, 45, 25]);
    expect(all[0]).toContain('Madder');
    expect(all.join(' ')).toContain('madder on wool');
    expect(all.join(' ')).toMatch(/ΔE00 1\.0/);
    expect(all.at(-1)).toContain('conditions');
  });

  test('where nothing comes near, names the tolerance and the closest of all', () => {
    const all = reasonsOfColour(notebook(), [20, -30, -30], 2);
    expect(all[0]).toContain('2');
    expect(all[1]).toContain('madder on wool');
  });

  test('says it where the notebook has no colour at all on such a fibre', () => {
    const { base, colours } = aNotebook({ ...aWorld });
    const asked = {
      colour: { kind: 'bare-lab' as const, lab: [20, 0, 0] as const },
      tolerance: 6,
      region: 'england',
      span: SPAN,
      dyedHere: false,
    };
    const all = becauseOfColour(base, askColour(base, colours, { ...asked, fibre: 'linen' }));
    expect(all).toHaveLength(3);
    expect(all[1]).not.toContain('closest');
  });

  test('names what stands in for what', () => {
    const book = aNotebook({
      ...aWorld,
      'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\neveryday: true'),
      'dyestuffs/kermes.md': aDyestuff('Kermes', row('england', '1300–1400', 'imported')),
      'dyestuffs/cochineal.md': aDyestuff('Cochineal'),
      'recipes/red.md': recipe('cochineal', ', stands-for: kermes'),
      'trials/t1.md': trial('red', '45, 45, 25'),
    });
    const sentence = reasonsOfColour(book, [45, 45, 25]).find((one) => one.includes('Cochineal'));
    expect(sentence).toContain('kermes');
  });
});

describe('changeSentence', () => {
  const change = (...rows: readonly string[]) => {
    const { base } = notebook(...rows);
    const { judgement } = askDye(base, { dye: 'madder', region: 'england', span: SPAN, dyedHere: false });
    return whatWouldChange(judgement).map((one) => changeSentence(base, one));
  };

  test.each([
    ['a dispute', [row('england', '1300–1400', 'imported'), row('england', '1300–1400', 'absent', 'known-by: text, reason: stated')]],
    ['silence', [row('england', '900–1000', 'grown')]],
    ['an absence', [row('england', '1300–1400', 'absent', 'known-by: text, reason: stated')]],
    ['an invention later', [row('england', '1600–1700', 'imported', 'known-by: trade, start: known')]],
    ['no cloth', [row('england', '1300–1400', 'imported')]],
  ])('for %s names the material', (_, rows) => {
    const sentences = change(...rows);
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toContain('madder');
  });
});

describe('ruleSentence', () => {
  test('names the rule, what it concerns and for whom', () => {
    const { base } = aNotebook({
      ...aWorld,
      'dyestuffs/kermes.md': aDyestuff('Kermes'),
      'rules/act.md': aNote('kind: rule\ntitle: Act of 1363'),
    });
    const rule = { note: 'act' as never, act: 'wear' as const, concerns: ['kermes'], place: 'here' as const, time: 'throughout' as const };
    const [forbidden, others, passing] = (['forbidden', 'not-among-allowed', 'others'] as const).map((touches) =>
      ruleSentence(base, { ...rule, touches }, 'peasant'),
    );
    for (const one of [forbidden, others]) for (const part of ['Act of 1363', 'Kermes', 'peasant']) expect(one).toContain(part);
    expect(passing).not.toContain('peasant');
    expect(new Set([forbidden, others, passing]).size).toBe(3);
  });
});

describe('deltaText', () => {
  test('keeps one decimal', () => {
    expect([deltaText(0), deltaText(1.25), deltaText(12)]).toEqual(['0.0', '1.3', '12.0']);
  });
});
