import { describe, expect, test } from 'vitest';
import { explainFound } from '../../../web/domain/colour/explain-found.ts';
import { atDepth, overDye } from '../../../web/domain/colour/kubelka-munk.ts';
import { inventedSample } from '../../helpers/spectral-samples.ts';

const ground = inventedSample('W0');
const dyeing = (id: string) => ({ id, dyed: inventedSample(id) });
const dyeings = ['R1', 'B2', 'Y2'].map(dyeing);

describe('explainFound', () => {
  test('finds one dye at another depth, and does not add a second for nothing', () => {
    const [first] = explainFound(atDepth(inventedSample('R1'), ground, 0.4), ground, dyeings, 4);
    expect(first?.ids).toEqual(['R1']);
    expect(first?.depths[0]).toBeCloseTo(0.4, 2);
    expect(first?.deltaE00).toBeLessThan(0.3);
  });

  test('finds both dyes of a faded green with their depths', () => {
    const found = overDye(ground, [
      { dyed: inventedSample('Y2'), ground, depth: 0.3 },
      { dyed: inventedSample('B2'), ground, depth: 0.8 },
    ]);
    const [first] = explainFound(found, ground, dyeings, 4);
    expect([...(first?.ids ?? [])].sort()).toEqual(['B2', 'Y2']);
    expect(first?.depths[first.ids.indexOf('Y2')]).toBeCloseTo(0.3, 1);
  });

  test('gives the nearest even where it explains badly, and nothing of nothing', () => {
    const found = explainFound(inventedSample('B2'), ground, [dyeing('R1')], 4);
    expect(found).toHaveLength(1);
    expect(found[0]?.deltaE00).toBeGreaterThan(10);
    expect(explainFound(inventedSample('B2'), ground, [], 4)).toEqual([]);
  });

  test('no dyeing stands in more than two, so that unlike ones are seen', () => {
    const many = [
      ...dyeings,
      { id: 'R1b', dyed: atDepth(inventedSample('R1'), ground, 0.9) },
      { id: 'R1c', dyed: atDepth(inventedSample('R1'), ground, 1.1) },
    ];
    const found = overDye(ground, [
      { dyed: inventedSample('R1'), ground, depth: 0.5 },
      { dyed: inventedSample('B2'), ground, depth: 0.5 },
    ]);
    const all = explainFound(found, ground, many, 10);
    for (const { id } of many) expect(all.filter(({ ids }) => ids.includes(id)).length).toBeLessThanOrEqual(2);
    expect(all.length).toBeGreaterThan(1);
  });
});
