import { describe, expect, test } from 'vitest';
import { ciede2000Of } from '../../../web/domain/colour/ciede2000.ts';
import { NearestLabs } from '../../../web/domain/colour/nearest-labs.ts';
import { fc, runs } from '../../helpers/property.ts';

type Triple = [number, number, number];
/** The list that a plain loop over everything gives. */
const oneByOne = (labs: readonly Triple[], query: Triple) =>
  labs.map((lab, at) => ({ at, deltaE00: ciede2000Of(...query, ...lab) })).sort((a, b) => a.deltaE00 - b.deltaE00 || a.at - b.at);
const tenths = (least: number, most: number): fc.Arbitrary<number> => fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10);
const anywhere: fc.Arbitrary<Triple> = fc.tuple(tenths(0, 100), tenths(-100, 100), tenths(-100, 100));
const blues: fc.Arbitrary<Triple> = fc.tuple(tenths(20, 40), tenths(-10, 30), tenths(-80, -30));
/** Few different values, so that there are equals. */
const coarse: fc.Arbitrary<Triple> = fc.tuple(fc.constantFrom(30, 40), fc.constantFrom(0, 5), fc.constantFrom(-40, -35));
const lists = fc
  .oneof(anywhere, blues, coarse)
  .chain((one) => fc.tuple(fc.constant(one), fc.array(fc.oneof(anywhere, blues, coarse), { maxLength: 400, size: 'max' })));

describe('NearestLabs', () => {
  test('finds the same colours in the same order as looking at every one', () => {
    fc.assert(
      fc.property(lists, fc.integer({ min: 0, max: 60 }), ([query, labs], most) => {
        expect(new NearestLabs(Float64Array.from(labs.flat())).nearest(query, most)).toEqual(oneByOne(labs, query).slice(0, most));
      }),
      runs(400),
    );
  });

  test('finds every colour within a limit, the limit included', () => {
    fc.assert(
      fc.property(lists, fc.nat(), ([query, labs], which) => {
        const all = oneByOne(labs, query);
        const limit = all[which % Math.max(1, all.length)]?.deltaE00 ?? 6;
        const near = new NearestLabs(Float64Array.from(labs.flat()));
        expect(near.within(query, limit)).toEqual(all.filter(({ deltaE00 }) => deltaE00 <= limit));
      }),
      runs(400),
    );
  });

  test('finds nothing in nothing, and leaves the list it was given as it is', () => {
    expect(new NearestLabs(new Float64Array()).nearest([50, 0, 0], 5)).toEqual([]);
    const labs = Float64Array.from({ length: 300 }, (_, at) => (at * 37) % 101);
    const before = labs.slice();
    new NearestLabs(labs).nearest([50, 0, 0], 5);
    expect(labs).toEqual(before);
  });
});
