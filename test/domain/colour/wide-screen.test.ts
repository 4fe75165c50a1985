import Color from 'colorjs.io';
import { describe, expect, test } from 'vitest';
import { asLab2 } from '../../../web/domain/colour/lab.ts';
import { labToScreen } from '../../../web/domain/colour/screen.ts';
import { labToWideScreen } from '../../../web/domain/colour/wide-screen.ts';

describe('labToWideScreen', () => {
  test.each([
    [50, 20, 10],
    [55, -55, 15],
    [45, 75, 55],
  ] as const)('agrees with a second colour library for %s, %s, %s', (l, a, b) => {
    const { css, inGamut } = labToWideScreen(asLab2([l, a, b]));
    const [r, g, blue] = new Color('lab-d65', [l, a, b]).to('p3').coords;
    expect(inGamut).toBe(true);
    const channels = (/\(display-p3 (.*)\)/.exec(css)?.[1] ?? '').split(' ').map(Number);
    [r, g, blue].forEach((value, i) => expect(channels[i]).toBeCloseTo(value ?? NaN, 3));
  });

  test('holds colours that an ordinary screen cannot, and marks those that even it cannot', () => {
    const red = asLab2([50, 78, 60]);
    expect(labToScreen(red).inGamut).toBe(false);
    expect(labToWideScreen(red).inGamut).toBe(true);
    const beyond = labToWideScreen(asLab2([50, 110, 90]));
    expect(beyond.inGamut).toBe(false);
    expect(beyond.css).toMatch(/^color\(display-p3( (0|1|0\.\d+)){3}\)$/);
  });
});
