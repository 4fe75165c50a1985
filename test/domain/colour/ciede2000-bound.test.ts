import { differenceCiede2000 } from 'culori/fn';
import { describe, expect, test } from 'vitest';
import {
  BOX_NUMBERS,
  boundQuery,
  farthestLightness,
  leastDifference,
  leastDifferenceOf,
  MOST_STRETCH,
  writeBox,
} from '../../../web/domain/colour/ciede2000-bound.ts';
import { ciede2000, ciede2000Of, saturation } from '../../../web/domain/colour/ciede2000.ts';
import { steadyChance } from '../../../web/notebook/steady-chance.ts';
import { numbers, referenceTable } from '../../helpers/reference-table.ts';

const next = steadyChance(20261128);
const between = (least: number, most: number): number => least + next() * (most - least);
/** All over, or about hue 275, where R_T is greatest and a plain distance in Lab fails. */
const anywhere = (): [number, number, number] => [between(0, 100), between(-110, 110), between(-110, 110)];
const blue = (): [number, number, number] => {
  const [chroma, hue] = [between(0, 110), (between(230, 320) * Math.PI) / 180];
  return [between(0, 100), chroma * Math.cos(hue), chroma * Math.sin(hue)];
};
const boundOf = (labs: Float64Array, query: readonly [number, number, number]): number => {
  const box = new Float64Array(BOX_NUMBERS);
  writeBox(labs, 0, labs.length / 3, box, 0);
  return leastDifference(box, 0, boundQuery(...query));
};

describe('ciede2000Of', () => {
  test('gives the published differences from a typed array', () => {
    const pairs = referenceTable('ciede2000-sharma.csv').map((row) => [
      ...numbers(row, 'L1', 'a1', 'b1', 'L2', 'a2', 'b2'),
      Number(row['de00']),
    ]);
    const flat = Float64Array.from(pairs.flat());
    expect(pairs).toHaveLength(34);
    for (let at = 0; at < flat.length; at += 7) {
      const [l1 = 0, a1 = 0, b1 = 0, l2 = 0, a2 = 0, b2 = 0, expected = NaN] = flat.subarray(at, at + 7);
      expect(ciede2000Of(l1, a1, b1, l2, a2, b2).toFixed(4)).toBe(expected.toFixed(4));
    }
  });

  test('agrees with culori', () => {
    const theirs = differenceCiede2000();
    for (let nth = 0; nth < 20_000; nth += 1) {
      const [one, other] = nth % 2 === 0 ? [anywhere(), anywhere()] : [blue(), blue()];
      const asObject = ([l, a, b]: readonly number[]) => ({ mode: 'lab65', l: l ?? 0, a: a ?? 0, b: b ?? 0 }) as const;
      expect(Math.abs(ciede2000Of(...one, ...other) - theirs(asObject(one), asObject(other)))).toBeLessThan(1e-6);
    }
  });
});

describe('farthestLightness', () => {
  test('no colour farther up or down is within the limit, a grey just short of it is', () => {
    for (let nth = 0; nth < 5000; nth += 1) {
      const [[l], limit] = [anywhere(), between(0.1, 20)];
      for (const way of [1, -1] as const) {
        const end = farthestLightness(l, limit, way);
        expect(ciede2000([l, 0, 0], [end - way * 1e-6, 0, 0])).toBeLessThanOrEqual(limit);
        expect(ciede2000([l, 0, 0], [end + way * between(1e-6, 40), 0, 0])).toBeGreaterThan(limit);
      }
    }
  });
});

describe('leastDifference', () => {
  test('is at most the difference, for 400,000 pairs of colours', () => {
    let [worst, tightness] = [Infinity, 0];
    const count = 400_000;
    for (let nth = 0; nth < count; nth += 1) {
      const one = nth % 2 === 0 ? anywhere() : blue();
      const near = nth % 3 === 0;
      const other = near ? ([0, 1, 2].map((axis) => (one[axis] ?? 0) + between(-6, 6)) as typeof one) : nth % 4 < 2 ? anywhere() : blue();
      const [least, really] = [boundOf(Float64Array.from(other), one), ciede2000(one, other)];
      worst = Math.min(worst, really - least, really - leastDifferenceOf(boundQuery(...one), ...other));
      tightness += least / really;
    }
    expect(worst).toBeGreaterThanOrEqual(0);
    // A bound of nothing would never be wrong either.
    expect(tightness / count).toBeGreaterThan(0.6);
  });

  test('is at most the difference to any colour of a box, corners included', () => {
    let [worst, useful] = [Infinity, 0];
    for (let nth = 0; nth < 4000; nth += 1) {
      const query = nth % 2 === 0 ? anywhere() : blue();
      const [middle, size] = [nth % 4 < 2 ? anywhere() : blue(), between(0, 1) ** 2 * 60];
      const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((bits) => middle.map((value, axis) => value + ((bits >> axis) & 1 ? size : -size)));
      const inside = Array.from({ length: 24 }, () => middle.map((value) => value + between(-size, size)));
      const labs = Float64Array.from([...corners, ...inside].flat());
      const least = boundOf(labs, query);
      if (least > 0) useful += 1;
      for (let at = 0; at < labs.length; at += 3)
        worst = Math.min(worst, ciede2000Of(...query, labs[at] ?? 0, labs[at + 1] ?? 0, labs[at + 2] ?? 0) - least);
    }
    expect(worst).toBeGreaterThanOrEqual(0);
    expect(useful).toBeGreaterThan(1000);
  });

  test('holds where hues are opposite, one colour is grey, or a box holds the grey', () => {
    const queries: readonly (readonly [number, number, number])[] = [
      [50, 40, 0],
      [50, 0, 0],
      [40, 10, -60],
      [50, -2e-7, -80],
    ];
    const boxes = [
      [50, 0, 0],
      [50, 30, -30, 50, -30, 30],
      [20, 1e-9, 0, 80, 60, 1e-9],
      [50, -40, 1e-6, 50, -40, -1e-6],
    ];
    for (const box of boxes) {
      for (const query of queries) {
        const labs = Float64Array.from(box);
        const least = boundOf(labs, query);
        for (let at = 0; at < labs.length; at += 3)
          expect(ciede2000Of(...query, labs[at] ?? 0, labs[at + 1] ?? 0, labs[at + 2] ?? 0)).toBeGreaterThanOrEqual(least);
      }
    }
  });

  test('no chroma is stretched by more than is allowed for', () => {
    const stretches = Array.from({ length: 20_000 }, (_, nth) => 0.5 * (nth / 100) * (1 - saturation(nth / 100)));
    expect(Math.max(...stretches)).toBeLessThan(MOST_STRETCH);
    expect(Math.max(...stretches)).toBeGreaterThan(MOST_STRETCH - 0.1);
  });
});
