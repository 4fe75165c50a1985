import { describe, expect, test } from 'vitest';
import { molarMass, readFormula } from '../../../web/domain/pot/molar-mass.ts';
import { metalShare, MORDANT_SALTS, mordantEquivalents, saltOf } from '../../../web/domain/pot/mordant-equivalence.ts';
import type { MordantMetal } from '../../../web/domain/pot/mordant-equivalence.ts';
import { referenceTable } from '../../helpers/reference-table.ts';

const salts = referenceTable('mordant-salts.csv');
const plain = (formula: string) => formula.replace(/[₀-₉]/g, (sign) => String('₀₁₂₃₄₅₆₇₈₉'.indexOf(sign)));

describe('molarMass', () => {
  // Source: test/reference/mordant-salts.csv, to its last digit and one beyond for rounding of the weights.
  test.each(salts.map(({ formula = '', mass }) => [formula, Number(mass)] as const))('%s is %d g/mol', (formula, mass) => {
    expect(Math.abs((molarMass(formula) ?? NaN) - mass)).toBeLessThan(0.011);
    expect(molarMass(plain(formula))).toBe(molarMass(formula));
  });
  test('reads what stands in brackets and the water behind the point', () => {
    expect(Object.fromEntries(readFormula('NH4Al(SO4)2·12H2O') ?? [])).toEqual({ N: 1, H: 28, Al: 1, S: 2, O: 20 });
  });
  test.each(['', 'Xx2', 'Al(SO4', 'Al)2', 'KAl2SO4(', 'alum', '12', 'Al2(3SO4)'])('leaves “%s” unread', (formula) =>
    expect(molarMass(formula)).toBeUndefined(),
  );
});

describe('metalShare and mordantEquivalents', () => {
  const withMetal = salts.filter(({ percent }) => percent !== '');
  test.each(withMetal.map((row) => [row['formula'] ?? '', row['metal'] ?? '', Number(row['percent'])] as const))(
    '%s holds its share of %s',
    (formula, metal, percent) => {
      expect(Math.abs(100 * (metalShare(formula, metal as MordantMetal) ?? NaN) - percent)).toBeLessThan(0.006);
    },
  );
  test.each(
    withMetal
      .filter(({ equal }) => equal !== '' && equal !== '100')
      .map((row) => [row['formula'] ?? '', row['reference'] ?? '', Number(row['equal'])] as const),
  )('%s for 100 g of %s', (formula, reference, equal) => {
    const found = mordantEquivalents(reference, 100, 'staff').find(({ salt }) => salt.formula === plain(formula));
    expect(Math.abs((found?.conversion.value ?? NaN) - equal)).toBeLessThan(0.06);
    expect(found?.conversion.caution).toBeDefined();
  });
  // 60 g of potassium alum hold as much aluminium as 42.1 g of the sulphate with 18 water: arithmetic on the table above.
  test('60 g of potassium alum', () => {
    const found = mordantEquivalents('potassium-alum', 60).find(({ salt }) => salt.id === 'aluminium-sulphate-18');
    expect(found?.conversion.value).toBeCloseTo(42.1, 1);
  });
  test('goes there and back', () => {
    for (const salt of MORDANT_SALTS)
      for (const { salt: other, conversion } of mordantEquivalents(salt.id, 37, 'staff')) {
        const back = mordantEquivalents(other.id, conversion.value, 'staff').find((one) => one.salt.id === salt.id);
        expect(back?.conversion.value).toBeCloseTo(37, 9);
      }
  });
  test('keeps tin and copper from the public, and never crosses metals', () => {
    expect(mordantEquivalents('tin-chloride', 10)).toEqual([]);
    expect(mordantEquivalents('tin-chloride', 10, 'staff').map(({ salt }) => salt.metal)).toEqual(['Sn']);
    expect(mordantEquivalents('no-such-salt', 10)).toEqual([]);
  });
  test('asks which alum where the label does not say', () => {
    expect(saltOf('alum')).toBeUndefined();
    expect(saltOf('potassium alum, lot KA-88')?.id).toBe('potassium-alum');
    expect(saltOf('CAS 7782-63-0')?.id).toBe('copperas');
  });
});
