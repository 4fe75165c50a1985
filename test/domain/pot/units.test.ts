import { describe, expect, test } from 'vitest';
import {
  BAUME_MODULI,
  baumeFromGravity,
  gravityFromBaume,
  gravityFromLightBaume,
  gravityFromTwaddell,
  twaddellFromGravity,
} from '../../../web/domain/pot/density-scales.ts';
import { dilute, stockMl } from '../../../web/domain/pot/stock-solution.ts';
import { fromCelsius, temperatureUnit, toCelsius } from '../../../web/domain/pot/temperature.ts';
import { convertHardness, HARDNESS_UNITS, hardnessBand, hardnessFromReport, readHardness } from '../../../web/domain/pot/water-hardness.ts';
import { fc } from '../../helpers/property.ts';

describe('temperature', () => {
  // 160 °F, 180–190 °F and 56 °Ré: arithmetic on the definitions of the scales.
  test.each([
    [160, '°F', 71.1],
    [180, '°F', 82.2],
    [190, '°F', 87.8],
    [56, '°Ré', 70],
    [80, '°Ré', 100],
    [70, '°C', 70],
  ] as const)('%d %s', (value, unit, celsius) => expect(toCelsius(value, unit).value).toBeCloseTo(celsius, 1));
  test('goes there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: -40, max: 120, noNaN: true }), fc.constantFrom('°C', '°F', '°Ré' as const), (value, unit) => {
        expect(fromCelsius(toCelsius(value, unit).value, unit).value).toBeCloseTo(value, 8);
      }),
    );
  });
  test('knows the signs people write', () => {
    expect(['C', '°F', '°Ré', 'Reaumur', 'degrees Fahrenheit', 'K'].map(temperatureUnit)).toEqual([
      '°C',
      '°F',
      '°Ré',
      '°Ré',
      '°F',
      undefined,
    ]);
  });
});

describe('water hardness', () => {
  // mg/L CaCO₃ to one: a water laboratory's unit page (°dH 17.85, °fH 10), a pond-keeper's table (17.848), a hard-water page (gpg 17.1,
  // °Clark 14.28), an agriculture organisation's table (meq/L 50); the figures here are computed from definitions and lie within them.
  test.each([
    ['mmol/L', 100.09, 0.005],
    ['°dH', 17.848, 0.002],
    ['°fH', 10, 0],
    ['°e', 14.25, 0.01],
    ['gpg', 17.12, 0.005],
    ['meq/L', 50.04, 0.01],
  ] as const)('one %s in ppm', (unit, ppm, within) =>
    expect(Math.abs(convertHardness(1, unit, 'ppm').value - ppm)).toBeLessThanOrEqual(within),
  );
  // 1 meq/L is 2.805 °dH (the same agriculture table, 2.8 to its digits).
  test('meq/L in °dH', () => expect(convertHardness(1, 'meq/L', '°dH').value).toBeCloseTo(2.804, 2));
  // Calcium 72 and magnesium 26 mg/L: 286.9 ppm, 16.1 °dH (286 on the pond-keeper's table).
  test('from a water report', () => {
    const { value } = hardnessFromReport(72, 26);
    expect(value).toBeCloseTo(286.9, 1);
    expect(convertHardness(value, 'ppm', '°dH').value).toBeCloseTo(16.1, 1);
    expect(hardnessBand(value)).toBe('very-hard');
  });
  test('goes there and back between all units', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        fc.constantFrom(...HARDNESS_UNITS),
        fc.constantFrom(...HARDNESS_UNITS),
        (value, from, to) => {
          const back = convertHardness(convertHardness(value, from, to).value, to, from).value;
          expect(Math.abs(back / value - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });
  test('reads what notes say, and only that', () => {
    expect(readHardness('18 °dH')).toEqual({ value: 18, unit: '°dH' });
    expect(readHardness('250 mg/L CaCO3')).toEqual({ value: 250, unit: 'ppm' });
    expect(readHardness('12,5 °fH')).toEqual({ value: 12.5, unit: '°fH' });
    expect(readHardness('hard')).toBeUndefined();
    expect(readHardness('18')).toBeUndefined();
  });
});

describe('density scales', () => {
  // 42 °Tw caustic, in a vat recipe of 1920 (Knecht, Rawson & Loewenthal): SG 1.210.
  test('Twaddell', () => {
    expect(gravityFromTwaddell(42).value).toBeCloseTo(1.21, 6);
    expect(twaddellFromGravity(1.21).value).toBeCloseTo(42, 6);
  });
  // 32 °Bé is 1.283 on the US modulus 145 and 1.285 on the older 144.3.
  test('Baumé says which modulus', () => {
    expect(gravityFromBaume(32)?.value).toBeCloseTo(1.283, 3);
    expect(gravityFromBaume(32, BAUME_MODULI.assay)?.value).toBeCloseTo(1.285, 3);
    expect(gravityFromBaume(32)?.caution).toContain('145');
    expect(gravityFromBaume(145)).toBeUndefined();
    expect(baumeFromGravity(0)).toBeUndefined();
    // The US scale for light liquids gives water 10 degrees.
    expect(gravityFromLightBaume(10).value).toBe(1);
  });
  test('both go there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 70, noNaN: true }), fc.constantFrom(...Object.values(BAUME_MODULI)), (degrees, modulus) => {
        const gravity = gravityFromBaume(degrees, modulus)?.value ?? NaN;
        expect(baumeFromGravity(gravity, modulus)?.value).toBeCloseTo(degrees, 7);
        expect(twaddellFromGravity(gravityFromTwaddell(degrees).value).value).toBeCloseTo(degrees, 7);
      }),
    );
  });
});

describe('stock solutions', () => {
  // 250 g of wool, 2 % iron from a 1 % stock: 500 ml. The 1 % stock is 10 g in a litre: J. Cowern's course page.
  test('worked example', () => expect(stockMl(250, 2, 1)?.value).toBe(500));
  // A 5 % stock to 400 ml of 0.5 %: 40 ml and 360 ml of water, C₁V₁ = C₂V₂.
  test('dilution', () => expect(dilute(5, 0.5, 400)).toEqual({ stockMl: 40, waterMl: 360 }));
  test('refuses what cannot be', () => {
    expect(stockMl(250, 2, 0)).toBeUndefined();
    expect(stockMl(250, 2, 101)).toBeUndefined();
    expect(dilute(0.5, 5, 400)).toBeUndefined();
    expect(dilute(5, 1, 0)).toBeUndefined();
  });
});
