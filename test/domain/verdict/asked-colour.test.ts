import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import type { Lab } from '../../../web/domain/colour/lab.ts';
import { swatchFromSpectrum, swatchFromStated } from '../../../web/domain/colour/swatch-colour.ts';
import { spectrumToXyz } from '../../../web/domain/colour/spectrum-to-xyz.ts';
import { spectrumToLab } from '../../../web/domain/colour/xyz-lab.ts';
import type { StatedColour } from '../../../web/domain/note/note.ts';
import { differenceFrom } from '../../../web/domain/verdict/asked-colour.ts';

/** One curve, a red: reflectance rising at the long end, where the two observers part. */
const RED = swatchFromSpectrum({
  startNm: 380,
  stepNm: 10,
  values: Array.from({ length: 41 }, (_, n) => 0.05 + 0.6 / (1 + Math.exp(-(380 + 10 * n - 600) / 18))),
});

const plain = (lab: readonly number[]): Lab => [lab[0] ?? 0, lab[1] ?? 0, lab[2] ?? 0];
const stated = (colour: Partial<StatedColour>) => {
  const swatch = swatchFromStated({ range: [0, 0], ...colour });
  if (!swatch.ok) throw new Error(swatch.error);
  return swatch.value;
};

/** The same curve as each observer sees it, as a note would state it. */
const AS_10 = stated({ lab: plain(RED.lab10), illuminant: 'D65', observer: 10 });
const AS_2 = stated({ lab: plain(RED.lab2), illuminant: 'D65', observer: 2 });

describe('differenceFrom, one curve seen by two observers', () => {
  test('the two numbers are far enough apart for a mix-up to show', () => {
    expect(ciede2000([...plain(RED.lab10)], [...plain(RED.lab2)])).toBeGreaterThan(0.8);
  });

  test.each([
    ['10° asked of 2° stated', AS_10, AS_2],
    ['2° asked of 10° stated', AS_2, AS_10],
    ['the measured curve asked of 2° stated', RED, AS_2],
    ['2° asked of the measured curve', AS_2, RED],
  ])('%s: the difference goes through a spectrum and all but vanishes', (_, asked, cloth) => {
    const mixed = ciede2000([...plain(RED.lab10)], [...plain(RED.lab2)]);
    const { deltaE00 } = differenceFrom({ kind: 'swatches', swatches: [asked] }, cloth) ?? { deltaE00: Infinity };
    expect(deltaE00).toBeLessThan(mixed / 3);
  });

  test('a Lab without conditions is taken in the conditions of each cloth', () => {
    expect(differenceFrom({ kind: 'bare-lab', lab: plain(RED.lab10) }, AS_10)).toEqual({ deltaE00: 0, lab: plain(RED.lab10) });
    expect(differenceFrom({ kind: 'bare-lab', lab: plain(RED.lab2) }, AS_2)).toEqual({ deltaE00: 0, lab: plain(RED.lab2) });
    expect(differenceFrom({ kind: 'bare-lab', lab: plain(RED.lab10) }, RED)?.deltaE00).toBe(0);
  });

  test.each([
    ['nothing said: D65/10°', {}, 'D65', 10],
    ['only the light said: 10°', { illuminant: 'A' }, 'A', 10],
    ['the light and 2° said', { illuminant: 'D65', observer: 2 }, 'D65', 2],
  ] as const)('a Lab without conditions meets an XYZ in its own conditions; %s', (_, conditions, illuminant, observer) => {
    const cloth = stated({ xyz: spectrumToXyz(RED.spectrum, illuminant, observer), ...conditions });
    const own = spectrumToLab(RED.spectrum, illuminant, observer).lab;
    expect(differenceFrom({ kind: 'bare-lab', lab: own }, cloth)?.deltaE00).toBeCloseTo(0, 9);
  });

  test('the Lab handed back is the one that was compared', () => {
    expect(differenceFrom({ kind: 'swatches', swatches: [AS_2] }, AS_2)?.lab).toEqual(AS_2.lab10);
    expect(differenceFrom({ kind: 'bare-lab', lab: [50, 0, 0] }, AS_2)?.lab).toEqual(plain(RED.lab2));
  });
});

describe('differenceFrom, several colours asked', () => {
  test('the nearest counts', () => {
    const far = stated({ lab: [20, 0, 0], illuminant: 'D65', observer: 10 });
    expect(differenceFrom({ kind: 'swatches', swatches: [far, AS_10] }, AS_10)?.deltaE00).toBeCloseTo(0, 6);
  });

  test('none asked has no difference', () => {
    expect(differenceFrom({ kind: 'swatches', swatches: [] }, AS_10)).toBeUndefined();
  });
});
