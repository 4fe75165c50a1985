import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../web/domain/colour/delta-e.ts';
import { atAmount, fitDepthLaw } from '../../../web/domain/colour/depth-series.ts';
import { atDepth } from '../../../web/domain/colour/kubelka-munk.ts';
import { spectrumToLab10 } from '../../../web/domain/colour/xyz-lab.ts';
import { inventedSample } from '../../helpers/spectral-samples.ts';

const ground = inventedSample('W0');
const dyed = inventedSample('B2');

describe('fitDepthLaw', () => {
  test('one dyeing gives the linear law', () => {
    const law = fitDepthLaw(ground, [{ amount: 20, dyed }]);
    expect(law?.exponent).toBe(1);
    const half = law && atAmount(law, 10);
    expect(half && deltaE00(spectrumToLab10(half.spectrum), spectrumToLab10(atDepth(dyed, ground, 0.5)))).toBeLessThan(1e-9);
  });

  test('finds the power of a series that levels off', () => {
    const series = [5, 10, 20, 40].map((amount) => ({ amount, dyed: atDepth(dyed, ground, (amount / 20) ** 0.6) }));
    const law = fitDepthLaw(ground, series);
    expect(law?.exponent).toBeCloseTo(0.6, 6);
    for (const { amount, dyed: step } of series) {
      const found = law && atAmount(law, amount).spectrum;
      expect(found && deltaE00(spectrumToLab10(found), spectrumToLab10(step))).toBeLessThan(1e-6);
    }
  });

  test('reads the invented depth series within a match', () => {
    const law = fitDepthLaw(ground, [
      { amount: 0.25, dyed: inventedSample('Y1') },
      { amount: 3, dyed: inventedSample('Y3') },
    ]);
    const middle = law && atAmount(law, 1).spectrum;
    expect(middle && deltaE00(spectrumToLab10(middle), spectrumToLab10(inventedSample('Y2')))).toBeLessThan(3);
  });

  test('warns beyond twice the deepest, and not before', () => {
    const law = fitDepthLaw(ground, [{ amount: 20, dyed }]);
    expect(law && [10, 40, 40.1].map((amount) => atAmount(law, amount).beyond)).toEqual([false, false, true]);
  });

  test('has no law without dye', () => {
    expect(fitDepthLaw(ground, [])).toBeUndefined();
    expect(fitDepthLaw(ground, [{ amount: 20, dyed: ground }])).toBeUndefined();
    expect(fitDepthLaw(ground, [{ amount: 0, dyed }])).toBeUndefined();
  });
});
