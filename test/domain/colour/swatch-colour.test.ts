import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../web/domain/colour/delta-e.ts';
import type { Spectrum } from '../../../web/domain/colour/spectrum.ts';
import { spectrumToXyz } from '../../../web/domain/colour/spectrum-to-xyz.ts';
import type { SwatchColour } from '../../../web/domain/colour/swatch-colour.ts';
import { swatchFromCss, swatchFromSpectrum, swatchFromStated } from '../../../web/domain/colour/swatch-colour.ts';
import { spectrumToLab, spectrumToLab10, spectrumToLab2 } from '../../../web/domain/colour/xyz-lab.ts';
import type { StatedColour } from '../../../web/domain/note/note.ts';
import type { Result } from '../../../web/domain/result.ts';

const range = [0, 0] as const;
const stated = (colour: Omit<StatedColour, 'range'>): SwatchColour => value(swatchFromStated({ range, ...colour }));
function value<T>(result: Result<T, string>): T {
  if (!result.ok) throw new Error(result.error);
  return result.value;
}
// An invented red on wool, smooth enough for a reconstruction to come near it.
const red: Spectrum = {
  startNm: 380,
  stepNm: 10,
  values: Array.from({ length: 36 }, (_, i) => 0.06 + 0.5 / (1 + Math.exp(-(i - 22) / 1.8))),
};

describe('swatchFromStated', () => {
  test('keeps Lab under D65/10° as it was stated', () => {
    const swatch = stated({ lab: [40, 45, 28], illuminant: 'D65', observer: 10, by: 'instrument' });
    expect(swatch.lab10).toEqual([40, 45, 28]);
    expect(swatch).toMatchObject({
      origin: 'lab',
      spectrumIs: 'reconstructed',
      stated: { illuminant: 'D65', observer: 10, lab: [40, 45, 28] },
    });
    expect(deltaE00(spectrumToLab10(swatch.spectrum), swatch.lab10)).toBeLessThan(0.001);
    expect(deltaE00(spectrumToLab2(swatch.spectrum), swatch.lab2)).toBe(0);
  });

  test('takes Lab without conditions as cloth, and says they were not stated', () => {
    const swatch = stated({ lab: [40, 45, 28] });
    expect(swatch.lab10).toEqual([40, 45, 28]);
    expect(swatch.stated).toEqual({ lab: [40, 45, 28] });
  });

  test('goes from other conditions to cloth through the spectrum', () => {
    const { lab } = spectrumToLab(red, 'D50', 2);
    const swatch = stated({ lab, illuminant: 'D50', observer: 2 });
    expect(deltaE00(swatch.lab10, spectrumToLab10(red))).toBeLessThan(1);
    // Taking the numbers as they are would be a real error:
    expect(deltaE00(stated({ lab }).lab10, spectrumToLab10(red))).toBeGreaterThan(1.5);
  });

  test('XYZ and Lab of one colour make one swatch', () => {
    const xyz = spectrumToXyz(red, 'A', 10);
    const { lab } = spectrumToLab(red, 'A', 10);
    expect(
      deltaE00(stated({ xyz, illuminant: 'A', observer: 10 }).lab10, stated({ lab, illuminant: 'A', observer: 10 }).lab10),
    ).toBeLessThan(1e-6);
  });

  test('a hex is a screen colour and prints the same hex again', () => {
    for (const hex of ['#9b3a2e', '#d8b63a', '#2c3f63', '#000000', '#ffffff', '#ff0000']) {
      const swatch = stated({ hex });
      expect(swatch).toMatchObject({ hex, inScreenGamut: true, origin: 'eye' });
    }
  });

  test('marks what the screen cannot show', () => {
    const swatch = stated({ lab: [41.5, -7.4, -37.3], illuminant: 'D65', observer: 10 });
    expect(swatch.inScreenGamut).toBe(false);
    expect(stated({ lab: [41.5, 0, -20] }).inScreenGamut).toBe(true);
    expect(swatch.hex).toMatch(/^#[0-9a-f]{6}$/);
    expect(swatch.lab10).toEqual([41.5, -7.4, -37.3]);
  });

  test('a colour no surface can have keeps its numbers and is marked', () => {
    expect(stated({ lab: [20, 0, 120] })).toMatchObject({ lab10: [20, 0, 120], spectrumIs: 'nearest', inScreenGamut: false });
  });

  test.each([
    [{}, 'nothing-stated'],
    [{ hex: 'madder' }, 'colour-unreadable'],
    [{ hex: '40,45,28' }, 'colour-unreadable'],
    [{ lab: [40, 45, 28], illuminant: 'D55' }, 'illuminant-unknown'],
    [{ lab: [140, 45, 28] }, 'colour-out-of-range'],
    [{ lab: [Number.NaN, 45, 28] }, 'colour-out-of-range'],
  ] as const)('%j fails with %s', (colour, error) => expect(swatchFromStated({ range, ...colour })).toEqual({ ok: false, error }));

  test.each([
    ['photo-with-chart', 'photo-with-chart'],
    ['photo', 'photo'],
    ['eye', 'eye'],
    ['spectrum', 'lab'],
    ['instrument', 'lab'],
    ['somebody said', 'lab'],
  ])('by %s comes from %s', (by, origin) => expect(stated({ lab: [50, 10, 10], by }).origin).toBe(origin));
});

describe('swatchFromSpectrum', () => {
  test('computes both observers from the one spectrum', () => {
    const swatch = swatchFromSpectrum(red);
    expect(swatch.lab10).toEqual(spectrumToLab10(red));
    expect(swatch.lab2).toEqual(spectrumToLab2(red));
    expect(swatch).toMatchObject({ origin: 'spectrum', spectrumIs: 'measured', inScreenGamut: true });
    expect(swatchFromSpectrum(red, 'predicted')).toMatchObject({ origin: 'predicted', spectrumIs: 'predicted' });
  });
});

describe('swatchFromCss', () => {
  test('takes L,a,b as cloth and a CSS colour as screen', () => {
    expect(value(swatchFromCss('40,45,28')).lab10).toEqual([40, 45, 28]);
    expect(value(swatchFromCss('40,45,28', { illuminant: 'D65', observer: 2 })).lab2).toEqual([40, 45, 28]);
    expect(value(swatchFromCss('rgb(155 58 46)')).hex).toBe('#9b3a2e');
    expect(swatchFromCss('puce-ish')).toEqual({ ok: false, error: 'colour-unreadable' });
  });
});
