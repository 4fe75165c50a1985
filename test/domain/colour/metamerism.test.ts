import { describe, expect, test } from 'vitest';
import type { Illuminant } from '../../../web/domain/colour/conditions.ts';
import { metamerismIndex } from '../../../web/domain/colour/metamerism.ts';
import { referenceTable } from '../../helpers/reference-table.ts';
import { bands, inventedSample } from '../../helpers/spectral-samples.ts';

const rows = referenceTable('colour-extra-examples.csv').filter((row) => row['kind'] === 'metamerism');

describe('metamerismIndex', () => {
  test('the reference has four pairs', () => expect(rows).toHaveLength(4));

  test.each(rows.map((row) => [row['id'] ?? '', row] as const))('%s', (_, row) => {
    const [, sample, partner, light] = /sample (\w+) of .*\| partner ([\d. ]+) ;.*test (\S+)\/10/.exec(row['input'] ?? '') ?? [];
    const found = metamerismIndex(inventedSample(sample ?? ''), bands(partner ?? ''), { illuminant: light as Illuminant, observer: 10 });
    const [, ab, e00] = /dE\*ab=([\d.]+) dE00=([\d.]+)/.exec(row['expected'] ?? '') ?? [];
    expect(Math.abs(found.deltaEab - Number(ab))).toBeLessThan(0.08);
    expect(Math.abs(found.deltaE00 - Number(e00))).toBeLessThan(0.08);
  });

  test('a curve is no metamer of itself', () => {
    const found = metamerismIndex(inventedSample('R1'), inventedSample('R1'), { illuminant: 'A', observer: 10 });
    expect(found.deltaE00).toBeCloseTo(0, 9);
  });
});
