import { describe, expect, test } from 'vitest';
import { findByCode, nextCodes } from '../../../web/domain/pot/sample-code.ts';
import { printSkeinCode, readSkeinCode } from '../../../web/domain/pot/skein-code.ts';
import { aNote, aNotebook } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const code = (year: number, bath: number, skein: number) => printSkeinCode({ year, bath, skein }) ?? '';
const [first, second] = [code(26, 10, 1), code(26, 10, 2)];
const { base } = aNotebook({
  'trials/a.md': aNote(`kind: trial\nsamples:\n  - {code: "${first}", fibre: wool}\n  - {code: "${second}", fibre: wool}`),
  'trials/own.md': aNote('kind: trial\ncode: WQ26-012-1\nfibre: wool'),
  'trials/twice-1.md': aNote('kind: trial\ncode: same\nfibre: wool'),
  'trials/twice-2.md': aNote('kind: trial\ncode: SAME\nfibre: wool'),
});

describe('findByCode', () => {
  test('leads to the pot and the skein, however it was typed', () => {
    const found = { is: 'one', sample: { trial: 'a', nth: 1, code: second } };
    expect(findByCode(base, second)).toEqual(found);
    expect(findByCode(base, ` ${second.toLowerCase().replaceAll('-', ' ')}`)).toEqual(found);
    expect(findByCode(base, second.replace('010', 'OIO'))).toEqual(found);
  });
  test('does not mend what the check does not vouch for', () => {
    const wrongSkein = second.replace('-2-', '-3-');
    expect(readSkeinCode(wrongSkein)).toBeUndefined();
    expect(findByCode(base, wrongSkein)).toEqual({ is: 'none' });
    expect(findByCode(base, 'WQ26-OI2-1')).toEqual({ is: 'none' });
  });
  test('knows a sound code that no trial has yet, and one that two have', () => {
    expect(findByCode(base, code(26, 77, 1))).toEqual({ is: 'free', code: code(26, 77, 1) });
    expect(findByCode(base, 'same')).toMatchObject({ is: 'several', samples: [{ trial: 'twice-1' }, { trial: 'twice-2' }] });
    expect(findByCode(base, '')).toEqual({ is: 'none' });
  });
  test('finds every code of the demonstration, which has its own form', async () => {
    const demo = await demoNotebook();
    expect(findByCode(demo.base, 'wq23 001 1')).toMatchObject({ is: 'one', sample: { trial: 'wq23-001' } });
  });
});

describe('nextCodes', () => {
  test('gives each skein of the next pot its own code', () => {
    const codes = nextCodes(base, 2026, 3);
    expect(codes.map(readSkeinCode)).toEqual([1, 2, 3].map((skein) => ({ year: 26, bath: 13, skein })));
    expect(codes.every((one) => findByCode(base, one).is === 'free')).toBe(true);
  });
  test('passes over codes that were printed and not used, and begins each year at one', () => {
    expect(readSkeinCode(nextCodes(base, 2026, 1, [code(26, 40, 1)])[0] ?? '')?.bath).toBe(41);
    expect(readSkeinCode(nextCodes(base, 2027, 1)[0] ?? '')?.bath).toBe(1);
  });
  test('gives none where there is none to give', () => {
    expect(nextCodes(base, 2026, 0)).toEqual([]);
    expect(nextCodes(base, 2026, 100)).toEqual([]);
    expect(nextCodes(base, 2026, 1, [code(26, 999, 1)])).toEqual([]);
  });
  test('never gives a code twice over a season', () => {
    const printed: string[] = [];
    for (let pot = 0; pot < 60; pot++) printed.push(...nextCodes(base, 2026, 1 + (pot % 12), printed));
    expect(new Set(printed).size).toBe(printed.length);
    expect(printed.length).toBe((60 / 12) * 78);
  });
});
