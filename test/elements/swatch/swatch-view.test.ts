import { describe, expect, test } from 'vitest';
import { VERDICTS } from '../../../web/domain/verdict/standing-words.ts';
import { clothShape } from '../../../web/elements/swatch/cloth-shape.ts';
import { hemMarks } from '../../../web/elements/swatch/hem.ts';
import { seeded } from '../../../web/elements/shared/seeded.ts';
import { swatchView, tilePlaces, type SwatchInput } from '../../../web/elements/swatch/swatch-view.ts';

const cloth = (given: Partial<SwatchInput> = {}): SwatchInput => ({
  hex: '#a63d2b',
  wide: '',
  fibre: 'wool',
  classes: 0,
  predicted: false,
  outOfGamut: false,
  seed: 'madder-3',
  label: 'Madder on wool',
  ...given,
});
const knotsOf = (classes: number): number => {
  const count = (n: number): number => swatchView(cloth({ verdict: 'attested', classes: n })).hem.filter(({ ink }) => ink === 'ink').length;
  return count(classes) - count(0);
};

describe('swatchView', () => {
  test('the same cloth is always drawn the same, another id another', () => {
    expect(swatchView(cloth())).toEqual(swatchView(cloth()));
    expect(swatchView(cloth()).outline).not.toBe(swatchView(cloth({ seed: 'madder-4' })).outline);
  });

  test('on a wide screen every thread is drawn in its space, and only an ordinary one is said to be duller', () => {
    const wide = 'color(display-p3 0.62 0.1 0.21)';
    const drawn = swatchView(cloth({ wide, outOfGamut: true }));
    expect(drawn.fill).toBe(wide);
    expect(drawn.tiles.flatMap(({ paths }) => paths).every(({ fill }) => fill.startsWith('color(display-p3 '))).toBe(true);
    expect(drawn.remarks).toEqual(['ordinary screens show it duller']);
    expect(swatchView(cloth({ outOfGamut: true })).remarks).toEqual(['screen shows it duller']);
  });

  test('every verdict has a hem of its own, and no verdict has none', () => {
    const drawn = VERDICTS.map((verdict) => JSON.stringify(swatchView(cloth({ verdict })).hem.map(({ ink, d }) => [ink, d.length])));
    expect(new Set(drawn).size).toBe(VERDICTS.length);
    expect(swatchView(cloth()).hem).toEqual([]);
  });

  test('an attested hem has a knot for each class of evidence, five at most', () => {
    expect([0, 1, 2, 3, 4, 5, 9].map(knotsOf)).toEqual([0, 1, 2, 3, 4, 5, 5]);
  });

  test('a pulled thread parts the cloth, a cut takes its corner', () => {
    expect(clothShape('out-of-period', seeded('a')).pieces).toHaveLength(2);
    const whole = clothShape('feasible', seeded('a'));
    const cut = clothShape('contradicted', seeded('a'));
    const corner = whole.at(1, 0);
    const near = ([x, y]: readonly [number, number]) => Math.hypot(x - corner[0], y - corner[1]) < 20;
    expect(whole.pieces.flat().some(near)).toBe(true);
    expect(cut.pieces.flat().some(near)).toBe(false);
  });

  test('the name says colour, verdict and that it is predicted', () => {
    const { name, remarks } = swatchView(cloth({ verdict: 'plausible', predicted: true, outOfGamut: true }));
    expect(name).toContain('Madder on wool');
    expect(name).toContain('plausible');
    expect(name).toContain('predicted');
    expect(remarks).toHaveLength(2);
  });

  test('what is no colour is drawn undyed, without a guess', () => {
    expect(swatchView(cloth({ hex: 'nonsense' })).fill).toBe(swatchView(cloth({ hex: '' })).fill);
  });
});

describe('hemMarks', () => {
  test('a hem stays close to the edge it marks, so that the cloth above keeps its colour', () => {
    for (const verdict of VERDICTS) {
      const marks = hemMarks(verdict, 3, { at: (u, v) => [u * 96, 100 + v], random: seeded('a') });
      // Absolute points only: M, L, C, Q and S; the arcs of knots are relative.
      const heights = marks.flatMap(({ d }) => [...d.matchAll(/[MLCQS]([-\d.]+) ([-\d.]+)/g)].map((found) => Number(found[2])));
      expect(Math.min(...heights)).toBeGreaterThan(100 - 56);
    }
  });
});

describe('tilePlaces', () => {
  test.each([24, 32, 36, 64])('tiles of %d units cover the cloth, turned by two degrees either way', (size) => {
    const places = tilePlaces(size);
    for (const degrees of [-2, 0, 2]) {
      const turn = (-degrees * Math.PI) / 180;
      for (const [x, y] of [
        [1, 7],
        [102, 7],
        [1, 150],
        [102, 150],
        [50, 80],
      ] as const) {
        const [tx, ty] = [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
        expect(places.some(([left, top]) => tx >= left && tx <= left + size && ty >= top && ty <= top + size)).toBe(true);
      }
    }
  });
});
