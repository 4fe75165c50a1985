import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import type { Illuminant, Observer } from '../../../web/domain/colour/conditions.ts';
import { ILLUMINANTS, SCREEN, TEXTILE } from '../../../web/domain/colour/conditions.ts';
import type { Lab } from '../../../web/domain/colour/lab.ts';
import { reconstructFromLab } from '../../../web/domain/colour/reconstruct.ts';
import { cssToLab2 } from '../../../web/domain/colour/screen.ts';
import { spectrumToLab } from '../../../web/domain/colour/xyz-lab.ts';
import { referenceTable } from '../../helpers/reference-table.ts';
import { fc, runs } from '../../helpers/property.ts';

const bare = (lab: Lab | undefined): [number, number, number] => [lab?.[0] ?? NaN, lab?.[1] ?? NaN, lab?.[2] ?? NaN];
const cases = referenceTable('colour-extra-examples.csv').filter((row) => row['kind'] === 'reconstruct');

describe('reconstructFromLab', () => {
  test('has the listed colours', () => expect(cases).toHaveLength(5));

  test.each(cases.map((row) => [row['input'] ?? '', row] as const))('%s', (input, row) => {
    const lab = cssToLab2(input.slice(0, 7));
    const { spectrum, exact } = reconstructFromLab(bare(lab), SCREEN);
    expect(exact).toBe(true);
    expect(ciede2000(bare(spectrumToLab(spectrum, 'D65', 2).lab), bare(lab))).toBeLessThan(0.001);
    const listed = (/=([^;]*);/.exec(row['expected'] ?? '')?.[1] ?? '').trim().split(' ').map(Number);
    expect(listed).toHaveLength(36);
    listed.forEach((r, i) => expect(Math.abs((spectrum.values[i] ?? NaN) - r)).toBeLessThan(0.01));
    const underA = (/2deg (.*)$/.exec(row['expected'] ?? '')?.[1] ?? '').split(' ').map(Number) as [number, number, number];
    expect(ciede2000(bare(spectrumToLab(spectrum, 'A', 2).lab), underA)).toBeLessThan(2);
  });

  test('every screen colour comes back, with reflectances inside 0–1', () => {
    const channel = fc.integer({ min: 0, max: 255 });
    fc.assert(
      fc.property(channel, channel, channel, (r, g, b) => {
        const lab = cssToLab2(`rgb(${r} ${g} ${b})`);
        const { spectrum, exact } = reconstructFromLab(bare(lab), SCREEN);
        expect(spectrum.values).toHaveLength(36);
        for (const value of spectrum.values) expect(value > 0 && value < 1).toBe(true);
        // Black and white lie outside what a curve strictly inside 0–1 can give.
        expect(exact).toBe(r + g + b > 0 && r + g + b < 765);
        expect(ciede2000(bare(spectrumToLab(spectrum, 'D65', 2).lab), bare(lab))).toBeLessThan(exact ? 0.001 : 0.05);
      }),
      runs(1000),
    );
  });

  // Seen from a grey as dark, these lie far off: the method must walk there.
  test('the darkest screen colours come back, every one', () => {
    const missed: string[] = [];
    for (let r = 0; r < 15; r++)
      for (let g = 0; g < 3; g++)
        for (let b = 0; b < 15; b++) {
          if (r + g + b === 0) continue;
          const lab = bare(cssToLab2(`rgb(${r} ${g} ${b})`));
          const { spectrum, exact } = reconstructFromLab(lab, SCREEN);
          if (!exact || !(ciede2000(bare(spectrumToLab(spectrum, 'D65', 2).lab), lab) < 0.001)) missed.push(`${r} ${g} ${b}`);
        }
    expect(missed).toEqual([]);
  });

  test.each(['#000000', '#ffffff', '#ff0000', '#00ff00', '#0000ff', '#ffff00', '#00ffff', '#ff00ff'])('the corner %s comes back', (hex) => {
    const lab = bare(cssToLab2(hex));
    const { spectrum } = reconstructFromLab(lab, SCREEN);
    expect(ciede2000(bare(spectrumToLab(spectrum, 'D65', 2).lab), lab)).toBeLessThan(0.05);
    for (const value of spectrum.values) expect(value > 0 && value < 1).toBe(true);
  });

  test('works under every light and observer', () => {
    for (const illuminant of ILLUMINANTS)
      for (const observer of [2, 10] as const satisfies readonly Observer[]) {
        const conditions: { illuminant: Illuminant; observer: Observer } = { illuminant, observer };
        const { spectrum, exact } = reconstructFromLab([42, 38, 22], conditions);
        expect(exact).toBe(true);
        expect(ciede2000(bare(spectrumToLab(spectrum, illuminant, observer).lab), [42, 38, 22])).toBeLessThan(0.001);
      }
  });

  test('a colour no surface can have keeps its lightness and hue, and says so', () => {
    const { spectrum, exact } = reconstructFromLab([20, 0, 120], TEXTILE);
    expect(exact).toBe(false);
    const [l, a, b] = bare(spectrumToLab(spectrum, 'D65', 10).lab);
    expect(l).toBeCloseTo(20, 3);
    expect(Math.abs(a)).toBeLessThan(0.01);
    expect(b).toBeGreaterThan(20);
    expect(b).toBeLessThan(120);
    for (const value of spectrum.values) expect(value > 0 && value < 1).toBe(true);
  });
});
