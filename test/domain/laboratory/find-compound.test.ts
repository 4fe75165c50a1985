import { describe, expect, test } from 'vitest';
import { findCompound, isCasNumber, nearestCompounds } from '../../../web/domain/laboratory/find-compound.ts';
import { COMPOUNDS } from '../../../web/domain/laboratory/tables/compounds.ts';
import { DYE_PROFILES } from '../../../web/domain/laboratory/tables/dye-profiles.ts';
import { MARKER_RATIOS } from '../../../web/domain/laboratory/tables/marker-ratios.ts';

describe('findCompound', () => {
  test.each([
    ['Alizarin', 'alizarin'],
    ['72-48-0', 'alizarin'],
    ['hematein', 'haematein'],
    ['6,6′-Dibromoindigo', "6,6'-dibromoindigotin"],
    ['type C', 'urolithin C'],
    ['luteolin methyl ether', 'chrysoeriol'],
    ['Fe', 'iron'],
    ['shikonin', 'alkannin or shikonin'],
  ])('%s is %s', (typed, name) => expect(findCompound(typed)?.name).toBe(name));

  test('tells the nearest of an unknown one', () => {
    expect(findCompound('alizarine')).toBeUndefined();
    expect(nearestCompounds('alizarine')).toContain('alizarin');
  });
});

describe('the tables', () => {
  test('every CAS number has a fitting check digit and stands once', () => {
    const numbers = COMPOUNDS.flatMap(({ cas }) => cas ?? []);
    expect(numbers.filter((one) => !isCasNumber(one))).toEqual([]);
    expect(new Set(numbers).size).toBe(numbers.length);
    expect(isCasNumber('72-48-1')).toBe(false);
  });

  test('no name means two compounds', () => {
    const names = COMPOUNDS.flatMap(({ name, names: others }) => [name, ...others]).map((one) => one.toLowerCase());
    expect(names.filter((one, i) => names.indexOf(one) !== i)).toEqual([]);
  });

  test('profiles and ratios speak only of known compounds, each once, and say where they come from', () => {
    const known = new Set(COMPOUNDS.map(({ name }) => name));
    for (const { dye, holds } of DYE_PROFILES) {
      const names = holds.map(({ compound }) => compound);
      expect(
        names.filter((one) => !known.has(one)),
        dye,
      ).toEqual([]);
      expect(new Set(names).size, dye).toBe(names.length);
      expect(holds.every(({ basis }) => basis.source.length > 0)).toBe(true);
    }
    for (const { above, below, ranges } of MARKER_RATIOS) {
      expect([...above, ...below].filter((one) => !known.has(one))).toEqual([]);
      for (const { low, high, basis } of ranges) expect(low < high && basis.source.length > 0).toBe(true);
    }
  });
});
