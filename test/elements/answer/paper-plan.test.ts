import { describe, expect, test } from 'vitest';
import { keysShown, paperHeight, paperPlan } from '../../../web/elements/answer/paper-plan.ts';
import type { AnswerView } from '../../../web/notebook/views/answer-view.ts';
import type { ClothView } from '../../../web/notebook/views/cloth-view.ts';
import type { ClaimLine } from '../../../web/notebook/words/claim-line.ts';
import { fc } from '../../helpers/property.ts';

const words = (letters: number): string => 'wort '.repeat(Math.ceil(letters / 5)).slice(0, letters);
const aClaim = (n: number): ClaimLine => ({
  says: `Madder ${n} was imported`,
  region: 'Scandinavia and Finland',
  placeRelation: 'the wider region',
  years: '1300–1450',
  timeRelation: 'covers the asked years',
  evidence: 'documentary: trade record',
  source: `book-${n}, p. 3`,
  keys: [`book-${n}`],
  checked: 'read in excerpt',
  sure: '',
  note: 'madder',
  remark: '',
});
const aCloth = (n: number): ClothView => ({
  id: `cloth-${n}`,
  look: `cloth-${n}`,
  title: `Cloth ${n}`,
  hex: '#803030',
  inScreenGamut: true,
  weave: 'wool',
  fibre: 'Wool',
  verdict: 'feasible',
  verdictWord: 'Feasible',
  classes: 1,
  predicted: false,
  lab: '40, 40, 20',
  lch: '',
  deltaE: '1.0',
  closeness: 'match',
  onAnotherFibre: false,
  standIns: [],
  samples: '1 sample',
});
const many = <T>(count: number, make: (n: number) => T): readonly T[] => Array.from({ length: count }, (_, n) => make(n));

interface Sizes {
  readonly claims: number;
  readonly against: number;
  readonly rules: number;
  readonly reasons: number;
  readonly cloths: number;
  readonly letters: number;
}
const anAnswer = ({ claims, against, rules, reasons, cloths, letters }: Sizes): AnswerView => ({
  sentence: 'Would this colour be worn on wool in Hanse towns about 1370 by a merchant?',
  reading: '1370',
  verdict: 'feasible',
  word: 'Feasible',
  means: words(letters),
  why: words(letters),
  because: many(reasons + 1, () => words(letters)),
  speaksFor: many(claims, aClaim),
  speaksAgainst: many(against, (n) => aClaim(n + 100)),
  missing: [words(letters)],
  nearest: [],
  others: 12,
  forWhom: many(rules, () => words(letters)),
  rules: many(rules, () => words(letters)),
  changes: [words(letters)],
  cloths: many(cloths, aCloth),
  predicted: [],
  meanings: [],
  settings: [],
  sources: many(claims, (n) => ({ key: `book-${n}`, text: words(letters) })),
});
const A_LITTLE: Sizes = { claims: 2, against: 1, rules: 1, reasons: 2, cloths: 2, letters: 60 };

/** The room an A4 sheet leaves between its margins, in millimetres. */
const SHEET = 259;

describe('paperPlan', () => {
  test('prints all of a short answer', () => {
    expect(paperPlan(anAnswer(A_LITTLE))).toMatchObject({
      because: 2,
      speaksFor: 2,
      speaksAgainst: 1,
      rules: 1,
      forWhom: 1,
      changes: 1,
      cloths: 2,
    });
  });

  test('of a long one leaves out, but never a side or what would change it', () => {
    const answer = anAnswer({ claims: 60, against: 30, rules: 20, reasons: 12, cloths: 20, letters: 160 });
    const plan = paperPlan(answer);
    expect(plan.speaksFor).toBeLessThan(60);
    expect(plan.speaksFor).toBeGreaterThanOrEqual(1);
    expect(plan.speaksAgainst).toBeGreaterThanOrEqual(1);
    expect(plan.changes).toBe(1);
    expect(paperHeight(answer, plan)).toBeLessThan(SHEET);
  });

  test('never plans more than a sheet, however the answer is made', () => {
    const sizes = fc.record({
      claims: fc.nat(80),
      against: fc.nat(40),
      rules: fc.nat(30),
      reasons: fc.nat(15),
      cloths: fc.nat(40),
      letters: fc.integer({ min: 10, max: 220 }),
    });
    fc.assert(fc.property(sizes, (given) => paperHeight(anAnswer(given), paperPlan(anAnswer(given))) < SHEET));
  });

  test('more to say never makes less of what was said before it shown than the least', () => {
    const short = paperPlan(anAnswer(A_LITTLE));
    const long = paperPlan(anAnswer({ ...A_LITTLE, claims: 40 }));
    expect(long.speaksFor).toBeGreaterThanOrEqual(short.speaksFor);
  });
});

describe('keysShown', () => {
  test('are those of the claims that are printed', () => {
    const answer = anAnswer(A_LITTLE);
    expect([...keysShown(answer, { ...paperPlan(answer), speaksFor: 1, speaksAgainst: 1 })]).toEqual(['book-0', 'book-100']);
  });
});
