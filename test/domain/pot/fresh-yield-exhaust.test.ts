import { describe, expect, test } from 'vitest';
import { nextBathDepth } from '../../../web/domain/pot/exhaust.ts';
import { dryOf, FRESH_DRY_RATIOS, freshOf, ratiosFor } from '../../../web/domain/pot/fresh-dry.ts';
import { fibreDyedBy, greasyFleece } from '../../../web/domain/pot/yield.ts';
import { fc } from '../../helpers/property.ts';

describe('freshOf and dryOf', () => {
  // 600 g of wool at 50 % are 300 g of dried madder, 2.1 kg fresh at 7:1 (one grower's ratio: 700 g gave 100 g).
  test('worked example', () => expect(freshOf(300, { from: 7, to: 7 })).toEqual({ from: 2100, to: 2100 }));
  test('a range stays a range and comes back', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), fc.constantFrom(...FRESH_DRY_RATIOS), (dry, ratio) => {
        const fresh = freshOf(dry, ratio);
        expect(fresh && dryOf(fresh.from, ratio)?.to).toBeCloseTo(dry, 4);
        expect(fresh && dryOf(fresh.to, ratio)?.from).toBeCloseTo(dry, 4);
      }),
    );
  });
  test('keeps mass and dye power apart, a plant’s own figures first', () => {
    expect(ratiosFor('madder', 'root').map(({ dyestuff }) => dyestuff)).toEqual(['madder', 'madder']);
    expect(ratiosFor('dyers-chamomile', 'flower').map(({ claims }) => claims)).toEqual(['mass', 'dye-power']);
    expect(ratiosFor('no-such-plant')).toEqual([]);
  });
  test('refuses a ratio below one', () => {
    expect(freshOf(100, { from: 0.5, to: 2 })).toBeUndefined();
    expect(dryOf(100, { from: 3, to: 2 })).toBeUndefined();
  });
});

describe('yield', () => {
  // 1.2 kg of dried weld at 80 % colours 1.5 kg: arithmetic on the definition of % WOF.
  test('fibre from dyestuff', () => expect(fibreDyedBy(1200, { from: 80, to: 80 })).toEqual({ from: 1500, to: 1500 }));
  test('the stronger depth colours less', () => expect(fibreDyedBy(1000, { from: 50, to: 100 })).toEqual({ from: 1000, to: 2000 }));
  // 500 g scoured at 35 % loss need 769 g greasy: arithmetic.
  test('greasy fleece', () => expect(greasyFleece(500, { from: 0.35, to: 0.35 })?.from).toBeCloseTo(769.2, 1));
  test('refuses what cannot be', () => {
    expect(fibreDyedBy(100, { from: 0, to: 10 })).toBeUndefined();
    expect(greasyFleece(100, { from: 0.5, to: 1 })).toBeUndefined();
  });
});

describe('nextBathDepth', () => {
  // 200 g at 100 %, 0.65 taken up, then 100 g: nominally 70 %. Arithmetic on the mass balance.
  test('worked example', () =>
    expect(nextBathDepth(100, 200, 100, { from: 0.65, to: 0.65 })).toMatchObject({ is: 'reckoned', from: 70, to: 70 }));
  test('is unknown where the uptake is', () => expect(nextBathDepth(100, 200, 100)).toEqual({ is: 'unknown' }));
  test('never holds more than the bath before', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 300, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (percent, share) => {
        const next = nextBathDepth(percent, 100, 100, { from: 0, to: share });
        expect(next?.is === 'reckoned' && next.to <= percent * (1 + 1e-9) && next.from <= next.to).toBe(true);
      }),
    );
  });
  test('refuses an uptake outside 0 to 1', () => {
    expect(nextBathDepth(100, 200, 100, { from: 0.2, to: 1.2 })).toBeUndefined();
    expect(nextBathDepth(0, 200, 100)).toBeUndefined();
  });
});
