import { describe, expect, test } from 'vitest';
import { swatchOfCarried } from '../../web/notebook/swatch-of-carried.ts';
import { carriedInWords, carryColour, readCarriedColour } from '../../web/notebook/typed-colour.ts';
import { readColour } from '../../web/notebook/pose-question.ts';
import { fc } from '../helpers/property.ts';

describe('carryColour', () => {
  test('and back: numbers to two decimals, conditions and origin', () => {
    fc.assert(
      fc.property(
        fc.tuple(fc.integer({ min: 0, max: 10000 }), fc.integer({ min: -9000, max: 9000 }), fc.integer({ min: -9000, max: 9000 })),
        fc.constantFrom('D65' as const, 'A' as const, 'LED-B3' as const),
        fc.constantFrom(2 as const, 10 as const),
        fc.constantFrom(undefined, 'photo' as const, 'photo-with-chart' as const, 'eye' as const, 'spectrum' as const),
        ([l, a, b], illuminant, observer, by) => {
          const colour = { lab: [l / 100, a / 100, b / 100] as const, illuminant, observer, ...(by && { by }) };
          expect(readCarriedColour(carryColour(colour))).toEqual(colour);
        },
      ),
    );
  });

  test('leaves everything else to other readers', () => {
    for (const text of ['45,45,28', '#8f3b2e', 'murrey', '45,45,28 noon/10', '45,45,28 D65/10 guess', '145,0,0 D65/10', 'lab(45 45 28)'])
      expect(readCarriedColour(text)).toBeUndefined();
  });

  test('an asked colour keeps its observer: a 2° value is not taken for a 10° one', () => {
    const of = (text: string) => {
      const asked = readColour(text);
      return asked?.kind === 'swatches' ? asked.swatches[0] : undefined;
    };
    const [two, ten] = [of('30,5,-35 D65/2 photo'), of('30,5,-35 D65/10')];
    expect(two?.lab2).toEqual([30, 5, -35]);
    expect(two?.origin).toBe('photo');
    expect(ten?.lab10).toEqual([30, 5, -35]);
    expect(Math.abs((two?.lab10[1] ?? 0) - 5)).toBeGreaterThan(1);
    expect(readColour('30,5,-35')?.kind).toBe('bare-lab');
  });

  test('a colour says where it comes from', () => {
    expect(carriedInWords('45,45,28 D65/2 eye')).toContain('eye');
    expect(carriedInWords('#aa0000')).toBeUndefined();
    expect(swatchOfCarried({ lab: [50, 0, 0], illuminant: 'A', observer: 10 })?.lab10[0]).toBeCloseTo(50, 0);
  });
});
