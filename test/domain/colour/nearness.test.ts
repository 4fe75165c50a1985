import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import { TEXTILE } from '../../../web/domain/colour/conditions.ts';
import type { Xyz } from '../../../web/domain/colour/lab.ts';
import { Nearness } from '../../../web/domain/colour/nearness.ts';
import { whitePoint } from '../../../web/domain/colour/spectrum-to-xyz.ts';
import { steadyChance } from '../../../web/notebook/steady-chance.ts';

type Colour = [number, number, number];
const next = steadyChance(20261129);
const between = (least: number, most: number): number => least + next() * (most - least);
const white = whitePoint(TEXTILE.illuminant, TEXTILE.observer);
const anywhere = (): Colour => [between(0, 100), between(-80, 80), between(-80, 80)];
/** Where R_T is greatest. */
const blue = (): Colour => [between(5, 60), between(-5, 45), between(-75, -10)];
/** CIE 15:2018, 8.2.1, turned round; written down a second time so that the tested code does not vouch for itself. */
const xyzOf = ([l, a, b]: Colour): Xyz => {
  const expand = (f: number): number => (f > 6 / 29 ? f ** 3 : 3 * (6 / 29) ** 2 * (f - 4 / 29));
  const fy = (l + 16) / 116;
  return [expand(fy + a / 500) * white[0], expand(fy) * white[1], expand(fy - b / 200) * white[2]];
};
const isCloth = (xyz: Xyz): boolean => xyz.every((value, axis) => value >= 0 && value <= (white[axis] ?? 0));
const lies = ({ least, most }: Nearness, xyz: Xyz): boolean =>
  xyz.every((value, axis) => value >= (least[axis] ?? NaN) && value <= (most[axis] ?? NaN));

describe('Nearness', () => {
  test('holds every colour that lies within, for colours all over and blues, and six limits', () => {
    let within = 0;
    const shutOut: string[] = [];
    for (const draw of [anywhere, blue]) {
      for (const limit of [0.5, 1, 3, 6, 12, 25]) {
        for (let nth = 0; nth < 20; nth += 1) {
          const target = draw();
          const near = new Nearness([target], limit);
          for (let other = 0; other < 300; other += 1) {
            const reach = limit * between(0, 6);
            const colour = target.map((value, axis) => value + between(-reach, reach) / (axis === 0 ? 3 : 1)) as Colour;
            const xyz = xyzOf(colour);
            if (!isCloth(xyz) || ciede2000(target, colour) > limit) continue;
            within += 1;
            if (!lies(near, xyz) || !near.mayHold(colour)) shutOut.push(`${colour.join()} within ${limit} of ${target.join()}`);
          }
        }
      }
    }
    expect(shutOut).toEqual([]);
    expect(within).toBeGreaterThan(10_000);
  });

  test('holds the colour itself where nothing else may lie within, and what is near any of several', () => {
    for (let nth = 0; nth < 50; nth += 1) {
      const [one, other] = [anywhere(), blue()].filter((colour) => isCloth(xyzOf(colour)));
      if (!one || !other) continue;
      expect(lies(new Nearness([one], 0), xyzOf(one))).toBe(true);
      const near = new Nearness([one, other], 1);
      for (const colour of [one, other]) expect(lies(near, xyzOf(colour)) && near.mayHold(colour)).toBe(true);
    }
  });

  test('shuts out what is as dark as a blue and not as blue, and what is as dark as a green and much redder', () => {
    const grey: Colour = [28, 0, 8];
    expect(lies(new Nearness([[30, 3, -28]], 6), xyzOf(grey))).toBe(false);
    const red: Colour = [42, 20, 18];
    expect(lies(new Nearness([[42, -18, 18]], 6), xyzOf(red))).toBe(false);
  });

  test('shuts out nothing where there is no limit', () => {
    for (let nth = 0; nth < 200; nth += 1) {
      const xyz = xyzOf(anywhere());
      if (isCloth(xyz)) expect(lies(new Nearness([blue()], Infinity), xyz)).toBe(true);
    }
  });
});
