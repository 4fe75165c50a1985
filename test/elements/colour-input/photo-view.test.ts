import { describe, expect, test } from 'vitest';
import { labToScreen } from '../../../web/domain/colour/screen.ts';
import { asLab2 } from '../../../web/domain/colour/lab.ts';
import { areaAfterKey, areaBetween, knownPatches, patchAreas, readPhoto } from '../../../web/elements/colour-input/photo-view.ts';
import { readCarriedColour } from '../../../web/notebook/typed-colour.ts';

const flat = (r: number, g: number, b: number, count = 100): number[] => Array.from({ length: count }, () => [r, g, b, 255]).flat();
const known = { correction: 'none', whiteReflectance: 90, greyReflectance: 18, patches: [] } as const;
const bytesOf = (l: number, a: number, b: number): [number, number, number] => {
  const { hex } = labToScreen(asLab2([l, a, b]));
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) as [number, number, number];
};

describe('readPhoto', () => {
  test('waits for the areas that the correction needs', () => {
    const reading = readPhoto({ space: 'srgb', cloth: flat(120, 60, 50) }, { ...known, correction: 'white' });
    expect(reading).toMatchObject({ is: 'waiting' });
    expect(reading.is === 'waiting' && reading.says).toContain('white card');
  });

  test('refuses clipped and dark areas, and says which', () => {
    const clipped = readPhoto({ space: 'srgb', cloth: flat(120, 60, 50), white: flat(255, 255, 250) }, { ...known, correction: 'white' });
    expect(clipped.is === 'refused' && clipped.says).toContain('The white card');
    expect(readPhoto({ space: 'srgb', cloth: flat(3, 3, 3) }, known)).toMatchObject({ is: 'refused' });
  });

  test('keeps the value as from a photo, with its spread', () => {
    const mixed = [...flat(120, 60, 50, 50), ...flat(140, 70, 60, 50)];
    const reading = readPhoto({ space: 'srgb', cloth: mixed }, known);
    expect(reading.is === 'colour' && readCarriedColour(reading.text)).toMatchObject({ illuminant: 'D65', observer: 2, by: 'photo' });
    expect(reading.is === 'colour' && reading.says.join(' ')).toMatch(/100 pixels.*ΔE00 [1-9]/);
  });

  test('a white card takes a colour cast off', () => {
    const [r, g, b] = bytesOf(40, 40, 25);
    // Half the light in blue: linear halves, so encoded values fall by the curve; 90 % white stands at 243.
    const dim = (v: number) => Math.round(255 * ((((v / 255 + 0.055) / 1.055) ** 2.4 * 0.5) ** (1 / 2.4) * 1.055 - 0.055));
    const reading = readPhoto(
      { space: 'srgb', cloth: flat(r, g, dim(b)), white: flat(243, 243, dim(243)) },
      { ...known, correction: 'white' },
    );
    const lab = reading.is === 'colour' ? readCarriedColour(reading.text)?.lab : undefined;
    expect(Math.abs((lab?.[0] ?? 0) - 40)).toBeLessThan(1);
    expect(Math.abs((lab?.[2] ?? 0) - 25)).toBeLessThan(1.5);
  });

  test('a chart needs a known colour for each patch, and marks the value', () => {
    const labs = [
      [40, 40, 25],
      [60, -30, 20],
      [30, 10, -40],
      [70, 5, 60],
      [50, 0, 0],
      [85, 0, 0],
      [45, 45, -10],
    ] as const;
    const chart = labs.map(([l, a, b]) => flat(...bytesOf(l, a, b)));
    const settings = {
      ...known,
      correction: 'chart' as const,
      patches: knownPatches(labs.map((lab) => lab.join(', ')).join('\n'), 'D65') ?? [],
    };
    const reading = readPhoto({ space: 'srgb', cloth: flat(...bytesOf(55, 30, 30)), chart }, settings);
    expect(reading).toMatchObject({ is: 'colour', by: 'photo-with-chart' });
    expect(readPhoto({ space: 'srgb', cloth: flat(120, 60, 50), chart: chart.slice(1) }, settings)).toMatchObject({ is: 'refused' });
  });
});

describe('knownPatches', () => {
  test('takes names before the numbers, and refuses a line without three', () => {
    expect(knownPatches('dark skin 37.5 14.4 14.9\nA2; 65.7; 19.3; 17.5\n', 'D65')?.map((lab) => [...lab])).toEqual([
      [37.5, 14.4, 14.9],
      [65.7, 19.3, 17.5],
    ]);
    expect(knownPatches('37 14', 'D65')).toBeUndefined();
  });
  test('brings D50 values to D65: a grey stays one', () => {
    const [grey] = knownPatches('50, 0, 0', 'D50') ?? [];
    expect(Math.hypot(grey?.[1] ?? 9, grey?.[2] ?? 9)).toBeLessThan(0.5);
  });
});

describe('areas', () => {
  test('a drag in any direction gives one rectangle, held inside the photo', () => {
    expect(areaBetween([0.5, 1.4], [0.25, 0.75])).toEqual({ x: 0.25, y: 0.75, width: 0.25, height: 0.25 });
  });
  test('arrows move, Shift resizes, and nothing leaves the photo', () => {
    const area = { x: 0.95, y: 0, width: 0.05, height: 0.5 };
    expect(areaAfterKey(area, 'ArrowRight', false)?.x).toBeCloseTo(0.95);
    expect(areaAfterKey(area, 'ArrowUp', false)?.y).toBe(0);
    expect(areaAfterKey(area, 'ArrowDown', true)?.height).toBeCloseTo(0.51);
    expect(areaAfterKey(area, 'Enter', false)).toBeUndefined();
  });
  test('patches of a chart are its cells’ middles, in reading order', () => {
    const cells = patchAreas({ x: 0, y: 0, width: 1, height: 1 }, 4, 2);
    expect(cells).toHaveLength(8);
    expect(cells[5]).toEqual({ x: 0.3125, y: 0.625, width: 0.125, height: 0.25 });
  });
});
