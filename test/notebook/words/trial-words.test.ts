import { describe, expect, test } from 'vitest';
import { minutesText } from '../../../web/notebook/words/dye-day-words.ts';
import { comparisonText, differenceLabel, differenceValues, repeatabilityText } from '../../../web/notebook/words/trial-words.ts';

const hardness = { aspect: 'hardness', values: ['18 °dH', '2 °dH'], effect: 6, known: true } as const;
const alum = { aspect: 'mordant', material: 'alum', values: ['alum', ''], effect: 9, known: true } as const;

describe('trial words', () => {
  test('name what differed and what each pot says of it', () => {
    expect(differenceLabel(alum, () => 'alum')).toMatch(/, alum$/);
    expect(differenceLabel({ ...hardness, aspect: 'pH' })).toMatch(/^pH /);
    expect(differenceValues(alum)).toEqual(['alum', 'none']);
    expect(differenceValues({ ...hardness, values: ['18 °dH', undefined], known: false })).toEqual(['18 °dH', 'not written down']);
  });
  test('say more where one thing alone was changed', () => {
    const told = { trials: [], missing: [], unsaid: [] };
    const one = comparisonText({ ...told, differences: [hardness], single: hardness });
    expect(one).not.toBe(comparisonText({ ...told, differences: [alum, hardness] }));
    expect(one).toMatch(/may well/);
    expect(comparisonText({ ...told, differences: [] })).toMatch(/Nothing/);
  });
  test('say how many pots are wanting', () => {
    const none = { byFibre: [], byWater: [], byPerson: [], leftOut: [], repeats: [] };
    expect(repeatabilityText({ ...none, repeatable: 'untested' })).toMatch(/three pots/);
    expect(repeatabilityText({ ...none, repeatable: 'no', mcdm: 4.25 })).toMatch(/4\.[23]/);
  });
});

describe('minutesText', () => {
  test.each([
    [45, 45, '45 min'],
    [60, 120, '1–2 h'],
    [90, 90, '1.5 h'],
    [65, 75, '65–75 min'],
    [480, 960, '8–16 h'],
    [30_240, 50_400, '21–35 days'],
    [0, 0, '0 min'],
  ])('%d to %d', (from, to, text) => expect(minutesText({ from, to })).toBe(text));
});
