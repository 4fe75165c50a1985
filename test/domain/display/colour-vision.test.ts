import Color from 'colorjs.io';
import { filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit } from 'culori';
import { describe, expect, test } from 'vitest';
import { cssToLab2 } from '../../../web/domain/colour/screen.ts';
import { COLOUR_VISIONS, differenceSeenBy, seenBy } from '../../../web/domain/display/colour-vision.ts';

const lab = (css: string) => {
  const read = cssToLab2(css);
  if (!read) throw new Error(css);
  return read;
};
describe('seenBy', () => {
  // The matrices as another library carries them, laid on linear light; to Lab and back by a second library.
  const FILTERS = { protan: filterDeficiencyProt(1), deutan: filterDeficiencyDeuter(1), tritan: filterDeficiencyTrit(1) };
  const cases = COLOUR_VISIONS.flatMap((vision) =>
    ['#a04030', '#70a050', '#306090', '#c8b060', '#5a4a6a'].map((css) => [vision, css] as const),
  );

  test.each(cases)('%s: %s as two other libraries have it', (vision, css) => {
    const [r = 0, g = 0, b = 0] = new Color(css).to('srgb-linear').coords.map(Number);
    const seen = FILTERS[vision]({ mode: 'rgb', r, g, b }) as unknown as { r: number; g: number; b: number };
    const expected = new Color('srgb-linear', [seen.r, seen.g, seen.b]).to('lab-d65').coords.map(Number);
    const found = seenBy(vision, lab(css));
    for (const at of [0, 1, 2]) expect(Math.abs((found[at] ?? NaN) - (expected[at] ?? NaN))).toBeLessThan(0.05);
  });

  test('greys stay as they are', () => {
    for (const vision of COLOUR_VISIONS)
      for (const css of ['#000', '#777', '#fff']) {
        const [before, after] = [lab(css), seenBy(vision, lab(css))];
        for (const at of [0, 1, 2]) expect(after[at]).toBeCloseTo(before[at] ?? NaN, 1);
      }
  });
});

describe('differenceSeenBy', () => {
  test('a red and a green of one lightness come together without long or middle cones, and stay apart without short ones', () => {
    const [red, green] = [lab('rgb(168 84 60)'), lab('rgb(112 118 50)')];
    const [protan, deutan, tritan] = COLOUR_VISIONS.map((vision) => differenceSeenBy(vision, red, green));
    expect(Math.min(protan ?? 99, deutan ?? 99)).toBeLessThan(12);
    expect(tritan).toBeGreaterThan(20);
  });

  test('lightness is told apart by everybody', () => {
    for (const vision of COLOUR_VISIONS) expect(differenceSeenBy(vision, lab('#222'), lab('#ddd'))).toBeGreaterThan(50);
  });
});
