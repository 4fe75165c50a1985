import Color from 'colorjs.io';
import { describe, expect, expectTypeOf, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import { closeness, deltaE00, deltaE00Between } from '../../../web/domain/colour/delta-e.ts';
import type { Lab10, Lab2 } from '../../../web/domain/colour/lab.ts';
import { asLab10, asLab2 } from '../../../web/domain/colour/lab.ts';
import { spectrumToLab, spectrumToLab10, spectrumToLab2 } from '../../../web/domain/colour/xyz-lab.ts';
import { numbers, referenceTable } from '../../helpers/reference-table.ts';
import { fc, runs } from '../../helpers/property.ts';

type Triple = [number, number, number];
const pairs = referenceTable('ciede2000-sharma.csv').map((row) => ({
  pair: row['pair'],
  one: numbers(row, 'L1', 'a1', 'b1') as Triple,
  other: numbers(row, 'L2', 'a2', 'b2') as Triple,
  expected: row['de00'] ?? '',
}));

describe('ciede2000', () => {
  test('has all 34 published pairs', () => expect(pairs).toHaveLength(34));

  test.each(pairs)('Sharma pair $pair is $expected, both ways', ({ one, other, expected }) => {
    expect(ciede2000(one, other).toFixed(4)).toBe(expected);
    expect(ciede2000(other, one).toFixed(4)).toBe(expected);
  });

  // Hundredths: short numbers shrink fast.
  const hundredths = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100);
  const lab = fc.tuple(hundredths(0, 100), hundredths(-90, 90), hundredths(-90, 90));

  test('agrees with colorjs.io on random colours', () => {
    fc.assert(
      fc.property(lab, lab, (one, other) => {
        // Opposite hues are where the formula jumps, and the two sides of the jump are both right: pairs 9 to 16 settle ours.
        fc.pre(Math.abs(one[1] * other[2] - one[2] * other[1]) > 1e-6);
        const theirs = new Color('lab', one).deltaE2000(new Color('lab', other));
        expect(Math.abs(ciede2000(one, other) - theirs)).toBeLessThan(1e-6);
      }),
      runs(300),
    );
  });

  test('is symmetric, never negative, and 0 for equal colours', () => {
    fc.assert(
      fc.property(lab, lab, (one, other) => {
        expect(ciede2000(one, other)).toBeCloseTo(ciede2000(other, one), 9);
        expect(ciede2000(one, other)).toBeGreaterThanOrEqual(0);
        expect(ciede2000(one, one)).toBe(0);
      }),
    );
  });
});

describe('deltaE00', () => {
  // One invented blue on wool, 380–730 nm.
  const blue = {
    startNm: 380,
    stepNm: 10,
    values:
      '0.1998 0.2177 0.2406 0.2716 0.3109 0.3562 0.4034 0.4469 0.4811 0.5022 0.5089 0.5019 0.4828 0.4538 0.4171 0.3748 0.3291 0.2824 0.2380 0.1986 0.1661 0.1408 0.1222 0.1092 0.1006 0.0956 0.0935 0.0938 0.0965 0.1017 0.1099 0.1219 0.1388 0.1618 0.1925 0.2323'
        .split(' ')
        .map(Number),
  };

  test('a 10° value and a 2° value of one spectrum never meet: types refuse, and so does the checked form', () => {
    const lab10 = spectrumToLab10(blue);
    const lab2 = spectrumToLab2(blue);
    // @ts-expect-error: the observers differ
    const wrong = (): number => deltaE00(lab10, lab2);
    // @ts-expect-error: the observers differ
    const wrongToo = (): number => deltaE00(lab2, lab10);
    // @ts-expect-error: marked values do not enter the bare formula
    const aroundIt = (): number => ciede2000(lab10, lab2);
    // A mix-up would not be small:
    expect(Math.min(wrong(), wrongToo(), aroundIt())).toBeGreaterThan(2.5);
    expect(deltaE00Between(spectrumToLab(blue, 'D65', 10), spectrumToLab(blue, 'D65', 2))).toEqual({
      ok: false,
      error: 'conditions-differ',
    });
    expect(deltaE00Between(spectrumToLab(blue, 'D65', 10), spectrumToLab(blue, 'A', 10))).toEqual({
      ok: false,
      error: 'conditions-differ',
    });
    expect(deltaE00Between(spectrumToLab(blue, 'A', 10), spectrumToLab(blue, 'A', 10))).toEqual({ ok: true, value: 0 });
    expect(deltaE00(lab10, spectrumToLab10(blue))).toBe(0);
    expect(deltaE00(lab2, spectrumToLab2(blue))).toBe(0);
    expectTypeOf<Lab10>().not.toExtend<Lab2>();
    expectTypeOf<Lab2>().not.toExtend<Lab10>();
  });

  test('is the published difference', () => {
    const { one, other } = pairs[16] ?? { one: [0, 0, 0], other: [0, 0, 0] };
    expect(deltaE00(asLab10(one), asLab10(other)).toFixed(4)).toBe('27.1492');
    expect(deltaE00(asLab2(one), asLab2(other)).toFixed(4)).toBe('27.1492');
  });
});

describe('closeness', () => {
  test.each([
    [0, 'match'],
    [3, 'match'],
    [3.01, 'near'],
    [6, 'near'],
    [6.01, 'same-family'],
    [10, 'same-family'],
    [10.01, 'apart'],
  ])('%d is %s', (difference, word) => expect(closeness(difference)).toBe(word));
});
