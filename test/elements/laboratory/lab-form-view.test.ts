import { describe, expect, test } from 'vitest';
import { familiesToChoose, withFinding, withoutFinding, withRatio } from '../../../web/elements/laboratory/lab-form-view.ts';
import { COMPOUNDS } from '../../../web/domain/laboratory/tables/compounds.ts';
import { EMPTY_LAB } from '../../../web/notebook/typed-lab.ts';

describe('withFinding', () => {
  test('takes a compound under any name, and says it anew where it is there', () => {
    const once = withFinding(EMPTY_LAB, ' Hematein ', 'present');
    expect(withFinding(once, '475-25-2', 'trace').findings).toEqual([{ compound: 'haematein', found: 'trace' }]);
    expect(withoutFinding(once, 'haematein').findings).toEqual([]);
  });
  test('keeps words no table knows, and nothing for nothing', () => {
    expect(withFinding(EMPTY_LAB, 'unknown yellow 3', 'present').findings[0]?.compound).toBe('unknown yellow 3');
    expect(withFinding(EMPTY_LAB, '  ', 'present')).toBe(EMPTY_LAB);
  });
});

describe('withRatio', () => {
  test('reads a decimal comma, and takes out what is no number', () => {
    const one = withRatio(EMPTY_LAB, 'alizarin:purpurin', '2,4', '0.3');
    expect(one.ratios).toEqual([{ ratio: 'alizarin:purpurin', value: 2.4, tolerance: 0.3 }]);
    expect(withRatio(one, 'alizarin:purpurin', 'much', '').ratios).toEqual([]);
    expect(withRatio(one, 'alizarin:purpurin', '3', '').ratios).toEqual([{ ratio: 'alizarin:purpurin', value: 3 }]);
  });
});

test('every compound can be chosen once', () => {
  const all = familiesToChoose().flatMap(({ compounds }) => compounds);
  expect([...all].sort()).toEqual(COMPOUNDS.map(({ name }) => name).sort());
});
