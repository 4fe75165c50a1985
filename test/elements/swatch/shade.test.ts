import { describe, expect, test } from 'vitest';
import { linearOf, shade } from '../../../web/elements/swatch/shade.ts';
import { fc } from '../../helpers/property.ts';

const hexes = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, '0')}`);

describe('shade', () => {
  test('nought leaves the colour as it is', () => {
    fc.assert(fc.property(hexes, (hex) => shade(hex, 0) === hex));
  });

  test('light and shadow of one strength cancel out, up to the step of a screen', () => {
    fc.assert(
      fc.property(hexes, fc.double({ min: 0.02, max: 0.3, noNaN: true }), (hex, k) => {
        const middle = linearOf(hex) ?? [0, 0, 0];
        const lit = linearOf(shade(hex, k)) ?? [0, 0, 0];
        const dim = linearOf(shade(hex, -k)) ?? [0, 0, 0];
        // A step of 1/255 of the screen is at most 0.009 in linear light.
        for (const i of [0, 1, 2] as const) expect(Math.abs((lit[i] + dim[i]) / 2 - middle[i])).toBeLessThan(0.005);
      }),
    );
  });

  test('the same in Display P3, whose transfer function is that of sRGB', () => {
    const channel = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);
    fc.assert(
      fc.property(channel, channel, channel, fc.double({ min: 0.02, max: 0.3, noNaN: true }), (r, g, b, k) => {
        const wide = `color(display-p3 ${r} ${g} ${b})`;
        const middle = linearOf(wide) ?? [NaN, NaN, NaN];
        const [lit, dim] = [shade(wide, k), shade(wide, -k)];
        expect(lit).toMatch(/^color\(display-p3 /);
        // A step of the four decimals is at most 0.0003 in linear light.
        for (const i of [0, 1, 2] as const)
          expect(Math.abs(((linearOf(lit)?.[i] ?? NaN) + (linearOf(dim)?.[i] ?? NaN)) / 2 - middle[i])).toBeLessThan(0.0003);
      }),
    );
  });

  test('a middling colour really gets lighter and darker', () => {
    expect(linearOf(shade('#a63d2b', 0.1))?.[0]).toBeGreaterThan(linearOf('#a63d2b')?.[0] ?? 1);
    expect(linearOf(shade('#a63d2b', -0.1))?.[0]).toBeLessThan(linearOf('#a63d2b')?.[0] ?? 0);
  });

  test('white has no room, and what is no colour stays as it is', () => {
    expect(shade('#ffffff', 0.2)).toBe('#ffffff');
    expect(shade('madder', 0.2)).toBe('madder');
  });
});
