import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import { overDye } from '../../../web/domain/colour/kubelka-munk.ts';
import type { Lab } from '../../../web/domain/colour/lab.ts';
import { Nearness } from '../../../web/domain/colour/nearness.ts';
import { OverDyes } from '../../../web/domain/colour/over-dyes.ts';
import type { Spectrum } from '../../../web/domain/colour/spectrum.ts';
import { spectrumToLab10 } from '../../../web/domain/colour/xyz-lab.ts';
import { fc, runs } from '../../helpers/property.ts';

const part = fc.integer({ min: 1, max: 1000 });
/** Ragged, or the same all over: there the bounds are as close as they get. */
const parts = fc.oneof(
  fc.array(part, { minLength: 36, maxLength: 36 }),
  part.map((one) => Array.from({ length: 36 }, () => one)),
);
const curve: fc.Arbitrary<Spectrum> = fc
  .tuple(fc.constantFrom(20, 300, 990), parts)
  .map(([most, values]) => ({ startNm: 380, stepNm: 10, values: values.map((value) => (value * most) / 1e6) }));
const curves = fc.tuple(curve, fc.array(curve, { minLength: 2, maxLength: 6 }));
/** What the plain functions foretell for each two. */
const plain = (ground: Spectrum, dyed: readonly Spectrum[]) =>
  dyed.flatMap((one, first) =>
    dyed.map((other, second) => ({
      first,
      second,
      lab: [
        ...spectrumToLab10(
          overDye(ground, [
            { dyed: one, ground },
            { dyed: other, ground },
          ]),
        ),
      ] as unknown as Lab,
    })),
  );

describe('OverDyes', () => {
  test('foretells to the last digit what laying one dye over another foretells', () => {
    fc.assert(
      fc.property(curves, ([ground, dyed]) => {
        const overDyes = new OverDyes(ground, dyed);
        for (const { first, second, lab } of plain(ground, dyed)) expect(overDyes.lab10(first, second)).toEqual(lab);
      }),
      runs(100),
    );
  });

  test('passes over no pair that is near one of the colours asked for', () => {
    let [kept, passedOver] = [0, 0];
    fc.assert(
      fc.property(curves, fc.nat(), fc.constantFrom(0, 0.5, 3, 6, 20), fc.boolean(), ([ground, dyed], which, limit, several) => {
        const pairs = plain(ground, dyed);
        const target = pairs[which % pairs.length]?.lab ?? [50, 0, 0];
        const targets: readonly Lab[] = several ? [target, [95, 0, 0]] : [target];
        const [overDyes, near] = [new OverDyes(ground, dyed), new Nearness(targets, limit)];
        for (const { first, second, lab } of pairs) {
          const found = overDyes.lab10(first, second, near);
          const apart = Math.min(...targets.map((one) => ciede2000([...one], [...lab])));
          if (apart <= limit) expect(found).toEqual(lab);
          if (found) kept += 1;
          else passedOver += 1;
        }
      }),
      runs(200),
    );
    expect(kept).toBeGreaterThan(200);
    expect(passedOver).toBeGreaterThan(200);
  });
});
