import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../web/domain/colour/delta-e.ts';
import { afterLight, fade, fadeDyes, unfade } from '../../../web/domain/colour/fade.ts';
import { overDye } from '../../../web/domain/colour/kubelka-munk.ts';
import { asLab10 } from '../../../web/domain/colour/lab.ts';
import { possibleOriginals, possibleOriginalsByDye, SHOWN_LEFTS } from '../../../web/domain/colour/possible-originals.ts';
import { spectrumToLab10 } from '../../../web/domain/colour/xyz-lab.ts';
import { referenceTable } from '../../helpers/reference-table.ts';
import { bands, inventedSample } from '../../helpers/spectral-samples.ts';
import { fc } from '../../helpers/property.ts';

const ground = inventedSample('W0');
const [red, blue, yellow] = ['R1', 'B2', 'Y2'].map(inventedSample) as [
  ReturnType<typeof inventedSample>,
  ReturnType<typeof inventedSample>,
  ReturnType<typeof inventedSample>,
];

describe('unfade', () => {
  const rows = referenceTable('colour-extra-examples.csv').filter((row) => row['kind']?.startsWith('un-fade'));
  test('the reference has two cases', () => expect(rows).toHaveLength(2));

  test.each(rows.map((row) => [row['id'] ?? '', row] as const))('%s', (_, row) => {
    const [, faded, left] = /faded ([\d. ]+) ; ground W0 ; fraction of dye left ([\d.]+)/.exec(row['input'] ?? '') ?? [];
    const lab = (/D65\/10 (.*)$/.exec(row['expected'] ?? '')?.[1] ?? '').split(' ').map(Number) as [number, number, number];
    const original = unfade(bands(faded ?? ''), ground, { left: Number(left) });
    expect(deltaE00(spectrumToLab10(original), asLab10(lab))).toBeLessThan(0.3);
  });

  test('after fade returns the colour, with or without yellowing', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(red, blue, yellow),
        fc.integer({ min: 5, max: 100 }),
        fc.integer({ min: 0, max: 50 }),
        (dyed, percent, y) => {
          const loss = { left: percent / 100, yellowing: y / 100 };
          const back = unfade(fade(dyed, ground, loss), ground, loss);
          const start = fade(dyed, ground, { left: 1 });
          back.values.forEach((value, i) => expect(value).toBeCloseTo(start.values[i] ?? NaN, 8));
        },
      ),
    );
  });
});

describe('afterLight', () => {
  test('the first just noticeable fade comes at its dose', () => {
    for (const dyed of [red, blue, yellow]) {
      const { change, left } = afterLight(dyed, ground, { justNoticeable: 3, dose: 3 });
      expect(change.deltaEF).toBeCloseTo(1.7, 3);
      expect(change.step).toBe('4');
      expect(left).toBeGreaterThan(0.5);
    }
  });

  test('more light never brings dye back, and later steps take longer', () => {
    const doses = [0, 1, 2, 3, 6, 12, 50, 1000].map((dose) => afterLight(red, ground, { justNoticeable: 3, dose }));
    for (let i = 1; i < doses.length; i++) expect(doses[i]?.left ?? NaN).toBeLessThan(doses[i - 1]?.left ?? NaN);
    expect(doses[0]).toMatchObject({ left: 1, change: { step: '5' } });
    const lost = doses.map(({ left }) => 1 - left);
    expect((lost[4] ?? NaN) - (lost[3] ?? NaN)).toBeLessThan(lost[3] ?? NaN);
  });

  test('a cloth that holds no dye stays as it is but for yellowing, without failing', () => {
    expect(afterLight(ground, ground, { justNoticeable: 3, dose: 30 }, 0).change.deltaEF).toBeCloseTo(0, 6);
    for (const value of afterLight(ground, ground, { justNoticeable: 3, dose: 1e9 }).spectrum.values)
      expect(value > 0 && value < 1).toBe(true);
  });

  test('a green whose yellow goes first turns blue', () => {
    const green = fadeDyes(ground, [
      { dyed: yellow, left: 1 },
      { dyed: blue, left: 1 },
    ]);
    const old = fadeDyes(ground, [
      { dyed: yellow, left: 0.15 },
      { dyed: blue, left: 0.9 },
    ]);
    const [before, after] = [spectrumToLab10(green), spectrumToLab10(old)];
    expect(after[2]).toBeLessThan(before[2] - 15);
    expect(after[1]).toBeGreaterThan(before[1]);
  });
});

describe('possibleOriginals', () => {
  test('is a strip from the colour as found to ever deeper ones', () => {
    const found = fade(red, ground, { left: 0.5 });
    const strip = possibleOriginals(found, ground);
    expect(strip.map(({ lefts }) => lefts[0])).toEqual([...SHOWN_LEFTS]);
    const lightness = strip.map(({ spectrum }) => spectrumToLab10(spectrum)[0]);
    for (let i = 1; i < lightness.length; i++) expect(lightness[i]).toBeLessThan(lightness[i - 1] ?? NaN);
    const start = strip[0];
    expect(start && deltaE00(spectrumToLab10(start.spectrum), spectrumToLab10(found))).toBeLessThan(0.01);
    const half = strip.find(({ lefts }) => lefts[0] === 0.5);
    expect(half && deltaE00(spectrumToLab10(half.spectrum), spectrumToLab10(red))).toBeLessThan(0.05);
  });

  test('restores dye by dye', () => {
    const found = fadeDyes(ground, [
      { dyed: yellow, left: 0.33 },
      { dyed: blue, left: 1 },
    ]);
    const green = overDye(
      ground,
      [yellow, blue].map((dyed) => ({ dyed, ground })),
    );
    const strips = possibleOriginalsByDye(found, ground, [yellow, blue]);
    expect(strips.map((strip) => strip.length)).toEqual([5, 5, 5]);
    const restored = strips[0]?.at(-1);
    expect(restored?.lefts).toEqual([0.33, 1]);
    expect(restored && deltaE00(spectrumToLab10(restored.spectrum), spectrumToLab10(green))).toBeLessThan(0.1);
    expect(possibleOriginalsByDye(found, ground, [yellow])).toHaveLength(1);
  });
});
